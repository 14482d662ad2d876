// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.strength.CylinderShell;
import tipwright.strength.PatchLoad;
import tipwright.strength.ShellForces;
import tipwright.strength.ShellPatch;

/** A round shell under a load on a patch, against a published benchmark and against a double series summed term by term. */
class LocalShellLoadTest {
    private static final double MM = 1e-3;

    /**
     * Source: Lindberg, Olson and Cowper (1969), pinched cylinder, R/t 100, L/R 2, nu 0.3: 1.82489e-5 for R 300, t 3, E 3e6 (164.24 P /
     * (E t)), as printed in an open finite-element gallery (read). The series gives 1.82598e-5 for a point, 0.06 % off.
     */
    @Test
    void pinchedCylinder() {
        CylinderShell shell = new CylinderShell(300, 3, 600, 3e6, 0.3);
        assertThat(pinched(shell, 0.3)).isCloseTo(1.82489e-5, Percentage.withPercentage(0.1));
        assertThat(pinched(shell, 0.3)).isCloseTo(1.82598e-5, Percentage.withPercentage(0.02));
        // A wider patch moves less, and the narrower the nearer to the point.
        double last = 0;
        for (double half : new double[] {30, 10, 3, 1, 0.3}) {
            double moved = pinched(shell, half);
            assertThat(moved).isGreaterThan(last);
            last = moved;
        }
    }

    private static double pinched(CylinderShell shell, double half) {
        ShellPatch patch = new ShellPatch(shell, 300, half, half);
        PatchLoad one = new PatchLoad(1, 0, 0);
        return patch.at(one, 300, 0).moved() + patch.at(one, 300, Math.PI).moved();
    }

    /**
     * Source: own input set, two ways: R, t, L, side in mm, 5 kN at mid-length, E 200 GPa; moments and forces over the load, stresses in
     * MPa, dent in mm.
     */
    @ParameterizedTest
    @CsvSource({
        "600, 4, 4800, 100, 0.0878, 0.0494, 17.19, 22.97, 200.4, 140.6, 3.23",
        "600, 4, 2400, 100, 0.0828, 0.0480, 17.23, 21.74, 191.1, 135.2, 2.10",
        "600, 4, 4800, 200, 0.0412, 0.0166, 7.49, 16.53, 92.8, 65.6, 2.75",
        "600, 6, 4800, 100, 0.1035, 0.0636, 13.29, 16.16, 104.7, 75.4, 1.33",
        "600, 10, 4800, 150, 0.0890, 0.0523, 7.21, 9.32, 32.7, 23.4, 0.42"
    })
    void fiveRows(
            double radius,
            double wall,
            double length,
            double side,
            double mphi,
            double mx,
            double nphi,
            double nx,
            double around,
            double along,
            double dent) {
        double r = radius * MM;
        double t = wall * MM;
        CylinderShell shell = CylinderShell.steel(r, t, length * MM);
        double at = length / 2 * MM;
        ShellForces f = new ShellPatch(shell, at, side / 2 * MM, side / 2 * MM).at(new PatchLoad(5000, 0, 0), at, 0);
        Percentage half = Percentage.withPercentage(0.5);
        assertThat(f.mphi() / 5000).isCloseTo(mphi, half);
        assertThat(f.mx() / 5000).isCloseTo(mx, half);
        assertThat(f.nphi() * r / 5000).isCloseTo(nphi, half);
        assertThat(f.nx() * r / 5000).isCloseTo(nx, half);
        assertThat(f.around(t, 1) / 1e6).isCloseTo(around, half);
        assertThat(f.along(t, 1) / 1e6).isCloseTo(along, half);
        assertThat(f.moved() / MM).isCloseTo(dent, Percentage.withPercentage(1));
    }

    /** Source: own input set, two ways: Morley's equation by a double Fourier series, off the middle, with all three loads at once. */
    @ParameterizedTest
    @CsvSource({"0.7, 0, 0", "0.74, 0.06, 0.5", "0.64, -0.1, 1", "1.3, 0.8, 0.3", "0.1, 3.0, -1"})
    void allResultsOffTheMiddle(double place, double angle, double sign) {
        CylinderShell shell = CylinderShell.steel(0.6, 0.008, 2.0);
        ShellPatch patch = new ShellPatch(shell, 0.7, 0.06, 0.08);
        PatchLoad load = new PatchLoad(4000, sign * 300, 200);
        double[] sums = termByTerm(patch, load, place, angle);
        ShellForces f = patch.at(load, place, angle);
        double[] ours = {f.nx(), f.nphi(), f.mx(), f.mphi(), f.moved(), f.nxphi(), f.mxphi()};
        double[] scale = {6e4, 4e4, 400, 400, 5e-4, 4e4, 200};
        for (int i = 0; i < ours.length; i++) {
            assertThat(Math.abs(ours[i] - sums[i])).as("result %s", i).isLessThan(2e-3 * scale[i]);
        }
    }

    private static double[] termByTerm(ShellPatch patch, PatchLoad load, double x, double angle) {
        CylinderShell shell = patch.shell();
        double radius = shell.radius();
        double et = shell.modulus() * shell.wall();
        double nu = shell.poisson();
        double d = et * shell.wall() * shell.wall() / (12 * (1 - nu * nu));
        double a = patch.halfLength();
        double b = patch.halfWidth();
        double half = b / radius;
        double even = load.force() / (4 * a * b);
        double tip = 3 * load.along() / (4 * b * a * a);
        double roll = 3 * load.around() / (4 * a * b * b);
        double[] sum = new double[7];
        for (int m = 1; m < 1500; m++) {
            double wave = m * Math.PI / shell.length();
            double s = wave * wave;
            double flat = 4 / (shell.length() * wave) * Math.sin(wave * a) * Math.sin(wave * patch.place());
            double slant = 4
                    / (shell.length() * a * s)
                    * (Math.sin(wave * a) - wave * a * Math.cos(wave * a))
                    * Math.cos(wave * patch.place());
            double sin = Math.sin(wave * x);
            double cos = wave * Math.cos(wave * x);
            for (int n = 0; n < 600; n++) {
                double k = n / radius;
                double steady = n == 0 ? half / Math.PI : 2 / Math.PI * Math.sin(n * half) / n;
                double slanted =
                        n == 0 ? 0 : 2 / (Math.PI * half) * (Math.sin(n * half) / n - half * Math.cos(n * half)) / n;
                double p = (even * flat + tip * slant) * steady;
                double q = roll * flat * slanted;
                double value = p * Math.cos(n * angle) + q * Math.sin(n * angle);
                double slope = k * (q * Math.cos(n * angle) - p * Math.sin(n * angle));
                double g = s + k * k;
                double ring = 1 / (radius * radius);
                double w = g * g / (d * g * g * (g - ring) * (g - ring) + et * ring * s * s);
                double stress = et / radius * s / (g * g) * w;
                sum[0] += stress * k * k * value * sin;
                sum[1] += stress * s * value * sin;
                sum[2] += d * (s + nu * (k * k - ring)) * w * value * sin;
                sum[3] += d * (k * k - ring + nu * s) * w * value * sin;
                sum[4] += w * value * sin;
                sum[5] += stress * slope * cos;
                sum[6] -= d * (1 - nu) * w * slope * cos;
            }
        }
        return sum;
    }

    /**
     * Source: own input set, two ways: a ring as wide as the patch and the shell beside it is ten times wrong and must not come back as
     * a check of brackets.
     */
    @Test
    void aRingIsNoModelOfABracket() {
        double wide = 0.1 + 1.56 * Math.sqrt(0.6 * 0.004);
        double ring = 5000 * 0.6 / Math.PI / (wide * 0.004 * 0.004 / 6);
        CylinderShell shell = CylinderShell.steel(0.6, 0.004, 4.8);
        double ours = new ShellPatch(shell, 2.4, 0.05, 0.05)
                .worst(new PatchLoad(5000, 0, 0))
                .direct();
        assertThat(ring / ours).isGreaterThan(9);
    }
}
