// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.Swap;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.Checks;
import tipwright.check.joint.SteelBehindCheck;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.geometry.Vec2;

/** No place that is found puts a bracket's foot into the air: the trailer's frame pin on a short plate in place of its cross member. */
class BracketOnSteelTest {
    /** 400 mm of plate in a zone of 650 mm; the foot is 60 mm long and 65 mm below the pin. */
    private static final String PLATE =
            "    - {name: plate, outline: [[50 mm, -545 mm], [450 mm, -545 mm], [450 mm, -445 mm], [50 mm, -445 mm]], z: [-60 mm, 60 mm]}\n";

    private static Design trailer() throws IOException {
        String text = Files.readString(Path.of("geometry/silt-trailer.yaml"));
        return Examples.read(Swap.swap(
                text,
                "  cross-member: {at: [220 mm, -495 mm], height: 100 mm, width: 60 mm, wall: 5 mm, z: [-455 mm, 455 mm]}\n",
                "",
                "    - {name: saddle,",
                PLATE + "    - {name: saddle,"));
    }

    private static Finding foot(Design design) throws CannotComputeException {
        List<Finding> all = Checks.run(List.of(new SteelBehindCheck()), Analyser.analyse(design));
        return all.stream()
                .filter(f -> f.id().equals("steel-behind/frame-pin"))
                .findFirst()
                .orElseThrow();
    }

    private static Design moved(Design design, Vec2 by) {
        Vec2 drawn = design.drive().places(design.pivot().at()).get("frame-pin");
        return PlacedPoint.moved(
                design,
                List.of(new PlacedPoint("frame-pin", drawn, drawn.plus(by))),
                design.drive().actuators().get(0).actuator());
    }

    /** The plate ends 170 mm before the pin and 230 mm behind it; half the foot is 30 mm, 3 mm may stick out. */
    @Test
    void aMovedPinTakesItsFootOffThePlate() throws IOException, CannotComputeException {
        Design design = trailer();
        assertThat(foot(design).verdict()).isEqualTo(Verdict.PASS);
        assertThat(foot(moved(design, new Vec2(0.2, 0.01))).verdict()).isEqualTo(Verdict.PASS);
        assertThat(foot(moved(design, new Vec2(0.204, 0.01))).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(foot(moved(design, new Vec2(-0.14, 0))).verdict()).isEqualTo(Verdict.PASS);
        assertThat(foot(moved(design, new Vec2(-0.144, 0))).verdict()).isEqualTo(Verdict.FAIL);
        assertThat(foot(moved(design, new Vec2(-0.5, 0))).verdict()).isEqualTo(Verdict.FAIL);
    }

    @Test
    void everyPlaceThatIsFoundHasItsFootOnThePlate() throws IOException, CannotComputeException {
        Placement found = new Placer(1, 7, 15_000L, () -> false, p -> {}).place(trailer());
        assertThat(found.answers()).isNotEmpty();
        for (Answer answer : found.answers()) {
            assertThat(foot(answer.design()).verdict()).isEqualTo(Verdict.PASS);
            Vec2 pin = answer.design().drive().places(Vec2.ZERO).get("frame-pin");
            assertThat(pin.x()).isBetween(0.05 + 0.03 - 0.003 - 1e-9, 0.45 - 0.03 + 0.003 + 1e-9);
        }
    }

    @Test
    void aMapBarsWhatIsOffThePlate() throws IOException, CannotComputeException {
        PlacementMap map = PlacementMap.of(trailer(), Pin.FRAME, 16);
        int off = 0;
        for (int r = 0; r < map.utilisation().length; r++) {
            for (int c = 0; c < map.utilisation()[r].length; c++) {
                double x = map.low().x() + (c + 0.5) * map.cell();
                if (!Double.isNaN(map.utilisation()[r][c]) && (x < 0.076 || x > 0.424)) {
                    assertThat(map.fits(r, c)).as(x + " m").isFalse();
                    off++;
                }
            }
        }
        assertThat(off).isGreaterThan(10);
    }
}
