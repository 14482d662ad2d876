// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A round wall under a bracket (three unit loads, then any load of them) and a flat one under a liquid.
 *
 * <p>Run: {@code mvn -q -B -Pbench test-compile exec:exec@bench -Djmh.args=WallBenchmark}
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class WallBenchmark {
    private final ShellPatch patch = new ShellPatch(CylinderShell.steel(0.6, 0.004, 2.4), 0.7, 0.05, 0.05);
    private final PatchInfluence influence = patch.influence();

    @Benchmark
    public PatchInfluence bracket() {
        return patch.influence();
    }

    @Benchmark
    public ShellPatch.Worst bracketAnotherLoad() {
        return influence.worst(new PatchLoad(5000, 100, 200));
    }

    @Benchmark
    public PlateBending flatWall() {
        return PlateUnderPressure.steel(
                        2,
                        1,
                        0.006,
                        PlateUnderPressure.Edge.CLAMPED,
                        PlateUnderPressure.Edge.CLAMPED,
                        PlateUnderPressure.Edge.FREE)
                .under(1e4, 0);
    }
}
