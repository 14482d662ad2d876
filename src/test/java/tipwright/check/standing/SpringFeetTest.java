// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.check.standing.Footprint.Mass;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** A machine on tyres that give, against balances written out by hand. */
class SpringFeetTest {
    private static final double G = 9.80665;
    private static final Vec3 UP = new Vec3(0, 1, 0);
    private static final List<Vec2> FEET =
            List.of(new Vec2(-1, -0.75), new Vec2(1, -0.75), new Vec2(1, 0.75), new Vec2(-1, 0.75));

    /** Two springs a side, k and soft k: moments about the ground with the mass gone out by h sin(lean), by repetition. */
    @Test
    void leansToTheSofterSideAndTheMassGoesWithIt() {
        double kg = 1200;
        double high = 1.6;
        double out = 0.1;
        double hard = 120_000;
        double soft = 60_000;
        SpringFeet feet = new SpringFeet(FEET, List.of(hard, hard, soft, soft), 0);
        SpringFeet.Rest rest =
                Objects.requireNonNull(feet.rest(up -> List.of(new Mass(kg, new Vec3(0, high, out))), UP, Vec2.ZERO));
        double lean = 0;
        for (int i = 0; i < 2000; i++) {
            // square to the leaning frame
            double press = kg * G * Math.cos(lean);
            double foot = out + high * Math.tan(lean);
            double softer = press * (foot + 0.75) / 1.5;
            double harder = press - softer;
            lean = Math.atan((softer / (2 * soft) - harder / (2 * hard)) / 1.5);
        }
        assertThat(lean).isGreaterThan(Math.toRadians(1.4));
        assertThat(Math.atan2(-rest.up().z(), rest.up().y())).isCloseTo(lean, within(1e-8));
        double press = kg * G * Math.cos(lean);
        double softer = press * (out + high * Math.tan(lean) + 0.75) / 1.5 / 2;
        assertThat(rest.loads().get(2)).isCloseTo(softer, within(1e-6 * softer));
        assertThat(rest.loads().get(0)).isCloseTo(press / 2 - softer, within(1e-6 * softer));
    }

    /** The lean runs away where the weight's moment grows faster than that of the springs: W h over 4 k b^2 of more than 1. */
    @Test
    void tooSoftForItsHeightTipsOver() {
        Mass high = new Mass(1200, new Vec3(0, 2, 0.001));
        double limit = 1200 * G * 2 / (4 * 0.75 * 0.75);
        assertThat(new SpringFeet(FEET, List.of(1.1 * limit, 1.1 * limit, 1.1 * limit, 1.1 * limit), 0)
                        .rest(up -> List.of(high), UP, Vec2.ZERO))
                .isNotNull();
        assertThat(new SpringFeet(FEET, List.of(0.9 * limit, 0.9 * limit, 0.9 * limit, 0.9 * limit), 0)
                        .rest(up -> List.of(high), UP, Vec2.ZERO))
                .isNull();
    }

    private static final String MACHINE = swap(Examples.BOX, "repose: 30 deg", "repose: 30 deg, release: never")
            + "frame: {mass: 400 kg, centre: [0 mm, -200 mm, 0 mm]}\n"
            + "ground: {y: -700 mm}\n"
            + "supports: {outline: [[-800 mm, -700 mm], [1700 mm, -700 mm], [1700 mm, 700 mm], [-800 mm, 700 mm]],"
            + " slope: 5 deg%s}\n";

    private static double capacity(String more, String site, String id) throws CannotComputeException {
        return find(swap(MACHINE, "%s", more) + site, id).capacity();
    }

    private static Finding find(String yaml, String id) throws CannotComputeException {
        return Checker.asFilled(Examples.read(yaml)).findings().stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Hard springs are hard ground; soft ones keep less slope, and wind with the slope still less; one that is soft below the stuck load is worse. */
    @Test
    void softTyresWindAndSlopeAddUp() throws CannotComputeException {
        String id = "tip-over/any-way-round";
        double ground = capacity("", "", id);
        assertThat(capacity(", stiffness: [1000000 N/mm]", "", id)).isCloseTo(ground, within(1e-4));
        double soft = capacity(", stiffness: [150 N/mm]", "", id);
        assertThat(soft).isLessThan(ground - Math.toRadians(1));
        assertThat(capacity(", stiffness: [150 N/mm]", "site: {wind-pressure: 500 Pa}\n", id))
                .isLessThan(soft - Math.toRadians(0.5));
        String stuck = "what-if/cake-stuck-along-the-+z-side";
        Finding even = find(
                swap(MACHINE, "slope: 5 deg", "slope: 30 deg", "%s", ", stiffness: [40 N/mm], soft: 100 %"), stuck);
        Finding one =
                find(swap(MACHINE, "slope: 5 deg", "slope: 30 deg", "%s", ", stiffness: [40 N/mm], soft: 40 %"), stuck);
        assertThat(one.utilisation()).isGreaterThan(even.utilisation());
        assertThat(one.note().metric()).contains("overturning");
    }
}
