// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.quantity.UnitSystem;

/** What must hold for any patch on any shell. */
class ShellPatchPropertyTest {
    private static final CylinderShell SHELL = CylinderShell.steel(0.6, 0.004, 2.4);
    private static final ShellPatch PATCH = new ShellPatch(SHELL, 0.9, 0.06, 0.08);
    private static final PatchLoad FORCE = new PatchLoad(5000, 0, 0);
    private static final PatchLoad ROLL = new PatchLoad(0, 300, 0);
    private static final PatchLoad TIP = new PatchLoad(0, 0, 300);

    private static double[] all(ShellForces f) {
        return new double[] {f.nx(), f.nphi(), f.mx(), f.mphi(), f.moved(), f.nxphi(), f.mxphi()};
    }

    private static void same(ShellForces a, ShellForces b, double... signs) {
        double[] one = all(a);
        double[] other = all(b);
        for (int i = 0; i < one.length; i++) {
            double sign = signs.length == 0 ? 1 : signs[Math.min(i, 5) < 5 ? 0 : 1];
            assertThat(other[i])
                    .as("result %s", i)
                    .isCloseTo(sign * one[i], within(1e-6 * (1e-9 + Math.abs(one[i])) + 1e-9));
        }
    }

    @Test
    void loadsAddUp() {
        PatchLoad sum = FORCE.times(2).plus(ROLL.times(-1)).plus(TIP.times(3));
        ShellForces together = PATCH.at(sum, 0.92, 0.05);
        double[] f = all(PATCH.at(FORCE, 0.92, 0.05));
        double[] r = all(PATCH.at(ROLL, 0.92, 0.05));
        double[] t = all(PATCH.at(TIP, 0.92, 0.05));
        for (int i = 0; i < f.length; i++) {
            double expected = 2 * f[i] - r[i] + 3 * t[i];
            assertThat(all(together)[i]).isCloseTo(expected, within(1e-9 * (1 + Math.abs(expected))));
        }
    }

    @Test
    void leftAndRightAreAlike() {
        same(PATCH.at(FORCE, 0.93, 0.07), PATCH.at(FORCE, 0.93, -0.07), 1, -1);
        same(PATCH.at(ROLL, 0.93, 0.07), PATCH.at(ROLL, 0.93, -0.07), -1, 1);
        same(PATCH.at(TIP, 0.93, 0.07), PATCH.at(TIP, 0.93, -0.07), 1, -1);
    }

    @Test
    void bothEndsAreAlike() {
        ShellPatch other = new ShellPatch(SHELL, 1.5, 0.06, 0.08);
        same(PATCH.at(FORCE, 0.93, 0.07), other.at(FORCE, 1.47, 0.07), 1, -1);
        same(PATCH.at(ROLL, 0.93, 0.07), other.at(ROLL, 1.47, 0.07), 1, -1);
        same(PATCH.at(TIP, 0.93, 0.07), other.at(TIP, 1.47, 0.07), -1, 1);
        assertThat(PATCH.worst(TIP).equivalent())
                .isCloseTo(other.worst(TIP).equivalent(), Percentage.withPercentage(1e-6));
    }

    /** Four small patches side by side with a quarter of the force each are the large one. */
    @Test
    void aPatchIsTheSumOfItsQuarters() {
        double place = 0.96;
        double angle = 0.1;
        double[] sum = new double[7];
        for (int i = -1; i <= 1; i += 2) {
            for (int j = -1; j <= 1; j += 2) {
                ShellPatch quarter = new ShellPatch(SHELL, 0.9 + i * 0.03, 0.03, 0.04);
                double[] part = all(quarter.at(FORCE.times(0.25), place, angle - j * 0.04 / 0.6));
                for (int k = 0; k < 7; k++) {
                    sum[k] += part[k];
                }
            }
        }
        double[] whole = all(PATCH.at(FORCE, place, angle));
        double[] scale = {1e5, 1e5, 400, 400, 3e-3, 1e5, 400};
        for (int k = 0; k < 7; k++) {
            assertThat(sum[k]).as("result %s", k).isCloseTo(whole[k], within(1e-3 * scale[k]));
        }
    }

    /** A pair of patches pushing and pulling is a moment, of which places far away feel the less how it is brought in, the nearer they are. */
    @Test
    void forcesApartAreAMoment() {
        double far = 1.0;
        double last = 1;
        for (double arm : new double[] {0.3, 0.15, 0.075}) {
            ShellPatch one = new ShellPatch(SHELL, 1.2, 0.03, 0.02);
            PatchLoad push = FORCE.times(300 / arm / 5000);
            double pair = one.at(push, 1.2, far - arm / 2 / 0.6).moved()
                    - one.at(push, 1.2, far + arm / 2 / 0.6).moved();
            double rolled =
                    new ShellPatch(SHELL, 1.2, 0.03, arm / 2).at(ROLL, 1.2, far).moved();
            double off = Math.abs(rolled / pair - 1);
            assertThat(off).isLessThan(0.5 * last);
            last = off;
        }
        assertThat(last).isLessThan(0.01);
    }

    @Test
    void endsStandStill() {
        for (PatchLoad load : new PatchLoad[] {FORCE, ROLL, TIP}) {
            double most = PATCH.worst(load).moved();
            for (double end : new double[] {0, 2.4}) {
                ShellForces f = PATCH.at(load, end, 0.1);
                assertThat(f.moved()).isCloseTo(0, within(1e-6 * most));
                assertThat(f.nx()).isCloseTo(0, within(1.0));
                assertThat(f.mx()).isCloseTo(0, within(1e-3));
            }
        }
    }

    /** Whatever is cut out around the shell carries the load to its ends: shear in the wall adds up to the reaction. */
    @Test
    void forcesBalance() {
        double place = 0.5;
        int steps = 720;
        double sideways = 0;
        double turning = 0;
        for (int i = 0; i < steps; i++) {
            double angle = 2 * Math.PI * i / steps;
            ShellForces f = PATCH.at(FORCE, place, angle);
            sideways += f.nxphi() * Math.sin(angle) * 0.6 * 2 * Math.PI / steps;
            turning += f.nx() * Math.cos(angle) * 0.36 * 2 * Math.PI / steps;
        }
        double reaction = 5000 * (2.4 - 0.9) / 2.4 * Math.sin(0.08 / 0.6) / (0.08 / 0.6);
        assertThat(Math.abs(sideways)).isCloseTo(reaction, Percentage.withPercentage(1));
        assertThat(Math.abs(turning)).isCloseTo(reaction * place, Percentage.withPercentage(1));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.003, 0.004, 0.006, 0.008, 0.010, 0.016})
    void aThickerWallBearsMore(double wall) {
        for (PatchLoad load : new PatchLoad[] {FORCE, ROLL, TIP}) {
            ShellPatch.Worst thin = new ShellPatch(SHELL.withWall(wall), 0.9, 0.05, 0.05).worst(load);
            ShellPatch.Worst thick = new ShellPatch(SHELL.withWall(1.1 * wall), 0.9, 0.05, 0.05).worst(load);
            assertThat(thick.equivalent()).isLessThan(thin.equivalent());
            assertThat(thick.moved()).isLessThan(thin.moved());
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.04, 0.06, 0.1, 0.15})
    void aLargerFootprintBearsMore(double half) {
        for (PatchLoad load : new PatchLoad[] {FORCE, ROLL, TIP}) {
            double small = new ShellPatch(SHELL, 1.2, half, half).worst(load).equivalent();
            assertThat(new ShellPatch(SHELL, 1.2, 1.2 * half, half).worst(load).equivalent())
                    .isLessThan(small);
            assertThat(new ShellPatch(SHELL, 1.2, half, 1.2 * half).worst(load).equivalent())
                    .isLessThan(small);
        }
    }

    @Test
    void theWorstPlaceIsNotMissedByMuch() {
        for (PatchLoad load : new PatchLoad[] {FORCE, ROLL, TIP, new PatchLoad(5000, 200, -300)}) {
            double most = 0;
            for (int i = -12; i <= 12; i++) {
                for (int j = -12; j <= 12; j++) {
                    ShellForces f = PATCH.at(load, 0.9 + 0.06 * i / 10, 0.08 * j / 10 / 0.6);
                    most = Math.max(most, f.equivalent(0.004));
                }
            }
            assertThat(PATCH.worst(load).equivalent()).isBetween(0.98 * most, most * (1 + 1e-9));
        }
    }

    @Test
    void refusesWhatIsNoShellOrNoPatch() {
        assertThatThrownBy(() -> CylinderShell.steel(0.6, 0.13, 2)).hasMessageContaining("fifth");
        assertThatThrownBy(() -> CylinderShell.steel(0, 0.1, 2)).hasMessageContaining("radius");
        assertThatThrownBy(() -> CylinderShell.steel(0.6, Double.NaN, 2)).hasMessageContaining("wall");
        assertThatThrownBy(() -> new CylinderShell(1, 0.01, 2, 2e11, 0.5)).hasMessageContaining("Poisson");
        assertThatThrownBy(() -> new ShellPatch(SHELL, 0.05, 0.06, 0.05)).hasMessageContaining("along the shell");
        assertThatThrownBy(() -> new ShellPatch(SHELL, 2.38, 0.06, 0.05)).hasMessageContaining("along the shell");
        assertThatThrownBy(() -> new ShellPatch(SHELL, 1, 0.06, 0.61)).hasMessageContaining("width of the seat");
        assertThatThrownBy(() -> new ShellPatch(SHELL, 1, 0, 0.05)).hasMessageContaining("length of the seat");
    }

    @Test
    void tellsInTheUnitsOfTheReaderHowFarTheRuleReaches() {
        assertThatThrownBy(() -> new ShellPatch(SHELL, 0.05, 0.06, 0.05))
                .isInstanceOfSatisfying(OutOfRangeException.class, e -> {
                    assertThat(e.reason().show(UnitSystem.METRIC)).contains("is 50 mm;", "from 60 mm to");
                    assertThat(e.reason().show(UnitSystem.US))
                            .contains("in; the rule holds from")
                            .doesNotContain("mm");
                });
    }

    @Test
    void padSpreadsTheLoad() {
        PatchLoad load = new PatchLoad(5000, 200, 200);
        double bare = PATCH.worst(load).equivalent();
        double last = bare;
        for (double grow : new double[] {1.25, 1.5, 2}) {
            double padded = new PadPlate(0.006, 0.06 * grow, 0.08 * grow)
                    .influence(PATCH)
                    .worst(load)
                    .equivalent();
            assertThat(padded).isLessThan(last);
            last = padded;
        }
        // No larger than the bracket it is no help; hardly there it is none either.
        assertThat(new PadPlate(0.006, 0.06, 0.08).influence(PATCH).worst(load).equivalent())
                .isCloseTo(bare, within(1e-3));
        assertThat(new PadPlate(1e-5, 0.2, 0.2).influence(PATCH).worst(load).equivalent())
                .isCloseTo(bare, Percentage.withPercentage(1e-3));
        assertThatThrownBy(() -> new PadPlate(0.006, 0.05, 0.1).influence(PATCH))
                .hasMessageContaining("pad");
        assertThat(PadPlate.together(0.004, 0.004)).isCloseTo(0.004 * Math.sqrt(2), within(1e-12));
        assertThat(PadPlate.together(0.004, 0.006)).isEqualTo(PadPlate.together(0.006, 0.004));
    }
}
