// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Row;
import tipwright.analysis.Stop;
import tipwright.check.HowFull;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.load.Emptying;

/** The names and numbers that other programs rely on. */
class JsonReportTest {
    private static final Demo DEMO = Demo.shipped();

    private static String text(Demo demo) throws IOException {
        StringWriter out = new StringWriter();
        JsonReport.write(demo.checked(), out);
        return out.toString();
    }

    private static JsonNode json(Demo demo) throws IOException {
        return new ObjectMapper().readTree(text(demo));
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    @Test
    void namesStay() throws IOException {
        JsonNode json = json(DEMO);
        assertThat(names(json))
                .containsExactly(
                        "format",
                        "design",
                        "verdict",
                        "parts",
                        "cases_skipped",
                        "warnings",
                        "cases",
                        "peaks",
                        "envelope",
                        "checks",
                        "fixes",
                        "to_buy",
                        "cycle",
                        "not_checked",
                        "how_full",
                        "emptying",
                        "stop",
                        "bearings",
                        "assumptions",
                        "cautions");
        assertThat(names(json.at("/cases/0")))
                .containsExactly("name", "about", "counts_as", "normal_to_deg", "rows", "residual_l");
        assertThat(names(json.at("/cases/0/rows/0")))
                .containsExactly(
                        "tilt_deg",
                        "mass_kg",
                        "volume_l",
                        "centroid_mm",
                        "actuator_length_mm",
                        "actuator_force_n",
                        "moment_arm_mm",
                        "transmission_deg",
                        "raise_force_n",
                        "lower_force_n",
                        "pivot_force_n",
                        "bearing_loads_n");
        assertThat(names(json.at("/checks/0")))
                .contains(
                        "id",
                        "demand",
                        "capacity",
                        "unit",
                        "utilisation",
                        "tilt_deg",
                        "case",
                        "verdict",
                        "source",
                        "note");
        assertThat(names(json.get("cycle")))
                .contains("raise_s", "empty_s", "lower_s", "cycle_s", "stalled_at_deg", "cycles_per_hour", "cases");
        assertThat(json.get("design").asText()).isEqualTo("Silt trailer");
    }

    @Test
    void everyRowCarriesTheFiguresOfTheAnalysisToNineDigits() throws IOException {
        JsonNode json = json(DEMO);
        List<CaseResult> cases = DEMO.analysis().cases();
        for (int c = 0; c < cases.size(); c++) {
            JsonNode rows = json.at("/cases/" + c + "/rows");
            assertThat(rows).hasSize(cases.get(c).rows().size());
            for (int i = 0; i < rows.size(); i++) {
                Row row = cases.get(c).rows().get(i);
                JsonNode at = rows.get(i);
                same(at.get("tilt_deg"), Math.toDegrees(row.tilt()));
                same(at.get("mass_kg"), row.load().mass());
                same(at.get("volume_l"), 1000 * row.load().volume());
                same(at.at("/centroid_mm/0"), 1000 * row.centroid().x());
                same(at.at("/centroid_mm/1"), 1000 * row.centroid().y());
                same(at.at("/centroid_mm/2"), 1000 * row.centroid().z());
                same(at.get("actuator_length_mm"), 1000 * row.pose().length());
                same(at.get("actuator_force_n"), row.rest().force());
                same(at.get("moment_arm_mm"), 1000 * row.pose().arm());
                same(at.get("transmission_deg"), Math.toDegrees(row.pose().transmission()));
                same(at.get("raise_force_n"), row.raise().force());
                same(at.get("lower_force_n"), row.lower().force());
                same(at.at("/pivot_force_n/0"), row.rest().pivot().x());
                same(at.at("/pivot_force_n/1"), row.rest().pivot().y());
                same(at.at("/bearing_loads_n/1/2"), row.rest().bearings().get(1).z());
            }
        }
    }

    private static void same(JsonNode found, double expected) {
        assertThat(found.isNumber()).isTrue();
        assertThat(found.asDouble()).isCloseTo(expected, within(1e-8 * Math.abs(expected) + 1e-9));
    }

    @Test
    void checksKeepUtilisationOverCapacityAndFactorInTheirUnit() throws IOException {
        JsonNode check = json(DEMO.withFindings(Demo.finding("push", Verdict.PASS, 0.5, "fine")))
                .at("/checks/0");
        double factor = check.get("factor").asDouble();
        double used = check.get("demand").asDouble() / (check.get("capacity").asDouble() / factor);
        assertThat(check.get("unit").asText()).isEqualTo("N");
        assertThat(used).isCloseTo(check.get("utilisation").asDouble(), within(1e-9));
        assertThat(check.get("tilt_deg").asDouble()).isCloseTo(12, within(1e-9));
    }

    @Test
    void aCheckThatWasNotMadeHasNullsAndAReason() throws IOException {
        Finding skipped = Demo.finding("bearing-static/1", Verdict.NOT_CHECKED, 0, "bearing.c0 missing");
        JsonNode json = json(DEMO.withFindings(skipped));
        assertThat(json.at("/checks/0/demand").isNull()).isTrue();
        assertThat(json.at("/checks/0/verdict").asText()).isEqualTo("not checked");
        assertThat(json.at("/checks/0/null_because").asText())
                .isEqualTo("demand, capacity, utilisation, tilt_deg: not checked: bearing.c0 missing");
        assertThat(json.at("/not_checked/0").asText()).isEqualTo("bearing-static/1");
    }

    @Test
    void numbersThatDoNotExistAreNullAndNeverNaN() throws IOException {
        Demo broken = DEMO.withRows(row -> Demo.withForce(row, 5, Double.NaN, Double.POSITIVE_INFINITY));
        assertThat(text(broken)).doesNotContain("NaN", "Infinity");
        JsonNode row = json(broken).at("/cases/0/rows/0");
        assertThat(row.get("actuator_force_n").asDouble()).isEqualTo(5);
        assertThat(row.get("raise_force_n").isNull()).isTrue();
        assertThat(row.get("null_because").asText()).startsWith("raise_force_n, lower_force_n: ");
    }

    @Test
    void howFullEmptyingAndStopHaveTheirFigures() throws IOException {
        Demo demo = DEMO.withHowFull(new HowFull(0.62, 0.4, 560, 0.45, Double.NaN, "Push", List.of()))
                .withEmptying(new Emptying(new Emptying.Residue(0.02, 0.04, null), null))
                .withStop(new Stop(Math.toRadians(30), "jammed"));
        JsonNode json = json(demo);
        assertThat(json.at("/how_full/fill_percent").asDouble()).isEqualTo(62);
        assertThat(json.at("/how_full/volume_l").asDouble()).isEqualTo(400);
        assertThat(json.at("/how_full/level_mm").asDouble()).isEqualTo(450);
        assertThat(json.at("/how_full/density_when_full_kg_m3").isNull()).isTrue();
        assertThat(json.at("/emptying/liquid/residual_percent").asDouble()).isEqualTo(4);
        assertThat(json.at("/emptying/liquid/null_because").asText()).startsWith("tilt_needed_deg: no tilt");
        assertThat(json.at("/emptying/cake").isNull()).isTrue();
        assertThat(json.at("/stop/tilt_deg").asDouble()).isCloseTo(30, within(1e-7));
        assertThat(json.at("/warnings/0").asText()).isEqualTo("jammed");
    }

    @Test
    void anyTextIsWrittenInAscii() throws IOException {
        assertThat(text(DEMO.withFindings(Demo.finding("tr\u00f6g \"1\"", Verdict.PASS, 0.5, "\u2713"))))
                .matches("(?s)[ -~\n]*")
                .contains("tr\\u00F6g \\\"1\\\"");
    }
}
