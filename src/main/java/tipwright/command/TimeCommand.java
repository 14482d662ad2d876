// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.quantity.UnitSystem;
import tipwright.report.JsonTime;
import tipwright.report.Style;
import tipwright.report.TimeReport;
import tipwright.time.Cycle;
import tipwright.time.CycleTimer;
import tipwright.time.Timing;

/** Tells how long a dump takes. */
@Command(
        name = "time",
        description = "Tells how long a dump takes, second by second, and what the supply has to give.",
        footer = {
            "  tipwright time my-tank.yaml",
            "  tipwright time my-tank.yaml --units us",
            "  tipwright time my-tank.yaml --json > line.json"
        })
final class TimeCommand implements Callable<Integer> {
    @ParentCommand
    private Tipwright parent;

    @Spec
    private CommandSpec spec;

    @Mixin
    private Asked asked = new Asked();

    @Mixin
    private Shown shown = new Shown();

    @Option(names = "--json", description = "Print every moment as JSON.")
    private boolean json;

    @Override
    public Integer call() throws FailedException {
        DrawnDesign drawn = DrawnDesign.find(asked.design(), spec.commandLine());
        Design design = drawn.design();
        if (design == null) {
            return Exit.NOT_UNDERSTOOD;
        }
        Analysis analysis;
        try {
            analysis = Analyser.analyse(design);
        } catch (CannotComputeException e) {
            spec.commandLine().getErr().println(e.getMessage());
            return Exit.CANNOT_COMPUTE;
        }
        Timing timing = CycleTimer.time(analysis);
        print(analysis, timing, shown.units(drawn.reading()));
        Cycle dump = timing.dump();
        if (dump == null) {
            return Exit.CANNOT_COMPUTE;
        }
        return dump.complete() ? Exit.FINE : Exit.FAILS;
    }

    private void print(Analysis analysis, Timing timing, UnitSystem units) throws FailedException {
        PrintWriter out = spec.commandLine().getOut();
        if (!json) {
            out.print(
                    TimeReport.of(analysis, timing, new Style(parent.terminal().colour(), units)));
            return;
        }
        try {
            JsonTime.write(analysis.design().name(), timing, out);
        } catch (IOException e) {
            throw new FailedException(String.valueOf(e.getMessage()), e);
        }
    }
}
