// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import tipwright.design.Design;
import tipwright.drawing.Drawing;
import tipwright.drawing.Pen;
import tipwright.geometry.Vec2;
import tipwright.quantity.UnitSystem;

/** The pins at their true size over as many sheets of paper as it takes, with marks to put the sheets together. */
final class Template {
    private static final double MARGIN = 12;
    private static final double AROUND = 45;
    private static final double STEP = 4;

    private Template() {}

    /** The sheets that have something on them, row by row from above. */
    static List<Drawing> tiles(Design design, UnitSystem units, Paper paper) {
        Drawing.Board board = new Drawing.Board();
        Marking marking = Marking.of(design);
        List<Vec2> pins = marking.spots().stream().map(m -> m.at().times(1000)).toList();
        Pen line = Pen.line("lines", Ink.GREY, 0.25).dashed(3);
        List<Vec2> trace = new ArrayList<>();
        for (Marking.Span span : marking.spans()) {
            Vec2 a = span.a().at().times(1000);
            Vec2 b = span.b().at().times(1000);
            board.line(a, b, line);
            for (double s = 0; s <= 1; s += STEP / Math.max(STEP, b.minus(a).norm())) {
                trace.add(a.plus(b.minus(a).times(s)));
            }
        }
        for (Marking.Spot spot : marking.spots()) {
            Vec2 c = spot.at().times(1000);
            hole(board, c, 500 * spot.hole(), spot.name(), units);
            for (int k = 0; k < 8; k++) {
                trace.add(c.plus(new Vec2(AROUND, 0).tilted(k * Math.PI / 4)));
            }
        }
        return cut(design, board, pins, trace, paper);
    }

    private static void hole(Drawing.Board board, Vec2 c, double radius, String name, UnitSystem units) {
        Pen pen = Pen.line("holes", Ink.BLACK, 0.3);
        board.ring(c, radius, pen);
        double cross = radius + 12;
        board.line(c.plus(new Vec2(-cross, 0)), c.plus(new Vec2(cross, 0)), pen);
        board.line(c.plus(new Vec2(0, -cross)), c.plus(new Vec2(0, cross)), pen);
        String hole = ", hole " + Lengths.fine(2 * radius / 1000, units);
        board.text(
                c.plus(new Vec2(radius + 3, radius + 3)),
                4,
                -1,
                name + " " + Lengths.point(c.times(0.001), units) + hole,
                Ink.TEXT);
    }

    private static List<Drawing> cut(
            Design design, Drawing.Board board, List<Vec2> pins, List<Vec2> trace, Paper paper) {
        double w = paper.width() - 2 * MARGIN;
        double h = paper.height() - 2 * MARGIN;
        double left = pins.stream().mapToDouble(Vec2::x).min().orElse(0) - AROUND;
        double top = pins.stream().mapToDouble(Vec2::y).max().orElse(0) + AROUND;
        Set<Integer> used = new TreeSet<>();
        int columns = 0;
        for (Vec2 p : trace) {
            int c = (int) Math.floor((p.x() - left) / w);
            int r = (int) Math.floor((top - p.y()) / h);
            columns = Math.max(columns, c + 1);
            used.add(r * 1000 + c);
        }
        Drawing marks = board.on("", Vec2.ZERO, Vec2.ZERO);
        List<Drawing> tiles = new ArrayList<>();
        int number = 0;
        for (int key : used) {
            number++;
            int r = key / 1000;
            int c = key % 1000;
            Vec2 low = new Vec2(left + c * w, top - (r + 1) * h);
            tiles.add(tile(design, marks, low, w, h, r, c, number, used));
        }
        return tiles;
    }

    private static Drawing tile(
            Design design, Drawing marks, Vec2 low, double w, double h, int r, int c, int number, Set<Integer> used) {
        Drawing.Board page = new Drawing.Board();
        page.add(marks, Vec2.ZERO);
        Pen pen = Pen.line("register", Ink.BLACK, 0.2);
        page.box(low, low.plus(new Vec2(w, h)), Pen.line("register", Ink.GREY, 0.15));
        for (int i = 0; i < 4; i++) {
            Vec2 corner = low.plus(new Vec2(i % 2 == 0 ? 0 : w, i < 2 ? 0 : h));
            page.line(corner.plus(new Vec2(-8, 0)), corner.plus(new Vec2(8, 0)), pen);
            page.line(corner.plus(new Vec2(0, -8)), corner.plus(new Vec2(0, 8)), pen);
            page.ring(corner, 3, pen);
        }
        bar(page, low.plus(new Vec2(w / 2 - 50, 6)));
        String name = design.name() + ": template at true size, sheet " + number + " of " + used.size() + ", row "
                + (r + 1) + ", column " + (c + 1) + "; overlap the pages so the circled crosses line up";
        page.text(low.plus(new Vec2(w / 2, h - 6)), 3.2, 0, name, Ink.QUIET);
        return page.on(name, low.minus(new Vec2(MARGIN, MARGIN)), low.plus(new Vec2(w + MARGIN, h + MARGIN)));
    }

    /** 100 mm with a tick every 10: measure it before anything is marked out. */
    private static void bar(Drawing.Board page, Vec2 from) {
        Pen pen = Pen.line("check-bar", Ink.BLACK, 0.35);
        page.line(from, from.plus(new Vec2(100, 0)), pen);
        for (int i = 0; i <= 10; i++) {
            Vec2 at = from.plus(new Vec2(10 * i, 0));
            page.line(at, at.plus(new Vec2(0, i % 5 == 0 ? 3 : 1.8)), pen);
        }
        page.text(
                from.plus(new Vec2(50, -3.6)),
                3,
                0,
                "measure this bar: 100 mm (3 15/16 in). If not, print again at 100 %",
                Ink.QUIET);
    }
}
