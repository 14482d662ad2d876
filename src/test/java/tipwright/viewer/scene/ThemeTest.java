// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.paint.Color;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tipwright.check.rule.Verdict;
import tipwright.viewer.Contrast;

/** Both themes can be read: text 4.5 to 1, signs and rims 3 to 1. Source: WCAG 2.2, success criteria 1.4.3 and 1.4.11. */
class ThemeTest {
    private static final double TEXT = 4.5;
    private static final double SIGN = 3;

    @ParameterizedTest
    @EnumSource(Theme.class)
    void textCanBeReadOnAllThatLiesBehindIt(Theme theme) {
        // the ground and the pit lie behind the letters in the picture
        for (Color behind : List.of(theme.back(), theme.panel(), theme.raised(), theme.ground(), theme.pit())) {
            assertThat(Contrast.of(theme.ink(), behind)).isGreaterThanOrEqualTo(TEXT);
        }
        for (Color behind : List.of(theme.back(), theme.panel(), theme.raised(), theme.ground())) {
            assertThat(Contrast.of(theme.faint(), behind)).isGreaterThanOrEqualTo(TEXT);
        }
        // what is chosen or has the mouse over it is written in the colour of the panel
        assertThat(Contrast.of(theme.panel(), theme.bearing())).isGreaterThanOrEqualTo(TEXT);
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void signsStandOutFromThePanel(Theme theme) {
        for (Verdict verdict : Verdict.values()) {
            assertThat(Contrast.of(theme.verdict(verdict), theme.panel())).isGreaterThanOrEqualTo(SIGN);
        }
        assertThat(Contrast.of(theme.bearing(), theme.panel())).isGreaterThanOrEqualTo(SIGN);
        assertThat(Contrast.of(theme.push(), theme.panel())).isGreaterThanOrEqualTo(SIGN);
    }
}
