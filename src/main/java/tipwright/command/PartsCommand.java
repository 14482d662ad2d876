// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.PrintWriter;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tipwright.design.file.PartsFile;
import tipwright.design.file.Problem;
import tipwright.design.key.Annotated;
import tipwright.design.key.Copy;
import tipwright.design.key.Measured;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.report.Prose;

/** Lists actuators and bearings. */
@Command(
        name = "parts",
        description =
                "Lists the actuators and bearings that a design may name: your own parts files first, then those that come"
                        + " with the program (invented, of a size usual for their rating).",
        footer = {"  tipwright parts", "  tipwright parts my-parts.yaml --units us"})
final class PartsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(arity = "0..*", paramLabel = "FILE", description = "Parts files of your own.")
    private List<Path> files = new ArrayList<>();

    @Option(names = "--units", paramLabel = "SYSTEM", description = "Units of the list: metric or us.")
    private UnitSystem units = UnitSystem.METRIC;

    @Override
    public Integer call() {
        Set<PartsFile.Part> parts = new LinkedHashSet<>();
        Set<Problem> problems = new LinkedHashSet<>();
        for (Path file : files) {
            PartsFile.Contents contents = PartsFile.read(file);
            parts.addAll(contents.parts());
            problems.addAll(contents.problems());
        }
        if (files.isEmpty()) {
            parts.addAll(PartsFile.shipped().parts());
        }
        if (!problems.isEmpty()) {
            problems.forEach(p -> spec.commandLine().getErr().println(p.text()));
            return Exit.NOT_UNDERSTOOD;
        }
        PrintWriter out = spec.commandLine().getOut();
        String section = "";
        List<PartsFile.Part> sorted = new ArrayList<>(parts);
        sorted.sort(Comparator.comparing(PartsFile.Part::section));
        for (PartsFile.Part part : sorted) {
            if (!part.section().equals(section)) {
                section = part.section();
                out.println(section);
            }
            String name =
                    "  " + part.name() + " ".repeat(Math.max(1, 14 - part.name().length()));
            Prose.wrap(name, words(part)).forEach(out::println);
        }
        return Exit.FINE;
    }

    /** 'electric: closed 350 mm, stroke 300 mm, push 3 kN (a remark)'. */
    private String words(PartsFile.Part part) {
        String word = Annotated.of(part.part().getClass()).word();
        List<String> figures = new ArrayList<>();
        for (RecordComponent component : part.part().getClass().getRecordComponents()) {
            Measured measured = component.getAnnotation(Measured.class);
            Object value = Copy.value(component, part.part());
            if (measured != null && value instanceof Double number) {
                String key = component.getName().replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
                String shown = show(number, measured.value());
                if (!shown.equals(measured.preset())) {
                    figures.add(key + " " + shown);
                }
            }
        }
        String kind = word.isEmpty() ? "" : word + ": ";
        return kind + String.join(", ", figures) + (part.note().isEmpty() ? "" : " (" + Prose.safe(part.note()) + ")");
    }

    private String show(double si, Kind kind) {
        return switch (kind) {
            case RATIO -> Quantities.show(si, Quantities.unit(kind, "%"));
            case LENGTH -> Text.size(si).show(units);
            default -> Quantities.show(si, kind, units);
        };
    }
}
