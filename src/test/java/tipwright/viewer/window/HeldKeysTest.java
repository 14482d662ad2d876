// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;

class HeldKeysTest {
    private static final long MS = 1_000_000;

    private long now;
    private int done;
    private final HeldKeys keys = new HeldKeys(() -> now);

    private boolean press(KeyCode key, long takes) {
        return keys.pressed(key, () -> {
            now += takes;
            done++;
            return true;
        });
    }

    @Test
    void whatSwitchesIsDoneOnceHoweverLongItIsHeld() {
        for (int i = 0; i < 100; i++) {
            assertThat(press(KeyCode.T, 300 * MS)).isTrue();
            now += 40 * MS;
        }
        assertThat(done).isEqualTo(1);
        keys.released(KeyCode.T);
        press(KeyCode.T, 0);
        assertThat(done).isEqualTo(2);
    }

    @Test
    void aStepLeavesTheWindowIdleForAsLongAsItTakes() {
        // pressed every 40 ms; each step takes 90 ms, so presses wait and come at once after it
        for (int i = 0; i < 100; i++) {
            long due = i * 40 * MS;
            now = Math.max(now, due);
            press(KeyCode.RIGHT, 90 * MS);
        }
        assertThat(done).isBetween(15, 23);
        assertThat(now).isLessThan(4_200 * MS);
    }

    @Test
    void aQuickStepIsDoneEveryTime() {
        for (int i = 0; i < 100; i++) {
            press(KeyCode.LEFT, MS);
            now += 33 * MS;
        }
        assertThat(done).isEqualTo(100);
    }

    @Test
    void whatWasLetGoElsewhereIsForgotten() {
        press(KeyCode.T, 0);
        now += 2_000 * MS;
        press(KeyCode.T, 0);
        assertThat(done).isEqualTo(2);
    }

    @Test
    void whatIsNotOursIsTypedAgainAndAgain() {
        for (int i = 0; i < 5; i++) {
            now += 40 * MS;
            assertThat(keys.pressed(KeyCode.T, () -> false)).isFalse();
        }
    }
}
