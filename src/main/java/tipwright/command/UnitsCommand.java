// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitLabel;
import tipwright.report.Prose;

/** Lists the units. */
@Command(
        name = "units",
        description = "Lists every unit that a design file may use; metric and US ones mix freely.",
        footer = "  tipwright units")
final class UnitsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        for (Kind kind : Kind.values()) {
            List<String> names = new ArrayList<>();
            for (UnitLabel unit : Quantities.units(kind)) {
                List<String> aliases = unit.aliases();
                names.add(unit.name() + (aliases.isEmpty() ? "" : " (or " + String.join(", ", aliases) + ")"));
            }
            String word = kind.word() + " ".repeat(Math.max(1, 22 - kind.word().length()));
            Prose.wrap(word, String.join("; ", names) + "; such as '" + kind.example() + "'")
                    .forEach(out::println);
        }
        out.println();
        out.println("Fractions and feet with inches: '12 3/8 in', '3 ft 4 1/2 in'.");
        return Exit.FINE;
    }
}
