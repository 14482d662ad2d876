// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.ClosedFormAnalyser;
import tipwright.analysis.FrictionRadii;
import tipwright.design.Design;
import tipwright.design.drive.Straight;
import tipwright.design.drive.TiltRange;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.design.tank.Cases;
import tipwright.geometry.Vec2;
import tipwright.load.LoadTable;

/**
 * Full-range candidates a second: 110 degrees in steps of 1, five load cases, friction both ways; length, arm, push, pull and both
 * bearings. The search's engine on one and on two threads, without early rejection; the closed form in plain numbers as the limit of
 * what is simple; the general analysis of the same design, load table included.
 *
 * <p>Run: {@code mvn -q -B -Pbench test-compile exec:exec@bench -Djmh.args=PlacementBenchmark}
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PlacementBenchmark {
    private Design design;
    private Kernel kernel;
    private Lanes lanes;
    private PlainLoop plain;
    private LoadTable table;
    private Vec2[] frames;
    private Vec2 tank;
    private int next;

    @Setup
    public void prepare() throws CannotComputeException {
        design = ((Reading.Good) DesignFile.shipped("silt-trailer.yaml"))
                .design()
                .withTilt(new TiltRange(0, Math.toRadians(110), Math.toRadians(1)))
                .withCases(new Cases(List.of("heel"), List.of()));
        table = Analyser.loads(design);
        TiltLoads loads = TiltLoads.of(design, table);
        FrictionRadii friction = FrictionRadii.of(design);
        double[] radii = {friction.framePin(), friction.rodPin()};
        kernel = new Kernel(loads, radii);
        plain = new PlainLoop(loads, radii);
        lanes = new Lanes();
        tank = ((Straight) design.drive()).tankPin();
        frames = new Vec2[Lanes.SIZE];
        SplittableRandom random = new SplittableRandom(4);
        for (int j = 0; j < frames.length; j++) {
            frames[j] = new Vec2(random.nextDouble(0.1, 0.3), random.nextDouble(-0.5, -0.3));
            Vec2 f = frames[j].minus(loads.pivot());
            Vec2 t = tank.minus(loads.pivot());
            lanes.set(j, f.x(), f.y(), t.x(), t.y());
        }
    }

    @Benchmark
    @OperationsPerInvocation(Lanes.SIZE)
    public double engine() {
        kernel.run(lanes, Lanes.SIZE);
        return lanes.most[0] + lanes.bearing1[0] + lanes.bearing2[0];
    }

    @Benchmark
    @Threads(2)
    @OperationsPerInvocation(Lanes.SIZE)
    public double engineOnTwoThreads() {
        return engine();
    }

    @Benchmark
    @OperationsPerInvocation(Lanes.SIZE)
    public double engineLengthsAlone() {
        kernel.shape(lanes, Lanes.SIZE);
        return lanes.longest[0];
    }

    @Benchmark
    public double plainScalarLoop() {
        next = (next + 1) % frames.length;
        plain.run(frames[next], tank);
        return plain.rest + plain.bearing[0];
    }

    @Benchmark
    public Analysis generalSolver() throws CannotComputeException {
        return Analyser.analyse(moved());
    }

    @Benchmark
    public Analysis generalSolverLoadsGiven() throws CannotComputeException {
        return Analyser.analyse(moved(), table);
    }

    @Benchmark
    public Analysis closedFormLoadsGiven() throws CannotComputeException {
        return ClosedFormAnalyser.analyse(moved(), table);
    }

    @Benchmark
    public double judgedByTheChecks() throws CannotComputeException {
        return Judgement.of(ClosedFormAnalyser.analyse(moved(), table)).utilisation();
    }

    private Design moved() {
        next = (next + 1) % frames.length;
        return design.withDrive(((Straight) design.drive()).movedTo(frames[next], tank));
    }
}
