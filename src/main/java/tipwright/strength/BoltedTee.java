// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

/**
 * A flange that two rows of bolts hold and a web pulls at between them: the bolts bear more than the pull where the flange bends and its
 * edges press (prying).
 *
 * <p>Source: EN 1993-1-8 6.2.4, equations 6.5 to 6.11 of the draft on a public page (read), partial factors of 1.
 *
 * @param thickness of the flange, m
 * @param yield of the flange, Pa
 * @param length of the yield lines that counts, m
 * @param arm from the bolts' middle to the web, less 0.8 of the weld's throat times root 2, m ('m')
 * @param edge from the bolts' middle to the flange's edge, m ('e')
 * @param bolts strength of all bolts in tension together, N
 */
public record BoltedTee(double thickness, double yield, double length, double arm, double edge, double bolts) {
    /** How it gives way. */
    public enum Mode {
        /** The flange yields along four lines. */
        FLANGE,
        /** The flange yields along two lines and the bolts break. */
        BOTH,
        /** The bolts break. */
        BOLTS
    }

    /** @throws IllegalArgumentException if a dimension is not above 0 */
    public BoltedTee {
        Precondition.positive("thickness", thickness);
        Precondition.positive("yield", yield);
        Precondition.positive("length", length);
        Precondition.positive("arm", arm);
        Precondition.positive("edge", edge);
        Precondition.positive("bolts", bolts);
    }

    /** Moment at which a line of the flange yields through, N m. */
    public double yieldMoment() {
        return 0.25 * length * thickness * thickness * yield;
    }

    /** Where the prying force acts, from the bolts' middle, m: the edge, at most 1.25 arms. */
    public double pryingArm() {
        return Math.min(edge, 1.25 * arm);
    }

    /** Pull that one way of giving way bears, N. */
    public double resistance(Mode mode) {
        return switch (mode) {
            case FLANGE -> 4 * yieldMoment() / arm;
            case BOTH -> (2 * yieldMoment() + pryingArm() * bolts) / (arm + pryingArm());
            case BOLTS -> bolts;
        };
    }

    /** The way in which it gives way first. */
    public Mode governing() {
        Mode least = Mode.FLANGE;
        for (Mode mode : Mode.values()) {
            if (resistance(mode) < resistance(least)) {
                least = mode;
            }
        }
        return least;
    }

    /** Pull that it bears, N. */
    public double resistance() {
        return resistance(governing());
    }

    /** Pull that the flange bears where its edges cannot press on anything, N: the bolts alone, or two yield lines. */
    public double withoutPrying() {
        return Math.min(2 * yieldMoment() / arm, bolts);
    }
}
