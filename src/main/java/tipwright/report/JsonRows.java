// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Row;

/** The load cases with all their rows. */
final class JsonRows {
    private static final double LITRES = 1000;

    private final JsonFields json;

    JsonRows(JsonFields json) {
        this.json = json;
    }

    void write(List<CaseResult> cases) throws IOException {
        json.each("cases", cases, c -> {
            json.text("name", c.name());
            json.text("about", c.load().about());
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
