// SPDX-License-Identifier: Apache-2.0
package tipwright;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Runs the benchmarks that a limit is set for, all in one go, and writes their figures beside the limits as a table.
 *
 * <p>Run: {@code xvfb-run -a -s '-screen 0 1280x800x24' mvn -q -B -Pbench test-compile exec:exec@limits} (without a display the
 * window is left out); the table goes to target/limits.md and to the screen.
 */
public final class LimitTable {
    private LimitTable() {}

    /**
     * One benchmark and its limit.
     *
     * @param method class and method
     * @param parameter value of the benchmark's only parameter; empty: it has none
     * @param limit in the benchmark's unit; NaN: there for comparison
     * @param rate whether more is better
     */
    private record Wanted(String what, String method, String parameter, double limit, boolean rate) {
        static Wanted time(String what, String method, String parameter, double limit) {
            return new Wanted(what, method, parameter, limit, false);
        }

        static Wanted rate(String what, String method, double limit) {
            return new Wanted(what, method, "", limit, true);
        }
    }

    private static final List<String> SEEN = List.of("silt-trailer", "saw-skid", "six-link");

    private static final List<Wanted> ALL = Stream.concat(without().stream(), window())
            .filter(w -> System.getenv("DISPLAY") != null || !w.method().startsWith("WindowBenchmark"))
            .toList();

    /** From an edit to what the window says of it, and the dump as it plays; measured only where there is a display. */
    private static Stream<Wanted> window() {
        return SEEN.stream()
                .flatMap(name -> Stream.of(
                        Wanted.time("window, " + name + ": edit to numbers", "WindowBenchmark.numbers", name, 16),
                        Wanted.time(
                                "window, " + name + ": edit to all checks that need no time",
                                "WindowBenchmark.verdictAtRest",
                                name,
                                100),
                        Wanted.time(
                                "window, " + name + ": edit to all checks",
                                "WindowBenchmark.verdict",
                                name,
                                Double.NaN),
                        new Wanted(
                                "window, " + name + ": pictures of the dump",
                                "WindowBenchmark.pictures",
                                name,
                                12,
                                true)));
    }

    private static List<Wanted> without() {
        return List.of(
                Wanted.time("analysis of the demo", "CheckBenchmark.analysis", "silt-trailer", 50),
                Wanted.time("all of `check` on the demo", "CheckBenchmark.check", "silt-trailer", Double.NaN),
                Wanted.time("wall under a bracket, all loads of it", "WallBenchmark.bracket", "", 5),
                Wanted.time("flat wall under a liquid", "WallBenchmark.flatWall", "", 5),
                Wanted.time("full cycles of the demo, three loads", "CycleBenchmark.cycles", "silt-trailer", 30),
                Wanted.time("six-link, 181 tilts, all cases", "MechanismBenchmark.everything", "six-link", 20_000),
                Wanted.time("viewer: a pin dragged", "ViewerBenchmark.drag", "", 16),
                Wanted.time("viewer: a field edited", "ViewerBenchmark.edit", "", 16),
                Wanted.time(
                        "viewer: a field edited, all checks that need no time",
                        "ViewerBenchmark.verdictAtRest",
                        "",
                        100),
                Wanted.time("viewer: our own work in a frame", "ViewerBenchmark.frame", "", 8),
                Wanted.rate("search: candidates, two threads", "PlacementBenchmark.engineOnTwoThreads", 1e6),
                Wanted.rate("the same, one thread", "PlacementBenchmark.engine", Double.NaN),
                Wanted.rate("the same by a plain scalar loop", "PlacementBenchmark.plainScalarLoop", Double.NaN),
                Wanted.rate("the same by the general solver", "PlacementBenchmark.generalSolver", Double.NaN));
    }

    /** Runs and writes. */
    public static void main(String[] args) throws RunnerException, IOException {
        ChainedOptionsBuilder options = new OptionsBuilder().forks(1);
        ALL.forEach(w -> options.include("\\." + w.method().replace(".", "\\.") + "$"));
        Map<String, RunResult> found = new TreeMap<>();
        for (RunResult run : new Runner(options.build()).run()) {
            String[] name = run.getParams().getBenchmark().split("\\.");
            String parameter = run.getParams().getParamsKeys().stream()
                    .map(k -> run.getParams().getParam(k))
                    .collect(Collectors.joining());
            found.put(name[name.length - 2] + "." + name[name.length - 1] + parameter, run);
        }
        List<String> lines = new ArrayList<>(List.of("| what | measured | limit | |", "| --- | --- | --- | --- |"));
        for (Wanted w : ALL) {
            RunResult run = found.get(w.method() + w.parameter());
            if (run == null) {
                throw new IllegalStateException("no result for " + w.method());
            }
            lines.add(line(w, run));
        }
        String table = String.join("\n", lines) + "\n";
        Files.writeString(Path.of("target", "limits.md"), table);
        System.out.println(table);
    }

    private static String line(Wanted w, RunResult run) {
        double score = run.getPrimaryResult().getScore();
        double error = run.getPrimaryResult().getScoreError();
        String unit = run.getPrimaryResult().getScoreUnit();
        boolean kept = w.rate() ? score >= w.limit() : score <= w.limit();
        String limit = Double.isNaN(w.limit()) ? "" : number(w.limit()) + " " + unit;
        String verdict = Double.isNaN(w.limit()) ? "" : kept ? "kept" : "NOT KEPT";
        return "| " + w.what() + " | " + number(score) + " +- " + number(error) + " " + unit + " | " + limit + " | "
                + verdict + " |";
    }

    private static String number(double value) {
        return value >= 1000 ? String.format(Locale.ROOT, "%,.0f", value) : String.format(Locale.ROOT, "%.3g", value);
    }
}
