// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

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
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.check.clearance.Clearance;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.load.LoadTable;
import tipwright.report.Checked;
import tipwright.report.Style;
import tipwright.report.TextReport;

/**
 * A whole check of shipped designs and the parts of it: reading, load cases, analysis (these and the balances), checks with the
 * question how full it may be, the text.
 *
 * <p>Run: {@code mvn -q -B -Pbench test-compile exec:exec@bench -Djmh.args=CheckBenchmark}
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class CheckBenchmark {
    @Param("silt-trailer")
    private String name;

    private Design design;
    private double[] tilts;
    private Result result;

    @Setup
    public void read() throws CannotComputeException {
        design = good().design();
        tilts = design.tilt().tilts();
        result = Checker.check(design);
    }

    private Reading.Good good() {
        return (Reading.Good) DesignFile.shipped(name + ".yaml");
    }

    @Benchmark
    public Reading reading() {
        return good();
    }

    @Benchmark
    public LoadTable loadCases() {
        return LoadTable.of(design, tilts);
    }

    @Benchmark
    public Analysis analysis() throws CannotComputeException {
        return Analyser.analyse(design);
    }

    @Benchmark
    public Result check() throws CannotComputeException {
        return Checker.check(design);
    }

    @Benchmark
    public List<Clearance.Gap> clearance() {
        return Clearance.of(result.analysis());
    }

    @Benchmark
    public String text() {
        return TextReport.of(new Checked(result, List.of(), List.of()), Style.PLAIN);
    }
}
