// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.geometry.Vec2;
import tipwright.linkage.Configuration;
import tipwright.linkage.Linkage;
import tipwright.linkage.LinkageException;
import tipwright.linkage.Push;
import tipwright.linkage.Reactions;
import tipwright.linkage.Skeleton;

/** Textbook machines with given answers, through the general solver at the drawn position. */
class StaticsTextbookTest {
    private static final double LBF = 4.4482216152605;
    private static final double FOOT = 0.3048;
    private static final double INCH = 0.0254;

    private static Reactions solve(Vec2 pivot, Vec2 framePin, Vec2 tankPin, Push... pushes) throws LinkageException {
        Linkage linkage = Linkage.of(Skeleton.straight(pivot, framePin, tankPin));
        Configuration drawn = linkage.sweep(new double[] {0}).configurations().get(0);
        return Objects.requireNonNull(linkage.reactions(drawn, List.of(pushes), null));
    }

    /**
     * Source: J. L. Meriam, L. G. Kraige, J. N. Bolton, Engineering Mechanics: Statics, 9th ed., problem 4/122 (geometry read; answer
     * recomputed by hand): pivot O, cylinder (-2.4, -3.6) to (-0.6, 3.6) ft, 6000 lb at x = -14.3 ft: 58 960 lb push, 3370 psi on a
     * 4.72 in bore.
     */
    @Test
    void dumpBodyOnACylinder() throws LinkageException {
        Vec2 frame = new Vec2(-2.4, -3.6).times(FOOT);
        Vec2 body = new Vec2(-0.6, 3.6).times(FOOT);
        Reactions r = solve(Vec2.ZERO, frame, body, new Push(1, new Vec2(-14.3 * FOOT, 0), new Vec2(0, -6000 * LBF)));
        assertThat(body.minus(frame).norm() / FOOT).isCloseTo(7.42159, within(1e-5));
        assertThat(r.force() / LBF).isCloseTo(58_960, within(58.0));
        double bore = 4.72 * INCH;
        double pressure = r.force() / (Math.PI * bore * bore / 4);
        assertThat(pressure / 6894.757293168361).isCloseTo(3370, within(5.0));
    }

    /**
     * Source: the identity F dL = W dh with the triangle |PA| 1.0, |PB| 0.5 m, 53.1301 degrees (own input set, two ways: cosine rule
     * and vectors). Columns: tilt, length, dL/dtilt, force, pivot reaction on the tank x, y.
     */
    @Test
    void straightDriveTable() throws LinkageException {
        double[][] table = {
            {0, 0.80623, 0.49614, 6046.69, -750.00, 4000.00},
            {20, 0.97969, 0.48840, 2970.92, -394.69, 7055.42},
            {40, 1.14219, 0.43710, -624.61, 118.65, 10613.23},
            {60, 1.28173, 0.35874, -5474.98, 1495.05, 15266.90},
        };
        Linkage linkage = Linkage.of(Skeleton.straight(Vec2.ZERO, new Vec2(-0.6, -0.8), new Vec2(-0.5, 0)));
        Push weight = new Push(1, new Vec2(-0.3, 0.4), new Vec2(0, -10_000));
        for (double[] row : table) {
            Configuration p = linkage.sweep(new double[] {Math.toRadians(row[0])})
                    .configurations()
                    .get(0);
            Reactions r = Objects.requireNonNull(linkage.reactions(p, List.of(weight), null));
            assertThat(p.length()).isCloseTo(row[1], within(1e-5));
            assertThat(p.arm()).isCloseTo(row[2], within(1e-5));
            assertThat(r.force()).isCloseTo(row[3], within(0.01));
            assertThat(-r.joints().get(0).x()).isCloseTo(row[4], within(0.01));
            assertThat(-r.joints().get(0).y()).isCloseTo(row[5], within(0.01));
        }
        Configuration over =
                linkage.sweep(new double[] {Math.atan(0.75)}).configurations().get(0);
        Reactions none = Objects.requireNonNull(linkage.reactions(over, List.of(weight), null));
        assertThat(none.force()).isCloseTo(0, within(1e-6));
    }
}
