// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;

/**
 * No length, fill or speed of a shipped design makes the dump in time take for ever: evaluations are counted, nothing is timed.
 *
 * <p>{@code -Dsweep.steps=2000} (the Maven profile 'nightly') sweeps more finely; the value of a size at a step does not depend on
 * how many steps there are, so the usual steps are the first of the many.
 */
class StopwatchTest {
    private static final int STEPS = Integer.getInteger("sweep.steps", 80);
    private static final int TOO_MANY = 100;
    /** How far a size is taken from its own value, as a share of it. */
    private static final double REACH = 0.06;
    /** Steps of the golden ratio never come to the same place twice, and every run of them is spread evenly. */
    private static final double GOLDEN = 0.6180339887498949;

    /** The parts of a file that the dump in time depends on most. */
    private static final Pattern BLOCK = Pattern.compile("(?m)^(tank|slurry|supply|drive|dump):(.*\n(?:[ #].*\n|\n)*)");

    private static final Pattern SIZE =
            Pattern.compile("(?<![\\w.-])(\\d+(?:\\.\\d+)?)(?= (?:mm|m|in|ft|%|L|L/min|gpm|mm/s|in/s)[^\\w/.])");

    /** A number in a text. */
    private record Size(int from, int to, double value) {}

    private record Swept(String name, String text, List<Size> sizes) {}

    private static List<Size> sizes(String text) {
        List<Size> sizes = new ArrayList<>();
        Matcher block = BLOCK.matcher(text);
        while (block.find()) {
            Matcher size = SIZE.matcher(text).region(block.start(), block.end());
            while (size.find()) {
                double value = Double.parseDouble(size.group(1));
                if (value > 0) {
                    sizes.add(new Size(size.start(1), size.end(1), value));
                }
            }
        }
        return sizes;
    }

    private static List<Swept> shipped() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("geometry"))) {
            List<Swept> all = new ArrayList<>();
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                String text = Files.readString(file);
                all.add(new Swept(file.getFileName().toString(), text, sizes(text)));
            }
            return all;
        }
    }

    /** What became of one step. */
    private record Count(String what, long evaluations, boolean lost) {}

    private static void step(Swept swept, int step, ConcurrentLinkedQueue<Count> counts, AtomicInteger refused) {
        Size size = swept.sizes().get(step % swept.sizes().size());
        double share = (0.5 + step * GOLDEN) % 1;
        double value = Math.rint(size.value() * (1 + REACH * (2 * share - 1)) * 1e4) / 1e4;
        String text =
                swept.text().substring(0, size.from()) + value + swept.text().substring(size.to());
        if (!(DesignFile.read(swept.name(), text, NamedFiles.folder(Path.of("geometry")))
                instanceof Reading.Good good)) {
            refused.incrementAndGet();
            return;
        }
        Effort effort = new Effort(Effort.MOST);
        Timing timing = CycleTimer.time(analysed(good.design()), CycleTimer.TOLERANCE, effort);
        String line = swept.text().substring(0, size.from());
        counts.add(new Count(
                swept.name() + ":" + (1 + line.length() - line.replace("\n", "").length()) + ": " + size.value()
                        + " -> " + value + ": " + timing.missing(),
                effort.made(),
                timing.lost()));
    }

    private static Analysis analysed(Design design) {
        try {
            return Analyser.analyse(design);
        } catch (CannotComputeException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void noSizeMakesItTakeForEver() throws IOException {
        List<Swept> designs = shipped();
        assertThat(designs).hasSizeGreaterThan(10).allMatch(s -> s.sizes().size() > 10);
        ConcurrentLinkedQueue<Count> counts = new ConcurrentLinkedQueue<>();
        AtomicInteger refused = new AtomicInteger();
        for (Swept swept : designs) {
            IntStream.range(0, STEPS).parallel().forEach(step -> step(swept, step, counts, refused));
        }
        assertThat(refused.get()).isLessThan(designs.size() * STEPS / 4);
        long[] sorted = counts.stream().mapToLong(Count::evaluations).sorted().toArray();
        long median = sorted[sorted.length / 2];
        System.out.println("evaluations of " + sorted.length + " dumps in time, " + refused + " refused: median "
                + median + ", most " + Arrays.stream(sorted).max().orElse(0));
        assertThat(counts.stream().filter(c -> c.lost() || c.evaluations() > TOO_MANY * median))
                .isEmpty();
    }
}
