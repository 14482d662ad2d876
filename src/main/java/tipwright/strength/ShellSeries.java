// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import java.util.Arrays;

/**
 * Forces in the wall of a round shell with diaphragm ends under a load on a rectangular patch. Around the shell a Fourier series;
 * along it the closed sum of the Fourier series, as each harmonic's equation has four poles that follow from two quadratics. Harmonic
 * 1, the shell as a beam, has a double pole and is summed term by term.
 *
 * <p>Source: Morley's equation of thin circular cylinders (1959), D g^2 (g - 1/R^2)^2 w + (E t / R^2) s^2 w = g^2 p for the waves
 * along s = (m pi / L)^2 and g = s + (n / R)^2, from memory; held against the pinched cylinder of Lindberg, Olson and Cowper (1969).
 */
final class ShellSeries {
    /** The series around the shell ends where the half width holds this many radians of the wave: 1e-4 of the greatest stress. */
    private static final double FINEST = 40;

    private static final int MOST = 40_000;
    private static final int LOADS = 3;

    /** Forces along and around, moments along and around, how far it moves. */
    private static final int RESULTS = 5;

    /** These, shear and twist. */
    private static final int ALL = RESULTS + 2;

    private final CylinderShell shell;
    private final ShellPatch patch;
    private final double d;
    private final double c;
    private final double q;
    private final double membrane;

    ShellSeries(CylinderShell shell, ShellPatch patch) {
        this.shell = shell;
        this.patch = patch;
        d = shell.bendingStiffness();
        c = 1 / (shell.radius() * shell.radius());
        membrane = shell.modulus() * shell.wall();
        q = Math.sqrt(membrane * c / d);
    }

    /**
     * Forces of unit loads at every meeting of some places along and some angles around.
     *
     * @param places along the shell from its first end, m
     * @param angles around from the patch's middle, rad
     * @return [place][angle]
     */
    UnitForces[][] units(double[] places, double[] angles) {
        double half = patch.halfWidth() / shell.radius();
        int last = (int) Math.min(MOST, Math.ceil(FINEST / half));
        double[][][] sums = new double[places.length][angles.length][LOADS * ALL];
        double[][] table = new double[places.length][4 * ALL];
        ShellWave wave =
                new ShellWave(shell.length(), patch.place() - patch.halfLength(), patch.place() + patch.halfLength());
        for (int n = 0; n <= last; n++) {
            harmonic(n, wave, places, table);
            double steady = n == 0 ? half / Math.PI : 2 / Math.PI * Math.sin(n * half) / n;
            double slanted =
                    n == 0 ? 0 : 2 / (Math.PI * half) * (Math.sin(n * half) / n - half * Math.cos(n * half)) / n;
            add(n, steady, slanted, angles, table, sums);
        }
        return scaled(sums);
    }

    private void add(int n, double steady, double slanted, double[] angles, double[][] table, double[][][] sums) {
        double k = n / shell.radius();
        for (int j = 0; j < angles.length; j++) {
            double cos = Math.cos(n * angles[j]);
            double sin = Math.sin(n * angles[j]);
            for (int i = 0; i < table.length; i++) {
                double[] t = table[i];
                double[] s = sums[i][j];
                for (int r = 0; r < RESULTS; r++) {
                    s[r] += steady * cos * t[4 * r];
                    s[ALL + r] += slanted * sin * t[4 * r];
                    s[2 * ALL + r] += steady * cos * t[4 * r + 1];
                }
                // Shear and twist go with the slopes both along and around.
                for (int r = RESULTS; r < ALL; r++) {
                    s[r] -= k * steady * sin * t[4 * r + 2];
                    s[ALL + r] += k * slanted * cos * t[4 * r + 2];
                    s[2 * ALL + r] -= k * steady * sin * t[4 * r + 3];
                }
            }
        }
    }

    /** Pressure of the unit loads: even for the force, slanted for the moments. */
    private UnitForces[][] scaled(double[][][] sums) {
        double a = patch.halfLength();
        double b = patch.halfWidth();
        double[] pressure = {1 / (4 * a * b), 3 / (4 * a * b * b), 3 / (4 * b * a * a)};
        UnitForces[][] all = new UnitForces[sums.length][sums[0].length];
        for (int i = 0; i < sums.length; i++) {
            for (int j = 0; j < sums[i].length; j++) {
                double[] s = sums[i][j];
                all[i][j] = new UnitForces(
                        forces(s, 0, pressure[0]), forces(s, ALL, pressure[1]), forces(s, 2 * ALL, pressure[2]));
            }
        }
        return all;
    }

    private static ShellForces forces(double[] s, int first, double p) {
        return new ShellForces(
                p * s[first],
                p * s[first + 1],
                p * s[first + 5],
                p * s[first + 2],
                p * s[first + 3],
                p * s[first + 6],
                p * s[first + 4]);
    }

    private void harmonic(int n, ShellWave wave, double[] places, double[][] table) {
        for (double[] row : table) {
            Arrays.fill(row, 0);
        }
        if (n == 1) {
            beam(places, table);
            return;
        }
        double k2 = n * n * c;
        if (n == 0) {
            // s^2 is cancelled: D (s - c)^2 + E t / R^2.
            pole(n, c, q, wave, places, table, 0, 2 * q);
            return;
        }
        // g^2 - (c + i q) g + i q k^2 = 0; the other two poles are the conjugates.
        double ar = c;
        double ai = q;
        double rr = ar * ar - ai * ai;
        double ri = 2 * ar * ai - 4 * q * k2;
        double size = Math.hypot(rr, ri);
        double wr = Math.sqrt((size + rr) / 2);
        double wi = wr > 0 ? ri / (2 * wr) : Math.sqrt(size);
        double g1r = (ar + wr) / 2;
        double g1i = (ai + wi) / 2;
        double g2r = (ar - wr) / 2;
        double g2i = (ai - wi) / 2;
        double s1r = g1r - k2;
        double s2r = g2r - k2;
        four(n, s1r, g1i, s2r, g2i, wave, places, table);
        four(n, s2r, g2i, s1r, g1i, wave, places, table);
    }

    /** One pole of four: divides by its distances from the other three. */
    private void four(
            int n, double sr, double si, double or, double oi, ShellWave wave, double[] places, double[][] table) {
        // (s - conj s) (s - o) (s - conj o), with s - conj s = 2 i si.
        double ar = sr - or;
        double pr = ar * ar - (si - oi) * (si + oi);
        double pi = ar * (si + oi) + ar * (si - oi);
        pole(n, sr, si, wave, places, table, -2 * si * pi, 2 * si * pr);
    }

    private void pole(
            int n, double sr, double si, ShellWave wave, double[] places, double[][] table, double dr, double di) {
        wave.pole(sr, si);
        double k2 = n * n * c;
        double square = d * (dr * dr + di * di);
        double fr = dr / square;
        double fi = -di / square;
        // g^2, or 1 where harmonic 0 has s^2 cancelled.
        double gr = sr + k2;
        double g2r = n == 0 ? 1 : gr * gr - si * si;
        double g2i = n == 0 ? 0 : 2 * gr * si;
        double nu = shell.poisson();
        double ring = k2 - c;
        double et = membrane / shell.radius();
        double hr = fr * g2r - fi * g2i;
        double hi = fr * g2i + fi * g2r;
        double[] cr = new double[ALL];
        double[] ci = new double[ALL];
        // N along: E t s k^2 / (R g^2); N around: E t s^2 / (R g^2); M along, M around; w; N and M of shear and twist.
        cr[0] = n == 0 ? 0 : et * k2 * (fr * sr - fi * si);
        ci[0] = n == 0 ? 0 : et * k2 * (fr * si + fi * sr);
        double s2r = n == 0 ? 1 : sr * sr - si * si;
        double s2i = n == 0 ? 0 : 2 * sr * si;
        cr[1] = et * (fr * s2r - fi * s2i);
        ci[1] = et * (fr * s2i + fi * s2r);
        moment(cr, ci, 2, hr, hi, sr + nu * ring, si);
        moment(cr, ci, 3, hr, hi, ring + nu * sr, nu * si);
        cr[4] = hr;
        ci[4] = hi;
        cr[5] = n == 0 ? 0 : et * (fr * sr - fi * si);
        ci[5] = n == 0 ? 0 : et * (fr * si + fi * sr);
        cr[6] = -d * (1 - nu) * hr;
        ci[6] = -d * (1 - nu) * hi;
        for (int i = 0; i < places.length; i++) {
            wave.at(places[i]);
            for (int r = 0; r < ALL; r++) {
                for (int load = 0; load < 4; load++) {
                    // The conjugate pole adds as much again of the real part.
                    table[i][4 * r + load] += 2 * (cr[r] * wave.answer[2 * load] - ci[r] * wave.answer[2 * load + 1]);
                }
            }
        }
    }

    private void moment(double[] cr, double[] ci, int r, double hr, double hi, double fr, double fi) {
        cr[r] = d * (hr * fr - hi * fi);
        ci[r] = d * (hr * fi + hi * fr);
    }

    /** Harmonic 1 term by term along the shell. */
    private void beam(double[] places, double[][] table) {
        double a = patch.halfLength();
        double length = shell.length();
        int last = (int) Math.min(4000, Math.max(200, Math.ceil(20 * length / a)));
        double et = membrane / shell.radius();
        double nu = shell.poisson();
        double[] part = new double[4];
        for (int m = 1; m <= last; m++) {
            double wave = m * Math.PI / length;
            double s = wave * wave;
            double g = s + c;
            double steady = 4 / (length * wave) * Math.sin(wave * a) * Math.sin(wave * patch.place());
            double tipped = 4
                    / (length * a * s)
                    * (Math.sin(wave * a) - wave * a * Math.cos(wave * a))
                    * Math.cos(wave * patch.place());
            double h = 1 / (s * s * (d * g * g + membrane * c));
            double w = h * g * g;
            double[] result = {
                et * s * c * h, et * s * s * h, d * s * w, d * nu * s * w, w, et * s * h, -d * (1 - nu) * w
            };
            for (int i = 0; i < places.length; i++) {
                double sin = Math.sin(wave * places[i]);
                double cos = wave * Math.cos(wave * places[i]);
                part[0] = steady * sin;
                part[1] = tipped * sin;
                part[2] = steady * cos;
                part[3] = tipped * cos;
                for (int r = 0; r < ALL; r++) {
                    for (int load = 0; load < 4; load++) {
                        table[i][4 * r + load] += result[r] * part[load];
                    }
                }
            }
        }
    }
}
