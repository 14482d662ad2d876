// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import tipwright.check.rule.Verdict;
import tipwright.viewer.scene.Theme;

/** The look of the window's controls, from the theme's colours. */
final class WindowStyle {
    private WindowStyle() {}

    /** A style sheet as an address that a scene takes. */
    static String sheet(Theme t) {
        String css =
                """
                .root { -fx-background-color: BACK; -fx-font-size: 14px; -fx-base: RAISED; -fx-background: PANEL;
                    -fx-control-inner-background: RAISED; -fx-accent: ACCENT; -fx-focus-color: ACCENT;
                    -fx-faint-focus-color: transparent; -fx-text-background-color: INK; }
                .label { -fx-text-fill: INK; }
                .card { -fx-background-color: PANEL; -fx-padding: 12 14 12 14; }
                .over { -fx-padding: 12; }
                .legend { -fx-background-color: PANEL; -fx-background-radius: 5; -fx-padding: 8 10 8 10; }
                .strip { -fx-background-color: PANEL; -fx-padding: 8 14 8 14; }
                .faint { -fx-text-fill: FAINT; }
                .small { -fx-font-size: 12px; }
                .head { -fx-font-size: 13px; -fx-font-weight: bold; -fx-text-fill: FAINT; }
                .big { -fx-font-size: 26px; -fx-font-weight: bold; }
                .figure { -fx-font-size: 18px; -fx-font-weight: bold; }
                .button, .toggle-button, .choice-box { -fx-background-color: RAISED; -fx-text-fill: INK;
                    -fx-background-radius: 5; -fx-padding: 6 11 6 11; -fx-border-color: transparent; -fx-border-radius: 5;
                    -fx-border-width: 2; }
                .choice-box { -fx-padding: 1 4 1 4; }
                .button:hover, .toggle-button:hover { -fx-background-color: derive(RAISED, 12%); }
                .button:focused, .toggle-button:focused, .choice-box:focused, .text-field:focused, .row:focused
                    { -fx-border-color: ACCENT; }
                .button:disabled { -fx-opacity: 0.4; }
                .toggle-button:selected { -fx-background-color: ACCENT; -fx-text-fill: PANEL; }
                .text-field { -fx-background-color: RAISED; -fx-text-fill: INK; -fx-border-color: transparent;
                    -fx-border-width: 2; -fx-border-radius: 4; -fx-background-radius: 4; -fx-padding: 4 6 4 6; }
                .text-field.wrong { -fx-border-color: WRONG; }
                .row { -fx-padding: 5 6 5 6; -fx-border-color: transparent; -fx-border-width: 2; -fx-border-radius: 4; }
                .row:hover { -fx-background-color: RAISED; -fx-background-radius: 5; }
                .note { -fx-background-color: NOTE; -fx-padding: 7 14 7 14; }
                .note .label { -fx-text-fill: INK; }
                .caution { -fx-background-color: PANEL; -fx-padding: 6 14 6 14; -fx-border-color: NOTELINE transparent
                    transparent transparent; -fx-border-width: 2 0 0 0; }
                .scroll-pane { -fx-background-color: PANEL; -fx-background: PANEL; -fx-padding: 0; }
                .slider .track { -fx-background-color: RAISED; -fx-pref-height: 10; }
                .slider .thumb { -fx-background-color: INK; -fx-padding: 11; -fx-background-radius: 11; }
                .slider:focused .thumb { -fx-background-color: ACCENT; }
                """;
        return "data:text/css;base64,"
                + Base64.getEncoder()
                        .encodeToString(css.replace("NOTELINE", Theme.css(t.verdict(Verdict.CLOSE)))
                                .replace("NOTE", Theme.css(t.panel().interpolate(t.verdict(Verdict.CLOSE), 0.25)))
                                .replace("BACK", Theme.css(t.back()))
                                .replace("PANEL", Theme.css(t.panel()))
                                .replace("RAISED", Theme.css(t.raised()))
                                .replace("ACCENT", Theme.css(t.bearing()))
                                .replace("WRONG", Theme.css(t.verdict(Verdict.FAIL)))
                                .replace("FAINT", Theme.css(t.faint()))
                                .replace("INK", Theme.css(t.ink()))
                                .getBytes(StandardCharsets.UTF_8));
    }
}
