// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.design.joint.BallInsert;
import tipwright.design.joint.Bearing;
import tipwright.design.joint.Pivot;
import tipwright.design.joint.PlainBush;
import tipwright.design.joint.Shaft;
import tipwright.design.joint.Support;
import tipwright.design.key.Copy;
import tipwright.quantity.Text;

/** Larger pivot bearings and a thicker pivot shaft, which go together. */
final class BearingSizes implements Proposer {
    private static final double NEAR = 1e-4;

    @Override
    public String asked(Finding f) {
        boolean helps = f.checkId().startsWith("bearing-")
                || f.isOf("shaft")
                || f.isOf("bush")
                || f.id().startsWith("slide/bearings")
                || (f.isOf("what-if") && f.partId().matches("(bearing|housing|shaft|bush).*"));
        return helps ? "pivot" : "";
    }

    @Override
    public List<List<Proposal>> changes(Analysis analysis, String asked, Shop shop) {
        Design design = analysis.design();
        Pivot pivot = design.pivot();
        Bearing old = pivot.bearings().get(0).bearing();
        List<Proposal> all = new ArrayList<>();
        if (pivot.bearings().stream().allMatch(s -> s.bearing() instanceof BallInsert)) {
            shop.bearings().stream()
                    .filter(b -> b.bearing() instanceof BallInsert && fits(pivot.shaft(), old, b.bearing()))
                    .filter(b -> strength(b.bearing()) > strength(old))
                    .sorted(Comparator.comparingDouble(b -> b.bearing().bore()))
                    .forEach(b -> all.add(proposal(design, b.bearing(), "two bearings '" + b.name() + "'", old)));
        } else if (old instanceof PlainBush bush) {
            for (SoldSize s : shop.above(SoldSize.Series.BORE, bush.bore())) {
                double longer = Math.max(bush.length(), s.size());
                all.add(proposal(
                        design,
                        Copy.with(Copy.with(bush, "bore", s.size()), "length", longer),
                        "bushes of " + s.label() + " bore",
                        old));
            }
        }
        return all.stream().map(List::of).toList();
    }

    private static Proposal proposal(Design design, Bearing put, String name, Bearing old) {
        Pivot pivot = design.pivot();
        Shaft shaft = pivot.shaft();
        List<Support> supports =
                pivot.bearings().stream().map(s -> Copy.with(s, "bearing", put)).toList();
        Pivot with = Copy.with(pivot, "bearings", supports);
        Text detail = put instanceof PlainBush b
                ? Text.of("(length {})", Text.mark(b.length()))
                : Text.of("(bore {})", Text.mark(put.bore()));
        if (shaft != null && put.bore() > shaft.diameter() + NEAR) {
            with = Copy.with(with, "shaft", Copy.with(shaft, "diameter", put.bore()));
            detail = detail.plus(" with a pivot shaft of ").plus(Text.mark(put.bore()));
        }
        double change = 0.1 + 0.5 * Math.max(0, put.bore() / old.bore() - 1);
        return new Proposal(Text.words(name), detail, change, design.withPivot(with));
    }

    /** A bearing goes on the shaft that there is, or on a thicker one. */
    private static boolean fits(@Nullable Shaft shaft, Bearing old, Bearing put) {
        double least = shaft == null ? old.bore() : shaft.diameter();
        return put.bore() > least - NEAR;
    }

    private static double strength(Bearing b) {
        Double c0 = b instanceof BallInsert ball ? ball.c0() : null;
        return c0 == null ? 0 : c0;
    }
}
