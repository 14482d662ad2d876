// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import tipwright.geometry.NotConvergedException;

/**
 * Counts how often a dump in time was evaluated, for its derivatives and for its events, and ends one that would go on for ever. A
 * workspace for all legs of all loads of one design.
 */
final class Effort {
    /** Some three hundred times what a usual design takes for all its loads: several seconds. */
    static final long MOST = 600_000;

    private final long most;
    private long made;
    private double time;
    private double tilt;

    /** @param most evaluations that are allowed */
    Effort(long most) {
        this.most = most;
    }

    /**
     * One more.
     *
     * @param at s
     * @param there rad
     * @throws NotConvergedException when that is one too many
     */
    void count(double at, double there) {
        made++;
        time = at;
        tilt = there;
        if (made > most) {
            throw new NotConvergedException(lost() + " after " + most + " evaluations");
        }
    }

    long made() {
        return made;
    }

    /** Says where it was when it got lost. */
    String lost() {
        return "the dump in time could not be worked out: it did not converge " + round(time, 1000)
                + " s after the start, at a tilt of " + round(Math.toDegrees(tilt), 100) + " deg,";
    }

    private static double round(double value, double parts) {
        return Math.rint(value * parts) / parts;
    }
}
