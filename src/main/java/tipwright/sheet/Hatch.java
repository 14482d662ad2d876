// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import tipwright.drawing.Drawing;
import tipwright.drawing.Pen;
import tipwright.geometry.Vec2;

/** Hatches that tell limits apart without colour; they run on from cell to cell. */
final class Hatch {
    private static final Pen PEN = Pen.line("hatch", 0x888888, 0.18);
    private static final int EVERY = 3;

    private Hatch() {}

    /** One cell of a kind of hatch. */
    static void cell(Drawing.Board board, int kind, int row, int column, double side) {
        Vec2 low = new Vec2(column * side, row * side);
        Vec2 right = low.plus(new Vec2(side, 0));
        Vec2 up = low.plus(new Vec2(0, side));
        Vec2 high = low.plus(new Vec2(side, side));
        Vec2 middle = low.plus(new Vec2(side / 2, side / 2));
        switch (kind % 7) {
            case 0 -> dot(board, middle, side, row, column);
            case 1 -> {
                if (Math.floorMod(row - column, EVERY) == 0) {
                    board.line(low, high, PEN);
                }
            }
            case 2 -> {
                if (Math.floorMod(row + column, EVERY) == 0) {
                    board.line(up, right, PEN);
                }
            }
            case 3 -> {
                if (row % EVERY == 0) {
                    board.line(low, right, PEN);
                }
            }
            case 4 -> {
                if (column % EVERY == 0) {
                    board.line(low, up, PEN);
                }
            }
            case 5 -> {
                if (Math.floorMod(row - column, 2 * EVERY) == 0) {
                    board.line(low, high, PEN);
                }
                if (Math.floorMod(row + column, 2 * EVERY) == 0) {
                    board.line(up, right, PEN);
                }
            }
            default -> {
                if (row % (EVERY + 1) == 0) {
                    board.line(low, right, PEN);
                }
                if (column % (EVERY + 1) == 0) {
                    board.line(low, up, PEN);
                }
            }
        }
    }

    private static void dot(Drawing.Board board, Vec2 at, double side, int row, int column) {
        if (row % EVERY == 0 && (column + row / EVERY) % EVERY == 0) {
            board.ring(at, side / 4, Pen.area("hatch", 0x888888));
        }
    }

    /** A piece of it for the legend, 8 by 4.5 mm. */
    static void swatch(Drawing.Board board, int kind, Vec2 low) {
        Drawing.Board piece = new Drawing.Board();
        for (int r = 0; r < 5; r++) {
            for (int c = 0; c < 9; c++) {
                cell(piece, kind, r, c, 0.9);
            }
        }
        for (tipwright.drawing.Mark mark : piece.on("", Vec2.ZERO, Vec2.ZERO).marks()) {
            if (mark instanceof tipwright.drawing.Mark.Path path) {
                board.path(path.points().stream().map(p -> p.plus(low)).toList(), mark.pen());
            } else if (mark instanceof tipwright.drawing.Mark.Ring ring) {
                board.ring(ring.centre().plus(low), ring.radius(), mark.pen());
            }
        }
        board.box(low, low.plus(new Vec2(8.1, 4.5)), Pen.line("legend", Ink.BLACK, 0.2));
    }
}
