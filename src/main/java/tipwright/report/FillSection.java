// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.check.HowFull;
import tipwright.check.Result;
import tipwright.design.Design;
import tipwright.load.Emptying;
import tipwright.quantity.Kind;
import tipwright.quantity.Marks;
import tipwright.quantity.Quantities;

/** How full may it be, and does it empty. */
public final class FillSection {
    /** A tank that may be filled to less than this share of it is of no use. */
    static final double LITTLE = 0.01;

    /** Share of the load that is not worth a figure. */
    private static final double NOTHING = 0.0005;

    private final Style style;

    /** In the units of a style. */
    public FillSection(Style style) {
        this.style = style;
    }

    List<String> lines(Result result) {
        List<String> lines = new ArrayList<>();
        lines.add(style.heading("How full may it be?"));
        lines.addAll(Prose.wrap("  ", howFull(result.howFull())));
        lines.add("");
        lines.add(style.heading("Does it empty?"));
        for (String sentence : empties(result)) {
            lines.addAll(Prose.wrap("  ", sentence));
        }
        return lines;
    }

    /** Whether it empties, a sentence for each kind of load. */
    public List<String> empties(Result result) {
        Emptying emptying = result.analysis().emptying();
        Design design = result.analysis().design();
        List<String> sentences = new ArrayList<>();
        sentences.add("Liquid: " + residue(emptying.liquid(), design));
        Emptying.Residue cake = emptying.cake();
        if (cake != null) {
            sentences.add("Grit: " + residue(cake, design));
        }
        return sentences;
    }

    /** How full it may be; null: no fill passes. */
    public String howFull(@Nullable HowFull most) {
        if (most == null) {
            return "It fails even with the tank empty, so no fill level passes.";
        }
        String amount = show(most.volume(), Kind.VOLUME) + ", " + show(most.mass(), Kind.MASS) + " of this slurry";
        if (most.limit() != null && most.fill() < LITTLE) {
            return "Next to nothing may be in it. With more, this fails: " + Prose.safe(most.limit()) + ".";
        }
        String level = " Set the level switch " + Marks.show(most.level(), style.units())
                + " above the lowest point inside, tank stowed.";
        String fill = most.limit() == null
                ? "To the rim: " + amount + "." + level
                : "Up to " + Scale.percent().show(most.fill()) + ": " + amount + "." + level + " Above that fails: "
                        + Prose.safe(most.limit()) + ".";
        return fill
                + bands(most)
                + (Double.isNaN(most.densityWhenFull())
                        ? " Filled to the rim it fails even with plain water."
                        : " Filled to the rim it passes with slurry of up to "
                                + show(most.densityWhenFull(), Kind.DENSITY) + ".");
    }

    /** Fills that do not pass though fuller ones do. */
    private static String bands(HowFull most) {
        StringBuilder told = new StringBuilder();
        for (HowFull.Band band : most.bands()) {
            if (band.to() < 1) {
                told.append(" From ")
                        .append(Scale.percent().show(band.from()))
                        .append(" to ")
                        .append(Scale.percent().show(band.to()))
                        .append(" full it does not pass (")
                        .append(Prose.safe(band.limit()))
                        .append("), though it does with more in it.");
            }
        }
        return told.toString();
    }

    /** Whether a share of what a tank holds that stays in it is nothing to speak of. */
    public static boolean allOut(double share) {
        return share < NOTHING;
    }

    private String residue(Emptying.Residue left, Design design) {
        String stays = allOut(left.share())
                ? "all out"
                : show(left.volume(), Kind.VOLUME) + " (" + Scale.percent().show(left.share()) + ") is left";
        Double needed = left.tiltNeeded();
        if (needed != null && needed <= design.tilt().from() && allOut(left.share())) {
            return "all out before the tank moves.";
        }
        String at = " at " + Scale.angle().show(design.tilt().to()) + "; ";
        String allowed = Scale.percent().show(design.limits().residue());
        if (needed == null) {
            return stays + at + "no tilt up to 180 deg leaves " + allowed + " or less.";
        }
        return stays + at + "it must tilt to " + Scale.angle().show(needed) + " to leave " + allowed + " or less.";
    }

    private String show(double si, Kind kind) {
        return Quantities.show(si, kind, style.units());
    }
}
