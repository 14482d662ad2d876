// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

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
import tipwright.geometry.Vec2;

/**
 * The straight drive over a range of tilts: closed form as the baseline, the general solver beside it.
 *
 * <p>Run: {@code mvn -q -B -Pbench test-compile exec:exec@bench -Djmh.args=SweepBenchmark}
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SweepBenchmark {
    private static final Vec2 PIVOT = new Vec2(0.52, 0.19);
    private static final Vec2 FRAME_PIN = new Vec2(-0.1, -0.35);
    private static final Vec2 TANK_PIN = new Vec2(-0.12, 0.23);

    @Param({"46", "451"})
    private int count;

    private double[] tilts;
    private StraightDrive closedForm;
    private Linkage linkage;

    @Setup
    public void prepare() throws LinkageException {
        tilts = new double[count];
        for (int i = 0; i < count; i++) {
            tilts[i] = Math.toRadians(45.0 * i / (count - 1));
        }
        closedForm = new StraightDrive(PIVOT, FRAME_PIN, TANK_PIN);
        linkage = Linkage.of(Skeleton.straight(PIVOT, FRAME_PIN, TANK_PIN));
    }

    @Benchmark
    public double closedForm() {
        double sum = 0;
        for (double tilt : tilts) {
            sum += closedForm.length(tilt) + closedForm.arm(tilt);
        }
        return sum;
    }

    @Benchmark
    public Motion generalSolver() {
        return linkage.sweep(tilts);
    }
}
