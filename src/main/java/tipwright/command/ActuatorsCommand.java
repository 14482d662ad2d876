// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.file.PartsFile;
import tipwright.design.file.Problem;
import tipwright.design.file.Reading;
import tipwright.placement.PartsBox;
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

    @Mixin
    private Shown shown = new Shown();

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        DesignSource source = DesignSource.find(asked.design());
        if (source.reading() instanceof Reading.Bad bad) {
            bad.problems().stream().map(Problem::text).forEach(err::println);
            return Exit.NOT_UNDERSTOOD;
        }
        Design design = ((Reading.Good) source.reading()).design();
        List<Path> all = new ArrayList<>(files);
        Path folder = folder(asked.design());
        design.parts().forEach(name -> all.add(folder == null ? Path.of(name) : folder.resolve(name)));
        Map<String, Actuator> box = new LinkedHashMap<>();
        List<Problem> problems = new ArrayList<>();
        for (Path file : all) {
            PartsFile.Contents contents = PartsFile.read(file);
            problems.addAll(contents.problems());
            put(box, contents);
        }
        put(box, PartsFile.shipped());
        if (!problems.isEmpty()) {
            problems.stream().map(Problem::text).distinct().forEach(err::println);
            return Exit.NOT_UNDERSTOOD;
        }
        List<ListedActuator> suiting = new ArrayList<>();
        box.forEach((name, part) -> {
            if (PartsBox.suits(design, part)) {
                suiting.add(new ListedActuator(name, part));
            }
        });
        List<PartsBox.Tried> tried = PartsBox.tried(design, suiting);
        Style style = new Style(parent.terminal().colour(), shown.units(source.reading()));
        spec.commandLine().getOut().print(PartsBoxText.of(design, tried, box.size() - suiting.size(), style));
        return tried.stream().anyMatch(t -> t.verdict() != Verdict.FAIL) ? Exit.FINE : Exit.FAILS;
    }

    /** Where the design's own parts files lie; null for a design that comes with the program. */
    private static @Nullable Path folder(@Nullable String design) {
        return design == null ? null : Path.of(design).toAbsolutePath().getParent();
    }

    private static void put(Map<String, Actuator> box, PartsFile.Contents contents) {
        for (PartsFile.Part part : contents.parts()) {
            if (part.part() instanceof Actuator actuator) {
                box.putIfAbsent(part.name(), actuator);
            }
        }
    }
}
