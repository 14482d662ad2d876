// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.List;
import java.util.Locale;
import tipwright.drawing.Drawing;
import tipwright.drawing.Pen;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.sheet.bracket.Bracket;
import tipwright.sheet.bracket.CutPlate;

/** A page for each bracket, lug and mount at its true size, with bars to check the print. */
final class BracketPages {
    private static final Pen CUT = Pen.line("cut", Ink.BLACK, 0.35);
    private static final Pen MARK = Pen.line("mark", Ink.GREY, 0.2);
    private static final double DIMENSIONS = 16;
    private static final double BARS = 12;
    /** Room of the upright bar at the left, and how far it reaches up. */
    private static final double UPRIGHT = 8;

    private static final double UPRIGHT_HIGH = 112;
    /** For what is measured beside a plate. */
    private static final double BESIDE = 14;
    /** Of paper that no printer prints on. */
    private static final double EDGE = 5;
    /** Above a plate that has nothing measured there. */
    private static final double ABOVE = 4;

    private static final double LETTERS = 2.8;

    private final Pager pager;
    private final String name;
    private final UnitSystem units;

    BracketPages(Pager pager, String name, UnitSystem units) {
        this.pager = pager;
        this.name = name;
        this.units = units;
    }

    void page(Bracket bracket) {
        pager.page(name + ": " + uncapped(bracket.name()));
        CutPlate plate = bracket.plate();
        pager.line(
                Double.isNaN(plate.thickness())
                        ? "Cut " + bracket.count() + "."
                        : "Plate " + Text.size(plate.thickness()).show(units) + " thick; cut "
                                + bracket.count() + "; "
                                + Quantities.rough(plate.mass(), Kind.MASS, units) + " each.");
        bracket.words().stream().map(w -> w.show(units)).forEach(pager::line);
        double upright = scale(plate);
        boolean side = upright > 1 && scale(plate.turned()) == 1;
        double scale = side ? 1 : upright;
        if (side) {
            plate = plate.turned();
            pager.line("It is drawn on its side, or the paper would be too narrow.");
        }
        pager.line(
                scale == 1
                        ? "True size: measure the two bars before you mark out from this page."
                        : "NOT TRUE SIZE, 1:" + Quantities.number(scale)
                                + ": the plate is larger than the paper. Mark it out from its sizes, or cut it from the DXF file.");
        Drawing drawing = drawing(plate, scale);
        double down = Math.max(0, (pager.left() - BARS - drawing.height()) / 3);
        if (drawing.width() > pager.width() - 2 * UPRIGHT) {
            // clear of the upright bar
            down = Math.max(0, Math.min(down, pager.left() - UPRIGHT_HIGH - drawing.height()));
        }
        pager.down(down);
        pager.drawing(drawing);
        bars();
    }

    private static String uncapped(String words) {
        return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }

    /** 1 where the plate finds room on the page. */
    private double scale(CutPlate plate) {
        Vec2 size = plate.high().minus(plate.low()).times(1000);
        double least = Math.max(
                size.x() / (pager.width() + 2 * (Pager.MARGIN - EDGE) - 2 * BESIDE),
                size.y() / (pager.left() - BARS - DIMENSIONS - above(plate)));
        return SideView.scale(least);
    }

    private Drawing drawing(CutPlate plate, double scale) {
        double k = 1000 / scale;
        Drawing.Board board = new Drawing.Board();
        Vec2 low = plate.low().times(k);
        Vec2 high = plate.high().times(k);
        board.outline(plate.outline().stream().map(p -> p.times(k)).toList(), CUT);
        for (CutPlate.PlateHole hole : plate.holes()) {
            Vec2 c = hole.at().times(k);
            double r = hole.diameter() / 2 * k;
            board.ring(c, r, CUT);
            double cross = r + 4;
            board.line(c.plus(new Vec2(-cross, 0)), c.plus(new Vec2(cross, 0)), MARK);
            board.line(c.plus(new Vec2(0, -cross)), c.plus(new Vec2(0, cross)), MARK);
        }
        Dimension.square(
                board,
                low,
                new Vec2(high.x(), low.y()),
                true,
                low.y() - 10,
                bare(plate.high().x() - plate.low().x()));
        Dimension.square(
                board,
                low,
                new Vec2(low.x(), high.y()),
                false,
                low.x() - 10,
                bare(plate.high().y() - plate.low().y()));
        if (!plate.holes().isEmpty()) {
            CutPlate.PlateHole first = plate.holes().get(0);
            Vec2 c = first.at().times(k);
            Dimension.square(
                    board,
                    c,
                    new Vec2(c.x(), high.y()),
                    false,
                    high.x() + 7,
                    bare(plate.high().y() - first.at().y()));
            if (plate.holes().size() == 1) {
                Dimension.square(
                        board,
                        c,
                        new Vec2(c.x(), low.y()),
                        false,
                        high.x() + 7,
                        bare(first.at().y() - plate.low().y()));
                Dimension.square(
                        board,
                        low,
                        new Vec2(c.x(), low.y()),
                        true,
                        low.y() - 5,
                        bare(first.at().x() - plate.low().x()));
            } else {
                pitches(board, plate, k, high);
            }
            double off = 0.75 * first.diameter() / 2 * k + 1;
            String each = plate.holes().size() == 1 ? "" : plate.holes().size() + " holes of ";
            Vec2 at = c.plus(new Vec2(off, -off - LETTERS));
            board.text(at, LETTERS, -1, each + "diameter " + bare(first.diameter()), Ink.TEXT);
        }
        return board.on("plate", low.minus(new Vec2(BESIDE, DIMENSIONS)), high.plus(new Vec2(BESIDE, above(plate))));
    }

    /** Pitches of several holes are measured above the plate. */
    private static double above(CutPlate plate) {
        return plate.holes().size() > 1 ? DIMENSIONS : ABOVE;
    }

    /** Between holes: from the first to the next one level with it and to the next one above or below it. */
    private void pitches(Drawing.Board board, CutPlate plate, double k, Vec2 high) {
        CutPlate.PlateHole first = plate.holes().get(0);
        double level = Double.POSITIVE_INFINITY;
        double upright = Double.POSITIVE_INFINITY;
        Vec2 right = first.at();
        Vec2 up = first.at();
        for (CutPlate.PlateHole hole : plate.holes()) {
            Vec2 d = hole.at().minus(first.at());
            if (Math.abs(d.y()) < 1e-6 && Math.abs(d.x()) > 1e-6 && Math.abs(d.x()) < level) {
                level = Math.abs(d.x());
                right = hole.at();
            }
            if (Math.abs(d.x()) < 1e-6 && Math.abs(d.y()) > 1e-6 && Math.abs(d.y()) < upright) {
                upright = Math.abs(d.y());
                up = hole.at();
            }
        }
        if (level < Double.POSITIVE_INFINITY) {
            Dimension.square(board, first.at().times(k), right.times(k), true, high.y() + 8, bare(level));
        }
        if (upright < Double.POSITIVE_INFINITY) {
            Dimension.square(board, first.at().times(k), up.times(k), false, high.x() + 12, bare(upright));
        }
    }

    /** To a tenth of a millimetre, or as the shop says it, without its unit. */
    private String bare(double m) {
        return Text.size(m).show(units).replaceAll(" (mm|in)$", "");
    }

    /** Level and upright, with a tick every 10 mm: a printer may be off along one of them only. */
    private void bars() {
        Drawing.Board page = pager.board();
        Pen pen = Pen.line("check-bar", Ink.BLACK, 0.35);
        double length = units == UnitSystem.METRIC ? 100 : 4 * 25.4;
        int ticks = units == UnitSystem.METRIC ? 10 : 8;
        Vec2 from = new Vec2(Pager.MARGIN, 20);
        for (int way = 0; way < 2; way++) {
            Vec2 along = way == 0 ? new Vec2(1, 0) : new Vec2(0, 1);
            Vec2 side = way == 0 ? new Vec2(0, 1) : new Vec2(1, 0);
            page.line(from, from.plus(along.times(length)), pen);
            for (int i = 0; i <= ticks; i++) {
                Vec2 at = from.plus(along.times(length * i / ticks));
                page.line(at, at.plus(side.times(i % (ticks / 2) == 0 ? 3 : 1.8)), pen);
            }
        }
        String words = units == UnitSystem.METRIC ? "100 mm" : "4 in";
        page.text(
                from.plus(new Vec2(length / 2, -4)),
                LETTERS,
                0,
                "both bars are " + words + " long: if one is not, print again at 100 %",
                Ink.QUIET);
    }

    /** What has no plate. */
    void open(List<Text> open) {
        if (!open.isEmpty()) {
            pager.heading("Not on these pages");
            open.forEach(t -> pager.line(t.show(units)));
        }
    }
}
