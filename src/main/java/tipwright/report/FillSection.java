// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.check.HowFull;
import tipwright.check.Result;
import tipwright.load.Emptying;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;

/** How full may it be, and does it empty. */
final class FillSection {
    private final Style style;

    FillSection(Style style) {
        this.style = style;
    }

    List<String> lines(Result result) {
        List<String> lines = new ArrayList<>();
        lines.add(style.heading("How full may it be?"));
        lines.addAll(Prose.wrap("  ", howFull(result.howFull())));
        lines.add("");
        lines.add(style.heading("Does it empty?"));
        Emptying emptying = result.analysis().emptying();
        double residue = result.analysis().design().limits().residue();
        lines.addAll(Prose.wrap("  ", "Thin slurry: " + residue(emptying.liquid(), residue)));
        Emptying.Residue cake = emptying.cake();
        if (cake != null) {
            lines.addAll(Prose.wrap("  ", "Settled solids: " + residue(cake, residue)));
        }
        return lines;
    }

    private String howFull(@Nullable HowFull most) {
        if (most == null) {
            return "No fill passes: a check that depends on the load fails even with the tank empty.";
        }
        String amount = show(most.volume(), Kind.VOLUME) + ", " + show(most.mass(), Kind.MASS) + " of this slurry";
        String level = " The level switch goes " + show(most.level(), Kind.LENGTH)
                + " above the lowest point of the inside, tank stowed.";
        return most.limit() == null
                ? "Full: " + amount + "." + level
                : "Up to " + Scale.percent().show(most.fill()) + ": " + amount + "." + level + " More is stopped by: "
                        + Prose.safe(most.limit()) + ".";
    }

    private String residue(Emptying.Residue left, double allowed) {
        Scale percent = Scale.percent();
        String stays = show(left.volume(), Kind.VOLUME) + " (" + percent.show(left.share())
                + ") stays in at full tilt. To leave no more than " + percent.show(allowed) + " ";
        return left.tiltNeeded() == null
                ? stays + "no tilt is enough."
                : stays + "it must tip to " + Scale.angle().show(left.tiltNeeded()) + ".";
    }

    private String show(double si, Kind kind) {
        return Quantities.show(si, kind, style.units());
    }
}
