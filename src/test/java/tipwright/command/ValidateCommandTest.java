// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.validation.Validation;
import tipwright.validation.ValidationRow;

/** The validation table on the command line. */
class ValidateCommandTest {
    @Test
    void everyRowIsPrintedWithItsSource() {
        Cli.Outcome outcome = Cli.run("validate");
        assertThat(outcome.code()).as(outcome.out()).isZero();
        String text = outcome.out().replaceAll("\\s+", " ");
        for (ValidationRow row : Validation.rows()) {
            assertThat(text)
                    .contains(row.reference().quantity(), row.reference().source());
        }
        assertThat(outcome.out())
                .contains("from memory: ", "source read: ", "our own example, worked out two ways: ", "+ All ");
        assertThat(outcome.out()).doesNotContain("FAIL", "NaN");
        for (String line : outcome.out().split("\n")) {
            assertThat(line.length()).as(line).isLessThanOrEqualTo(125);
        }
    }

    @Test
    void oneWrongRowFailsTheCommand() {
        List<ValidationRow> rows = new ArrayList<>(Validation.rows());
        rows.set(3, new ValidationRow(rows.get(3).reference(), Double.NaN));
        StringWriter out = new StringWriter();
        assertThat(ValidateCommand.show(rows, new PrintWriter(out, true))).isEqualTo(1);
        assertThat(out.toString()).contains("X FAIL", "X 1 of ", "none").doesNotContain("NaN");
    }
}
