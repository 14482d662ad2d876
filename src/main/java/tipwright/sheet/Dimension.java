// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.List;
import tipwright.drawing.Drawing;
import tipwright.drawing.Pen;
import tipwright.geometry.Vec2;

/** Draws dimension lines on a board, mm. */
final class Dimension {
    private static final Pen PEN = Pen.line("dimensions", Ink.GREY, 0.2);
    private static final double LETTERS = 2.8;

    private Dimension() {}

    /** From one point to another, beside the stretch by 'off' to its left (negative: to its right). */
    static void between(Drawing.Board board, Vec2 p, Vec2 q, double off, String text) {
        Vec2 u = q.minus(p).unit();
        Vec2 n = new Vec2(-u.y(), u.x()).times(Math.signum(off));
        Vec2 shift = n.times(Math.abs(off));
        Vec2 over = n.times(Math.abs(off) + 1);
        Vec2 from = n.times(Math.min(1.8, Math.abs(off)));
        board.line(p.plus(from), p.plus(over), PEN);
        board.line(q.plus(from), q.plus(over), PEN);
        arrowed(board, p.plus(shift), q.plus(shift), text);
    }

    /** A level one at a height of the board, or, upright, at a place along it. */
    static void square(Drawing.Board board, Vec2 p, Vec2 q, boolean level, double where, String text) {
        Vec2 a = level ? new Vec2(p.x(), where) : new Vec2(where, p.y());
        Vec2 b = level ? new Vec2(q.x(), where) : new Vec2(where, q.y());
        for (Vec2[] end : new Vec2[][] {{p, a}, {q, b}}) {
            Vec2 way = end[1].minus(end[0]);
            if (way.norm() > 1) {
                board.line(end[0], end[1].plus(way.unit()), PEN);
            }
        }
        arrowed(board, a, b, text);
    }

    private static void arrowed(Drawing.Board board, Vec2 a, Vec2 b, String text) {
        double length = b.minus(a).norm();
        if (length < 1e-6) {
            return;
        }
        Vec2 u = b.minus(a).unit();
        Vec2 n = new Vec2(-u.y(), u.x());
        boolean inside = length > 5;
        board.line(inside ? a : a.minus(u.times(4)), inside ? b : b.plus(u.times(4)), PEN);
        for (int end = -1; end <= 1; end += 2) {
            Vec2 tip = end < 0 ? a : b;
            Vec2 back = tip.minus(u.times((inside ? 2.0 : -2.0) * end));
            board.path(List.of(back.plus(n.times(0.6)), tip, back.minus(n.times(0.6))), PEN);
        }
        double turn = Math.toDegrees(Math.atan2(u.y(), u.x()));
        turn = turn > 90.01 ? turn - 180 : turn <= -89.99 ? turn + 180 : turn;
        Vec2 above = new Vec2(-Math.sin(Math.toRadians(turn)), Math.cos(Math.toRadians(turn)));
        Vec2 middle = a.plus(b).times(0.5).plus(above.times(0.8));
        double needs = 0.55 * LETTERS * text.length();
        if (needs > length) {
            Vec2 along = new Vec2(Math.cos(Math.toRadians(turn)), Math.sin(Math.toRadians(turn)));
            middle = middle.plus(along.times(length / 2 + needs / 2 + (inside ? 1 : 5)));
        }
        board.text(middle, LETTERS, 0, turn, text, Ink.TEXT);
    }
}
