// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.Row;
import tipwright.design.tank.CaseName;

/** The load cases with all their rows. */
final class JsonRows {
    private static final double LITRES = 1000;

    private final JsonFields json;

    JsonRows(JsonFields json) {
        this.json = json;
    }

    void write(Analysis analysis) throws IOException {
        json.each("cases", Analyser.all(analysis), c -> {
            json.text("name", c.name());
            json.text("about", CaseName.about(c.name(), analysis.design().tank()));
            json.text("counts_as", c.load().upset() ? "if something goes wrong" : "normal dump");
            List<Row> rows = c.rows();
            double last = rows.get(rows.size() - 1).tilt();
            json.number("normal_to_deg", Math.toDegrees(Math.min(last, c.load().normalTo())));
            json.missing("it is no part of a normal dump at any tilt");
            json.each("rows", c.rows(), this::row);
            json.number("residual_l", c.load().residual() * LITRES);
        });
    }

    private void row(Row row) throws IOException {
        for (Map.Entry<String, double[]> figure : RowFigures.of(row).entrySet()) {
            double[] values = figure.getValue();
            if (values.length == 1) {
                json.number(figure.getKey(), values[0]);
            } else {
                json.numbers(figure.getKey(), values);
            }
        }
        json.points("bearing_loads_n", row.rest().bearings());
        json.missing("the linkage has no such figure at this tilt");
    }
}
