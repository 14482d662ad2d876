// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import javafx.scene.paint.Color;
import tipwright.check.rule.Verdict;

/**
 * Colours, chosen so that they differ in lightness as well as in hue. Source: M. Okabe and K. Ito, Color Universal Design (2008),
 * from memory, for the marks; the rest by camera.
 */
public enum Theme {
    /** For a dim workshop. */
    DARK("#1c2329", "#222a31", "#303a43", "#f5f2ec", "#b9c3cb", "#333d45", "#46525c"),
    /** For daylight and for print. */
    LIGHT("#f4f6f4", "#fbfcfa", "#e4e8e5", "#1b2227", "#4d5962", "#dbe0db", "#c4cbc5");

    private final String back;
    private final String panel;
    private final String raised;
    private final String ink;
    private final String faint;
    private final String ground;
    private final String line;

    Theme(String back, String panel, String raised, String ink, String faint, String ground, String line) {
        this.back = back;
        this.panel = panel;
        this.raised = raised;
        this.ink = ink;
        this.faint = faint;
        this.ground = ground;
        this.line = line;
    }

    /** Behind everything. */
    public Color back() {
        return Color.web(back);
    }

    /** Behind text. */
    public Color panel() {
        return Color.web(panel);
    }

    /** Behind a field or a button. */
    public Color raised() {
        return Color.web(raised);
    }

    /** Text. */
    public Color ink() {
        return Color.web(ink);
    }

    /** Text of lesser weight. */
    public Color faint() {
        return Color.web(faint);
    }

    Color ground() {
        return Color.web(ground);
    }

    /** Inside of the pit. */
    Color pit() {
        return ground().interpolate(Color.BLACK, 0.22);
    }

    /** Inside of a tube. */
    Color hollow() {
        return frame().interpolate(Color.BLACK, 0.65);
    }

    Color tyre() {
        return this == DARK ? Color.web("#4b545c") : Color.web("#343a40");
    }

    Color line() {
        return Color.web(line);
    }

    Color tank() {
        return this == DARK ? Color.web("#b9d8ef") : Color.web("#5f89ab");
    }

    Color liquid() {
        return Color.web("#9a8058");
    }

    Color liquidSurface() {
        return Color.web("#c9ad7c");
    }

    Color cake() {
        return Color.web("#5d4a3a");
    }

    Color cakeSurface() {
        return Color.web("#7d6650");
    }

    Color frame() {
        return this == DARK ? Color.web("#9aa7b1") : Color.web("#5c666e");
    }

    /** Hoses and cables: they stand out from frame and ground. */
    Color hose() {
        return this == DARK ? Color.web("#f0dfa8") : Color.web("#262b30");
    }

    Color obstacle() {
        return this == DARK ? Color.web("#8c7f9c") : Color.web("#7d7190");
    }

    Color cradle() {
        return this == DARK ? Color.web("#86939d") : Color.web("#7b868e");
    }

    Color tube() {
        return Color.web("#e0a526");
    }

    Color spring() {
        return this == DARK ? Color.web("#6d8c9c") : Color.web("#40606e");
    }

    Color weight() {
        return Color.web("#8a5a44");
    }

    Color rod() {
        return Color.web("#dfe4e8");
    }

    Color pin() {
        return this == DARK ? Color.web("#f2efe8") : Color.web("#22292e");
    }

    Color figure() {
        return this == DARK ? Color.web("#59666f") : Color.web("#8b979e");
    }

    /** The actuator's force. */
    public Color push() {
        return Color.web("#d55e00");
    }

    /** The bearings' load. */
    public Color bearing() {
        return this == DARK ? Color.web("#56b4e9") : Color.web("#0072b2");
    }

    /** The centre of mass and its path. */
    public Color centroid() {
        return Color.web("#cc79a7");
    }

    /** What a check says. */
    public Color verdict(Verdict verdict) {
        return switch (verdict) {
            case PASS -> this == DARK ? Color.web("#2fb58c") : Color.web("#00795a");
            case CLOSE -> this == DARK ? Color.web("#e69f00") : Color.web("#a86f00");
            case FAIL -> this == DARK ? Color.web("#ee6c22") : Color.web("#bf4a00");
            case NOT_CHECKED -> faint();
        };
    }

    /** A colour as style sheets write it. */
    public static String css(Color c) {
        return String.format(
                "#%02x%02x%02x",
                Math.round(255 * c.getRed()), Math.round(255 * c.getGreen()), Math.round(255 * c.getBlue()));
    }
}
