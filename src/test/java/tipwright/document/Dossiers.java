// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import tipwright.ShippedChecks;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Sense;
import tipwright.check.rule.Verdict;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.drawing.Mark;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.report.Checked;

/** Documents about shipped designs. */
public final class Dossiers {
    static final PageSetting A4 = new PageSetting(PageSetting.Medium.PDF, PageSetting.Size.A4, UnitSystem.METRIC);
    static final PageSetting LETTER = new PageSetting(PageSetting.Medium.PDF, PageSetting.Size.LETTER, UnitSystem.US);
    static final PageSetting SCREEN = new PageSetting(PageSetting.Medium.HTML, PageSetting.Size.A4, UnitSystem.METRIC);

    private static final Map<String, Dossier> MADE = new ConcurrentHashMap<>();
    private static final Map<String, byte[]> WRITTEN = new ConcurrentHashMap<>();

    private Dossiers() {}

    /** About a shipped design; made once, whoever asks. */
    static Dossier of(String design) {
        return MADE.computeIfAbsent(design, Dossiers::make);
    }

    private static Dossier make(String design) {
        Reading.Good good = (Reading.Good) DesignFile.shipped(design + ".yaml");
        try {
            Checked checked = new Checked(ShippedChecks.of(design + ".yaml"), good.assumptions(), List.of());
            Origin origin = Origin.of(design + ".yaml", good.files(), "Tipwright test", "2026-01-01");
            return new Dossier(checked, origin, Stills.none("No pictures in this test."));
        } catch (CannotComputeException e) {
            throw new AssertionError(e);
        }
    }

    /** With findings added until there are so many, titles and notes as long as they get. */
    static Dossier withFindings(Dossier dossier, int wanted) {
        Result result = dossier.checked().result();
        List<Finding> all = new ArrayList<>(result.findings());
        Verdict[] verdicts = Verdict.values();
        for (int i = all.size(); i < wanted; i++) {
            Verdict verdict = verdicts[i % verdicts.length];
            boolean made = verdict != Verdict.NOT_CHECKED;
            double used = verdict == Verdict.FAIL ? 1.3 : 0.9;
            all.add(new Finding(
                    "pin/number-" + i,
                    "Pin, on a link whose name is as long as a patient draughtsman writes it, number " + i,
                    made ? used * 123456.7 : Double.NaN,
                    made ? 2 * 123456.7 : Double.NaN,
                    made ? 2 : Double.NaN,
                    made ? Kind.STIFFNESS : Kind.RATIO,
                    Sense.AT_MOST,
                    made ? used : Double.NaN,
                    made
                            ? new Extreme(0.5, 0.5, "an-own-load-case-with-a-very-long-name", MotionDirection.RAISING)
                            : Extreme.NOWHERE,
                    verdict,
                    "invented",
                    Text.words("a note without an end: "
                            + "and then it says some more about what happens there ".repeat(4))));
        }
        Checked checked = dossier.checked();
        Result more = new Result(result.analysis(), all, result.howFull(), result.timing());
        Checked again = new Checked(more, checked.assumptions(), checked.remarks());
        return new Dossier(again, dossier.origin(), dossier.stills());
    }

    /** The tank's outlines on the first page: stowed and tipped, mm. */
    public static List<List<Vec2>> tanks(Analysis analysis) {
        return new MachineView(analysis, UnitSystem.METRIC)
                .drawing().marks().stream()
                        .filter(m -> m instanceof Mark.Path && m.pen().layer().equals("tank"))
                        .map(m -> ((Mark.Path) m).points())
                        .toList();
    }

    /** The document about a shipped design; written once, whoever asks. */
    static byte[] shared(String design, PageSetting paper) {
        return WRITTEN.computeIfAbsent(design + paper, k -> written(of(design), paper));
    }

    /** Its page for the browser. */
    static String page(String design) {
        return new String(shared(design, SCREEN), StandardCharsets.UTF_8);
    }

    static PDDocument pdf(String design, PageSetting paper) throws IOException {
        return Loader.loadPDF(shared(design, paper));
    }

    static byte[] written(Dossier dossier, PageSetting paper) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            Report.write(dossier, paper, out);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return out.toByteArray();
    }

    static PDDocument pdf(Dossier dossier, PageSetting paper) throws IOException {
        return Loader.loadPDF(written(dossier, paper));
    }
}
