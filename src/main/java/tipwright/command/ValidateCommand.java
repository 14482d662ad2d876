// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import tipwright.report.ValidationText;
import tipwright.validation.Validation;
import tipwright.validation.ValidationRow;

/** Holds the program against published figures. */
@Command(
        name = "validate",
        description =
                "Recalculates textbook examples on this computer and shows each next to the printed answer, with its"
                        + " source. Exit code 1 when one does not agree.",
        footer = "  tipwright validate")
final class ValidateCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        return show(Validation.rows(), spec.commandLine().getOut());
    }

    /** Prints the table; the exit code that it deserves. */
    static int show(List<ValidationRow> rows, PrintWriter out) {
        ValidationText.lines(rows).forEach(out::println);
        return rows.stream().allMatch(ValidationRow::passes) ? Exit.FINE : Exit.FAILS;
    }
}
