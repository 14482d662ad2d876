// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

/**
 * The closed form of the straight drive for many candidates at once: each loop runs over the candidates of a block with no branch,
 * so that the compiler can do several at a time. Immutable; allocates nothing while it runs.
 *
 * <p>With b the tank pin from the pivot at a tilt, a the frame pin, L = |b - a|, u = (b - a)/L, arm = u x b and h = u . b, friction
 * in the pins takes kappa = (rA |h| + rB |L - h|)/L off the arm and pushes sideways with q = (rB sgn(L - h) - rA sgn h)/L; the
 * bearings add r1 R1 + r2 R2 to the moment. F arm = M +- (kappa |F| + r1 R1 + r2 R2), R = share (F u +- q |F| n) + G. The bearings'
 * part is found by repetition: once where they roll, which leaves a relative error of (r/arm)^2; twice and by Aitken's
 * extrapolation where they rub. Source: moment balance about the pivot; Coulomb friction
 * in a journal (from memory).
 */
final class Kernel {
    /**
     * Numbers for one load at one tilt: whether raise and lower differ in more than friction; then for raise and for lower moment;
     * 2 share G1, 2 share G2; G1 squared, G2 squared.
     */
    static final int FIGURES = 15;

    static final int RAISE = 1;
    static final int LOWER = 8;

    /** Friction radius of bearings that roll, at most, m. */
    private static final double ROLLING = 0.0006;

    private final double[] cos;
    private final double[] sin;
    private final double[] heaviest;
    private final double[] lightest;
    /** [tilt][load * FIGURES + figure]. */
    private final double[][] loads;

    private final double square1;
    private final double square2;
    private final double radius1;
    private final double radius2;
    private final double frameRadius;
    private final double tankRadius;
    /** Whether the bearings rub so much that once is not enough. */
    private final boolean rough;

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
        this.loads = new double[tilts][];
        square1 = loads.share()[0] * loads.share()[0];
        square2 = loads.share()[1] * loads.share()[1];
        rough = Math.max(loads.radius()[0], loads.radius()[1]) > ROLLING;
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
            this.loads[i] = Slots.of(loads, i);
        }
    }

    /** Length and arm alone over all tilts: enough to see whether a candidate can be right at all. */
    void shape(Lanes l, int lanes) {
        start(l, lanes);
        for (int i = 0; i < cos.length; i++) {
            place(l, cos[i], sin[i], lanes);
        }
    }

    /** Leaves the length in 'square', the arm in 'moment' and how far the pin is along the line in 'force'. */
    private static void place(Lanes l, double c, double s, int lanes) {
        LaneLoops.turn(l.tankX, l.tankY, l.along1, l.along2, c, s, lanes);
        LaneLoops.length(l.frameX, l.frameY, l.along1, l.along2, l.square, lanes);
        LaneLoops.line(l.frameX, l.frameY, l.along1, l.along2, l.sign, l.square, l.ux, l.uy, lanes);
        LaneLoops.arm(l.along1, l.along2, l.ux, l.uy, l.sign, l.moment, l.force, lanes);
        LaneLoops.span(l.shortest, l.longest, l.square, lanes);
        LaneLoops.least(l.arm, l.moment, lanes);
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

    /** Everything over all tilts and loads. */
    void run(Lanes l, int lanes) {
        start(l, lanes);
        for (int i = 0; i < cos.length; i++) {
            pose(l, cos[i], sin[i], lanes);
            rest(l.easy, l.hard, l.restMost, l.restLeast, l.free, heaviest[i], lightest[i], lanes);
            for (int k = 0; k < loads[i].length; k += FIGURES) {
                load(l, loads[i], k, lanes);
            }
        }
    }

    private void pose(Lanes l, double c, double s, int lanes) {
        place(l, c, s, lanes);
        LaneLoops.pins(l.force, l.square, l.again, l.forceSize, frameRadius, tankRadius, lanes);
        LaneLoops.sideways(l.force, l.forceSize, l.square, l.sign, l.across, l.size, frameRadius, tankRadius, lanes);
        LaneLoops.ease(l.moment, l.again, l.easy, l.hard, lanes);
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

    private void load(Lanes l, double[] figures, int k, int lanes) {
        LaneLoops.along(l.ux, l.uy, l.along1, l.along2, figures, k + RAISE + 1, lanes);
        LaneLoops.across(l.ux, l.uy, l.across, l.side1, l.side2, figures, k + RAISE + 1, 1, lanes);
        balance(l, figures, k + RAISE, 1, lanes);
        LaneLoops.force(l.moment, l.easy, l.hard, l.size, l.force, l.forceSize, l.square, lanes);
        LaneLoops.most(l.most, l.force, lanes);
        bearings(l, figures, k + RAISE, lanes);
        if (figures[k] != 0) {
            LaneLoops.along(l.ux, l.uy, l.along1, l.along2, figures, k + LOWER + 1, lanes);
        }
        LaneLoops.across(l.ux, l.uy, l.across, l.side1, l.side2, figures, k + LOWER + 1, -1, lanes);
        balance(l, figures, k + LOWER, -1, lanes);
        LaneLoops.forceBack(l.moment, l.easy, l.hard, l.size, l.force, l.forceSize, l.square, lanes);
        LaneLoops.least(l.least, l.force, lanes);
        bearings(l, figures, k + LOWER, lanes);
    }

    /** Leaves the moment with the friction of the bearings in 'moment'. */
    private void balance(Lanes l, double[] figures, int k, int way, int lanes) {
        double moment = figures[k];
        LaneLoops.fill(l.moment, moment, lanes);
        repeat(l, l.moment, figures, k, way, lanes);
        if (rough) {
            LaneLoops.copy(l.again, l.moment, lanes);
            repeat(l, l.again, figures, k, way, lanes);
            LaneLoops.extrapolate(l.moment, l.again, moment, lanes);
        }
    }

    private void repeat(Lanes l, double[] moment, double[] figures, int k, int way, int lanes) {
        if (way > 0) {
            LaneLoops.force(moment, l.easy, l.hard, l.size, l.force, l.forceSize, l.square, lanes);
        } else {
            LaneLoops.forceBack(moment, l.easy, l.hard, l.size, l.force, l.forceSize, l.square, lanes);
        }
        LaneLoops.friction(
                figures[k],
                moment,
                l.force,
                l.forceSize,
                l.square,
                l.along1,
                l.side1,
                way * radius1,
                square1,
                figures[k + 5],
                lanes);
        LaneLoops.addFriction(
                moment,
                l.force,
                l.forceSize,
                l.square,
                l.along2,
                l.side2,
                way * radius2,
                square2,
                figures[k + 6],
                lanes);
    }

    private void bearings(Lanes l, double[] figures, int k, int lanes) {
        LaneLoops.bearing(
                l.bearing1, l.force, l.forceSize, l.square, l.along1, l.side1, square1, figures[k + 5], lanes);
        LaneLoops.bearing(
                l.bearing2, l.force, l.forceSize, l.square, l.along2, l.side2, square2, figures[k + 6], lanes);
    }
}
