// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.One;
import tipwright.check.joint.TubeWallCheck.Size;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.around.CrossMember;
import tipwright.design.joint.FilletWeld;
import tipwright.design.joint.Flange;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Text;
import tipwright.strength.BoltedTee;
import tipwright.strength.OutOfRangeException;

/** Brackets on a tube, plates under bolts, and an actuator that swings in its brackets, with figures by hand. */
class JointByHandTest {
    private static final double YIELD = 235e6;
    private static final double WALL = 0.005;

    private static CrossMember tube(double wall) {
        return Objects.requireNonNull(Objects.requireNonNull(Examples.read(Examples.BOX
                                + "frame: {cross-member: {at: [-600 mm, -600 mm], height: 175 mm, width: 80 mm, wall: "
                                + 1000 * wall + " mm, z: [-400 mm, 400 mm]}}\n")
                        .frame())
                .crossMember());
    }

    /** As wide as the face: fy t (2 N + 10 t) of the side walls. Source: side wall crushing of EN 1993-1-8, 7.5.2 (from memory). */
    @Test
    void aBracketAsWideAsTheFaceStandsOnTheSideWalls() {
        double walls = YIELD * WALL * (2 * 0.06 + 10 * WALL);
        for (double across : new double[] {0.08, 0.09}) {
            double bears = TubeWallCheck.strength(tube(WALL), 0.08, 0.175, new Size(across, 0.06));
            assertThat(bears).isCloseTo(walls, within(1e-6 * walls));
        }
    }

    /**
     * Up to 0.85 of the face, of a plate with edges that yield along lines, f t^2 (2 N/b / (1 - beta) + 4 / sqrt(1 - beta)); from there to
     * the whole face in a straight line to the side walls; and no more than what punches through. On faces whose 0.85 rounds up too.
     * Source: EN 1993-1-8 table 7.11 and its range (from memory).
     */
    @ParameterizedTest
    @CsvSource({
        "80, 0.5, 0",
        "80, 0.84, 0",
        "80, 0.88, 0.2",
        "80, 0.9, 0.3333333333333333",
        "80, 0.925, 0.5",
        "70, 0.925, 0.5",
        "75, 0.925, 0.5",
        "40, 0.88, 0.2",
        "150, 0.9, 0.3333333333333333"
    })
    void aNarrowerBracketBendsTheFace(double mm, double beta, double share) {
        double face = mm / 1000;
        double along = 0.06;
        double shown = Math.min(beta, 0.85);
        double yields = YIELD * WALL * WALL * (2 * along / face / (1 - shown) + 4 / Math.sqrt(1 - shown));
        double walls = YIELD * WALL * (2 * along + 10 * WALL);
        double counting = Math.min(shown * face, 10 * shown * WALL);
        double punches = YIELD / Math.sqrt(3) * WALL * (2 * along + 2 * counting);
        double expected = Math.min(yields + share * (walls - yields), punches);
        double bears = TubeWallCheck.strength(tube(WALL), face, 0.175, new Size(beta * face, along));
        assertThat(bears).isCloseTo(expected, within(1e-9 * expected));
    }

    /** A side 35 walls high is in range; a little thinner it is not. */
    @Test
    void aSideMayBe35WallsHigh() {
        Size size = new Size(0.04, 0.06);
        assertThat(TubeWallCheck.strength(tube(0.00625), 0.08, 0.21875, size)).isPositive();
        CrossMember thin = tube(0.0049);
        assertThatThrownBy(() -> TubeWallCheck.strength(thin, 0.08, 0.175, size))
                .isInstanceOf(OutOfRangeException.class);
    }

    /** What pulls square to the face, and moments about both its axes as pairs of forces at the bracket's ends. */
    @Test
    void whatPullsAtTheFace() {
        FilletWeld weld = weld("rectangle: {u: 80 mm, v: 40 mm}");
        Size size = Size.of(weld);
        assertThat(size).isEqualTo(new Size(0.08, 0.04));
        JointLoad.Held held =
                new JointLoad.Held(new Vec3(1000, -2000, 300), weld.at().plus(new Vec3(0.08, 0.1, 0.02)));
        // r x F = (0.1 * 300 + 0.02 * 2000, 0.02 * 1000 - 0.08 * 300, -0.08 * 2000 - 0.1 * 1000)
        double top = 2000 + 2 * 260 / 0.08 + 2 * 70 / 0.04;
        double side = 1000 + 2 * 260 / 0.08 + 2 * 4 / 0.04;
        assertThat(TubeWallCheck.pull(held, weld, new Vec3(0, 1, 0), size)).isCloseTo(top, within(1e-6));
        assertThat(TubeWallCheck.pull(held, weld, new Vec3(0, -1, 0), size)).isCloseTo(top, within(1e-6));
        assertThat(TubeWallCheck.pull(held, weld, new Vec3(1, 0, 0), size)).isCloseTo(side, within(1e-6));
        assertThat(Size.of(weld("segments: [{from: [-10 mm, -30 mm], to: [50 mm, 5 mm]}]")))
                .isEqualTo(new Size(0.1, 0.06));
        assertThat(Size.of(weld("segments: [{from: [50 mm, 5 mm], to: [-60 mm, 7 mm]}]")))
                .isEqualTo(new Size(0.12, 0.014));
    }

    private static FilletWeld weld(String seams) {
        return Objects.requireNonNull(Examples.read(Examples.BOX
                        + "fastenings:\n  - {joint: frame-pin, weld: {at: [-600 mm, -550 mm, 0 mm], leg: 6 mm, " + seams
                        + "}}\n")
                .fastenings()
                .get(0)
                .weld());
    }

    /** The lesser of 2 pi m and 4 m + 1.25 e of the plate goes with a bolt. Source: EN 1993-1-8 table 6.4, a bolt by itself (from memory). */
    @Test
    void howMuchOfThePlateGoesWithABolt() {
        assertThat(PryingCheck.tee(new Flange(0.012, 0.03, 0.03, YIELD), 50e3))
                .isEqualTo(new BoltedTee(0.012, YIELD, 4 * 0.03 + 1.25 * 0.03, 0.03, 0.03, 100e3));
        assertThat(PryingCheck.tee(new Flange(0.012, 0.01, 0.06, YIELD), 50e3))
                .isEqualTo(new BoltedTee(0.012, YIELD, 2 * Math.PI * 0.01, 0.01, 0.06, 100e3));
    }

    private static final String THICK = swap(
                    Examples.BOX,
                    "pull: 12 kN}",
                    "pull: 12 kN, rod: {diameter: 40 mm}, tube: {outside: 80 mm, inside: 70 mm, length: 700 mm}}")
            + "fastenings:\n"
            + "  - {joint: frame-pin, height: 60 mm, weld: {at: [-600 mm, -560 mm, 0 mm], leg: 6 mm, lines: {length: 80 mm, apart: 40 mm}}}\n"
            + "  - {joint: tank-pin, height: 10 mm, weld: {at: [-450 mm, 410 mm, 0 mm], leg: 6 mm, lines: {length: 80 mm, apart: 40 mm}}}\n";

    /** The line from pin to pin against straight up in the frame, and against straight down in the tank as it turns. */
    @Test
    void theActuatorSwingsInBothBrackets() throws CannotComputeException {
        double frame = 0;
        double tank = 0;
        for (int i = 0; i <= 80; i++) {
            double t = Math.toRadians(i);
            Vec2 u = new Vec2(0.4 - 0.85 * Math.cos(t) + 0.6, 0.4 + 0.85 * Math.sin(t) + 0.5).unit();
            frame = Math.max(frame, Math.acos(u.y()));
            // the tank's own up has turned to (sin t, cos t)
            tank = Math.max(tank, Math.acos(u.x() * Math.sin(t) + u.y() * Math.cos(t)));
        }
        Finding fixed = One.of(THICK, "swing/frame-pin");
        assertThat(fixed.demand()).isCloseTo(frame, within(1e-6));
        // 60 mm over the plate it may lie flat
        assertThat(fixed.capacity()).isCloseTo(Math.PI / 2, within(1e-12));
        assertThat(fixed.note().metric())
                .isEqualTo("between the actuator and straight out of its bracket; body 80 mm thick");
        Finding moving = One.of(THICK, "swing/tank-pin");
        assertThat(moving.demand()).isCloseTo(tank, within(1e-6));
        // 10 mm over the plate, half of 40 mm thick: asin(1/2)
        assertThat(moving.capacity()).isCloseTo(Math.PI / 6, within(1e-12));
        assertThat(moving.note().metric()).endsWith("body 40 mm thick");
        assertThat(moving.verdict()).isEqualTo(tank > Math.PI / 6 ? Verdict.FAIL : Verdict.PASS);
        Finding flat = One.of(swap(THICK, "height: 60 mm", "height: 40 mm"), "swing/frame-pin");
        assertThat(flat.capacity()).isCloseTo(Math.PI / 2, within(1e-12));
        assertThat(new SwingCheck().fix(moving, Examples.read(THICK).limits()))
                .isEqualTo(Text.words(
                        "the pin further off its plate, or the bracket turned towards the middle of the swing"));
    }
}
