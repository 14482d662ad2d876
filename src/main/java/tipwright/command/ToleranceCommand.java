// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.file.Problem;
import tipwright.design.file.Reading;
import tipwright.drawing.Svg;
import tipwright.placement.OtherChecks;
import tipwright.placement.PartsBox;
import tipwright.placement.Tolerance;
import tipwright.placement.Welder;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;
import tipwright.quantity.UnitSystem;
import tipwright.report.JsonMounts;
import tipwright.report.Style;
import tipwright.report.ToleranceText;
import tipwright.sheet.Tornado;

/** Tells what welds that are off do. */
@Command(
        name = "tolerance",
        description = {
            "Tells what happens when the mounts end up a little off: worst case, chance of a failed check, which dimension matters most, how accurate you must be."
        },
        footer = {
            "  tipwright tolerance my-tank.yaml --by '3 mm'",
            "  tipwright tolerance my-tank.yaml --plot tornado.svg"
        })
final class ToleranceCommand implements Callable<Integer> {
    /** Ways with the pins off in which the slower checks are made too. */
    private static final int WORST = 30;

    @ParentCommand
    private Tipwright parent;

    @Spec
    private CommandSpec spec;

    @Mixin
    private Asked asked = new Asked();

    @Option(
            names = "--by",
            paramLabel = "LENGTH",
            description = "How far each place may be off, such as '3 mm'. Default: mounts.wants.weld, or 5 mm.")
    private @Nullable String by;

    @Option(
            names = "--runs",
            paramLabel = "NUMBER",
            description = "How many random tries. Default: 2000 for a straight drive, 300 for other linkages.")
    private @Nullable Integer runs;

    @Option(names = "--seed", paramLabel = "NUMBER", description = "Seed of the runs: ${DEFAULT-VALUE}.")
    private long seed = 1;

    @Option(
            names = "--plot",
            paramLabel = "FILE",
            description = "Save a bar chart of which dimension matters most (.svg).")
    private @Nullable Path plot;

    @Option(names = "--json", description = "Print it as JSON.")
    private boolean json;

    @Mixin
    private Shown shown = new Shown();

    @Override
    public Integer call() throws FailedException {
        PrintWriter err = spec.commandLine().getErr();
        DesignSource source =
                DesignSource.find(asked.design(), spec.commandLine().getErr());
        if (source.reading() instanceof Reading.Bad bad) {
            bad.problems().stream().map(Problem::text).forEach(err::println);
            return Exit.NOT_UNDERSTOOD;
        }
        Design what = ((Reading.Good) source.reading()).design();
        Outputs outputs = Outputs.sparing(source);
        if (plot != null) {
            outputs.spare(plot);
        }
        UnitSystem units = shown.units(source.reading());
        try {
            Welder welder = new Welder(what);
            Tolerance found = welder.tolerance(size(what), runs == null ? welder.usualRuns() : Math.max(0, runs), seed);
            OtherChecks others = welder.others(WORST);
            Style style = new Style(parent.terminal().colour(), units);
            spec.commandLine()
                    .getOut()
                    .print(
                            json
                                    ? JsonMounts.tolerance(what, found, others)
                                    : ToleranceText.of(what, found, others, style));
            if (plot != null) {
                String svg = Svg.of(Tornado.of(found, units), true);
                outputs.write(plot, stream -> stream.write(svg.getBytes(StandardCharsets.UTF_8)));
                if (!json) {
                    spec.commandLine().getOut().println("plot: written to " + plot);
                }
            }
            return found.worstCorner() > 1 || !others.spoilt().isEmpty() ? Exit.FAILS : Exit.FINE;
        } catch (QuantityException e) {
            err.println("--by: " + e.getMessage());
            return Exit.NOT_UNDERSTOOD;
        } catch (CannotComputeException e) {
            err.println(source.name() + ": " + e.getMessage());
            return Exit.CANNOT_COMPUTE;
        }
    }

    private double size(Design what) throws QuantityException {
        return by != null ? Quantities.parse(by, Kind.LENGTH) : PartsBox.weld(what);
    }
}
