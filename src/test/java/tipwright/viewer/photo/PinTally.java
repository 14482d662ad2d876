// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.photo;

import tipwright.geometry.Vec2;

/** How pins in photos turn out: how far off they are, and whether their doubt covers that. */
final class PinTally {
    private final double frame;
    private int pins;
    private int near;
    private int covered;
    private double worst;
    private double doubt;
    private double squares;

    /**
     * None yet.
     *
     * @param frame length of the frame, m
     */
    PinTally(double frame) {
        this.frame = frame;
    }

    void take(Seen seen, Vec2 pin) {
        Vec2 off = seen.at().minus(pin);
        boolean within = Math.abs(off.x()) <= seen.doubt().x()
                && Math.abs(off.y()) <= seen.doubt().y();
        pins++;
        near += off.norm() < 0.01 * frame ? 1 : 0;
        covered += within ? 1 : 0;
        worst = Math.max(worst, off.norm());
        doubt += seen.doubt().norm();
        squares += off.dot(off);
    }

    int pins() {
        return pins;
    }

    /** Pins within a hundredth of the frame's length. */
    int near() {
        return near;
    }

    /** Pins that are no farther off than their doubt. */
    int covered() {
        return covered;
    }

    /** How far the worst is off, m. */
    double worst() {
        return worst;
    }

    /** Mean of the doubts, m. */
    double doubt() {
        return doubt / pins;
    }

    /** Root of the mean square of the errors, m. */
    double error() {
        return Math.sqrt(squares / pins);
    }
}
