// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;

/**
 * Load tables of a shipped design: as filled, and over ten fills from empty to that.
 *
 * <p>Run: {@code mvn -q -B -Pbench test-compile exec:exec@bench -Djmh.args=FillBenchmark}
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class FillBenchmark {
    @Param("silt-trailer")
    private String name;

    private Design design;
    private double[] tilts;
    private Emptying emptying;

    @Setup
    public void read() {
        design = ((Reading.Good) DesignFile.shipped(name + ".yaml")).design();
        tilts = TiltGrid.of(design);
        emptying = LoadTable.of(design, tilts).emptying();
    }

    @Benchmark
    public LoadTable asFilled() {
        return LoadTable.of(design, tilts);
    }

    @Benchmark
    public List<LoadCase> upsets() {
        return LoadTable.upsets(design, tilts, Vessel.of(design));
    }

    @Benchmark
    public List<LoadTable> tenFills() {
        FillTables fills = new FillTables(design, tilts, emptying, Vessel.of(design));
        List<LoadTable> all = new ArrayList<>();
        for (int k = 1; k <= 10; k++) {
            all.add(fills.of(design.slurry().withFill(new Contents(design).fill() * k / 10)));
        }
        return all;
    }
}
