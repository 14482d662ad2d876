// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.BodyPosition;
import tipwright.analysis.Pose;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.report.JsonReport;
import tipwright.report.JsonTime;

/** The page for the phone, in a real browser by real touches and keys; its numbers against the JSON of 'check' and 'time'. */
class TiltPageTest {
    private static final String DEMO = "silt-trailer";
    private static final int MOST_BYTES = 600_000;
    private static final Pattern TABLE =
            Pattern.compile("<script type=\"application/json\" id=\"table\">(.*?)</script>", Pattern.DOTALL);

    @TempDir
    private static Path folder;

    private static Browser browser;
    private static Path file;

    @BeforeAll
    static void opens() throws IOException, InterruptedException {
        file = Files.writeString(folder.resolve("page.html"), Dossiers.page(DEMO));
        browser = new Browser(folder);
    }

    @AfterAll
    static void closes() {
        browser.close();
    }

    private static JsonNode table(String design) throws IOException {
        Matcher table = TABLE.matcher(Dossiers.page(design));
        assertThat(table.find()).isTrue();
        return new ObjectMapper().readTree(table.group(1));
    }

    private static JsonNode report(String design) throws IOException {
        StringWriter out = new StringWriter();
        JsonReport.write(Dossiers.of(design).checked(), out);
        return new ObjectMapper().readTree(out.toString());
    }

    @Test
    void standsAloneInOneSmallFile() {
        String page = Dossiers.page(DEMO);
        assertThat(page.getBytes(StandardCharsets.UTF_8).length).isLessThan(MOST_BYTES);
        assertThat(page)
                .startsWith("<!DOCTYPE html>")
                .contains("default-src 'none'")
                .doesNotContain("<link", "src=\"", "@import", "url(", "fetch(", "<a href=\"http");
        assertThat(page.indexOf("<h1>")).as("nothing to tap before the title").isLessThan(page.indexOf("<input"));
        assertThat(page.substring(0, page.indexOf("<h1>"))).doesNotContain("<a ", "<nav");
    }

    @ParameterizedTest
    @CsvSource({"360, 800, false", "360, 800, true", "1280, 800, false", "1280, 800, true"})
    void isAccessibleAndNeverScrollsSideways(int width, int height, boolean dark) throws Exception {
        browser.open(file, width, height, dark);
        assertNothingWide();
        browser.run("document.querySelectorAll('details').forEach(d => { d.open = true; }); 1");
        assertNothingWide();
        assertThat(browser.faults()).matches("\\d\\d+ rules; ");
        String ink =
                browser.run("getComputedStyle(document.body).backgroundColor").asText();
        assertThat(ink).isEqualTo(dark ? "rgb(20, 23, 26)" : "rgb(255, 255, 255)");
    }

    private static void assertNothingWide() {
        JsonNode wide = browser.run(
                "[...document.querySelectorAll('body *')].filter(e => !e.closest('svg, thead, script, noscript'))"
                        + ".filter(e => e.getBoundingClientRect().right > document.documentElement.clientWidth + 1 ||"
                        + " e.scrollWidth > e.clientWidth + 1 && e.clientWidth > 0 && getComputedStyle(e).display !== 'inline')"
                        + ".map(e => e.tagName + ' ' + e.textContent.slice(0, 60)).slice(0, 5).join(' | ')");
        assertThat(wide.asText()).isEmpty();
        assertThat(browser.run("document.documentElement.scrollWidth - document.documentElement.clientWidth")
                        .asInt())
                .isZero();
    }

    @ParameterizedTest
    @ValueSource(ints = {360, 1280})
    void tipsUnderAFinger(int width) throws Exception {
        browser.open(file, width, 800, false);
        JsonNode table = table(DEMO);
        int last = table.get("tilts").size() - 1;
        assertShown(table, 0, 0, "metric");
        JsonNode at = browser.middle("#machine");
        double x = at.get(0).asDouble();
        double y = at.get(1).asDouble();
        double way = at.get(2).asDouble() * 0.4;
        browser.drag(x, y, x + way, y);
        int row = browser.run("Number(document.getElementById('tilt').value)").asInt();
        assertThat(row).isCloseTo((int) Math.round(0.4 * last), within(1));
        assertShown(table, 0, row, "metric");
        browser.tap("[data-go=last]");
        assertShown(table, 0, last, "metric");
        browser.tap("input[value=us]");
        assertShown(table, 0, last, "us");
        browser.tap("[data-go=hardest]");
        assertShown(table, 0, table.at("/cases/0/hardest").asInt(), "us");
        browser.run(
                "const l = document.getElementById('load'); l.value = '1'; l.dispatchEvent(new Event('change')); 1");
        assertShown(table, 1, table.at("/cases/0/hardest").asInt(), "us");
        browser.tap("input[value=metric]");
        double before = browser.run("scrollY").asDouble();
        JsonNode now = browser.middle("#machine");
        double there = browser.run("scrollY").asDouble();
        int kept = browser.run("Number(document.getElementById('tilt').value)").asInt();
        browser.drag(
                now.get(0).asDouble(),
                now.get(1).asDouble() + 90,
                now.get(0).asDouble(),
                now.get(1).asDouble() - 90);
        assertThat(browser.run("scrollY").asDouble())
                .as("up and down scrolls, from " + before)
                .isGreaterThan(there + 20);
        assertThat(browser.run("Number(document.getElementById('tilt').value)").asInt())
                .isEqualTo(kept);
    }

    /** What can be read, and where the tank stands, is the row of the table. */
    private static void assertShown(JsonNode table, int loadCase, int row, String units) throws InterruptedException {
        JsonNode chosen = table.get("cases").get(loadCase);
        String angle = table.get("tilts").get(row).asText() + " deg";
        String visible = "[data-force=raise][data-units=" + units + "]";
        for (int i = 0;
                i < 100 && !(text("#angle").equals(angle) && !text(visible).equals("hidden"));
                i++) {
            Thread.sleep(50);
        }
        assertThat(text("#angle")).isEqualTo(angle);
        for (String force : new String[] {"raise", "lower", "rest", "bearing"}) {
            JsonNode value = chosen.at("/" + force + "/" + units).get(row);
            String unit = units.equals("us") ? " lbf" : " kN";
            String word =
                    force.equals("bearing") || value.asDouble() == 0 ? "" : value.asDouble() > 0 ? "push " : "pull ";
            String number = value.asText().replace("-", "");
            assertThat(text("[data-force=" + force + "][data-units=" + units + "]"))
                    .isEqualTo(word + number + unit);
        }
        for (String length : new String[] {"length", "stroke", "left"}) {
            assertThat(text("[data-length=" + length + "][data-units=" + units + "]"))
                    .isEqualTo(table.at("/" + length + "/" + units).get(row).asText()
                            + (units.equals("us") ? " in" : " mm"));
        }
        JsonNode up = chosen.get("up").get(row);
        assertThat(text("[data-time=up]")).isEqualTo(up.isNull() ? "none" : plain(up.asDouble(), 10) + " s");
        Pose pose = Dossiers.of(DEMO).analysis().poses().get(row);
        assertThat(turned(pose))
                .isEqualTo(browser.run("document.querySelector('#machine .tank').getAttribute('transform')")
                        .asText());
    }

    private static String turned(Pose pose) {
        BodyPosition tank = pose.bodies().get(pose.tank());
        return "translate(" + plain(tank.origin().x() * 1000, 10) + " "
                + plain(tank.origin().y() * 1000, 10) + ") rotate(" + plain(-Math.toDegrees(tank.turn()), 1000) + ")";
    }

    private static String plain(double value, int parts) {
        double rounded = Math.rint(value * parts) / parts;
        return rounded == Math.rint(rounded) ? Long.toString(Math.round(rounded)) : Double.toString(rounded);
    }

    /** The text of an element that can be seen. */
    private static String text(String selector) {
        return browser.run("(e => e.getClientRects().length ? e.textContent : 'hidden')(document.querySelector('"
                        + selector + "'))")
                .asText();
    }

    @Test
    void goesByKeyboardAndTellsAScreenReader() throws Exception {
        browser.open(file, 1280, 800, false);
        JsonNode table = table(DEMO);
        browser.run("document.getElementById('tilt').focus(); 1");
        browser.key("ArrowRight", 39);
        browser.key("ArrowRight", 39);
        assertShown(table, 0, 2, "metric");
        browser.key("End", 35);
        assertShown(table, 0, table.get("tilts").size() - 1, "metric");
        String said = "";
        for (JsonNode node : browser.ask("Accessibility.getFullAXTree").get("nodes")) {
            if (node.at("/role/value").asText().equals("slider")) {
                said = node.at("/name/value").asText() + ": "
                        + node.at("/value/value").asText();
                for (JsonNode p : node.get("properties")) {
                    said += p.get("name").asText().equals("valuetext")
                            ? ", " + p.at("/value/value").asText()
                            : "";
                }
            }
        }
        assertThat(said).startsWith("Tilt: ").contains("60 deg, going up: ");
        browser.run("document.querySelector('summary').focus(); 1");
        browser.key("Enter", 13);
        browser.ask("Input.dispatchKeyEvent", "type", "char", "text", "\r");
        assertThat(browser.run("document.querySelector('details').open").asBoolean())
                .isTrue();
    }

    @Test
    void printsOnAFewPagesAndNoneIsEmpty() throws Exception {
        browser.open(file, 1280, 800, false);
        byte[] pdf = Base64.getDecoder()
                .decode(browser.ask("Page.printToPDF").get("data").asText());
        try (PDDocument paper = Loader.loadPDF(pdf)) {
            assertThat(paper.getNumberOfPages()).isBetween(2, 4);
            for (int i = 1; i <= paper.getNumberOfPages(); i++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(i);
                stripper.setEndPage(i);
                assertThat(stripper.getText(paper).strip()).as("page " + i).hasSizeGreaterThan(100);
            }
        }
    }

    /** Every number of the table, both systems, is the JSON's; the pull of the JSON is negative, as in the table. */
    @ParameterizedTest
    @ValueSource(strings = {DEMO, "twin-rams"})
    void everyNumberOfTheTableIsTheJsons(String design) throws Exception {
        JsonNode table = table(design);
        JsonNode cases = report(design).get("cases");
        assertThat(table.get("cases").size()).isEqualTo(cases.size());
        int held = 0;
        for (int c = 0; c < cases.size(); c++) {
            JsonNode rows = cases.get(c).get("rows");
            JsonNode shown = table.get("cases").get(c);
            assertThat(shown.at("/raise/metric").size()).isEqualTo(rows.size());
            for (int i = 0; i < rows.size(); i++) {
                JsonNode row = rows.get(i);
                assertThat(table.get("tilts").get(i).asDouble())
                        .isCloseTo(row.get("tilt_deg").asDouble(), within(0.0501));
                held += force(shown.get("raise"), i, row.get("raise_force_n").asDouble());
                held += force(shown.get("lower"), i, row.get("lower_force_n").asDouble());
                held += force(shown.get("rest"), i, row.get("actuator_force_n").asDouble());
                double length = row.get("actuator_length_mm").asDouble() / 1000;
                assertThat(table.at("/length/metric").get(i).asDouble()).isCloseTo(length * 1000, within(0.501));
                // on a mark of the tape, 1/16 in from the next
                String tape = table.at("/length/us").get(i).asText() + " in";
                assertThat(Quantities.parse(tape, Kind.LENGTH)).isCloseTo(length, within(0.0254 / 32 + 1e-6));
                double resting = 0;
                for (JsonNode bearing : row.get("bearing_loads_n")) {
                    double norm = 0;
                    for (JsonNode part : bearing) {
                        norm = Math.hypot(norm, part.asDouble());
                    }
                    resting = Math.max(resting, norm);
                }
                assertThat(shown.at("/bearing/metric").get(i).asDouble())
                        .isGreaterThanOrEqualTo(resting / 1000 - 0.00501);
            }
        }
        assertThat(held).isGreaterThan(1000);
    }

    private static int force(JsonNode shown, int row, double n) {
        assertThat(shown.get("metric").get(row).asDouble()).isCloseTo(n / 1000, within(0.00501));
        assertThat(shown.get("us").get(row).asDouble())
                .isCloseTo(n / Quantities.unit(Kind.FORCE, "lbf").toSi(1), within(0.501));
        return 1;
    }

    @Test
    void everyTimeLiesBetweenTheMomentsOfTheTimeLine() throws Exception {
        StringWriter out = new StringWriter();
        JsonTime.write(DEMO, Dossiers.of(DEMO).checked().result().timing(), out);
        JsonNode lines = new ObjectMapper().readTree(out.toString()).get("time_lines");
        JsonNode table = table(DEMO);
        JsonNode names = report(DEMO).get("cases");
        int held = 0;
        for (JsonNode line : lines) {
            for (int c = 0; c < names.size(); c++) {
                if (names.get(c).get("name").asText().equals(line.get("case").asText())) {
                    held += times(table, table.get("cases").get(c), line.get("rows"));
                }
            }
        }
        assertThat(held).isGreaterThan(100);
    }

    private static int times(JsonNode table, JsonNode shown, JsonNode moments) {
        int held = 0;
        for (int i = 1; i < table.get("tilts").size(); i++) {
            double tilt = table.get("tilts").get(i).asDouble();
            double before = 0;
            double after = Double.NaN;
            for (JsonNode m : moments) {
                if (m.get("phase").asText().equals("lower")) {
                    break;
                }
                if (m.get("tilt_deg").asDouble() < tilt - 0.06) {
                    before = m.get("time_s").asDouble();
                } else if (Double.isNaN(after) && m.get("tilt_deg").asDouble() >= tilt - 0.05) {
                    after = m.get("time_s").asDouble();
                }
            }
            JsonNode up = shown.get("up").get(i);
            assertThat(up.isNull()).isEqualTo(Double.isNaN(after));
            if (!up.isNull()) {
                assertThat(up.asDouble()).isBetween(before - 0.05, after + 0.2);
                held++;
            }
        }
        return held;
    }

    /** The pins of the picture stand where the design has them, and keep their distance to the tank. */
    @Test
    void thePinsStandWhereTheDesignHasThem() throws Exception {
        JsonNode pins = table(DEMO).get("pins");
        Vec2 frame = Dossiers.of(DEMO).design().drive().places(Vec2.ZERO).get("frame-pin");
        assertThat(frame).isNotNull();
        assertThat(pins.at("/2/0/0").asDouble()).isCloseTo(frame.x() * 1000, within(0.501));
        assertThat(pins.at("/2/0/1").asDouble()).isCloseTo(frame.y() * 1000, within(0.501));
        JsonNode lengths = table(DEMO).at("/length/metric");
        for (int i = 0; i < lengths.size(); i++) {
            JsonNode f = pins.get("2").get(i);
            JsonNode t = pins.get("3").get(i);
            double apart = Math.hypot(
                    f.get(0).asDouble() - t.get(0).asDouble(),
                    f.get(1).asDouble() - t.get(1).asDouble());
            assertThat(apart).isCloseTo(lengths.get(i).asDouble(), within(2.0));
        }
    }
}
