// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.util.List;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.drawing.Drawing;
import tipwright.drawing.Pen;
import tipwright.geometry.Vec2;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.sheet.bracket.Brackets;
import tipwright.sheet.bracket.CutPlate;
import tipwright.sheet.cut.CutList;
import tipwright.sheet.cut.PlateCut;

/** All plates side by side at their true size, mm: layer 'cut' for closed outlines and holes, 'mark' for centres, 'text' for names. */
public final class CutDrawing {
    private static final double GAP = 30;
    private static final double LETTERS = 6;
    private static final double CROSS = 3;
    private static final Pen CUT = Pen.line("cut", Ink.BLACK, 0.25);
    private static final Pen MARK = Pen.line("mark", Ink.GREY, 0.25);

    private CutDrawing() {}

    /**
     * Of a design with its brackets, proposals among them.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled
     */
    public static Drawing of(Design design, UnitSystem units) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(WeldSheet.rounded(design, units));
        return of(design.name(), CutList.of(analysis, Brackets.of(analysis, units), units), units);
    }

    static Drawing of(String name, CutList list, UnitSystem units) {
        Drawing.Board board = new Drawing.Board();
        double x = 0;
        double top = 0;
        for (PlateCut cut : list.plates()) {
            CutPlate plate = cut.plate();
            Vec2 shift =
                    new Vec2(x - 1000 * plate.low().x(), -1000 * plate.low().y());
            board.outline(
                    plate.outline().stream().map(p -> p.times(1000).plus(shift)).toList(), CUT);
            for (CutPlate.PlateHole hole : plate.holes()) {
                Vec2 c = hole.at().times(1000).plus(shift);
                board.ring(c, 500 * hole.diameter(), CUT);
                board.line(c.minus(new Vec2(CROSS, 0)), c.plus(new Vec2(CROSS, 0)), MARK);
                board.line(c.minus(new Vec2(0, CROSS)), c.plus(new Vec2(0, CROSS)), MARK);
            }
            Pen text = Pen.line("text", Ink.BLACK, 0.2);
            List<String> words = List.of(
                    cut.name() + (cut.proposed() ? " (PROPOSAL)" : ""),
                    (Double.isNaN(plate.thickness())
                                    ? "thickness not given"
                                    : Text.size(plate.thickness()).show(units) + " thick")
                            + ", cut " + cut.count());
            for (int i = 0; i < words.size(); i++) {
                board.text(new Vec2(x, -(i + 1.5) * 1.5 * LETTERS), LETTERS, -1, words.get(i), text);
            }
            Vec2 size = plate.high().minus(plate.low()).times(1000);
            double wide = words.stream()
                    .mapToDouble(w -> 0.6 * LETTERS * w.length())
                    .max()
                    .orElse(0);
            x += Math.max(size.x(), wide) + GAP;
            top = Math.max(top, size.y());
        }
        return board.on(name + ": plates to cut", new Vec2(-GAP, -GAP), new Vec2(x, top + GAP));
    }
}
