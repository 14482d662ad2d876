// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.design.around.KeepOut;
import tipwright.design.key.NameId;
import tipwright.drawing.Drawing;
import tipwright.drawing.Pane;
import tipwright.drawing.Pen;
import tipwright.geometry.Vec2;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachineOutline.Seen;
import tipwright.outline.MachinePose;
import tipwright.outline.PartKind;
import tipwright.outline.View;
import tipwright.placement.Pin;
import tipwright.placement.PlacementMap;
import tipwright.quantity.Marks;
import tipwright.quantity.UnitSystem;

/**
 * Draws the map of a pin's zone. The ramp gets darker with the utilisation and passes no red against green, so that it reads for
 * the colour-blind and in print without colour; what does not fit is hatched by the limit that stands against it.
 */
public final class MapPicture {
    private static final double LONG = 150;
    private static final double SAME = 1e-6;
    private static final double LEFT = 22;
    private static final double TOP = 20;
    private static final double BELOW = 16;
    private static final double LEGEND = 84;

    private final PlacementMap map;
    private final List<Seen> machine;
    private final UnitSystem units;
    private final Vec2 drawn;
    private final @Nullable Boolean works;
    private final Drawing.Board board = new Drawing.Board();
    private final double cell;
    private final int rows;
    private final int columns;

    private MapPicture(PlacementMap map, List<Seen> machine, UnitSystem units, Vec2 drawn, @Nullable Boolean works) {
        this.works = works;
        this.map = map;
        this.drawn = drawn;
        this.machine = machine;
        this.units = units;
        rows = map.utilisation().length;
        columns = map.utilisation()[0].length;
        cell = LONG / Math.max(rows, columns);
    }

    /** The picture of a design as drawn, with the stowed machine in thin lines. */
    public static Drawing of(PlacementMap map, Analysis analysis, UnitSystem units) {
        return of(map, analysis, units, map.drawn(), null);
    }

    /**
     * The picture of the best answer of a search.
     *
     * @param analysis of the answer
     * @param drawn where the pin is in the design file, m; where the map's own design has it, when nothing was found
     * @param works whether the whole check passes with the pin there; null: not looked at
     */
    public static Drawing of(
            PlacementMap map, Analysis analysis, UnitSystem units, Vec2 drawn, @Nullable Boolean works) {
        MachinePose stowed = MachinePose.of(analysis.poses().get(0));
        return new MapPicture(map, new MachineOutline(analysis).at(stowed, View.SIDE), units, drawn, works).draw();
    }

    private Drawing draw() {
        double w = columns * cell;
        cells();
        boundaries();
        new MachineInk(board, this::place, cell / map.cell()).behind(machine, new Pane(Vec2.ZERO, at(columns, rows)));
        outlines();
        axes(rows * cell);
        labels();
        marks();
        double top = rows * cell;
        double low = new MapKey(board, map, units).draw(w + 8, top, drawn, inside(drawn), answered(), works);
        String title = "Used most with the " + NameId.words(map.place()) + " here";
        board.text(new Vec2(-LEFT + 4, top + 12), 5, -1, title, Ink.TEXT);
        String under = others() + ". Hatched or grey: does not work.";
        board.text(new Vec2(-LEFT + 4, top + 6), 3.2, -1, under, Ink.QUIET);
        return board.on(title, new Vec2(-LEFT, Math.min(-BELOW, low)), new Vec2(w + 8 + LEGEND, top + TOP));
    }

    /** Where the other pins are meanwhile. */
    private String others() {
        String whose = answered() ? "as in answer 1" : "as drawn";
        if (map.pin() == null || !straight()) {
            return "All other pins " + whose + ", pivot at " + Lengths.point(map.pivot(), units);
        }
        String other = map.pin() == Pin.FRAME ? "The actuator's other end" : "Frame pin";
        return other + " at " + Lengths.point(map.other(), units) + ", pivot at " + Lengths.point(map.pivot(), units)
                + ", " + whose;
    }

    private boolean straight() {
        return machine.stream().noneMatch(s -> s.kind() == PartKind.LINK);
    }

    /** Whether the map is of an answer of the search, in which the pin is elsewhere than in the file. */
    private boolean answered() {
        return map.drawn().minus(drawn).norm() > SAME;
    }

    private boolean inside(Vec2 p) {
        Vec2 at = place(p);
        return at.x() >= 0 && at.y() >= 0 && at.x() <= columns * cell && at.y() <= rows * cell;
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
                if (kind(r, c) > 0 && kind(r, c) < MapShades.BARRED) {
                    Hatch.cell(board, kind(r, c) - 1, r, c, cell);
                }
            }
        }
    }

    private int paint(int r, int c) {
        return kind(r, c) == 0
                ? MapShades.colour(MapShades.band(map.utilisation()[r][c]))
                : kind(r, c) == MapShades.BARRED ? MapShades.GREY : -1;
    }

    private void boundaries() {
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                edge(kind(r, c), kind(r, c + 1), at(c + 1, r), at(c + 1, r + 1));
                edge(kind(r, c), kind(r + 1, c), at(c, r + 1), at(c + 1, r + 1));
            }
        }
    }

    private void edge(int one, int two, Vec2 a, Vec2 b) {
        if (one != two && one >= 0 && two >= 0) {
            board.line(a, b, one == 0 || two == 0 ? MapKey.EDGE : MapKey.BETWEEN);
        }
    }

    private void outlines() {
        board.outline(map.zone().stream().map(this::place).toList(), MapKey.ZONE);
        for (KeepOut k : map.keepOuts()) {
            List<Vec2> points = k.outline().stream().map(this::place).toList();
            Vec2 middle = new Vec2(
                    points.stream().mapToDouble(Vec2::x).average().orElse(0),
                    points.stream().mapToDouble(Vec2::y).average().orElse(0));
            Vec2 size = at(columns, rows);
            boolean near = middle.x() > 0 && middle.y() > 0 && middle.x() < size.x() && middle.y() < size.y();
            if (near) {
                board.outline(points, MapKey.KEEP_OUT);
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
            board.text(new Vec2(at, -5), 3, 0, Marks.bare(x, units), Ink.TEXT);
        }
        step = Lengths.tick(rows * map.cell() * 2, units);
        for (double y = Math.ceil(map.low().y() / step - 1e-9) * step;
                y <= map.low().y() + rows * map.cell() + 1e-9;
                y += step) {
            double at = place(new Vec2(0, y)).y();
            board.line(new Vec2(0, at), new Vec2(-1.5, at), Pen.line("axis", Ink.BLACK, 0.25));
            board.text(new Vec2(-2.5, at - 1), 3, 1, Marks.bare(y, units), Ink.TEXT);
        }
        board.text(new Vec2(columns * cell / 2, -10.5), 3.2, 0, "x from the datum, " + Lengths.unit(units), Ink.TEXT);
        String up = height > 50 ? "y from the datum, " : "y, ";
        board.text(new Vec2(-LEFT + 5.5, height / 2), 3.2, 0, 90, up + Lengths.unit(units), Ink.TEXT);
    }

    private void marks() {
        if (answered()) {
            MapKey.square(board, place(map.drawn()), 1.8);
        }
        if (inside(drawn)) {
            MapKey.cross(board, place(drawn), 1.8);
        }
    }

    /** A label in the middle of each large region that does not fit. */
    private void labels() {
        for (MapShades.Label label : MapShades.labels(map)) {
            note(at(label.column() + 0.5, label.row() + 0.5), label.words());
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
}
