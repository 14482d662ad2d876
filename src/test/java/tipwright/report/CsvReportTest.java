// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Row;

/** Rows for a spreadsheet. Source of the form: RFC 4180 (from memory). */
class CsvReportTest {
    private static final Demo DEMO = Demo.shipped();

    /** Reads comma-separated values as RFC 4180 lays down: quotes doubled inside quotes, lines end in CR LF. */
    private static List<List<String>> parse(String text) {
        List<List<String>> lines = new ArrayList<>();
        List<String> line = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quoted) {
                if (c == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"') {
                    field.append('"');
                    i++;
                } else if (c == '"') {
                    quoted = false;
                } else {
                    field.append(c);
                }
            } else if (c == '"') {
                quoted = true;
            } else if (c == ',' || c == '\r') {
                line.add(field.toString());
                field.setLength(0);
            } else if (c == '\n') {
                lines.add(line);
                line = new ArrayList<>();
            } else {
                field.append(c);
            }
        }
        assertThat(line).as("the last line is ended").isEmpty();
        return lines;
    }

    @Test
    void eachCaseAndTiltIsALineAndUnitsAreInTheHeader() {
        List<List<String>> lines = parse(CsvReport.of(DEMO.analysis()));
        assertThat(lines.get(0))
                .startsWith("case", "tilt_deg", "mass_kg", "volume_l", "centroid_x_mm", "centroid_y_mm")
                .contains("pivot_force_x_n", "pivot_force_y_n")
                .endsWith("bearing_2_load_x_n", "bearing_2_load_y_n", "bearing_2_load_z_n");
        int rows =
                DEMO.analysis().cases().stream().mapToInt(c -> c.rows().size()).sum();
        assertThat(lines)
                .hasSize(rows + 1)
                .allMatch(l -> l.size() == lines.get(0).size());
    }

    @Test
    void figuresAreThoseOfTheAnalysis() {
        List<List<String>> lines = parse(CsvReport.of(DEMO.analysis()));
        List<String> header = lines.get(0);
        int line = 1;
        for (CaseResult c : DEMO.analysis().cases()) {
            for (Row row : c.rows()) {
                List<String> fields = lines.get(line++);
                assertThat(fields.get(0)).isEqualTo(c.name());
                double force = Double.parseDouble(fields.get(header.indexOf("raise_force_n")));
                assertThat(force).isCloseTo(row.raise().force(), within(1e-8 * Math.abs(force) + 1e-9));
            }
        }
    }

    @Test
    void awkwardNamesAreQuoted() {
        assertThat(CsvReport.field("plain")).isEqualTo("plain");
        assertThat(parse("a," + CsvReport.field("two, \"three\"\nfour") + "\r\n"))
                .containsExactly(List.of("a", "two, \"three\"\nfour"));
    }

    @Test
    void numbersAreShortAndHaveNoExponent() {
        assertThat(Rounded.text(69.99999999999999)).isEqualTo("70");
        assertThat(Rounded.text(1234567.8912345)).isEqualTo("1234567.89");
        assertThat(Rounded.text(-1e-17)).isEqualTo("0");
        assertThat(Rounded.text(1e9 / 3)).isEqualTo("333333333");
        assertThat(Rounded.text(0.000123456789123)).isEqualTo("0.000123457");
        assertThat(Rounded.text(2.5e12)).isEqualTo("2500000000000");
    }
}
