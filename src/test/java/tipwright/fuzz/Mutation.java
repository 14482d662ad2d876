// SPDX-License-Identifier: Apache-2.0
package tipwright.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tipwright.drawing.HardSigns;

/** Spoils designs: figures, units, keys, lists, words and texts. The same seed and number give the same spoilt design. */
final class Mutation {
    private static final Pattern FIGURE =
            Pattern.compile("(?<![\\w.-])-?\\d+(?:\\.\\d+)?(?= ?[a-z%,\\]}/]|$)", Pattern.MULTILINE);
    private static final Pattern UNIT = Pattern.compile("(?<=\\d )[a-zA-Z%][a-zA-Z0-9/%^]*");
    private static final Pattern PAIR = Pattern.compile("[a-z-]+: ?[^,{}\\[\\]\\n]+,? ?");
    private static final Pattern LIST = Pattern.compile("\\[([^\\[\\]]+)]");
    private static final Pattern WORD = Pattern.compile("(?<=: )[a-z][a-z-]+(?=[,}\\n])");
    private static final Pattern TEXT = Pattern.compile("(?<=(?:name|about|note): )[^\\n,}]+");
    private static final double[] FACTORS = {0, -1, 0.5, 0.9, 0.99, 1.01, 1.1, 2, 10, 1000, 1e-3, 1e-9, 1e9, 1e300};
    private static final List<String> TEXTS = List.of(
            "",
            "'",
            "\"",
            "~",
            "null",
            "yes",
            "{}",
            "[]",
            "&a *a",
            "!!java",
            "<b>&amp;</b>",
            "%s %n %d",
            "${x}",
            "]]>",
            "x: y",
            "../../x",
            "'\\u001b[2J'",
            "\"\\e[2J\\a\\0\"",
            "\"\\uD83D\"",
            "A".repeat(5000),
            "- - -",
            "1e999",
            ".nan mm",
            "# no");

    private final List<String> designs;
    private final List<String> words;
    private final List<String> units;

    private Mutation(List<String> designs) {
        this.designs = designs;
        this.words = all(WORD);
        this.units = all(UNIT);
    }

    /** Of the designs in some folders. */
    static Mutation of(Path... folders) throws IOException {
        List<String> designs = new ArrayList<>();
        for (Path folder : folders) {
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file : files.filter(f -> f.toString().endsWith(".yaml"))
                        .sorted()
                        .toList()) {
                    designs.add(Files.readString(file));
                }
            }
        }
        return new Mutation(designs);
    }

    private List<String> all(Pattern pattern) {
        return designs.stream()
                .flatMap(d -> pattern.matcher(d).results().map(MatchResult::group))
                .distinct()
                .sorted()
                .toList();
    }

    /** A design with one to four things spoilt in it. */
    String spoilt(Random random) {
        String text = pick(designs, random);
        // Most often one: what is spoilt twice is refused twice as often.
        int times = random.nextInt(3) > 0 ? 1 : 2 + random.nextInt(3);
        for (int i = 0; i < times; i++) {
            text = once(text, random);
        }
        return text;
    }

    private String once(String text, Random random) {
        return switch (random.nextInt(10)) {
            case 0, 1, 2, 3, 4 -> replaced(text, FIGURE, f -> figure(f, random), random);
            case 5 -> replaced(text, UNIT, u -> pick(units, random), random);
            case 6 -> replaced(text, PAIR, p -> random.nextInt(3) == 0 ? p + p : "", random);
            case 7 -> replaced(text, LIST, l -> list(l, random), random);
            case 8 -> replaced(text, WORD, w -> pick(words, random), random);
            default -> replaced(text, TEXT, t -> hostile(random), random);
        };
    }

    private interface Change {
        String of(String old);
    }

    private static String replaced(String text, Pattern pattern, Change change, Random random) {
        List<MatchResult> found = pattern.matcher(text).results().toList();
        if (found.isEmpty()) {
            return text;
        }
        MatchResult at = pick(found, random);
        return text.substring(0, at.start()) + change.of(at.group()) + text.substring(at.end());
    }

    private static String figure(String old, Random random) {
        double value = Double.parseDouble(old);
        double to = random.nextInt(4) == 0
                ? value * FACTORS[random.nextInt(FACTORS.length)]
                : value * Math.exp(0.4 * random.nextGaussian());
        double places = random.nextBoolean() ? 100 : 1e6;
        double rounded = Math.abs(to) < 1e9 ? Math.rint(to * places) / places : to;
        return rounded == Math.rint(rounded) && Math.abs(rounded) < 1e9
                ? Long.toString((long) rounded)
                : Double.toString(rounded).toLowerCase(java.util.Locale.ROOT);
    }

    private static String list(String old, Random random) {
        List<String> items =
                new ArrayList<>(List.of(old.substring(1, old.length() - 1).split(", ")));
        switch (random.nextInt(4)) {
            case 0 -> items.remove(random.nextInt(items.size()));
            case 1 -> items.add(pick(items, random));
            case 2 -> Collections.shuffle(items, random);
            default -> items.add("");
        }
        return "[" + String.join(", ", items) + "]";
    }

    private static String hostile(Random random) {
        return random.nextBoolean() ? pick(TEXTS, random) : "x" + pick(HardSigns.all(), random) + "x";
    }

    private static <T> T pick(List<T> list, Random random) {
        return list.get(random.nextInt(list.size()));
    }
}
