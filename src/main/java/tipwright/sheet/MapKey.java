// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import org.jspecify.annotations.Nullable;
import tipwright.drawing.Drawing;
import tipwright.drawing.Pen;
import tipwright.geometry.Vec2;
import tipwright.placement.Limit;
import tipwright.placement.PlacementMap;
import tipwright.quantity.UnitSystem;

/** What every shade, line and mark of a map means. */
final class MapKey {
    static final Pen EDGE = Pen.line("boundary", Ink.BLACK, 0.6);
    static final Pen BETWEEN = Pen.line("boundary", Ink.BLACK, 0.25);
    static final Pen ZONE = Pen.line("zone", Ink.BLACK, 0.4);
    static final Pen KEEP_OUT = Pen.line("keep-out", Ink.GREY, 0.4).dashed(1.5);

    private static final double STEP = 5.5;
    private static final double LETTERS = 3.2;

    private final Drawing.Board board;
    private final PlacementMap map;
    private final UnitSystem units;
    private double y;

    MapKey(Drawing.Board board, PlacementMap map, UnitSystem units) {
        this.board = board;
        this.map = map;
        this.units = units;
    }

    /**
     * Draws it.
     *
     * @param drawn where the pin is in the design file, m
     * @param shown whether that is on the map
     * @param answered whether the map's own design has the pin elsewhere
     * @param works whether the whole check passes with the pin where the file has it; null: not looked at
     * @return lowest place that it takes, mm
     */
    double draw(double x, double top, Vec2 drawn, boolean shown, boolean answered, @Nullable Boolean works) {
        y = top - 4;
        board.text(new Vec2(x, y), 3.4, -1, "used, at the check closest to failing", Ink.TEXT);
        y -= 7;
        for (int b = 0; b < MapShades.WORDS.size(); b++) {
            swatch(x, MapShades.colour(b), MapShades.WORDS.get(b));
        }
        swatch(x, MapShades.GREY, MapShades.OTHER + " fails");
        y -= 2;
        for (Limit limit : MapShades.against(map)) {
            Hatch.swatch(board, MapShades.hatch(limit), new Vec2(x, y));
            words(x, limit.words());
        }
        y -= 1;
        line(x, EDGE, "edge of where it works");
        line(x, BETWEEN, "edge between two reasons why not");
        line(x, ZONE, "the zone that the file gives");
        if (!map.keepOuts().isEmpty()) {
            line(x, KEEP_OUT, "keep-out; white: too near to it");
        }
        line(x, MachineInk.BEHIND, "the stowed machine");
        if (shown) {
            cross(board, new Vec2(x + 4, y + 2), 1.5);
        }
        words(
                x,
                "as drawn, " + Lengths.point(drawn, units) + (works == null ? "" : works ? ": works" : ": fails")
                        + (shown ? "" : ", off this map"));
        if (answered) {
            square(board, new Vec2(x + 4, y + 2), 1.5);
            words(x, "answer 1, " + Lengths.point(map.drawn(), units));
        }
        return y - 2;
    }

    private void swatch(double x, int colour, String words) {
        board.box(
                new Vec2(x, y),
                new Vec2(x + 8, y + 4.5),
                Pen.line("legend", Ink.BLACK, 0.2).filled(colour));
        words(x, words);
    }

    private void line(double x, Pen pen, String words) {
        board.line(new Vec2(x, y + 2), new Vec2(x + 8, y + 2), pen);
        words(x, words);
    }

    private void words(double x, String words) {
        board.text(new Vec2(x + 10, y + 1), LETTERS, -1, words, Ink.TEXT);
        y -= STEP;
    }

    /** The mark of the pin as drawn. */
    static void cross(Drawing.Board board, Vec2 p, double radius) {
        Pen pen = Pen.line("pin", Ink.BLACK, 0.5).filled(Ink.WHITE);
        double arm = 1.8 * radius;
        board.ring(p, radius, pen);
        board.line(p.plus(new Vec2(-arm, 0)), p.plus(new Vec2(arm, 0)), pen);
        board.line(p.plus(new Vec2(0, -arm)), p.plus(new Vec2(0, arm)), pen);
    }

    /** The mark of the best answer. */
    static void square(Drawing.Board board, Vec2 p, double half) {
        Vec2 corner = new Vec2(half, half);
        board.box(
                p.minus(corner),
                p.plus(corner),
                Pen.line("answer", Ink.BLACK, 0.6).filled(Ink.WHITE));
        board.ring(p, half / 3, Pen.area("answer", Ink.BLACK));
    }
}
