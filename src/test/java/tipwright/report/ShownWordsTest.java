// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checks;
import tipwright.check.rule.Check;
import tipwright.quantity.UnitSystem;

/**
 * Every word that is printed of the shipped designs is one that 'explain' knows, one of the design's own, or ordinary English: those are
 * in ordinary-words.txt, and a new one is put there by hand, with a thought whether a welder would know it.
 */
class ShownWordsTest {
    private static final Pattern NO_WORD = Pattern.compile("[^a-z]+");

    @Test
    void everyPrintedWordIsKnown() throws CannotComputeException, IOException {
        Set<String> known = known();
        Set<String> unknown = new TreeSet<>();
        for (String name : ShippedResults.names()) {
            Checked checked = ShippedResults.checked(name);
            Set<String> printed = new TreeSet<>();
            for (UnitSystem units : UnitSystem.values()) {
                Style style = new Style(false, units);
                printed.addAll(words(ShortReport.of(checked, style)));
                printed.addAll(words(beforeTheAssumptions(TextReport.of(checked, style))));
            }
            printed.removeAll(words(ShippedResults.text(name)));
            unknown.addAll(printed);
        }
        unknown.removeAll(known);
        String list = System.getProperty("test.write.words");
        if (list != null) {
            Files.writeString(Path.of(list), String.join("\n", unknown) + "\n");
        }
        assertThat(unknown).as("words that 'explain' does not know").isEmpty();
    }

    @Test
    void oldNamesAndThoseOfTheFileAreKnownToo() {
        for (String word :
                new String[] {"held", "caked", "brim", "arm", "demand", "transmission", "to mend", "Stowed"}) {
            assertThat(Term.find(word)).as(word).isPresent();
        }
        assertThat(Term.find("held").orElseThrow().word()).isEqualTo("full, outlet shut");
        assertThat(Term.find("nonsense")).isEmpty();
    }

    @Test
    void noWordIsExplainedTwice() {
        for (Term term : Term.all()) {
            assertThat(Term.find(term.word()).orElseThrow()).isEqualTo(term);
        }
    }

    private static Set<String> known() throws IOException {
        Set<String> all = new TreeSet<>();
        for (Term term : Term.all()) {
            all.addAll(words(term.word()));
        }
        for (Check check : Checks.all()) {
            all.addAll(words(check.title() + " " + check.id()));
        }
        try (var in = Objects.requireNonNull(ShownWordsTest.class.getResourceAsStream("ordinary-words.txt"))) {
            all.addAll(words(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
        }
        return all;
    }

    /** The keys of the design file, which stand after this heading, are explained by the schema. */
    private static String beforeTheAssumptions(String text) {
        int end = text.indexOf("Assumed, because");
        return end < 0 ? text : text.substring(0, end);
    }

    private static Set<String> words(String text) {
        return NO_WORD.splitAsStream(text.toLowerCase(Locale.ROOT))
                .filter(w -> w.length() > 2)
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
