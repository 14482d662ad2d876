// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

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
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;

/**
 * Full cycles of the shipped designs, all load cases of each together.
 *
 * <p>Run: {@code mvn -q -B -Pbench test-compile exec:exec@bench -Djmh.args=CycleBenchmark}
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class CycleBenchmark {
    @Param({"silt-trailer", "grit-hopper", "lime-barrel"})
    private String design = "";

    private Analysis analysis;

    /** Reads and analyses the design. */
    @Setup
    public void analyse() throws CannotComputeException {
        Reading.Good good = (Reading.Good) DesignFile.shipped(design + ".yaml");
        analysis = Analyser.analyse(good.design());
    }

    /** Raise, hold, lower: draining, held and caked. */
    @Benchmark
    public Timing cycles() {
        return CycleTimer.time(analysis);
    }
}
