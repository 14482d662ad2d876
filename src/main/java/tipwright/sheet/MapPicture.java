// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.design.around.KeepOut;
import tipwright.drawing.Drawing;
import tipwright.drawing.Pane;
import tipwright.drawing.Pen;
import tipwright.geometry.Vec2;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachineOutline.Seen;
import tipwright.outline.MachinePose;
import tipwright.outline.View;
import tipwright.placement.Limit;
import tipwright.placement.Pin;
import tipwright.placement.PlacementMap;
import tipwright.quantity.UnitSystem;

/**
 * Draws the map of a pin's zone. The ramp gets darker with the utilisation and passes no red against green, so that it reads for
 * the colour-blind and in print without colour; what does not fit is hatched by the limit that stands against it.
 */
public final class MapPicture {
    private static final double LONG = 150;
    private static final double LEFT = 22;
    private static final double TOP = 20;
    private static final double BELOW = 16;
    private static final double LEGEND = 58;

    private final PlacementMap map;
    private final List<Seen> machine;
    private final UnitSystem units;
    private final Drawing.Board board = new Drawing.Board();
    private final double cell;
    private final int rows;
    private final int columns;

    private MapPicture(PlacementMap map, List<Seen> machine, UnitSystem units) {
        this.map = map;
        this.machine = machine;
        this.units = units;
        rows = map.utilisation().length;
        columns = map.utilisation()[0].length;
        cell = LONG / Math.max(rows, columns);
    }

    /** The picture, with the stowed machine in thin lines. */
    public static Drawing of(PlacementMap map, Analysis analysis, UnitSystem units) {
        MachinePose stowed = MachinePose.of(analysis.poses().get(0));
        return new MapPicture(map, new MachineOutline(analysis).at(stowed, View.SIDE), units).draw();
    }

    private Drawing draw() {
        double w = columns * cell;
        double listed = 40 + 5.5 * MapShades.against(map).size();
        double h = Math.max(rows * cell, Math.max(70, listed));
        cells();
        boundaries();
        new MachineInk(board, this::place, cell / map.cell()).behind(machine, new Pane(Vec2.ZERO, at(columns, rows)));
        outlines();
        axes(rows * cell);
        labels();
        drawn();
        legend(w + 8, rows * cell);
        String which = map.pin() == Pin.FRAME ? "frame pin" : "tank pin";
        String other = map.pin() == Pin.FRAME ? "the actuator's other end" : "frame pin";
        String title = "Largest utilisation with the " + which + " here";
        double top = rows * cell;
        board.text(new Vec2(-LEFT + 4, top + 12), 5, -1, title, Ink.TEXT);
        board.text(
                new Vec2(-LEFT + 4, top + 6),
                3.2,
                -1,
                other + " at " + Lengths.point(map.other(), units) + ", pivot at " + Lengths.point(map.pivot(), units)
                        + "; hatched: does not work. This map ignores clearances; run check for those.",
                Ink.QUIET);
        return board.on(title, new Vec2(-LEFT, Math.min(-BELOW, top - h - BELOW)), new Vec2(w + 8 + LEGEND, top + TOP));
    }

    private Vec2 at(double column, double row) {
        return new Vec2(column * cell, row * cell);
    }

    private Vec2 place(Vec2 p) {
        return p.minus(map.low()).times(cell / map.cell());
    }

    private int kind(int r, int c) {
        return MapShades.kind(map, r, c);
    }

    private void cells() {
        for (int r = 0; r < rows; r++) {
            int from = 0;
            while (from < columns) {
                int to = from + 1;
                while (to < columns && paint(r, to) == paint(r, from)) {
                    to++;
                }
                if (paint(r, from) >= 0) {
                    board.box(at(from, r), at(to, r + 1.02), Pen.area("map", paint(r, from)));
                }
                from = to;
            }
            for (int c = 0; c < columns; c++) {
                if (kind(r, c) > 0) {
                    Hatch.cell(board, kind(r, c) - 1, r, c, cell);
                }
            }
        }
    }

    private int paint(int r, int c) {
        return kind(r, c) == 0 ? MapShades.colour(MapShades.band(map.utilisation()[r][c])) : -1;
    }

    private void boundaries() {
        Pen thick = Pen.line("boundary", Ink.BLACK, 0.6);
        Pen thin = Pen.line("boundary", Ink.BLACK, 0.25);
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                edge(kind(r, c), kind(r, c + 1), at(c + 1, r), at(c + 1, r + 1), thick, thin);
                edge(kind(r, c), kind(r + 1, c), at(c, r + 1), at(c + 1, r + 1), thick, thin);
            }
        }
    }

    private void edge(int one, int two, Vec2 a, Vec2 b, Pen thick, Pen thin) {
        if (one != two && one >= 0 && two >= 0) {
            board.line(a, b, one == 0 || two == 0 ? thick : thin);
        }
    }

    private void outlines() {
        board.outline(map.zone().stream().map(this::place).toList(), Pen.line("zone", Ink.BLACK, 0.4));
        for (KeepOut k : map.keepOuts()) {
            List<Vec2> points = k.outline().stream().map(this::place).toList();
            Vec2 middle = new Vec2(
                    points.stream().mapToDouble(Vec2::x).average().orElse(0),
                    points.stream().mapToDouble(Vec2::y).average().orElse(0));
            Vec2 size = at(columns, rows);
            boolean near = middle.x() > 0 && middle.y() > 0 && middle.x() < size.x() && middle.y() < size.y();
            if (near) {
                board.outline(points, Pen.line("keep-out", Ink.GREY, 0.4).dashed(1.5));
                note(middle, k.name());
            }
        }
    }

    private void axes(double height) {
        double step = Lengths.tick(columns * map.cell(), units);
        for (double x = Math.ceil(map.low().x() / step - 1e-9) * step;
                x <= map.low().x() + columns * map.cell() + 1e-9;
                x += step) {
            double at = place(new Vec2(x, 0)).x();
            board.line(new Vec2(at, 0), new Vec2(at, -1.5), Pen.line("axis", Ink.BLACK, 0.25));
            board.text(new Vec2(at, -5), 3, 0, Lengths.bare(x, units), Ink.TEXT);
        }
        step = Lengths.tick(rows * map.cell() * 2, units);
        for (double y = Math.ceil(map.low().y() / step - 1e-9) * step;
                y <= map.low().y() + rows * map.cell() + 1e-9;
                y += step) {
            double at = place(new Vec2(0, y)).y();
            board.line(new Vec2(0, at), new Vec2(-1.5, at), Pen.line("axis", Ink.BLACK, 0.25));
            board.text(new Vec2(-2.5, at - 1), 3, 1, Lengths.bare(y, units), Ink.TEXT);
        }
        board.text(new Vec2(columns * cell / 2, -10.5), 3.2, 0, "x from the datum, " + Lengths.unit(units), Ink.TEXT);
        String up = height > 50 ? "y from the datum, " : "y, ";
        board.text(new Vec2(-LEFT + 5.5, height / 2), 3.2, 0, 90, up + Lengths.unit(units), Ink.TEXT);
    }

    private void drawn() {
        Vec2 p = place(map.drawn());
        Pen pen = Pen.line("pin", Ink.BLACK, 0.5).filled(Ink.WHITE);
        board.ring(p, 1.8, pen);
        board.line(p.plus(new Vec2(-3.2, 0)), p.plus(new Vec2(3.2, 0)), pen);
        board.line(p.plus(new Vec2(0, -3.2)), p.plus(new Vec2(0, 3.2)), pen);
    }

    /** A label in the middle of each large region that does not fit. */
    private void labels() {
        for (MapShades.Label label : MapShades.labels(map)) {
            note(at(label.column() + 0.5, label.row() + 0.5), label.limit().words());
        }
    }

    private void note(Vec2 middle, String text) {
        double half = 0.9 * text.length() + 1.2;
        double x = Math.max(half, Math.min(columns * cell - half, middle.x()));
        Vec2 at = new Vec2(x, middle.y());
        board.box(
                at.plus(new Vec2(-half, -2.2)),
                at.plus(new Vec2(half, 2.6)),
                Pen.line("label", Ink.GREY, 0.15).filled(Ink.WHITE));
        board.text(at.plus(new Vec2(0, -1)), 3.4, 0, text, Ink.TEXT);
    }

    private void legend(double x, double top) {
        double y = top - 4;
        board.text(new Vec2(x, y), 3.4, -1, "utilisation", Ink.TEXT);
        y -= 7;
        for (int b = 0; b < MapShades.WORDS.size(); b++) {
            board.box(
                    new Vec2(x, y),
                    new Vec2(x + 8, y + 4.5),
                    Pen.line("legend", Ink.BLACK, 0.2).filled(MapShades.colour(b)));
            board.text(new Vec2(x + 10, y + 1), 3.2, -1, MapShades.WORDS.get(b), Ink.TEXT);
            y -= 5.5;
        }
        y -= 2;
        for (Limit limit : MapShades.against(map)) {
            Hatch.swatch(board, MapShades.hatch(limit), new Vec2(x, y));
            board.text(new Vec2(x + 10, y + 1), 3.2, -1, limit.words(), Ink.TEXT);
            y -= 5.5;
        }
        Vec2 p = new Vec2(x + 4, y + 1);
        Pen pen = Pen.line("legend", Ink.BLACK, 0.4);
        board.ring(p, 1.5, pen);
        board.line(p.plus(new Vec2(-2.6, 0)), p.plus(new Vec2(2.6, 0)), pen);
        board.line(p.plus(new Vec2(0, -2.6)), p.plus(new Vec2(0, 2.6)), pen);
        board.text(new Vec2(x + 10, y), 3.2, -1, "as drawn", Ink.TEXT);
        board.line(p.plus(new Vec2(-4, -5.5)), p.plus(new Vec2(4, -5.5)), MachineInk.BEHIND);
        board.text(new Vec2(x + 10, y - 5.5), 3.2, -1, "the stowed machine", Ink.TEXT);
    }
}
