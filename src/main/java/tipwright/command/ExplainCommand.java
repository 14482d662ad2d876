// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tipwright.check.Checks;
import tipwright.check.NotKnown;
import tipwright.check.rule.Check;
import tipwright.quantity.Spelling;
import tipwright.report.Prose;

/** Tells what a check does. */
@Command(
        name = "explain",
        description =
                "Tells the rule of a check, its formula and where it comes from; without a name it lists all checks;"
                        + " 'limits' tells what no check knows.",
        footer = {"  tipwright explain", "  tipwright explain bearing-static", "  tipwright explain limits"})
final class ExplainCommand implements Callable<Integer> {
    private static final String LIMITS = "limits";

    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "0..1",
            paramLabel = "CHECK",
            description = "Name of the check, as in the list and in the JSON.")
    private @Nullable String asked;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        String name = asked;
        if (name == null) {
            for (Check check : Checks.all()) {
                out.println(padded(check.id()) + check.title());
            }
            out.println(padded(LIMITS) + "What no check knows");
            return Exit.FINE;
        }
        if (name.equals(LIMITS)) {
            out.println("What no check knows; look at it yourself, or have it looked at");
            NotKnown.all().forEach(l -> Prose.wrap("  * ", l).forEach(out::println));
            return Exit.FINE;
        }
        // In results the part of the machine follows after a slash: 'bearing-static/1'.
        String id = name.contains("/") ? name.substring(0, name.indexOf('/')) : name;
        for (Check check : Checks.all()) {
            if (check.id().equals(id)) {
                explain(check, out);
                return Exit.FINE;
            }
        }
        List<String> ids = Checks.all().stream().map(Check::id).toList();
        String near = Spelling.nearest(id, ids);
        spec.commandLine()
                .getErr()
                .println("tipwright: there is no check '" + name + "'; "
                        + (near == null ? "they are: " + String.join(", ", ids) : "did you mean '" + near + "'?"));
        return Exit.NOT_UNDERSTOOD;
    }

    private static String padded(String id) {
        return id + " ".repeat(Math.max(1, 20 - id.length()));
    }

    private static void explain(Check check, PrintWriter out) {
        out.println(check.title() + " (" + check.id() + ")");
        Prose.wrap("  Rule     ", check.rule()).forEach(out::println);
        Prose.wrap("  Formula  ", check.formula()).forEach(out::println);
        Prose.wrap("  Source   ", check.source()).forEach(out::println);
    }
}
