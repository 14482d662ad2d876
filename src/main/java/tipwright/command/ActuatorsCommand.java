// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.file.Problem;
import tipwright.design.file.Reading;
import tipwright.placement.PartsBox;
import tipwright.report.JsonMounts;
import tipwright.report.PartsBoxText;
import tipwright.report.Style;

/** Tries the actuators of the parts box in a design. */
@Command(
        name = "actuators",
        description = {
            "Tries every actuator in the parts files on your design, pins unmoved, and lists which pass.",
            "Parts files: those that the design names and those given with --parts, then the one that comes with the program."
        },
        footer = {"  tipwright actuators my-tank.yaml", "  tipwright actuators my-tank.yaml --parts my-parts.yaml"})
final class ActuatorsCommand implements Callable<Integer> {
    @ParentCommand
    private Tipwright parent;

    @Spec
    private CommandSpec spec;

    @Mixin
    private Asked asked = new Asked();

    @Option(names = "--parts", paramLabel = "FILE", description = "A parts file to take from too; may be repeated.")
    private List<Path> files = new ArrayList<>();

    @Option(names = "--json", description = "Print it as JSON.")
    private boolean json;

    @Mixin
    private Shown shown = new Shown();

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        DesignSource source =
                DesignSource.find(asked.design(), spec.commandLine().getErr());
        if (source.reading() instanceof Reading.Bad bad) {
            bad.problems().stream().map(Problem::text).forEach(err::println);
            return Exit.NOT_UNDERSTOOD;
        }
        Design design = ((Reading.Good) source.reading()).design();
        Boxes boxes = Boxes.of(source, design, files);
        if (!boxes.problems().isEmpty()) {
            boxes.problems().stream().map(Problem::text).distinct().forEach(err::println);
            return Exit.NOT_UNDERSTOOD;
        }
        PartsBox.Sorted box = PartsBox.sorted(design, boxes.at().actuators());
        Map<String, String> leftOut = box.leftOut();
        List<PartsBox.Tried> tried = PartsBox.tried(design, box.suiting());
        if (json) {
            spec.commandLine().getOut().print(JsonMounts.actuators(design, tried, leftOut));
        } else {
            Style style = new Style(parent.terminal().colour(), shown.units(source.reading()));
            spec.commandLine().getOut().print(PartsBoxText.of(design, tried, leftOut, style));
        }
        return tried.stream().anyMatch(t -> t.verdict() != Verdict.FAIL) ? Exit.FINE : Exit.FAILS;
    }
}
