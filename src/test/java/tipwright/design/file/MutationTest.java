// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.design.Design;

/** Seeded mutations of the shipped designs: each is read or refused in plain words, never anything else. */
class MutationTest {
    private static final int MUTATIONS = Integer.getInteger("test.mutated", 6_000);
    /** One of so many that are read is computed too. */
    private static final int CHECKED = Integer.getInteger("test.computed", 24);

    private static final int CHUNKS = 8;
    private static final Pattern VALUE = Pattern.compile("(?<=[:,\\-] |\\[)[^\\s,\\[\\]{}:#][^,\\[\\]{}:#\n]*");
    private static final List<String> NASTY = List.of(
            """
            0~-1~1e308~1e-308~NaN~.inf~''~[]~{}~[[]]~&a~*a~!!int 3~- ~: ~#~0 mm~1e-6 mm~1000 m~-1000 m~0.05 deg~180 deg~never~100 %~0 %~\
            1/3 in~9999999999 kN~yes~\t~\0~\u00e9~\ud83d\udccf~...~---~|~>~%~@~`~x~z~circle~polygon~mesh~box~yard-25~../x.stl~/dev/zero~\
            tipwright: 1~parts/actuators.yaml~wash-tub.stl~<<~? a~=~0x10~1_000~"~\\"""
                    .split("~"));

    @Test
    void anyMutationIsReadOrRefusedInPlainWords() throws IOException {
        List<String> texts = new ArrayList<>();
        for (Path file : ShippedDesignsTest.designs()) {
            texts.add(Files.readString(file));
        }
        int good = IntStream.range(0, CHUNKS)
                .parallel()
                .map(seed -> chunk(texts, new Random(seed)))
                .sum();
        assertThat(good).as("some mutations stay readable, most do not").isBetween(MUTATIONS / 20, MUTATIONS / 2);
    }

    private static int chunk(List<String> texts, Random random) {
        int good = 0;
        for (int i = 0; i < MUTATIONS / CHUNKS; i++) {
            String text = any(texts, random);
            for (int times = 1 + random.nextInt(3); times > 0; times--) {
                text = mutated(text, any(texts, random), random);
            }
            good += look(text, random) ? 1 : 0;
        }
        return good;
    }

    private static String any(List<String> some, Random random) {
        return some.get(random.nextInt(some.size()));
    }

    /** Whether it was read; fails when the answer is not as it should be. */
    private static boolean look(String text, Random random) {
        Problems none = new Problems();
        String decoded = TextBytes.decode("a.yaml", text.getBytes(StandardCharsets.UTF_8), none);
        if (decoded == null) {
            assertThat(none.isEmpty()).isFalse();
            return false;
        }
        Reading reading = DesignFile.read("a.yaml", decoded, NamedFiles.folder(Path.of("geometry")));
        if (reading instanceof Reading.Bad bad) {
            assertThat(bad.problems()).as(text).isNotEmpty();
            int lines = (int) decoded.chars().filter(c -> c == '\n').count() + 1;
            for (Problem problem : bad.problems()) {
                assertThat(problem.message())
                        .as(text)
                        .isNotBlank()
                        .doesNotContain("Exception", "null", "tipwright.design");
                assertThat(problem.place().line()).as(text).isBetween(0, lines + 1);
                assertThat(problem.text().length()).as(text).isLessThan(700);
            }
            return false;
        }
        if (random.nextInt(CHECKED) == 0) {
            compute(((Reading.Good) reading).design());
        }
        return true;
    }

    /** Some of those that stay readable are computed too: a result, or a reason why not. */
    private static void compute(Design design) {
        try {
            assertThat(Checker.check(design).findings()).isNotEmpty();
        } catch (CannotComputeException told) {
            assertThat(told.getMessage()).isNotBlank();
        }
    }

    private static String mutated(String text, String other, Random random) {
        if (text.isEmpty()) {
            return other;
        }
        int at = random.nextInt(text.length());
        String[] lines = text.split("\n", -1);
        int line = random.nextInt(lines.length);
        switch (random.nextInt(9)) {
            case 0 -> {
                return text.substring(0, at) + (char) (32 + random.nextInt(95)) + text.substring(at + 1);
            }
            case 1 -> {
                return text.substring(0, at) + text.substring(Math.min(text.length(), at + 1 + random.nextInt(8)));
            }
            case 2 -> {
                return text.substring(0, at) + any(NASTY, random) + text.substring(at);
            }
            case 3 -> {
                lines[line] = "";
                return String.join("\n", lines);
            }
            case 4 -> {
                String[] others = other.split("\n", -1);
                lines[line] = others[random.nextInt(others.length)];
                return String.join("\n", lines);
            }
            case 5 -> {
                int to = random.nextInt(lines.length);
                String kept = lines[line];
                lines[line] = lines[to];
                lines[to] = kept;
                return String.join("\n", lines);
            }
            case 6 -> {
                return value(text, random, any(NASTY, random));
            }
            case 7 -> {
                return value(text, random, scalar(other, random));
            }
            default -> {
                return text.substring(0, at);
            }
        }
    }

    private static String value(String text, Random random, String fresh) {
        List<MatchResult> places = VALUE.matcher(text).results().toList();
        if (places.isEmpty()) {
            return text;
        }
        MatchResult place = places.get(random.nextInt(places.size()));
        return text.substring(0, place.start()) + fresh + text.substring(place.end());
    }

    private static String scalar(String text, Random random) {
        return any(VALUE.matcher(text).results().map(MatchResult::group).toList(), random);
    }
}
