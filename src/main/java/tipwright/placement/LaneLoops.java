// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

/**
 * The kernel's loops over a block of candidates. Each is short and has no branch: the compiler does sixteen candidates at a time in a
 * short loop and one at a time in a long one (measured on Java 17: with both bearings in one loop the kernel takes twice as long).
 */
final class LaneLoops {
    private static final float TINY = 1e-30f;

    private LaneLoops() {}

    static void most(float[] most, float[] value, int lanes) {
        for (int j = 0; j < lanes; j++) {
            most[j] = Math.max(most[j], value[j]);
        }
    }

    static void least(float[] least, float[] value, int lanes) {
        for (int j = 0; j < lanes; j++) {
            least[j] = Math.min(least[j], value[j]);
        }
    }

    /** The tank pin at a tilt. */
    static void turn(float[] tx, float[] ty, float[] bx, float[] by, float c, float s, int lanes) {
        for (int j = 0; j < lanes; j++) {
            bx[j] = tx[j] * c + ty[j] * s;
            by[j] = ty[j] * c - tx[j] * s;
        }
    }

    /** Length of the drive. */
    static void length(float[] ax, float[] ay, float[] bx, float[] by, float[] length, int lanes) {
        for (int j = 0; j < lanes; j++) {
            float lx = bx[j] - ax[j];
            float ly = by[j] - ay[j];
            length[j] = (float) Math.sqrt(lx * lx + ly * ly);
        }
    }

    /** Direction of the drive. */
    static void line(
            float[] ax,
            float[] ay,
            float[] bx,
            float[] by,
            float[] sign,
            float[] length,
            float[] ux,
            float[] uy,
            int lanes) {
        for (int j = 0; j < lanes; j++) {
            float one = sign[j] / length[j];
            ux[j] = (bx[j] - ax[j]) * one;
            uy[j] = (by[j] - ay[j]) * one;
        }
    }

    /** Arm of the drive, and how far the tank pin is along its line. */
    static void arm(
            float[] bx, float[] by, float[] ux, float[] uy, float[] sign, float[] arm, float[] along, int lanes) {
        for (int j = 0; j < lanes; j++) {
            arm[j] = ux[j] * by[j] - uy[j] * bx[j];
            along[j] = sign[j] * (ux[j] * bx[j] + uy[j] * by[j]);
        }
    }

    /** Smallest and largest of a value. */
    static void span(float[] least, float[] most, float[] value, int lanes) {
        for (int j = 0; j < lanes; j++) {
            least[j] = Math.min(least[j], value[j]);
            most[j] = Math.max(most[j], value[j]);
        }
    }

    /** What the pins' friction takes off the arm; and the rest of the length. */
    static void pins(float[] along, float[] length, float[] kappa, float[] rest, float frame, float tank, int lanes) {
        for (int j = 0; j < lanes; j++) {
            float other = length[j] - along[j];
            rest[j] = other;
            kappa[j] = (frame * Math.abs(along[j]) + tank * Math.abs(other)) / length[j];
        }
    }

    /** Sideways share q of the force that the pins' friction makes, and 1 + q^2. */
    static void sideways(
            float[] along,
            float[] rest,
            float[] length,
            float[] sign,
            float[] across,
            float[] size,
            float frame,
            float tank,
            int lanes) {
        for (int j = 0; j < lanes; j++) {
            float a = Math.abs(along[j]);
            float b = Math.abs(rest[j]);
            float q = sign[j] * (tank * rest[j] * a - frame * along[j] * b) / (a * b * length[j] + TINY);
            across[j] = q;
            size[j] = 1 + q * q;
        }
    }

    /** Least arm that the pins' friction leaves. */
    static void free(float[] arm, float[] kappa, float[] free, int lanes) {
        for (int j = 0; j < lanes; j++) {
            free[j] = Math.min(free[j], arm[j] - kappa[j]);
        }
    }

    /** Force at rest, per N m of the heaviest and of the lightest load. */
    static void rest(float[] arm, float[] most, float[] least, float heaviest, float lightest, int lanes) {
        for (int j = 0; j < lanes; j++) {
            float one = 1 / arm[j];
            most[j] = Math.max(most[j], heaviest * one);
            least[j] = Math.min(least[j], lightest * one);
        }
    }

    /** Force that a moment takes, per N m, and what the pins' friction adds to it: their sum is 1/(arm - kappa). */
    static void gain(float[] arm, float[] kappa, float[] gain, float[] extra, int lanes) {
        for (int j = 0; j < lanes; j++) {
            float both = 1 / (arm[j] * arm[j] - kappa[j] * kappa[j]);
            gain[j] = arm[j] * both;
            extra[j] = kappa[j] * both;
        }
    }

    /** Weight on both bearings along the drive; g: G1x G1y G2x G2y from k on. */
    static void along(float[] ux, float[] uy, float[] one, float[] two, float[] g, int k, int lanes) {
        float g1x = g[k];
        float g1y = g[k + 1];
        float g2x = g[k + 2];
        float g2y = g[k + 3];
        for (int j = 0; j < lanes; j++) {
            one[j] = ux[j] * g1x + uy[j] * g1y;
            two[j] = ux[j] * g2x + uy[j] * g2y;
        }
    }

    /** Weight on both bearings across the drive, times the sideways share of the pins' friction. */
    static void across(float[] ux, float[] uy, float[] q, float[] one, float[] two, float[] g, int k, int lanes) {
        float g1x = g[k];
        float g1y = g[k + 1];
        float g2x = g[k + 2];
        float g2y = g[k + 3];
        for (int j = 0; j < lanes; j++) {
            one[j] = q[j] * (uy[j] * g1x - ux[j] * g1y);
            two[j] = q[j] * (uy[j] * g2x - ux[j] * g2y);
        }
    }

    /** Force against one and the same moment; way: +1 to raise, -1 to lower. */
    static void force(float moment, float way, float[] gain, float[] extra, float[] force, int lanes) {
        float rubbed = way * Math.abs(moment);
        for (int j = 0; j < lanes; j++) {
            force[j] = moment * gain[j] + rubbed * extra[j];
        }
    }

    /** Force against each candidate's moment. */
    static void force(float[] moment, float way, float[] gain, float[] extra, float[] force, int lanes) {
        for (int j = 0; j < lanes; j++) {
            force[j] = moment[j] * gain[j] + way * Math.abs(moment[j]) * extra[j];
        }
    }

    /** Square of the load of one bearing under a force along the drive; the compiler puts it into the loops. */
    private static float square(float f, float size, float along, float side, float way, float share, float weight) {
        return f * f * size * share + f * along + way * Math.abs(f) * side + weight;
    }

    /** A moment with the friction of one bearing. */
    static void friction(
            float alone,
            float[] moment,
            float[] force,
            float[] size,
            float[] along,
            float[] side,
            float way,
            float radius,
            float share,
            float weight,
            int lanes) {
        float rubs = way * radius;
        for (int j = 0; j < lanes; j++) {
            float square = square(force[j], size[j], along[j], side[j], way, share, weight);
            moment[j] = alone + rubs * (float) Math.sqrt(Math.abs(square));
        }
    }

    /** Adds the friction of one bearing to the moment. */
    static void addFriction(
            float[] moment,
            float[] force,
            float[] size,
            float[] along,
            float[] side,
            float way,
            float radius,
            float share,
            float weight,
            int lanes) {
        float rubs = way * radius;
        for (int j = 0; j < lanes; j++) {
            float square = square(force[j], size[j], along[j], side[j], way, share, weight);
            moment[j] += rubs * (float) Math.sqrt(Math.abs(square));
        }
    }

    /** Aitken's extrapolation from a first value and two repetitions. */
    static void extrapolate(float[] moment, float[] again, float first, int lanes) {
        for (int j = 0; j < lanes; j++) {
            float change = again[j] - moment[j];
            float before = moment[j] - first - change;
            moment[j] = again[j] + change * change * before / (before * before + TINY);
        }
    }

    /** Square of the load of one bearing. */
    static void bearing(
            float[] most,
            float[] force,
            float[] size,
            float[] along,
            float[] side,
            float way,
            float share,
            float weight,
            int lanes) {
        for (int j = 0; j < lanes; j++) {
            float square = square(force[j], size[j], along[j], side[j], way, share, weight);
            most[j] = Math.max(most[j], square);
        }
    }
}
