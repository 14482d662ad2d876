// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer;

import javafx.scene.paint.Color;

/** How well one colour stands out from another. */
public final class Contrast {
    private Contrast() {}

    /** From 1, none, to 21. Source: WCAG 2.2, contrast ratio and relative luminance. */
    public static double of(Color a, Color b) {
        double light = Math.max(luminance(a), luminance(b));
        double dark = Math.min(luminance(a), luminance(b));
        return (light + 0.05) / (dark + 0.05);
    }

    private static double luminance(Color c) {
        return 0.2126 * linear(c.getRed()) + 0.7152 * linear(c.getGreen()) + 0.0722 * linear(c.getBlue());
    }

    private static double linear(double v) {
        return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }
}
