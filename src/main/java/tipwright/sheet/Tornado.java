// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import tipwright.drawing.Drawing;
import tipwright.drawing.Pen;
import tipwright.geometry.Vec2;
import tipwright.placement.Tolerance;
import tipwright.quantity.UnitSystem;

/** Draws what each figure does to the largest utilisation, the largest on top. */
public final class Tornado {
    private static final double LEFT = 62;
    private static final double WIDTH = 110;
    private static final double ROW = 8;
    private static final double MOST = 10;

    private Tornado() {}

    /** The picture. */
    public static Drawing of(Tolerance t, UnitSystem units) {
        double drawn = shown(t.utilisation());
        double low = drawn;
        double high = drawn;
        for (Tolerance.Swing s : t.swings()) {
            low = Math.min(low, shown(Math.min(s.low(), s.high())));
            high = Math.max(high, Math.min(drawn + 1, shown(Math.max(s.low(), s.high()))));
        }
        double margin = Math.max(0.005, 0.05 * (high - low));
        low -= margin;
        high += margin;
        Drawing.Board board = new Drawing.Board();
        double top = t.swings().size() * ROW;
        double y = top;
        for (Tolerance.Swing s : t.swings()) {
            y -= ROW;
            bar(board, y, x(s.low(), low, high), x(drawn, low, high), 0xcbba69);
            bar(board, y, x(s.high(), low, high), x(drawn, low, high), 0x31446b);
            String size = s.place() ? Lengths.fine(s.size(), units) : Math.round(100 * s.size()) + " %";
            board.text(new Vec2(-3, y + 2.6), 3.2, 1, s.name() + " \u00b1 " + size, Ink.TEXT);
        }
        double middle = x(drawn, low, high);
        board.line(new Vec2(middle, -2), new Vec2(middle, top + 1), Pen.line("axis", Ink.BLACK, 0.4));
        if (high > 1) {
            double one = x(1, low, high);
            board.line(
                    new Vec2(one, -2),
                    new Vec2(one, top + 1),
                    Pen.line("axis", Ink.BLACK, 0.4).dashed(1.5));
            board.text(new Vec2(one, top + 2.5), 3, 0, "fails", Ink.TEXT);
        }
        double step = high - low > 0.4 ? 0.1 : high - low > 0.15 ? 0.05 : 0.01;
        for (double k = 0; k <= (high - low) / step; k++) {
            double v = (Math.ceil(low / step) + k) * step;
            if (v > high) {
                break;
            }
            double at = x(v, low, high);
            board.line(new Vec2(at, -1), new Vec2(at, 0), Pen.line("axis", Ink.BLACK, 0.25));
            board.text(new Vec2(at, -5), 2.8, 0, Math.round(100 * v) + " %", Ink.TEXT);
        }
        board.line(new Vec2(0, 0), new Vec2(WIDTH, 0), Pen.line("axis", Ink.BLACK, 0.25));
        board.text(new Vec2(WIDTH / 2, -10), 3.2, 0, "use of the worst check; pale: lower, dark: higher", Ink.QUIET);
        String title = "Which dimension matters most";
        board.text(new Vec2(-LEFT + 4, top + 8), 5, -1, title, Ink.TEXT);
        return board.on(title, new Vec2(-LEFT, -14), new Vec2(WIDTH + 8, top + 16));
    }

    /** What is used without bound, or is no number, stands at the end of what can be drawn. */
    private static double shown(double utilisation) {
        return utilisation <= MOST ? utilisation : MOST;
    }

    private static double x(double utilisation, double low, double high) {
        return WIDTH * Math.max(0, Math.min(1, (shown(utilisation) - low) / (high - low)));
    }

    private static void bar(Drawing.Board board, double y, double a, double b, int fill) {
        board.box(
                new Vec2(Math.min(a, b), y + 1),
                new Vec2(Math.max(a, b), y + ROW - 1),
                Pen.line("bars", Ink.BLACK, 0.15).filled(fill));
    }
}
