// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.document.Dossiers;
import tipwright.drawing.Mark;
import tipwright.geometry.Mesh;
import tipwright.geometry.Range;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.MachineOutline;
import tipwright.quantity.UnitSystem;
import tipwright.sheet.SideView;
import tipwright.viewer.dump.DumpStates;

/** A tank with an outline of its own is the same tank in the report, on the sheet and in the window. */
class OneTankTest {
    private static final List<Vec2> OUTLINE =
            List.of(new Vec2(-0.6, 0.4), new Vec2(0.7, 0.45), new Vec2(0.55, 1.6), new Vec2(-0.52, 1.55));
    private static final String YAML = swap(
            Examples.BOX,
            "  openings:",
            "  outline: [[-600 mm, 400 mm], [700 mm, 450 mm], [550 mm, 1.6 m], [-520 mm, 1.55 m]]\n  openings:");

    private static List<Vec2> shape(List<Vec2> ring) {
        List<Vec2> sides = new ArrayList<>();
        Vec2 first = ring.get(0);
        double scale = 1 / ring.get(1).minus(first).norm();
        ring.forEach(p -> sides.add(p.minus(first).times(scale)));
        return sides;
    }

    private static void same(List<Vec2> a, List<Vec2> b, double off) {
        assertThat(a).hasSameSizeAs(b);
        for (int i = 0; i < a.size(); i++) {
            assertThat(a.get(i).minus(b.get(i)).norm()).isLessThan(off);
        }
    }

    @Test
    void sheetAndReportDrawTheOutline() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(YAML));
        List<List<Vec2>> drawn = SideView.of(analysis, UnitSystem.METRIC, 297, 210).marks().stream()
                .filter(m -> m instanceof Mark.Path && m.pen().layer().equals("tank"))
                .map(m -> ((Mark.Path) m).points())
                .toList();
        assertThat(drawn).hasSize(1);
        same(shape(drawn.get(0)), shape(OUTLINE), 1e-9);
        List<List<Vec2>> report = Dossiers.tanks(analysis);
        assertThat(report).hasSize(2);
        same(shape(report.get(0)), shape(OUTLINE), 1e-9);
        double tilt = analysis.poses().get(analysis.poses().size() - 1).tilt();
        same(
                shape(report.get(1)),
                shape(OUTLINE.stream().map(p -> p.tilted(tilt)).toList()),
                1e-9);
    }

    @Test
    void windowDrawsTheOutline() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(YAML));
        DumpStates dump = new DumpStates(analysis);
        Mesh shell = MachineScene.shell(dump, new MachineOutline(analysis), MachineScene.inside(dump));
        for (int k = 0; k < 36; k++) {
            double a = Math.toRadians(10 * k);
            Vec2 d = new Vec2(Math.cos(a), Math.sin(a));
            double expected = OUTLINE.stream().mapToDouble(p -> p.dot(d)).max().orElseThrow();
            assertThat(shell.extent(new Vec3(d.x(), d.y(), 0)).high()).isCloseTo(expected, within(1e-9));
        }
        Range across = shell.extent(new Vec3(0, 0, 1));
        assertThat(across.span()).as("from wall to wall").isCloseTo(1.008, within(1e-9));
    }
}
