// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tipwright.check.Checks;
import tipwright.check.rule.Check;
import tipwright.design.file.DesignKeys;

/**
 * The words that a welder knows, or that 'explain' explains: those of its terms, of the checks and of the keys of the design file; and
 * ordinary English, which is in ordinary-words.txt. A new one is put there by hand, with a thought whether a welder would know it.
 */
public final class Vocabulary {
    private static final Pattern NO_WORD = Pattern.compile("[^a-z]+");
    /** Figures with their units, what is in quotes, and names of files are no words. */
    private static final Pattern NO_TEXT = Pattern.compile(
            "'[^'\\n]{0,60}'|(\\w)\\1{2,}|\\b[0-9]+ [0-9/]+ in\\b|\\b\\w*[0-9]\\w*\\b|[\\w./-]+\\.(yaml|pdf|svg|png|html|stl|dxf|csv|json|md|txt)\\b");

    private Vocabulary() {}

    /** Fails on words that nobody explains; with {@code -Dtest.write.words=FILE} they are written there. */
    public static void assertKnown(String where, String printed, String own) {
        Set<String> unknown = words(NO_TEXT.matcher(printed).replaceAll(" "));
        unknown.removeAll(words(own));
        unknown.removeAll(Known.WORDS);
        String list = System.getProperty("test.write.words");
        if (list != null && !unknown.isEmpty()) {
            try {
                Files.writeString(
                        Path.of(list),
                        where + ": " + String.join(" ", unknown) + "\n",
                        StandardOpenOption.CREATE,
                        StandardOpenOption.APPEND);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        assertThat(unknown).as(where + ": words that 'explain' does not know").isEmpty();
    }

    /** All words of a text of three letters or more, in small letters. */
    static Set<String> words(String text) {
        return NO_WORD.splitAsStream(text.toLowerCase(Locale.ROOT))
                .filter(w -> w.length() > 2)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static final class Known {
        private static final Set<String> WORDS = all();

        private static Set<String> all() {
            Set<String> all = new TreeSet<>();
            for (Term term : Term.all()) {
                all.addAll(words(term.word() + " " + String.join(" ", term.also())));
            }
            for (Check check : Checks.all()) {
                all.addAll(words(check.title() + " " + check.id()));
            }
            for (DesignKeys.Known key : DesignKeys.all()) {
                all.addAll(words(key.path()));
            }
            all.addAll(words(resource("ordinary-words.txt")));
            return all;
        }
    }

    private static String resource(String name) {
        try (var in = Objects.requireNonNull(Vocabulary.class.getResourceAsStream(name))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
