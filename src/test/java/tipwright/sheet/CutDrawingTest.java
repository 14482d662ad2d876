// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.drawing.Dxf;
import tipwright.quantity.UnitSystem;
import tipwright.sheet.bracket.Brackets;
import tipwright.sheet.bracket.CutPlate;
import tipwright.sheet.cut.CutList;
import tipwright.sheet.cut.PlateCut;

/** The plates' DXF, opened and measured by ezdxf (Debian: python3-ezdxf). */
class CutDrawingTest {
    private static final double TRUE = 0.05;
    private static final String SCRIPT =
            """
            import ezdxf,sys
            d=ezdxf.readfile(sys.argv[1]); a=d.audit()
            print('audit', len(a.errors), len(a.fixes))
            print('layers', *sorted(l.dxf.name for l in d.layers if l.dxf.name!='Defpoints'))
            for e in d.modelspace():
                if e.dxf.layer=='CUT' and e.dxftype()=='POLYLINE':
                    p=[v.dxf.location for v in e.vertices]
                    s=sum(p[i].x*p[(i+1)%len(p)].y-p[(i+1)%len(p)].x*p[i].y for i in range(len(p)))
                    print('outline', int(e.is_closed), min(v.x for v in p), min(v.y for v in p), max(v.x for v in p), max(v.y for v in p), abs(s)/2)
                elif e.dxf.layer=='CUT':
                    print(e.dxftype(), e.dxf.center.x, e.dxf.center.y, e.dxf.radius)
                elif e.dxftype()=='TEXT':
                    print('text', e.dxf.layer, e.dxf.text)
            """;

    @ParameterizedTest
    @CsvSource({"silt-trailer, METRIC", "crank-cart, METRIC", "saw-skid, US"})
    void platesAreClosedAndOfTrueSize(String name, UnitSystem units, @TempDir Path folder)
            throws IOException, InterruptedException, CannotComputeException {
        Design design = ((Reading.Good) DesignFile.shipped(name + ".yaml")).design();
        Analysis analysis = Analyser.analyse(design);
        CutList list = CutList.of(analysis, Brackets.of(analysis, units), units);
        Path file = folder.resolve("plates.dxf");
        Files.writeString(file, Dxf.of(CutDrawing.of("plates", list, units)), StandardCharsets.US_ASCII);
        List<String> lines = python(file);
        assertThat(lines.get(0)).isEqualTo("audit 0 0");
        assertThat(lines.get(1)).isEqualTo("layers 0 CUT MARK TEXT");
        List<double[]> outlines = new ArrayList<>();
        List<double[]> circles = new ArrayList<>();
        for (String line : lines) {
            String[] cells = line.split(" ");
            if (cells[0].equals("outline") || cells[0].equals("CIRCLE")) {
                double[] numbers = new double[cells.length - 1];
                for (int i = 1; i < cells.length; i++) {
                    numbers[i - 1] = Double.parseDouble(cells[i]);
                }
                (cells[0].equals("outline") ? outlines : circles).add(numbers);
            }
        }
        assertThat(outlines).hasSize(list.plates().size()).allMatch(o -> o[0] == 1);
        int next = 0;
        for (int i = 0; i < outlines.size(); i++) {
            PlateCut cut = list.plates().get(i);
            CutPlate plate = cut.plate();
            double[] o = outlines.get(i);
            assertThat(Math.abs(
                            o[3] - o[1] - 1000 * (plate.high().x() - plate.low().x())))
                    .isLessThan(TRUE);
            assertThat(Math.abs(
                            o[4] - o[2] - 1000 * (plate.high().y() - plate.low().y())))
                    .isLessThan(TRUE);
            double holes = 0;
            for (CutPlate.PlateHole hole : plate.holes()) {
                double[] c = circles.get(next++);
                assertThat(Math.abs(2 * c[2] - 1000 * hole.diameter())).isLessThan(TRUE);
                assertThat(Math.abs(c[0]
                                - o[1]
                                - 1000 * (hole.at().x() - plate.low().x())))
                        .isLessThan(TRUE);
                assertThat(Math.abs(c[1]
                                - o[2]
                                - 1000 * (hole.at().y() - plate.low().y())))
                        .isLessThan(TRUE);
                holes += Math.PI * c[2] * c[2];
            }
            assertThat(Math.abs(o[5] - holes - 1e6 * plate.area()))
                    .as(cut.name() + ": area")
                    .isLessThan(1);
            assertThat(lines).anyMatch(l -> l.startsWith("text TEXT " + cut.name()));
            assertThat(lines).anyMatch(l -> l.startsWith("text TEXT") && l.endsWith("cut " + cut.count()));
        }
        assertThat(next).as("no hole more than the design has").isEqualTo(circles.size());
    }

    private static List<String> python(Path file) throws IOException, InterruptedException {
        Process process = new ProcessBuilder("/usr/bin/python3", "-c", SCRIPT, file.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        return said.lines().toList();
    }
}
