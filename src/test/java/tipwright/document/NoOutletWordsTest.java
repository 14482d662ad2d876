// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tipwright.check.Checker;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;
import tipwright.drawing.Drawing;
import tipwright.drawing.Mark;
import tipwright.placement.Welder;
import tipwright.quantity.UnitSystem;
import tipwright.report.Cautions;
import tipwright.report.Checked;
import tipwright.report.JsonReport;
import tipwright.report.JsonTime;
import tipwright.report.ShortReport;
import tipwright.report.Style;
import tipwright.report.TextReport;
import tipwright.report.TimeReport;
import tipwright.report.ToleranceText;
import tipwright.sheet.Paper;
import tipwright.sheet.WeldSheet;

/**
 * A tank without an outlet, whose load leaves over a lip, is never told of one. Only what the files call things may: ids of checks, and
 * the key {@code factors.door}.
 */
class NoOutletWordsTest {
    private static final Pattern SHUTS = Pattern.compile("(?i)\\b(outlets?|doors?|gates?)\\b");
    private static final Pattern NAMES =
            Pattern.compile("what-if/outlet-blocks-on-the-way|factors\\.door|\\bdoor(</th><td>| +)2\\b");

    /** The shipped designs whose tank has a lip alone. */
    static List<String> poured() {
        try (Stream<Path> files = Files.list(Path.of("geometry"))) {
            return files.map(p -> p.getFileName().toString())
                    .filter(n -> n.endsWith(".yaml"))
                    .filter(n -> ((Reading.Good) DesignFile.shipped(n))
                            .design()
                            .tank()
                            .pours())
                    .map(n -> n.substring(0, n.length() - ".yaml".length()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void someOfTheShippedTanksHaveNoOutlet() {
        assertThat(poured()).contains("wash-tub", "lime-barrel").doesNotContain("silt-trailer");
    }

    @ParameterizedTest
    @MethodSource("poured")
    void nothingThatIsPrintedSpeaksOfAnOutlet(String name) throws Exception {
        Dossier dossier = coarse(name);
        List<String> offences = new ArrayList<>();
        printed(name, dossier).forEach((where, text) -> {
            String words = NAMES.matcher(text.replaceAll("\\s+", " ")).replaceAll("");
            Matcher found = SHUTS.matcher(words);
            while (found.find()) {
                offences.add(where + ": ..." + words.substring(Math.max(0, found.start() - 60), found.end()));
            }
        });
        assertThat(offences).isEmpty();
    }

    private static Map<String, String> printed(String name, Dossier dossier) throws Exception {
        Map<String, String> texts = new LinkedHashMap<>();
        Style style = new Style(false, UnitSystem.METRIC);
        texts.put("check", ShortReport.of(dossier.checked(), style));
        texts.put("check --full", TextReport.of(dossier.checked(), style));
        var timing = dossier.checked().result().timing();
        texts.put("time", TimeReport.of(dossier.analysis(), timing, style));
        StringWriter json = new StringWriter();
        JsonReport.write(dossier.checked(), json);
        texts.put("check --json", json.toString());
        StringWriter time = new StringWriter();
        JsonTime.write(name, timing, time);
        texts.put("time --json", time.toString());
        texts.put("page", new String(Dossiers.written(dossier, Dossiers.SCREEN), StandardCharsets.UTF_8));
        Markup first = new DocumentFrame(name, dossier.origin(), Dossiers.A4).page();
        FirstPage front = new FirstPage(dossier, Dossiers.A4);
        front.to(first);
        front.about(first);
        front.rest(first);
        texts.put("first page of the report", first.text());
        StringBuilder sheet = new StringBuilder();
        for (Drawing page : WeldSheet.pages(dossier.design(), UnitSystem.METRIC, Paper.A4, Cautions.all())) {
            for (Mark mark : page.marks()) {
                if (mark instanceof Mark.Label label) {
                    sheet.append(label.text()).append(' ');
                }
            }
        }
        assertThat(sheet).contains("Watch every gap");
        texts.put("sheet", sheet.toString());
        Welder welder = new Welder(dossier.design());
        texts.put(
                "tolerance",
                ToleranceText.of(dossier.design(), welder.tolerance(0.005, 5, 1), welder.others(1), style));
        return texts;
    }

    /** At a few tilts, which is sooner done and takes the same words. */
    private static Dossier coarse(String name) throws Exception {
        Path folder = Path.of("geometry");
        String text = Files.readString(folder.resolve(name + ".yaml"));
        Reading.Good good = (Reading.Good) DesignFile.read(
                name + ".yaml",
                text.replaceFirst("(?m)^tilt: \\{to: (\\d+ deg).*", "tilt: {to: $1, step: 10 deg}"),
                NamedFiles.folder(folder));
        Checked checked = new Checked(Checker.check(good.design()), good.assumptions(), List.of());
        assertThat(checked.result().analysis().poses()).hasSizeLessThan(15);
        Origin origin = Origin.of(name + ".yaml", good.files(), "Tipwright test", "2026-01-01");
        return new Dossier(checked, origin, Stills.none("No pictures in this test."));
    }
}
