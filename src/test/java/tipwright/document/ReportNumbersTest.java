// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.DoubleNode;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.actuator.Actuator;
import tipwright.design.tank.CaseName;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.report.JsonReport;

/** The numbers in the PDF's text are those of the JSON, rounded. */
class ReportNumbersTest {
    private static final String NUMBER = "(-?[0-9.]+|-)";
    private static final String QUANTITY = "(-|-?[0-9.]+ ?[^ ]*(?: m(?:/s)?)?)";

    private static final Map<String, String> TEXTS = new ConcurrentHashMap<>();

    /** The text of the demo's PDF with the engineer's part; of other designs that of their page, which is set from the same markup. */
    private static String text(String design) {
        return TEXTS.computeIfAbsent(design, name -> {
            try {
                return name.equals("silt-trailer") ? paper(name) : screen(name);
            } catch (IOException e) {
                throw new AssertionError(e);
            }
        });
    }

    private static String paper(String design) throws IOException {
        try (PDDocument pdf = Dossiers.pdf(design, Dossiers.A4.withFull(true))) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }

    private static String screen(String design) {
        return Dossiers.page(design)
                .replaceAll("(?s)<(script|style|svg).*?</\\1\\s*>", " ")
                .replaceAll("<[^>]*>", " ")
                .replace("&gt;", ">")
                .replace("&lt;", "<")
                .replace("&quot;", "\"")
                .replace("&amp;", "&")
                .replaceAll("\\s+", " ");
    }

    private static JsonNode json(Dossier dossier) throws IOException {
        StringWriter out = new StringWriter();
        JsonReport.write(dossier.checked(), out);
        return new ObjectMapper().readTree(out.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"silt-trailer", "too-small", "twin-rams"})
    void everyCheckStandsWithItsNumbers(String design) throws Exception {
        Dossier dossier = Dossiers.of(design);
        String text = text(design);
        int i = 0;
        for (JsonNode check : json(dossier).get("checks")) {
            Finding f = dossier.checked().result().findings().get(i++);
            if (f.verdict() == Verdict.NOT_CHECKED) {
                assertThat(text).contains("? " + f.title());
                continue;
            }
            // the same title stands behind 'One actuator carries everything: ' and 'One actuator gets ahead of the
            // other: ' too
            Matcher row = Pattern.compile("(?<!everything: |the other: )" + words(f.title())
                            + " [+!X] (?:passes|close|fails) (?:>?(\\d+) ?%|-) " + QUANTITY + " " + QUANTITY + " "
                            + NUMBER)
                    .matcher(text);
            assertThat(row.find()).as(f.id()).isTrue();
            if (row.group(1) != null && check.get("utilisation").isNumber()) {
                double used = Math.min(999, 100 * check.get("utilisation").asDouble());
                assertThat(Double.parseDouble(row.group(1))).as(f.id()).isCloseTo(used, within(0.5001));
            }
            String unit = check.get("unit").asText();
            // the factor stands with what is needed where more is better, else with what is there; the JSON keeps it
            // apart
            boolean least = check.get("sense").asText().equals("at-least");
            double factor = check.get("factor").asDouble(1);
            assertQuantity(row.group(2), times(check.get("demand"), least ? factor : 1), unit, f.kind());
            assertQuantity(row.group(3), times(check.get("capacity"), least ? 1 : 1 / factor), unit, f.kind());
            assertRounded(row.group(4), check.get("factor"), 1);
        }
        assertThat(i).isGreaterThan(20);
    }

    /** A title as it is set: a line may break behind a hyphen. */
    private static String words(String title) {
        return Pattern.quote(title).replace("-", "-\\E ?\\Q");
    }

    private static JsonNode times(JsonNode value, double factor) {
        return value.isNumber() ? DoubleNode.valueOf(value.asDouble() * factor) : value;
    }

    private static void assertQuantity(String shown, JsonNode value, String unit, Kind kind) throws Exception {
        if (!value.isNumber()) {
            assertThat(shown).isEqualTo("-");
            return;
        }
        // Where the JSON has no unit of its own for a kind, its numbers are SI.
        double si = unit.equals(kind.si()) ? value.asDouble() : Quantities.parse(value.asText() + " " + unit, kind);
        double tolerance =
                switch (kind) {
                    case RATIO -> 0.000501;
                        // whole millimetres from 10 mm on, tenths below
                    case ANGLE -> Math.toRadians(0.00501);
                    case LENGTH -> Math.abs(si) >= 0.00995 ? 0.000501 : 0.0000501;
                    default -> 0.000501 * Math.abs(si) + 1e-9;
                };
        assertThat(Quantities.parse(shown, kind)).isCloseTo(si, within(tolerance));
    }

    /** A shown number is the JSON's, rounded to the digits that are shown. */
    private static void assertRounded(String shown, JsonNode value, double scale) {
        if (shown.equals("-")) {
            assertThat(value.isNumber() && value.asDouble() != 0).isFalse();
            return;
        }
        BigDecimal number = new BigDecimal(shown);
        double half = 0.5 * Math.pow(10, -number.scale());
        assertThat(number.doubleValue()).isCloseTo(value.asDouble() / scale, within(half * 1.001));
    }

    @ParameterizedTest
    @ValueSource(strings = {"silt-trailer", "too-small"})
    void theFiveNumbersAreTheJsons(String design) throws IOException {
        Dossier dossier = Dossiers.of(design);
        String text = text(design);
        JsonNode json = json(dossier);
        String peak = "(?:" + NUMBER + " kN[^,]*,|none)";
        Matcher five = Pattern.compile("Push " + peak + ".*? Pull " + peak
                        + ".*?Stroke left (\\d+) mm before it is closed, (?:(\\d+) mm"
                        + " before it is fully out|none before it is fully out: (\\d+) mm short).*? Bearing bearing ([12]) \\((?:left|right)\\): "
                        + NUMBER + " kN.*? Time (?:Up (\\d+) s|)")
                .matcher(text);
        assertThat(five.find()).isTrue();
        JsonNode peaks = json.get("peaks");
        assertPeak(five.group(1), peaks.get("push"));
        assertPeak(five.group(2), peaks.get("pull"));
        Actuator actuator = dossier.design().drive().actuators().get(0).actuator();
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (JsonNode row : json.get("envelope")) {
            least = Math.min(least, row.get("actuator_length_mm").asDouble());
            most = Math.max(most, row.get("actuator_length_mm").asDouble());
        }
        double closed = actuator.closed() * 1000;
        assertThat(Double.parseDouble(five.group(3))).isCloseTo(least - closed, within(0.501));
        double left = closed + actuator.stroke() * 1000 - most;
        double shown = five.group(4) == null ? -Double.parseDouble(five.group(5)) : Double.parseDouble(five.group(4));
        assertThat(shown).isCloseTo(left, within(0.501));
        JsonNode bearing = peaks.at("/bearing_" + five.group(6) + "/force_n");
        assertRounded(five.group(7), bearing, 1000);
        assertThat(bearing.asDouble())
                .isEqualTo(Math.max(
                        peaks.at("/bearing_1/force_n").asDouble(),
                        peaks.at("/bearing_2/force_n").asDouble()));
        if (five.group(8) != null) {
            assertRounded(five.group(8), json.at("/cycle/raise_s"), 1);
        }
    }

    private static void assertPeak(String shown, JsonNode peak) {
        if (shown == null) {
            assertThat(peak.isNull()).isTrue();
        } else {
            assertRounded(shown, peak.get("force_n"), 1000);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"silt-trailer", "twin-rams"})
    void everyRowOverTheTiltIsInTheJson(String design) throws IOException {
        Dossier dossier = Dossiers.of(design);
        String text = text(design);
        int rows = 0;
        JsonNode envelope = json(dossier).get("envelope");
        Matcher row = Pattern.compile("(\\d+\\.\\d) (-?\\d+) (-?\\d+) % (-?\\d+) (\\d+) " + NUMBER
                        + " (?:[a-z][a-z, ]* )?" + NUMBER + " (?:[a-z][a-z, ]* )?(\\d+\\.\\d\\d) ")
                .matcher(text);
        while (row.find()) {
            JsonNode at = null;
            for (JsonNode e : envelope) {
                at = Math.abs(e.get("tilt_deg").asDouble() - Double.parseDouble(row.group(1))) < 0.0501 ? e : at;
            }
            assertThat(at).as(row.group()).isNotNull();
            assertRounded(row.group(2), at.get("actuator_length_mm"), 1);
            assertRounded(row.group(3), at.get("stroke_used"), 0.01);
            assertRounded(row.group(4), at.get("moment_arm_mm"), 1);
            assertRounded(row.group(5), at.get("transmission_deg"), 1);
            assertRounded(row.group(6), at.get("push_n"), 1000);
            assertRounded(row.group(7), at.get("pull_n"), 1000);
            assertRounded(row.group(8), at.get("bearing_n"), 1000);
            rows++;
        }
        assertThat(rows).isGreaterThanOrEqualTo(8);
    }

    @ParameterizedTest
    @ValueSource(strings = {"silt-trailer", "twin-rams"})
    void theTimesOfEveryLoadAreTheJsons(String design) throws IOException {
        Dossier dossier = Dossiers.of(design);
        String text = text(design);
        JsonNode cases = json(dossier).at("/cycle/cases");
        assertThat(cases.size()).isGreaterThan(1);
        String seconds = "(?:([0-9.]+) s|-)";
        for (JsonNode c : cases) {
            String name = Pattern.quote(
                    CaseName.shown(c.get("case").asText(), dossier.design().tank()));
            Matcher row = Pattern.compile(name + " " + seconds + " " + seconds + " " + seconds + " " + seconds)
                    .matcher(text);
            assertThat(row.find()).as(name).isTrue();
            String[] fields = {"raise_s", "empty_s", "lower_s", "cycle_s"};
            for (int i = 0; i < fields.length; i++) {
                assertRounded(row.group(i + 1) == null ? "-" : row.group(i + 1), c.get(fields[i]), 1);
            }
        }
    }
}
