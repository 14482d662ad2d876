// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tipwright.report.Vocabulary;

/** Every mistake is told with its line and column, in these very words. */
class ErrorTextTest {
    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void isTold(Case mistake) throws IOException {
        Reading reading =
                DesignFile.read("silt.yaml", mistake.text(), NamedFiles.folder(java.nio.file.Path.of("src/test")));
        assertThat(reading).isInstanceOf(Reading.Bad.class);
        List<String> told =
                ((Reading.Bad) reading).problems().stream().map(Problem::text).toList();
        assertThat(told).isEqualTo(mistake.expected);
        for (Problem problem : ((Reading.Bad) reading).problems()) {
            placeIsWhereTheTextIs(mistake.text(), problem);
        }
    }

    /** Line and column lead to the offset; and a value that the message quotes first stands there, where it is a value's place. */
    private static void placeIsWhereTheTextIs(String text, Problem problem) {
        Place place = problem.place();
        if (place.end() <= place.start() || text.charAt(place.start()) == '|') {
            return;
        }
        String[] lines = text.split("\n", -1);
        int offset = place.column() - 1;
        for (int i = 0; i < place.line() - 1; i++) {
            offset += lines[i].length() + 1;
        }
        assertThat(offset).as(problem.text()).isEqualTo(place.start());
        Matcher quoted = Pattern.compile(
                        "^(?:no unit in |no number in |comma in |key |unit '[^']*' in )?'([^']+)'(?! is missing)")
                .matcher(problem.message());
        if (quoted.find()
                && !problem.message().contains("both given")
                && !quoted.group(1).contains("...")) {
            assertThat(text.substring(place.start()))
                    .as(problem.text())
                    .containsPattern("^['\"]?" + Pattern.quote(quoted.group(1)));
        }
    }

    /** Paths of keys and what is quoted are the file's own. */
    @Test
    void everyWordOfAMistakeIsKnown() throws IOException {
        String told = cases().flatMap(c -> c.expected.stream())
                .map(problem -> problem.replaceFirst("^[^:]*:\\d+:\\d+: ", "").replaceFirst("^[\\w.\\[\\]-]+: ", ""))
                .collect(java.util.stream.Collectors.joining("\n"));
        Vocabulary.assertKnown("mistakes in a design file", told, "");
    }

    static Stream<Case> cases() throws IOException {
        List<Case> cases = new ArrayList<>();
        for (String line : resource("errors.txt").lines().toList()) {
            if (line.startsWith("== ")) {
                cases.add(new Case(line.substring(3), new ArrayList<>(), new ArrayList<>(), new ArrayList<>()));
            } else if (!line.startsWith("#") && !line.isBlank()) {
                Case last = cases.get(cases.size() - 1);
                List<String> part =
                        line.charAt(0) == '-' ? last.old : line.charAt(0) == '+' ? last.fresh : last.expected;
                part.add(line.substring(2));
            }
        }
        return cases.stream();
    }

    record Case(String name, List<String> old, List<String> fresh, List<String> expected) {
        String text() throws IOException {
            if (old.isEmpty()) {
                return plain(fresh.get(0));
            }
            String text = resource("silt.yaml");
            for (int i = 0; i < old.size(); i++) {
                String from = plain(old.get(i));
                assertThat(text.split(Pattern.quote(from), -1)).as(from).hasSize(2);
                text = text.replace(from, plain(fresh.get(i)));
            }
            return text;
        }

        private static String plain(String written) {
            return written.replace("\\n", "\n").replace("\\t", "\t").replace("\\u0007", "\u0007");
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static String resource(String name) throws IOException {
        try (var in = ErrorTextTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
