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

    private final float[] cos;
    private final float[] sin;
    private final float[] heaviest;
    private final float[] lightest;
    /** [tilt][load * FIGURES + figure]. */
    private final float[][] loads;

    private final float square1;
    private final float square2;
    private final float radius1;
    private final float radius2;
    private final float frameRadius;
    private final float tankRadius;
    /** Whether the bearings rub so much that once is not enough. */
    private final boolean rough;

    /**
     * The kernel for a tank.
     *
     * @param pinRadii friction radii of frame pin and tank pin, m
     */
    Kernel(TiltLoads loads, double[] pinRadii) {
        int tilts = loads.tilts().length;
        cos = new float[tilts];
        sin = new float[tilts];
        heaviest = new float[tilts];
        lightest = new float[tilts];
        this.loads = new float[tilts][];
        square1 = (float) (loads.share()[0] * loads.share()[0]);
        square2 = (float) (loads.share()[1] * loads.share()[1]);
        rough = Math.max(loads.radius()[0], loads.radius()[1]) > ROLLING;
        radius1 = (float) loads.radius()[0];
        radius2 = (float) loads.radius()[1];
        frameRadius = (float) pinRadii[0];
        tankRadius = (float) pinRadii[1];
        for (int i = 0; i < tilts; i++) {
            cos[i] = (float) Math.cos(loads.tilts()[i]);
            sin[i] = (float) Math.sin(loads.tilts()[i]);
            heaviest[i] = Float.NEGATIVE_INFINITY;
            lightest[i] = Float.POSITIVE_INFINITY;
            for (double[][][] load : loads.loads()) {
                heaviest[i] = Math.max(heaviest[i], (float) load[i][0][0]);
                lightest[i] = Math.min(lightest[i], (float) load[i][0][0]);
            }
            this.loads[i] = single(Slots.of(loads, i));
        }
    }

    private static float[] single(double[] figures) {
        float[] all = new float[figures.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = (float) figures[i];
        }
        return all;
    }

    /** Length and arm alone over all tilts: enough to see whether a candidate can be right at all. */
    void shape(Lanes l, int lanes) {
        start(l, lanes);
        for (int i = 0; i < cos.length; i++) {
            place(l, cos[i], sin[i], lanes);
        }
    }

    /** Leaves the length in 'again', the arm in 'moment' and how far the pin is along the line in 'force'. */
    private static void place(Lanes l, float c, float s, int lanes) {
        LaneLoops.turn(l.tankX, l.tankY, l.along1, l.along2, c, s, lanes);
        LaneLoops.length(l.frameX, l.frameY, l.along1, l.along2, l.again, lanes);
        LaneLoops.line(l.frameX, l.frameY, l.along1, l.along2, l.sign, l.again, l.ux, l.uy, lanes);
        LaneLoops.arm(l.along1, l.along2, l.ux, l.uy, l.sign, l.moment, l.force, lanes);
        LaneLoops.span(l.shortest, l.longest, l.again, lanes);
        LaneLoops.least(l.arm, l.moment, lanes);
    }

    /** The sign is told by the first and the last tilt together: of what gets all the way, one of them is far from dead centre. */
    private void start(Lanes l, int lanes) {
        float c = cos[0] + cos[cos.length - 1];
        float s = sin[0] + sin[sin.length - 1];
        for (int j = 0; j < lanes; j++) {
            float bx = l.tankX[j] * c + l.tankY[j] * s;
            float by = l.tankY[j] * c - l.tankX[j] * s;
            l.sign[j] = l.frameY[j] * bx - l.frameX[j] * by >= 0 ? 1 : -1;
            l.shortest[j] = Float.POSITIVE_INFINITY;
            l.longest[j] = 0;
            l.arm[j] = Float.POSITIVE_INFINITY;
            l.free[j] = Float.POSITIVE_INFINITY;
            l.restMost[j] = Float.NEGATIVE_INFINITY;
            l.restLeast[j] = Float.POSITIVE_INFINITY;
            l.most[j] = Float.NEGATIVE_INFINITY;
            l.least[j] = Float.POSITIVE_INFINITY;
            l.bearing1[j] = 0;
            l.bearing2[j] = 0;
        }
    }

    /** Everything over all tilts and loads. */
    void run(Lanes l, int lanes) {
        start(l, lanes);
        for (int i = 0; i < cos.length; i++) {
            place(l, cos[i], sin[i], lanes);
            LaneLoops.rest(l.moment, l.restMost, l.restLeast, heaviest[i], lightest[i], lanes);
            rubs(l, lanes);
            for (int k = 0; k < loads[i].length; k += FIGURES) {
                load(l, loads[i], k, lanes);
            }
        }
    }

    /** What the friction of the pins does to the drive; kappa in 'side1', the rest of the length in 'side2'. */
    private void rubs(Lanes l, int lanes) {
        LaneLoops.pins(l.force, l.again, l.side1, l.side2, frameRadius, tankRadius, lanes);
        LaneLoops.sideways(l.force, l.side2, l.again, l.sign, l.across, l.size, frameRadius, tankRadius, lanes);
        LaneLoops.free(l.moment, l.side1, l.free, lanes);
        LaneLoops.gain(l.moment, l.side1, l.gain, l.extra, lanes);
    }

    private void load(Lanes l, float[] figures, int k, int lanes) {
        weights(l, figures, k + RAISE, lanes);
        balance(l, figures, k + RAISE, 1, lanes);
        LaneLoops.most(l.most, l.force, lanes);
        if (figures[k] != 0) {
            weights(l, figures, k + LOWER, lanes);
        }
        balance(l, figures, k + LOWER, -1, lanes);
        LaneLoops.least(l.least, l.force, lanes);
    }

    private static void weights(Lanes l, float[] figures, int k, int lanes) {
        LaneLoops.along(l.ux, l.uy, l.along1, l.along2, figures, k + 1, lanes);
        LaneLoops.across(l.ux, l.uy, l.across, l.side1, l.side2, figures, k + 1, lanes);
    }

    /** Leaves the force in 'force' and takes the bearings' peaks; way: +1 to raise, -1 to lower. */
    private void balance(Lanes l, float[] figures, int k, float way, int lanes) {
        LaneLoops.force(figures[k], way, l.gain, l.extra, l.force, lanes);
        friction(l, l.moment, figures, k, way, lanes);
        LaneLoops.force(l.moment, way, l.gain, l.extra, l.force, lanes);
        if (rough) {
            friction(l, l.again, figures, k, way, lanes);
            LaneLoops.extrapolate(l.moment, l.again, figures[k], lanes);
            LaneLoops.force(l.moment, way, l.gain, l.extra, l.force, lanes);
        }
        LaneLoops.bearing(l.bearing1, l.force, l.size, l.along1, l.side1, way, square1, figures[k + 5], lanes);
        LaneLoops.bearing(l.bearing2, l.force, l.size, l.along2, l.side2, way, square2, figures[k + 6], lanes);
    }

    /** The moment with the friction that the bearings have under the force. */
    private void friction(Lanes l, float[] moment, float[] figures, int k, float way, int lanes) {
        LaneLoops.friction(
                figures[k], moment, l.force, l.size, l.along1, l.side1, way, radius1, square1, figures[k + 5], lanes);
        LaneLoops.addFriction(moment, l.force, l.size, l.along2, l.side2, way, radius2, square2, figures[k + 6], lanes);
    }
}
