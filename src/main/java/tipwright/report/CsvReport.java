// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Row;
import tipwright.geometry.Vec3;

/** Every row as a line of comma-separated values, units in the header. Source of the form: RFC 4180. */
public final class CsvReport {
    private static final String END = "\r\n";
    private static final String[] AXES = {"x", "y", "z"};

    private CsvReport() {}

    /** A header and one line for each load case and tilt; a number that does not exist is an empty field. */
    public static String of(Analysis analysis) {
        StringBuilder out = new StringBuilder();
        boolean header = false;
        for (CaseResult c : analysis.cases()) {
            for (Row row : c.rows()) {
                if (!header) {
                    out.append(header(row)).append(END);
                    header = true;
                }
                out.append(field(c.name()));
                RowFigures.of(row).values().forEach(values -> append(out, values));
                for (Vec3 load : row.rest().bearings()) {
                    append(out, load.x(), load.y(), load.z());
                }
                out.append(END);
            }
        }
        return out.toString();
    }

    /** 'centroid_mm' of three numbers becomes 'centroid_x_mm', 'centroid_y_mm', 'centroid_z_mm'. */
    private static String header(Row row) {
        List<String> names = new ArrayList<>();
        names.add("case");
        for (Map.Entry<String, double[]> figure : RowFigures.of(row).entrySet()) {
            String name = figure.getKey();
            int unit = name.lastIndexOf('_');
            int n = figure.getValue().length;
            for (int i = 0; i < n; i++) {
                names.add(n == 1 ? name : name.substring(0, unit) + "_" + AXES[i] + name.substring(unit));
            }
        }
        for (int b = 1; b <= row.rest().bearings().size(); b++) {
            for (String axis : AXES) {
                names.add("bearing_" + b + "_load_" + axis + "_n");
            }
        }
        return String.join(",", names);
    }

    private static void append(StringBuilder out, double... values) {
        for (double value : values) {
            out.append(',').append(Double.isFinite(value) ? Rounded.text(value) : "");
        }
    }

    /** Quoted where the text would break the line. */
    static String field(String text) {
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
