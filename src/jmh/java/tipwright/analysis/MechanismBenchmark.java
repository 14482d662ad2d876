// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

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
import tipwright.design.drive.TiltRange;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.geometry.Vec3;
import tipwright.linkage.Configuration;
import tipwright.linkage.Linkage;
import tipwright.linkage.Motion;
import tipwright.load.LoadTable;

/**
 * 181 tilts of the simplest and of the largest mechanism with all load cases, and its parts: the load table, the sweep, one
 * balance with friction. The balance must allocate nothing.
 *
 * <p>Run: {@code mvn -q -B -Pbench test-compile exec:exec@bench -Djmh.args="MechanismBenchmark -prof gc"}
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class MechanismBenchmark {
    private static final int TILTS = 181;
    private static final Vec3 CENTROID = new Vec3(0.05, 0.6, 0.01);

    @Param({"silt-trailer", "six-link"})
    private String name;

    private Design design;
    private double[] tilts;
    private Linkage linkage;
    private Balancer balancer;

    @Setup
    public void prepare() throws CannotComputeException {
        Design read = ((Reading.Good) DesignFile.shipped(name + ".yaml")).design();
        TiltRange t = read.tilt();
        design = read.withTilt(new TiltRange(t.from(), t.to(), (t.to() - t.from()) / (TILTS - 1)));
        tilts = design.tilt().tilts();
        linkage = Analyser.linkage(design);
        balancer = new Balancer(design, linkage, Mechanism.of(linkage.skeleton()), null);
        List<Configuration> configurations = linkage.sweep(tilts).configurations();
        balancer.moveTo(configurations.get(configurations.size() / 2));
    }

    @Benchmark
    public Analysis everything() throws CannotComputeException {
        return Analyser.analyse(design);
    }

    @Benchmark
    public LoadTable loadTable() {
        return LoadTable.of(design, tilts);
    }

    @Benchmark
    public Motion sweep() {
        return linkage.sweep(tilts);
    }

    @Benchmark
    public boolean balanceWithFriction() {
        return balancer.solve(900, CENTROID, 1);
    }
}
