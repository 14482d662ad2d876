// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

/**
 * The closed form of the straight drive for many candidates at once: each loop runs over the candidates of a block with no branch,
 * so that the compiler can do several at a time. Immutable; allocates nothing while it runs.
 *
 * <p>With b the tank pin from the pivot at a tilt, a the frame pin, L = |b - a|, u = (b - a)/L, arm = u x b and h = u . b, friction
 * in the pins takes kappa = (rA |h| + rB |L - h|)/L off the arm and pushes sideways with q = (rB sgn(L - h) - rA sgn h)/L; the
 * bearings add r1 R1 + r2 R2 to the moment. F arm = M +- (kappa |F| + r1 R1 + r2 R2), R = share (F u +- q |F| n) + G. The bearings'
 * part is found by two repetitions and Aitken's extrapolation. Source: moment balance about the pivot; Coulomb friction
 * in a journal (from memory).
 */
final class Kernel {
    /** Numbers for one load at one tilt and way: moment; 2 share G1, 2 share G2; G1 squared, G2 squared. */
    static final int FIGURES = 7;

    private static final double TINY = 1e-300;

    private final double[] cos;
    private final double[] sin;
    private final double[] heaviest;
    private final double[] lightest;
    /** [tilt][load * FIGURES + figure]. */
    private final double[][] raise;

    private final double[][] lower;
    private final double share1;
    private final double share2;
    private final double radius1;
    private final double radius2;
    private final double frameRadius;
    private final double tankRadius;

    /**
     * The kernel for a tank.
     *
     * @param pinRadii friction radii of frame pin and tank pin, m
     */
    Kernel(TiltLoads loads, double[] pinRadii) {
        int tilts = loads.tilts().length;
        cos = new double[tilts];
        sin = new double[tilts];
        heaviest = new double[tilts];
        lightest = new double[tilts];
        raise = new double[tilts][];
        lower = new double[tilts][];
        share1 = loads.share()[0];
        share2 = loads.share()[1];
        radius1 = loads.radius()[0];
        radius2 = loads.radius()[1];
        frameRadius = pinRadii[0];
        tankRadius = pinRadii[1];
        for (int i = 0; i < tilts; i++) {
            cos[i] = Math.cos(loads.tilts()[i]);
            sin[i] = Math.sin(loads.tilts()[i]);
            heaviest[i] = Double.NEGATIVE_INFINITY;
            lightest[i] = Double.POSITIVE_INFINITY;
            for (double[][][] load : loads.loads()) {
                heaviest[i] = Math.max(heaviest[i], load[i][0][0]);
                lightest[i] = Math.min(lightest[i], load[i][0][0]);
            }
            raise[i] = Slots.of(loads, i, 1);
            lower[i] = Slots.of(loads, i, 2);
        }
    }

    int tilts() {
        return cos.length;
    }

    /** Length and arm alone over all tilts: enough to see whether a candidate can be right at all. */
    void shape(Lanes l, int lanes) {
        start(l, lanes);
        for (int i = 0; i < cos.length; i++) {
            lengths(l.frameX, l.frameY, l.tankX, l.tankY, l.sign, l.shortest, l.longest, l.arm, cos[i], sin[i], lanes);
        }
    }

    private void start(Lanes l, int lanes) {
        for (int j = 0; j < lanes; j++) {
            double bx = l.tankX[j] * cos[0] + l.tankY[j] * sin[0];
            double by = l.tankY[j] * cos[0] - l.tankX[j] * sin[0];
            l.sign[j] = l.frameY[j] * bx - l.frameX[j] * by >= 0 ? 1 : -1;
            l.shortest[j] = Double.POSITIVE_INFINITY;
            l.longest[j] = 0;
            l.arm[j] = Double.POSITIVE_INFINITY;
            l.free[j] = Double.POSITIVE_INFINITY;
            l.restMost[j] = Double.NEGATIVE_INFINITY;
            l.restLeast[j] = Double.POSITIVE_INFINITY;
            l.most[j] = Double.NEGATIVE_INFINITY;
            l.least[j] = Double.POSITIVE_INFINITY;
            l.bearing1[j] = 0;
            l.bearing2[j] = 0;
        }
    }

    private static void lengths(
            double[] ax,
            double[] ay,
            double[] tx,
            double[] ty,
            double[] sign,
            double[] shortest,
            double[] longest,
            double[] least,
            double c,
            double s,
            int lanes) {
        for (int j = 0; j < lanes; j++) {
            double bx = tx[j] * c + ty[j] * s;
            double by = ty[j] * c - tx[j] * s;
            double lx = bx - ax[j];
            double ly = by - ay[j];
            double square = lx * lx + ly * ly;
            shortest[j] = Math.min(shortest[j], square);
            longest[j] = Math.max(longest[j], square);
            least[j] = Math.min(least[j], sign[j] * (lx * by - ly * bx) / Math.sqrt(square));
        }
    }

    /** Everything over all tilts and loads. */
    void run(Lanes l, int lanes) {
        start(l, lanes);
        for (int i = 0; i < cos.length; i++) {
            lengths(l.frameX, l.frameY, l.tankX, l.tankY, l.sign, l.shortest, l.longest, l.arm, cos[i], sin[i], lanes);
            pose(l, l.frameX, l.frameY, l.tankX, l.tankY, l.sign, l.ux, l.uy, cos[i], sin[i], lanes);
            rest(l.easy, l.hard, l.restMost, l.restLeast, l.free, heaviest[i], lightest[i], lanes);
            double[] up = raise[i];
            for (int k = 0; k < up.length; k += FIGURES) {
                load(l, up, k, 1, lanes);
            }
            double[] down = lower[i];
            for (int k = 0; k < down.length; k += FIGURES) {
                load(l, down, k, -1, lanes);
            }
        }
    }

    private void pose(
            Lanes l,
            double[] ax,
            double[] ay,
            double[] tx,
            double[] ty,
            double[] sign,
            double[] ux,
            double[] uy,
            double c,
            double s,
            int lanes) {
        double[] easy = l.easy;
        double[] hard = l.hard;
        double[] across = l.across;
        for (int j = 0; j < lanes; j++) {
            double bx = tx[j] * c + ty[j] * s;
            double by = ty[j] * c - tx[j] * s;
            double lx = bx - ax[j];
            double ly = by - ay[j];
            double square = lx * lx + ly * ly;
            double one = 1 / Math.sqrt(square);
            double length = square * one;
            double vx = sign[j] * lx * one;
            double vy = sign[j] * ly * one;
            double arm = vx * by - vy * bx;
            double h = (lx * bx + ly * by) * one;
            double rest = length - h;
            double sizeH = Math.abs(h);
            double sizeRest = Math.abs(rest);
            double kappa = (frameRadius * sizeH + tankRadius * sizeRest) * one;
            double signs = sign[j] * one / (sizeH * sizeRest + TINY);
            across[j] = (tankRadius * rest * sizeH - frameRadius * h * sizeRest) * signs;
            double both = 1 / (arm * arm - kappa * kappa);
            easy[j] = (arm - kappa) * both;
            hard[j] = (arm + kappa) * both;
            ux[j] = vx;
            uy[j] = vy;
        }
    }

    /** easy = 1/(arm + kappa) and hard = 1/(arm - kappa), so that 2 easy hard/(easy + hard) = 1/arm. */
    private static void rest(
            double[] easy,
            double[] hard,
            double[] most,
            double[] least,
            double[] free,
            double high,
            double low,
            int n) {
        for (int j = 0; j < n; j++) {
            double arm = 2 * easy[j] * hard[j] / (easy[j] + hard[j]);
            most[j] = Math.max(most[j], high * arm);
            least[j] = Math.min(least[j], low * arm);
            free[j] = Math.min(free[j], hard[j]);
        }
    }

    private void load(Lanes l, double[] figures, int k, int way, int lanes) {
        double g1x = figures[k + 1];
        double g1y = figures[k + 2];
        double g2x = figures[k + 3];
        double g2y = figures[k + 4];
        double g1 = figures[k + 5];
        double g2 = figures[k + 6];
        if (way > 0) {
            raise(l, l.ux, l.uy, l.easy, l.hard, l.across, figures[k], g1x, g1y, g2x, g2y, g1, g2, lanes);
        } else {
            lower(l, l.ux, l.uy, l.easy, l.hard, l.across, figures[k], g1x, g1y, g2x, g2y, g1, g2, lanes);
        }
    }

    private void raise(
            Lanes l,
            double[] ux,
            double[] uy,
            double[] easy,
            double[] hard,
            double[] across,
            double moment,
            double g1x,
            double g1y,
            double g2x,
            double g2y,
            double g1,
            double g2,
            int lanes) {
        double[] most = l.most;
        double[] bearing1 = l.bearing1;
        double[] bearing2 = l.bearing2;
        double s1 = share1 * share1;
        double s2 = share2 * share2;
        double r1 = radius1;
        double r2 = radius2;
        for (int j = 0; j < lanes; j++) {
            double q = across[j];
            double size = 1 + q * q;
            double along1 = ux[j] * g1x + uy[j] * g1y;
            double along2 = ux[j] * g2x + uy[j] * g2y;
            double side1 = q * (uy[j] * g1x - ux[j] * g1y);
            double side2 = q * (uy[j] * g2x - ux[j] * g2y);
            double f = Math.max(moment * easy[j], moment * hard[j]);
            double square = f * f * size;
            double w = Math.abs(f);
            double m = moment
                    + r1 * Math.sqrt(Math.abs(square * s1 + f * along1 + w * side1 + g1))
                    + r2 * Math.sqrt(Math.abs(square * s2 + f * along2 + w * side2 + g2));
            f = Math.max(m * easy[j], m * hard[j]);
            square = f * f * size;
            w = Math.abs(f);
            double again = moment
                    + r1 * Math.sqrt(Math.abs(square * s1 + f * along1 + w * side1 + g1))
                    + r2 * Math.sqrt(Math.abs(square * s2 + f * along2 + w * side2 + g2));
            double change = again - m;
            m = again + change * change / (m - moment - change + TINY);
            f = Math.max(m * easy[j], m * hard[j]);
            square = f * f * size;
            w = Math.abs(f);
            most[j] = Math.max(most[j], f);
            bearing1[j] = Math.max(bearing1[j], square * s1 + f * along1 + w * side1 + g1);
            bearing2[j] = Math.max(bearing2[j], square * s2 + f * along2 + w * side2 + g2);
        }
    }

    private void lower(
            Lanes l,
            double[] ux,
            double[] uy,
            double[] easy,
            double[] hard,
            double[] across,
            double moment,
            double g1x,
            double g1y,
            double g2x,
            double g2y,
            double g1,
            double g2,
            int lanes) {
        double[] least = l.least;
        double[] bearing1 = l.bearing1;
        double[] bearing2 = l.bearing2;
        double s1 = share1 * share1;
        double s2 = share2 * share2;
        double r1 = radius1;
        double r2 = radius2;
        for (int j = 0; j < lanes; j++) {
            double q = across[j];
            double size = 1 + q * q;
            double along1 = ux[j] * g1x + uy[j] * g1y;
            double along2 = ux[j] * g2x + uy[j] * g2y;
            double side1 = q * (ux[j] * g1y - uy[j] * g1x);
            double side2 = q * (ux[j] * g2y - uy[j] * g2x);
            double f = Math.min(moment * easy[j], moment * hard[j]);
            double square = f * f * size;
            double w = Math.abs(f);
            double m = moment
                    - r1 * Math.sqrt(Math.abs(square * s1 + f * along1 + w * side1 + g1))
                    - r2 * Math.sqrt(Math.abs(square * s2 + f * along2 + w * side2 + g2));
            f = Math.min(m * easy[j], m * hard[j]);
            square = f * f * size;
            w = Math.abs(f);
            double again = moment
                    - r1 * Math.sqrt(Math.abs(square * s1 + f * along1 + w * side1 + g1))
                    - r2 * Math.sqrt(Math.abs(square * s2 + f * along2 + w * side2 + g2));
            double change = again - m;
            m = again + change * change / (m - moment - change - TINY);
            f = Math.min(m * easy[j], m * hard[j]);
            square = f * f * size;
            w = Math.abs(f);
            least[j] = Math.min(least[j], f);
            bearing1[j] = Math.max(bearing1[j], square * s1 + f * along1 + w * side1 + g1);
            bearing2[j] = Math.max(bearing2[j], square * s2 + f * along2 + w * side2 + g2);
        }
    }
}
