// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

/**
 * The kernel's loops over a block of candidates. Each is short and has no branch: longer ones are no longer done several
 * candidates at a time by the compiler (measured on Java 17: 3.7 ns a candidate in one loop, 0.9 ns in two).
 */
final class LaneLoops {
    private static final double TINY = 1e-300;

    private LaneLoops() {}

    static void fill(double[] out, double value, int lanes) {
        for (int j = 0; j < lanes; j++) {
            out[j] = value;
        }
    }

    static void copy(double[] out, double[] from, int lanes) {
        for (int j = 0; j < lanes; j++) {
            out[j] = from[j];
        }
    }

    static void most(double[] most, double[] value, int lanes) {
        for (int j = 0; j < lanes; j++) {
            most[j] = Math.max(most[j], value[j]);
        }
    }

    static void least(double[] least, double[] value, int lanes) {
        for (int j = 0; j < lanes; j++) {
            least[j] = Math.min(least[j], value[j]);
        }
    }

    /** The tank pin at a tilt. */
    static void turn(double[] tx, double[] ty, double[] bx, double[] by, double c, double s, int lanes) {
        for (int j = 0; j < lanes; j++) {
            bx[j] = tx[j] * c + ty[j] * s;
            by[j] = ty[j] * c - tx[j] * s;
        }
    }

    /** Length of the drive. */
    static void length(double[] ax, double[] ay, double[] bx, double[] by, double[] length, int lanes) {
        for (int j = 0; j < lanes; j++) {
            double lx = bx[j] - ax[j];
            double ly = by[j] - ay[j];
            length[j] = Math.sqrt(lx * lx + ly * ly);
        }
    }

    /** Direction of the drive. */
    static void line(
            double[] ax,
            double[] ay,
            double[] bx,
            double[] by,
            double[] sign,
            double[] length,
            double[] ux,
            double[] uy,
            int lanes) {
        for (int j = 0; j < lanes; j++) {
            double one = sign[j] / length[j];
            ux[j] = (bx[j] - ax[j]) * one;
            uy[j] = (by[j] - ay[j]) * one;
        }
    }

    /** Arm of the drive, and how far the tank pin is along its line. */
    static void arm(
            double[] bx,
            double[] by,
            double[] ux,
            double[] uy,
            double[] sign,
            double[] arm,
            double[] along,
            int lanes) {
        for (int j = 0; j < lanes; j++) {
            arm[j] = ux[j] * by[j] - uy[j] * bx[j];
            along[j] = sign[j] * (ux[j] * bx[j] + uy[j] * by[j]);
        }
    }

    /** Smallest and largest of a value. */
    static void span(double[] least, double[] most, double[] value, int lanes) {
        for (int j = 0; j < lanes; j++) {
            least[j] = Math.min(least[j], value[j]);
            most[j] = Math.max(most[j], value[j]);
        }
    }

    /** What the pins' friction takes off the arm; and the rest of the length. */
    static void pins(
            double[] along, double[] length, double[] kappa, double[] rest, double frame, double tank, int lanes) {
        for (int j = 0; j < lanes; j++) {
            double other = length[j] - along[j];
            rest[j] = other;
            kappa[j] = (frame * Math.abs(along[j]) + tank * Math.abs(other)) / length[j];
        }
    }

    /** Sideways share q of the force that the pins' friction makes, and 1 + q^2. */
    static void sideways(
            double[] along,
            double[] rest,
            double[] length,
            double[] sign,
            double[] across,
            double[] size,
            double frame,
            double tank,
            int lanes) {
        for (int j = 0; j < lanes; j++) {
            double a = Math.abs(along[j]);
            double b = Math.abs(rest[j]);
            double q = sign[j] * (tank * rest[j] * a - frame * along[j] * b) / (a * b * length[j] + TINY);
            across[j] = q;
            size[j] = 1 + q * q;
        }
    }

    static void ease(double[] arm, double[] kappa, double[] easy, double[] hard, int lanes) {
        for (int j = 0; j < lanes; j++) {
            double both = 1 / (arm[j] * arm[j] - kappa[j] * kappa[j]);
            easy[j] = (arm[j] - kappa[j]) * both;
            hard[j] = (arm[j] + kappa[j]) * both;
        }
    }

    /** Weight on both bearings along the drive; g: G1x G1y G2x G2y from k on. */
    static void along(double[] ux, double[] uy, double[] one, double[] two, double[] g, int k, int lanes) {
        double g1x = g[k];
        double g1y = g[k + 1];
        double g2x = g[k + 2];
        double g2y = g[k + 3];
        for (int j = 0; j < lanes; j++) {
            one[j] = ux[j] * g1x + uy[j] * g1y;
            two[j] = ux[j] * g2x + uy[j] * g2y;
        }
    }

    /** Weight on both bearings across the drive, times the sideways share of the pins' friction. */
    static void across(
            double[] ux,
            double[] uy,
            double[] q,
            double[] one,
            double[] two,
            double[] g,
            int k,
            double way,
            int lanes) {
        double g1x = way * g[k];
        double g1y = way * g[k + 1];
        double g2x = way * g[k + 2];
        double g2y = way * g[k + 3];
        for (int j = 0; j < lanes; j++) {
            one[j] = q[j] * (uy[j] * g1x - ux[j] * g1y);
            two[j] = q[j] * (uy[j] * g2x - ux[j] * g2y);
        }
    }

    /** Force that raises against a moment. */
    static void force(
            double[] moment,
            double[] easy,
            double[] hard,
            double[] size,
            double[] force,
            double[] forceSize,
            double[] square,
            int lanes) {
        for (int j = 0; j < lanes; j++) {
            double f = Math.max(moment[j] * easy[j], moment[j] * hard[j]);
            force[j] = f;
            forceSize[j] = Math.abs(f);
            square[j] = f * f * size[j];
        }
    }

    /** Force that lowers against a moment. */
    static void forceBack(
            double[] moment,
            double[] easy,
            double[] hard,
            double[] size,
            double[] force,
            double[] forceSize,
            double[] square,
            int lanes) {
        for (int j = 0; j < lanes; j++) {
            double f = Math.min(moment[j] * easy[j], moment[j] * hard[j]);
            force[j] = f;
            forceSize[j] = Math.abs(f);
            square[j] = f * f * size[j];
        }
    }

    /** A moment with the friction of one bearing. */
    static void friction(
            double alone,
            double[] moment,
            double[] force,
            double[] forceSize,
            double[] square,
            double[] along,
            double[] side,
            double radius,
            double share,
            double weight,
            int lanes) {
        for (int j = 0; j < lanes; j++) {
            moment[j] = alone
                    + radius
                            * Math.sqrt(Math.abs(
                                    square[j] * share + force[j] * along[j] + forceSize[j] * side[j] + weight));
        }
    }

    /** Adds the friction of one bearing to the moment. */
    static void addFriction(
            double[] moment,
            double[] force,
            double[] forceSize,
            double[] square,
            double[] along,
            double[] side,
            double radius,
            double share,
            double weight,
            int lanes) {
        for (int j = 0; j < lanes; j++) {
            moment[j] += radius
                    * Math.sqrt(Math.abs(square[j] * share + force[j] * along[j] + forceSize[j] * side[j] + weight));
        }
    }

    /** Aitken's extrapolation from a first value and two repetitions. */
    static void extrapolate(double[] moment, double[] again, double first, int lanes) {
        for (int j = 0; j < lanes; j++) {
            double change = again[j] - moment[j];
            double before = moment[j] - first - change;
            moment[j] = again[j] + change * change * before / (before * before + TINY);
        }
    }

    /** Square of the load of one bearing. */
    static void bearing(
            double[] most,
            double[] force,
            double[] forceSize,
            double[] square,
            double[] along,
            double[] side,
            double share,
            double weight,
            int lanes) {
        for (int j = 0; j < lanes; j++) {
            most[j] = Math.max(most[j], square[j] * share + force[j] * along[j] + forceSize[j] * side[j] + weight);
        }
    }
}
