// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.file.Problem;
import tipwright.design.file.Reading;
import tipwright.drawing.Dxf;
import tipwright.drawing.Pdf;
import tipwright.drawing.Svg;
import tipwright.quantity.UnitSystem;
import tipwright.report.Cautions;
import tipwright.sheet.CutDrawing;
import tipwright.sheet.Paper;
import tipwright.sheet.SideView;
import tipwright.sheet.WeldSheet;

/** Writes the weld sheet. */
@Command(
        name = "sheet",
        description = {
            "Writes the weld sheet.",
            "PDF: the whole machine with its pins numbered, every place as a tape takes it, and a page at true size for each bracket,"
                    + " lug and mount. SVG: the side view. DXF: the side view at true size in mm, layers by part."
        },
        footer = {
            "  tipwright sheet my-tank.yaml --out my-tank.pdf",
            "  tipwright sheet my-tank.yaml --out my-tank.pdf --units us --paper letter",
            "  tipwright sheet my-tank.yaml --out my-tank.dxf",
            "  tipwright sheet my-tank.yaml --out my-tank.pdf --cut plates.dxf"
        })
final class SheetCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private Asked asked = new Asked();

    @Option(
            names = "--out",
            required = true,
            paramLabel = "FILE",
            description = "The file to write: .pdf, .svg or .dxf.")
    private Path file = Path.of("sheet.pdf");

    @Option(
            names = "--cut",
            paramLabel = "FILE",
            description =
                    "A second file to write, .dxf: all plates side by side at true size in mm, layers cut, mark and text.")
    private @Nullable Path cut;

    @Mixin
    private Shown shown = new Shown();

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            description = "Paper of the PDF: a4 or letter. Default: by the units.")
    private @Nullable Paper paper;

    @Override
    public Integer call() throws FailedException {
        PrintWriter err = spec.commandLine().getErr();
        DesignSource source =
                DesignSource.find(asked.design(), spec.commandLine().getErr());
        if (source.reading() instanceof Reading.Bad bad) {
            bad.problems().stream().map(Problem::text).forEach(err::println);
            return Exit.NOT_UNDERSTOOD;
        }
        String end = end(file);
        if (!end.equals(".pdf") && !end.equals(".svg") && !end.equals(".dxf")) {
            err.println("--out: '" + file + "' ends in none of .pdf, .svg and .dxf; name it such as 'sheet.pdf'");
            return Exit.NOT_UNDERSTOOD;
        }
        Path plates = cut;
        if (plates != null && !end(plates).equals(".dxf")) {
            err.println("--cut: '" + plates + "' does not end in .dxf; name it such as 'plates.dxf'");
            return Exit.NOT_UNDERSTOOD;
        }
        Design what = ((Reading.Good) source.reading()).design();
        Outputs outputs = Outputs.sparing(source);
        outputs.spare(file);
        if (plates != null) {
            outputs.spare(plates);
        }
        try {
            write(what, shown.units(source.reading()), end, outputs);
            if (plates != null) {
                String text = Dxf.of(CutDrawing.of(what, shown.units(source.reading())));
                outputs.write(plates, (OutputStream stream) -> stream.write(text.getBytes(StandardCharsets.UTF_8)));
            }
        } catch (CannotComputeException e) {
            err.println(source.name() + ": " + e.getMessage());
            return Exit.CANNOT_COMPUTE;
        }
        spec.commandLine().getOut().println("sheet: written to " + file + (plates == null ? "" : " and " + plates));
        return Exit.FINE;
    }

    private static String end(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.substring(Math.max(0, name.lastIndexOf('.'))).toLowerCase(Locale.ROOT);
    }

    private void write(Design what, UnitSystem units, String end, Outputs outputs)
            throws FailedException, CannotComputeException {
        if (end.equals(".pdf")) {
            Paper usual = units == UnitSystem.US ? Paper.LETTER : Paper.A4;
            var pages = WeldSheet.pages(what, units, paper == null ? usual : paper, Cautions.all());
            outputs.write(file, stream -> Pdf.write(what.name() + ": weld sheet", pages, stream));
            return;
        }
        Analysis rounded = Analyser.analyse(WeldSheet.rounded(what, units));
        String text = end.equals(".svg")
                ? Svg.of(SideView.of(rounded, units, 297, 210), true)
                : Dxf.of(SideView.trueSize(rounded, units));
        outputs.write(file, (OutputStream stream) -> stream.write(text.getBytes(StandardCharsets.UTF_8)));
    }
}
