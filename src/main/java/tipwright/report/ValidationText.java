// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import tipwright.validation.Basis;
import tipwright.validation.Reference;
import tipwright.validation.ValidationRow;

/** The validation table as text. */
public final class ValidationText {
    private static final MathContext SEVEN = new MathContext(7, RoundingMode.HALF_EVEN);
    private static final double SMALLEST_SHOWN = 0.0001;

    private ValidationText() {}

    /** Lines of the table, group by group, with a summary at the end. */
    public static List<String> lines(List<ValidationRow> rows) {
        List<String> lines = new ArrayList<>();
        int from = 0;
        while (from < rows.size()) {
            String group = rows.get(from).reference().group();
            int to = from;
            while (to < rows.size() && rows.get(to).reference().group().equals(group)) {
                to++;
            }
            lines.add(group);
            lines.addAll(table(rows.subList(from, to)));
            from = to;
        }
        lines.addAll(Prose.wrap("", summary(rows)));
        return lines;
    }

    private static List<String> table(List<ValidationRow> rows) {
        Table table = new Table("llrrlr");
        table.row("", "", "ours", "reference", "unit", "off by");
        String said = "";
        for (ValidationRow row : rows) {
            Reference r = row.reference();
            table.row(
                    row.passes() ? "+ ok" : "X FAIL",
                    r.quantity(),
                    number(row.ours()),
                    number(r.value()),
                    r.unit(),
                    share(row));
            String source = basis(r.mark()) + ": " + r.source();
            if (!source.equals(said)) {
                table.under(Prose.wrap("            ", source));
            }
            said = source;
        }
        return table.lines("  ");
    }

    private static String basis(Basis mark) {
        return switch (mark) {
            case READ -> "source read";
            case MEMORY -> "from memory";
            case TWO_WAYS -> "our own example, worked out two ways";
        };
    }

    private static String summary(List<ValidationRow> rows) {
        long failed = rows.stream().filter(row -> !row.passes()).count();
        String verdict = failed == 0
                ? "+ All " + rows.size() + " results match their references to the last digit printed there."
                : "X " + failed + " of " + rows.size() + " figures do not agree with their references.";
        return verdict + " Of the references, " + count(rows, Basis.READ) + " were read in their source, "
                + count(rows, Basis.MEMORY) + " are from memory, " + count(rows, Basis.TWO_WAYS)
                + " are our own examples, worked out two ways.";
    }

    private static long count(List<ValidationRow> rows, Basis mark) {
        return rows.stream().filter(row -> row.reference().mark() == mark).count();
    }

    private static String number(double value) {
        if (!Double.isFinite(value)) {
            return "none";
        }
        BigDecimal rounded = new BigDecimal(value).round(SEVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static String share(ValidationRow row) {
        double percent = 100 * Math.abs(row.deviation() / row.reference().value());
        if (!Double.isFinite(percent)) {
            return "-";
        }
        return percent < SMALLEST_SHOWN
                ? "<0.0001 %"
                : BigDecimal.valueOf(percent)
                                .setScale(4, RoundingMode.HALF_EVEN)
                                .toPlainString() + " %";
    }
}
