// SPDX-License-Identifier: Apache-2.0
package tipwright.check.mistake;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Row;
import tipwright.design.Design;
import tipwright.design.tank.Opening;
import tipwright.geometry.Range;
import tipwright.geometry.Vec3;
import tipwright.load.Contents;
import tipwright.quantity.Text;

/** A machine that is drawn the other way round, or a pivot behind the load. */
final class WrongSide {
    /** Of the tank's length: nearer than this is neither side. */
    private static final double MIDDLE = 0.05;

    private WrongSide() {}

    static List<Text> find(Analysis analysis) {
        Design design = analysis.design();
        Row stowed = stowed(analysis);
        if (stowed == null) {
            return List.of();
        }
        Range room = new Contents(design).solid().extent(new Vec3(1, 0, 0));
        double centre = stowed.load().centroid().x();
        double pivot = design.pivot().at().x();
        double aside = MIDDLE * room.span();
        List<Opening> openings = design.tank().openings();
        boolean right = openings.stream().anyMatch(o -> o.middle().x() > (room.low() + room.high()) / 2 + aside);
        if (!right && pivot < centre - aside) {
            return List.of(Text.of(
                    "It is drawn to dump towards -x: the pivot is {} to the left of the full tank's centre of mass and no"
                            + " opening to the right of the tank's middle, but x runs towards the dump end. 'tipwright mirror"
                            + " FILE' turns the file round.",
                    Text.mark(centre - pivot)));
        }
        if (right && pivot < centre - aside) {
            return List.of(Text.of(
                    "The full tank's centre of mass is {} beyond the pivot towards the dump end, with the tank still"
                            + " stowed: it goes over by itself. Is the pivot's x = {} right?",
                    Text.mark(centre - pivot),
                    Text.mark(pivot)));
        }
        return List.of();
    }

    /** The full tank before it moves; null when that is not among the loads. */
    private static @Nullable Row stowed(Analysis analysis) {
        for (CaseResult c : analysis.cases()) {
            if (c.name().equals("held") && !c.rows().isEmpty()) {
                return c.rows().get(0);
            }
        }
        return null;
    }
}
