// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.Design;
import tipwright.design.file.Assumption;
import tipwright.geometry.Vec2;
import tipwright.load.EmptyTank;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;

/** What follows from the builder's own measures, to be held against a scale or a second tape. */
final class MeasuredSection {
    private MeasuredSection() {}

    /** Ready lines, with a heading; none when nothing was measured that way. */
    static List<String> lines(Checked checked, Style style) {
        List<String> lines = new ArrayList<>();
        for (Assumption a : checked.taken()) {
            if (a.measured()) {
                lines.addAll(Prose.wrap("  ", Prose.safe(a.value() + ": " + a.note())));
            }
        }
        Design design = checked.result().analysis().design();
        if (!design.tank().weighed().isEmpty()) {
            lines.addAll(Prose.wrap("  ", hook(EmptyTank.movedByHook(design), style.units())));
        }
        if (!lines.isEmpty()) {
            lines.add(0, style.heading("Worked out from what you measured"));
            lines.add(0, "");
        }
        return lines;
    }

    private static String hook(Vec2 move, UnitSystem units) {
        return "hook scale: the centre of the empty tank is " + Quantities.show(Math.abs(move.x()), Kind.LENGTH, units)
                + (move.x() < 0 ? " away from the dump end" : " towards the dump end") + " and "
                + Quantities.show(Math.abs(move.y()), Kind.LENGTH, units) + (move.y() < 0 ? " down" : " up")
                + " of where wall and parts put it; the scale's is taken";
    }
}
