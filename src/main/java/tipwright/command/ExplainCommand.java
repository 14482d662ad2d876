// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import tipwright.check.Checks;
import tipwright.check.NotKnown;
import tipwright.check.rule.Check;
import tipwright.design.file.DesignKeys;
import tipwright.quantity.Spelling;
import tipwright.report.Prose;
import tipwright.report.Term;

/** Tells what a check does. */
@Command(
        name = "explain",
        description =
                "Explains a check (what it tests, the formula, the source), a word that the program prints or a key of the"
                        + " design file; 'keys' lists the keys, 'limits' tells what no check knows.",
        footer = {
            "  tipwright explain",
            "  tipwright explain bearing-static",
            "  tipwright explain lever arm",
            "  tipwright explain what-if.structure",
            "  tipwright explain keys",
            "  tipwright explain limits"
        })
final class ExplainCommand implements Callable<Integer> {
    private static final String LIMITS = "limits";
    private static final String KEYS = "keys";

    /** Keys of one name that are told after a check or a word. */
    private static final int FEW = 4;

    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "0..*",
            paramLabel = "WORD",
            description =
                    "A check, any word that the program prints, such as push or stuck cake, or a key of the design file."
                            + " Without it: lists the checks and words.")
    private List<String> asked = List.of();

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        String name = String.join(" ", asked);
        if (name.isEmpty()) {
            for (Check check : Checks.all()) {
                out.println(padded(check.id()) + check.title());
            }
            out.println(padded(LIMITS) + "What no check knows");
            out.println(padded(KEYS) + "The keys of the design file");
            out.println();
            Prose.wrap(
                            "Words: ",
                            String.join(
                                    "; ", Term.all().stream().map(Term::word).toList()))
                    .forEach(out::println);
            return Exit.FINE;
        }
        if (name.equals(LIMITS)) {
            out.println("What no check knows; look at it yourself, or have it looked at");
            NotKnown.all().forEach(l -> Prose.wrap("  * ", l).forEach(out::println));
            return Exit.FINE;
        }
        if (name.equals(KEYS)) {
            DesignKeys.all().forEach(k -> explain(k, out));
            return Exit.FINE;
        }
        List<DesignKeys.Known> keys = DesignKeys.find(name);
        // In results the part of the machine follows after a slash: 'bearing-static/1'.
        String id = name.contains("/") ? name.substring(0, name.indexOf('/')) : name;
        for (Check check : Checks.all()) {
            if (check.id().equals(id)) {
                explain(check, out);
                also(keys, out);
                return Exit.FINE;
            }
        }
        Optional<Term> term = Term.find(name);
        if (term.isPresent()) {
            explain(term.get(), out);
            also(keys, out);
            return Exit.FINE;
        }
        if (!keys.isEmpty()) {
            keys.forEach(k -> explain(k, out));
            return Exit.FINE;
        }
        if (among(name, out)) {
            return Exit.FINE;
        }
        List<String> ids = Stream.of(
                        Checks.all().stream().map(Check::id),
                        Term.all().stream().map(Term::word),
                        DesignKeys.names().stream())
                .flatMap(s -> s)
                .toList();
        String near = Spelling.nearest(name, ids);
        spec.commandLine()
                .getErr()
                .println("tipwright: no check, no word and no key '" + name + "' here; "
                        + (near == null ? "'tipwright explain' lists them all" : "did you mean '" + near + "'?"));
        return Exit.NOT_UNDERSTOOD;
    }

    /** Tells the terms and checks of several words that a word is one of; false: there are none. */
    private static boolean among(String name, PrintWriter out) {
        List<Term> terms = Term.within(name);
        List<Check> checks = Checks.all().stream()
                .filter(check -> Prose.has(check.title() + " " + check.id(), name.toLowerCase(Locale.ROOT)))
                .toList();
        terms.forEach(term -> explain(term, out));
        checks.stream().limit(FEW).forEach(check -> explain(check, out));
        if (checks.size() > FEW) {
            out.println("and in " + (checks.size() - FEW) + " more; 'tipwright explain' lists them all");
        }
        return !terms.isEmpty() || !checks.isEmpty();
    }

    private static String padded(String id) {
        return id + " ".repeat(Math.max(1, 20 - id.length()));
    }

    private static void also(List<DesignKeys.Known> keys, PrintWriter out) {
        if (!keys.isEmpty()) {
            out.println("  In the design file:");
            keys.stream().limit(FEW).forEach(k -> explain(k, out));
            if (keys.size() > FEW) {
                out.println("  and " + (keys.size() - FEW) + " more; 'tipwright explain keys' lists them all");
            }
        }
    }

    private static void explain(DesignKeys.Known key, PrintWriter out) {
        String preset = key.preset();
        String rest = key.needed() ? " Needed." : preset == null || preset.isEmpty() ? "" : " Default: " + preset + ".";
        String note = key.note().isEmpty() ? "" : key.note() + ".";
        Prose.wrap("  ", key.path() + ": " + note + rest).forEach(out::println);
    }

    private static void explain(Term term, PrintWriter out) {
        out.println(term.word());
        Prose.wrap("  ", term.meaning()).forEach(out::println);
        if (!term.also().isEmpty()) {
            Prose.wrap("  Also    ", String.join(", ", term.also())).forEach(out::println);
        }
    }

    private static void explain(Check check, PrintWriter out) {
        out.println(check.title() + " (" + check.id() + ")");
        Prose.wrap("  Rule     ", check.rule()).forEach(out::println);
        Prose.wrap("  Formula  ", check.formula()).forEach(out::println);
        Prose.wrap("  Source   ", check.source()).forEach(out::println);
    }
}
