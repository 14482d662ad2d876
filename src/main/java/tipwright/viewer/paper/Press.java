// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.drive.TiltRange;
import tipwright.design.file.Reading;
import tipwright.document.Dossier;
import tipwright.document.Origin;
import tipwright.document.PageSetting;
import tipwright.document.Report;
import tipwright.document.Stills;
import tipwright.drawing.Drawing;
import tipwright.drawing.Dxf;
import tipwright.drawing.PageImage;
import tipwright.drawing.Pdf;
import tipwright.drawing.Png;
import tipwright.quantity.UnitSystem;
import tipwright.report.Cautions;
import tipwright.report.Checked;
import tipwright.report.Inputs;
import tipwright.report.Scratch;
import tipwright.report.WholeFile;
import tipwright.sheet.CutDrawing;
import tipwright.sheet.Paper;
import tipwright.sheet.SideView;
import tipwright.sheet.WeldSheet;
import tipwright.viewer.editor.Draft;
import tipwright.viewer.start.DesignName;
import tipwright.viewer.start.DrawingPrograms;
import tipwright.viewer.start.FrameOrder;

/**
 * Makes what is handed over; nothing is written before it is asked for.
 *
 * @param good what the draft says
 * @param units of all figures
 * @param environment variables of the process
 */
public record Press(
        Draft draft, Reading.Good good, Checked checked, UnitSystem units, Map<String, String> environment) {
    private static final double PREVIEW = 1.1;
    private static final double DRAWN = 3;
    private static final int WIDTH = 1120;
    private static final int HEIGHT = 630;

    /**
     * What came of it.
     *
     * @param bytes of the file
     * @param preview its first page as a PNG; null: it has none
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    public record Made(byte[] bytes, byte @Nullable [] preview) {}

    private interface Content {
        void write(ByteArrayOutputStream out) throws IOException;
    }

    /**
     * Makes it, without a file.
     *
     * @throws IOException when it cannot be made; the message says why
     * @throws CannotComputeException when the machine cannot be worked out
     */
    public Made make(Paperwork what) throws IOException, CannotComputeException {
        Design design = good.design();
        return switch (what) {
            case REPORT -> pdf(report(PageSetting.Medium.PDF));
            case PHONE -> new Made(report(PageSetting.Medium.HTML), null);
            case SHEET -> {
                Paper paper = units == UnitSystem.US ? Paper.LETTER : Paper.A4;
                List<Drawing> pages = WeldSheet.pages(design, units, paper, Cautions.all());
                yield pdf(bytes(out -> Pdf.write(design.name() + ": weld sheet", pages, out)));
            }
            case SIDE -> {
                Analysis rounded = Analyser.analyse(WeldSheet.rounded(design, units));
                yield dxf(SideView.trueSize(rounded, units), SideView.of(rounded, units, 297, 210));
            }
            case PLATES -> {
                Drawing plates = CutDrawing.of(design, units);
                yield dxf(plates, plates);
            }
            case PICTURE -> {
                byte[] png = drawn(false);
                yield new Made(png, png);
            }
            case MOVING -> {
                byte[] gif = drawn(true);
                yield new Made(gif, gif);
            }
        };
    }

    private static byte[] bytes(Content content) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        content.write(out);
        return out.toByteArray();
    }

    private static Made pdf(byte[] bytes) throws IOException {
        return new Made(bytes, PageImage.first(bytes, PREVIEW));
    }

    private static Made dxf(Drawing drawing, Drawing shown) throws IOException {
        double scale = Math.min(DRAWN, WIDTH / Math.max(1, Math.max(shown.width(), shown.height())));
        return new Made(Dxf.of(drawing).getBytes(StandardCharsets.UTF_8), bytes(out -> Png.write(shown, scale, out)));
    }

    private byte[] report(PageSetting.Medium medium) throws IOException {
        String today = LocalDate.now(ZoneId.systemDefault()).toString();
        Origin origin = Origin.of(draft.name(), good.files(), Origin.program(), today);
        PageSetting.Size size = units == UnitSystem.US ? PageSetting.Size.LETTER : PageSetting.Size.A4;
        Stills none = Stills.none("No pictures in this copy.");
        return bytes(
                out -> Report.write(new Dossier(checked, origin, none), new PageSetting(medium, size, units), out));
    }

    private byte[] drawn(boolean moving) throws IOException {
        try (Scratch scratch = Scratch.open()) {
            Path folder = scratch.folder("drawn");
            TiltRange t = good.design().tilt();
            FrameOrder order = new FrameOrder(
                    saved(scratch),
                    folder,
                    List.of((t.from() + t.to()) / 2),
                    good.design().cases().skip().contains("draining") ? "heel" : "draining",
                    WIDTH,
                    HEIGHT,
                    moving,
                    true,
                    units,
                    null);
            String fault = DrawingPrograms.quietStills(order, environment);
            List<Path> files = files(folder, moving ? ".gif" : ".png");
            if (!fault.isEmpty() || files.isEmpty()) {
                throw new IOException(fault.isEmpty() ? "nothing was drawn" : fault);
            }
            return Files.readAllBytes(files.get(0));
        }
    }

    /** The design as a file that another program can read: a copy where it reads no file of its own folder. */
    private DesignName saved(Scratch scratch) throws IOException {
        boolean alone = good.files().stream().skip(1).allMatch(f -> f.shipped());
        Path file = draft.file();
        if (alone) {
            Path copy = scratch.file("design.yaml");
            Files.writeString(copy, draft.text());
            return new DesignName(copy.toString(), false);
        }
        if (file == null || !Files.readString(file).equals(draft.text())) {
            throw new IOException("save the design first: it reads other files beside its own");
        }
        return new DesignName(file.toString(), false);
    }

    private static List<Path> files(Path folder, String end) throws IOException {
        List<Path> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            files.filter(p -> p.toString().endsWith(end))
                    .sorted(Comparator.comparing(Path::toString))
                    .forEach(all::add);
        }
        return all;
    }

    /**
     * Writes what was made, whole or not at all, and never over what the design was read from.
     *
     * @throws IOException when it is not written; the message says why
     */
    public void write(Made made, Path to) throws IOException {
        Inputs inputs = Inputs.of(good);
        inputs.spare(to);
        Path own = draft.file();
        if (own != null) {
            new Inputs(List.of(own.toAbsolutePath())).spare(to);
        }
        WholeFile.write(to, out -> out.write(made.bytes()));
    }
}
