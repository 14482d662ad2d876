// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import tipwright.design.Limits;
import tipwright.quantity.Text;

/** Words that several checks need to tell what would fix a finding. Common practice, no source. */
public final class Fix {
    /** More lever arm. */
    public static final String ARM =
            "move the frame pin or tank pin so that the actuator has a longer lever arm ('tipwright place' searches for it)";

    /** Another distance from pin to pin. */
    public static final String NEARER = "pins that move apart less between stowed and full tilt";

    /** Other actuators. */
    public static final String BOX = " ('tipwright actuators' tries every one in the parts files)";

    /** A stronger actuator, with a gap for how strong. */
    public static final String STRONGER = "a stronger actuator{}, or " + ARM + ", or less in the tank";

    /** What an actuator has to do that may not move. */
    public static final String HOLD = "hold the tank that way";

    private Fix() {}

    /**
     * A stronger actuator or a longer lever; another kind of actuator where this one cannot do it at all.
     *
     * @param does 'push' or 'pull'
     */
    public static Text force(String does, Finding f, Limits limits) {
        return force(does, STRONGER, f, limits);
    }

    /**
     * The same in other words where more of it would do.
     *
     * @param does 'push' or 'pull'
     * @param more words with a gap for how much
     */
    public static Text force(String does, String more, Finding f, Limits limits) {
        return f.demand() > 0 && !(f.capacity() > 0)
                ? Text.words("an actuator that can " + does + ", or pins so placed that it never has to")
                : of(more, f, limits);
    }

    /** What a part must be good for, where nothing better is known; nothing where no capacity decides. */
    public static Text part(Finding f, Limits limits) {
        return decides(f, limits)
                ? Text.words("a part rated ").plus(needed(f, limits)).plus(", or less load")
                : Text.NONE;
    }

    /** Words with a gap for the capacity that is needed, in brackets; closed up where no capacity decides. */
    public static Text of(String words, Finding f, Limits limits) {
        return Text.of(
                words,
                decides(f, limits) ? Text.words(" (").plus(needed(f, limits)).plus(")") : Text.NONE);
    }

    private static boolean decides(Finding f, Limits limits) {
        return f.utilisation() > limits.close()
                && Double.isFinite(f.demand())
                && f.demand() > 0
                && f.capacity() > 0
                && Double.isFinite(f.capacity())
                && f.byRatio();
    }

    /** The capacity at which the check passes, and the one there is. */
    private static Text needed(Finding f, Limits limits) {
        return Text.amount(f.demand() * f.factor() / limits.close(), f.kind())
                .plus(" in place of ")
                .plus(Text.amount(f.capacity(), f.kind()));
    }
}
