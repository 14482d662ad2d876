// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Nothing that a person reads has the words that confuse: texts in the sources, the README, the comments of the designs. */
class BannedWordsTest {
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]++|\\\\.)*+)\"");
    private static final Path SOURCES = Path.of("src/main/java/tipwright");

    private record Ban(Pattern word, String instead) {}

    @Test
    void sources() throws IOException {
        List<String> found = new ArrayList<>();
        for (Path file : files(SOURCES, ".java")) {
            // What programs read keeps the names that have shipped.
            // The list that 'explain' knows has the old words too, so that who asks for one finds the new one.
            if (file.getFileName().toString().startsWith("Json") || file.endsWith("Term.java")) {
                continue;
            }
            String text = Files.readString(file).replaceAll("\"\\s*\\+ \"", "");
            Matcher literal = LITERAL.matcher(code(text));
            while (literal.find()) {
                look(file, literal.group(1), found);
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void readmeAndDesigns() throws IOException {
        List<Path> all = new ArrayList<>(files(Path.of("geometry"), ".yaml"));
        all.addAll(files(Path.of("geometry"), ".md"));
        all.addAll(files(Path.of("src/main/resources"), ".yaml"));
        all.add(Path.of("README.md"));
        List<String> found = new ArrayList<>();
        for (Path file : all) {
            for (String line : Files.readAllLines(file)) {
                look(file, line, found);
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void findsWhatItLooksFor() throws IOException {
        List<String> found = new ArrayList<>();
        look(Path.of("x"), "To mend: a larger pin", found);
        look(Path.of("x"), "Fix: a bigger pin", found);
        assertThat(found).hasSize(1);
    }

    /** A source without its comments, which only developers read. */
    private static String code(String text) {
        return text.replaceAll("(?s)/\\*\\*.*?\\*/", "").replaceAll("(?m)^\\s*//.*$", "");
    }

    private static void look(Path file, String text, List<String> found) throws IOException {
        for (Ban ban : bans()) {
            if (ban.word.matcher(text).find()) {
                found.add(file + ": '" + text + "': say " + ban.instead);
            }
        }
    }

    private static List<Ban> bans() throws IOException {
        try (var in = Objects.requireNonNull(BannedWordsTest.class.getResourceAsStream("banned-words.txt"))) {
            return new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8)
                    .lines()
                    .filter(l -> !l.startsWith("#") && !l.isBlank())
                    .map(l -> l.split("\t", 2))
                    .map(p -> new Ban(Pattern.compile(p[0]), p[1]))
                    .toList();
        }
    }

    private static List<Path> files(Path top, String ending) throws IOException {
        try (Stream<Path> all = Files.walk(top)) {
            return all.filter(p -> p.toString().endsWith(ending)).sorted().toList();
        }
    }
}
