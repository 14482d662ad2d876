// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.drive.Counterweight;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.drawing.Mark;
import tipwright.geometry.Vec2;
import tipwright.quantity.UnitSystem;
import tipwright.sheet.Paper;
import tipwright.sheet.WeldSheet;

/** Springs and weights are drawn where they are. */
class AssistOutlineTest {
    private static Design read(String name) {
        if (DesignFile.read(Path.of("geometry", name + ".yaml")) instanceof Reading.Good good) {
            return good.design();
        }
        throw new AssertionError(name);
    }

    private static boolean has(List<Contour> strokes, Vec2 end) {
        return strokes.stream()
                .filter(s -> !s.closed())
                .flatMap(s -> s.corners().stream())
                .anyMatch(p -> p.minus(end).norm() < 1e-9);
    }

    /** The ends as the design file has them, those on the tank turned about the pivot. */
    @Test
    void springsGoFromPinToPin() {
        Design design = read("twin-rams");
        Vec2 pivot = design.pivot().at();
        double tilt = Math.toRadians(30);
        List<Contour> strokes = AssistOutline.of(design, (body, p) -> body == 0 ? p : p.tiltedAbout(pivot, tilt));
        assertThat(has(strokes, new Vec2(-0.060, -0.350))).isTrue();
        assertThat(has(strokes, new Vec2(-0.080, 0.230).tiltedAbout(pivot, tilt)))
                .isTrue();
        assertThat(has(strokes, new Vec2(0.700, -0.300))).isTrue();
        assertThat(has(strokes, new Vec2(0.600, 0.300).tiltedAbout(pivot, tilt)))
                .isTrue();
        assertThat(has(strokes, new Vec2(-0.080, 0.230))).isFalse();
    }

    /** A block of steel as heavy as the weight, about its centre. */
    @Test
    void weightsAreBlocksOfTheirMass() {
        Design design = read("twin-rams");
        List<Vec2> block = AssistOutline.of(design, (body, p) -> p).stream()
                .filter(s -> s instanceof Contour.Polyline
                        && s.closed()
                        && s.corners().size() == 4)
                .map(Contour::corners)
                .filter(b -> b.get(0).x() > 0.65)
                .findFirst()
                .orElseThrow();
        double edge = block.get(1).minus(block.get(0)).norm();
        assertThat(edge * edge * edge * 7850).isCloseTo(12, within(1e-9));
        assertThat(block.get(0)
                        .plus(block.get(2))
                        .times(0.5)
                        .minus(new Vec2(0.760, 0.300))
                        .norm())
                .isLessThan(1e-12);
    }

    /** The weld sheet tells where each end goes: the numbers of the design file. */
    @Test
    void sheetListsTheEndsOfTheSprings() throws CannotComputeException {
        List<String> words =
                WeldSheet.pages(read("twin-rams"), UnitSystem.METRIC, Paper.A4, List.of("take care")).stream()
                        .flatMap(page -> page.marks().stream())
                        .filter(m -> m instanceof Mark.Label)
                        .map(m -> ((Mark.Label) m).text())
                        .toList();
        int row = words.indexOf("pull spring, on tank");
        assertThat(row).isPositive();
        assertThat(words.subList(row + 1, row + 3)).containsExactly("600 mm", "300 mm");
        assertThat(words).contains("gas spring, on frame", "gas spring, on tank", "pull spring, on frame");
    }

    @Test
    void aWeightInsideTheOutlineOfItsLinkIsTheLink() {
        Design cart = read("crank-cart");
        assertThat(cart.assists()).hasSize(2).allMatch(a -> AssistOutline.ofLink(cart, (Counterweight) a));
        Design rams = read("twin-rams");
        Counterweight front = (Counterweight) rams.assists().get(3);
        assertThat(AssistOutline.ofLink(rams, front)).isFalse();
    }
}
