// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import tipwright.check.rule.Verdict;
import tipwright.viewer.scene.Theme;

/** The look of the window's controls: window.css with the theme's colours and the size of the text. All sizes in it are in em. */
public final class WindowStyle {
    /** Usual height of the text, pixels. */
    public static final double EM = 14;

    /** Smallest size of the text, 1 as usual. */
    static final double SMALLEST = 0.8;

    /** Largest size of the text. */
    static final double LARGEST = 2;

    private WindowStyle() {}

    /** A style sheet as an address that a scene takes; the text so many pixels high. */
    public static String sheet(Theme t, double em) {
        String css = template()
                .replace("NOTELINE", Theme.css(t.verdict(Verdict.CLOSE)))
                .replace("NOTE", Theme.css(t.panel().interpolate(t.verdict(Verdict.CLOSE), 0.25)))
                .replace("BACK", Theme.css(t.back()))
                .replace("PANEL", Theme.css(t.panel()))
                .replace("RAISED", Theme.css(t.raised()))
                .replace("ACCENT", Theme.css(t.bearing()))
                .replace("WRONG", Theme.css(t.verdict(Verdict.FAIL)))
                .replace("FAINT", Theme.css(t.faint()))
                .replace("INK", Theme.css(t.ink()))
                .replace("TEXTSIZE", Math.round(10 * em) / 10.0 + "px");
        return "data:text/css;base64," + Base64.getEncoder().encodeToString(css.getBytes(StandardCharsets.UTF_8));
    }

    private static String template() {
        try (InputStream in = WindowStyle.class.getResourceAsStream("window.css")) {
            if (in == null) {
                throw new IllegalStateException("window.css is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
