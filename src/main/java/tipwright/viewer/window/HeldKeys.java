// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;
import javafx.scene.input.KeyCode;

/**
 * Keys that are held down, which the system presses again and again. What switches is done once; what steps goes on, but the window stays
 * idle for as long as a step takes, since on a slow machine the presses would come faster than they are done and nothing else would.
 */
final class HeldKeys {
    /** After so long without a press it is held no more, though nobody has told that it was let go, ns. */
    private static final long FORGOTTEN = 1_500_000_000L;

    private static final Set<KeyCode> STEPS = EnumSet.of(
            KeyCode.LEFT,
            KeyCode.RIGHT,
            KeyCode.UP,
            KeyCode.DOWN,
            KeyCode.PLUS,
            KeyCode.ADD,
            KeyCode.EQUALS,
            KeyCode.MINUS,
            KeyCode.SUBTRACT,
            KeyCode.Z,
            KeyCode.Y);

    private final LongSupplier clock;
    private final Map<KeyCode, Held> held = new EnumMap<>(KeyCode.class);

    /**
     * A key that is down.
     *
     * @param taken whether it did something
     * @param took how long that took, ns
     * @param done when that was done, ns
     * @param last when it was pressed last, ns
     */
    private record Held(boolean taken, long took, long done, long last) {}

    /** By a clock, ns. */
    HeldKeys(LongSupplier clock) {
        this.clock = clock;
    }

    /**
     * A key was pressed, by hand or because it is held down.
     *
     * @param work does what it is for; false: nothing
     * @return whether it has been dealt with
     */
    boolean pressed(KeyCode key, BooleanSupplier work) {
        long now = clock.getAsLong();
        Held before = held.get(key);
        if (before != null && before.taken && now - before.last < FORGOTTEN) {
            boolean step = STEPS.contains(key) && now - before.done > before.took;
            if (!step) {
                held.put(key, new Held(true, before.took, before.done, now));
                return true;
            }
        }
        boolean taken = work.getAsBoolean();
        long done = clock.getAsLong();
        held.put(key, new Held(taken, done - now, done, done));
        return taken;
    }

    /** A key was let go. */
    void released(KeyCode key) {
        held.remove(key);
    }
}
