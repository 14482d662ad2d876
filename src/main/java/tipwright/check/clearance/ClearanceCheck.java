// SPDX-License-Identifier: Apache-2.0
package tipwright.check.clearance;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Check;
import tipwright.check.rule.Concerned;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Titles;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.Limits;
import tipwright.geometry.Vec2;
import tipwright.outline.MachineParts;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Nothing that moves runs into anything. */
public final class ClearanceCheck implements Check {
    private static final int LISTED = 3;
    private static final double MM = 1000;

    @Override
    public String id() {
        return "clearance";
    }

    @Override
    public String title() {
        return "Moving parts: clearance";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : Text.capital(part) + ": clearance";
    }

    @Override
    public String shortly(Finding finding) {
        return "clearances";
    }

    @Override
    public String rule() {
        return "Over the whole tilt the outlines of tank, attached parts, all that swings open, links and actuators keep the gap"
                + " wanted to frame members, wheels, obstacles, ground, the edges of the receiver and each other, where they overlap along the pivot. Round a shared pin they may"
                + " touch; a rest that carries the stowed tank may touch it until the tank lifts off.";
    }

    @Override
    public String formula() {
        return "smallest distance of the two outlines over the tilt >= limits.clearance";
    }

    @Override
    public String source() {
        return "plane geometry; the gap wanted: common practice, no source";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.SLOW, Trait.ABOUT_SURROUNDINGS);
    }

    @Override
    public Concerned concerned(Analysis analysis, Finding finding) {
        return Concerned.named(EnumSet.allOf(PartKind.class), finding);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("move or cut back the part that is too near, or end the tilt sooner");
    }

    @Override
    public Text says(Finding finding) {
        return finding.verdict() == Verdict.FAIL && finding.has() <= 0
                ? Text.words(Titles.part(finding.title()) + ": they touch")
                : Check.super.says(finding);
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        return Check.joined(pieces(analysis));
    }

    /** The gaps of some of the parts in each of them; the last puts together what they come to. */
    @Override
    public List<Supplier<List<Finding>>> pieces(Analysis analysis) {
        Design design = analysis.design();
        Findings make = new Findings(this, design);
        if (!MachineParts.any(design) && design.receiver() == null) {
            return List.of(() -> List.of(make.missing("", "frame.members, obstacles and ground missing")));
        }
        List<Supplier<List<Clearance.Gap>>> gaps = Clearance.nearest(analysis, LISTED);
        List<Supplier<List<Finding>>> pieces = new ArrayList<>();
        for (Supplier<List<Clearance.Gap>> some : gaps.subList(0, gaps.size() - 1)) {
            pieces.add(() -> {
                Objects.requireNonNull(some.get());
                return List.of();
            });
        }
        pieces.add(() -> {
            // from the last on: another thread begins at the first
            List<Clearance.Gap> all = new ArrayList<>();
            for (int i = gaps.size() - 1; i >= 0; i--) {
                all.addAll(0, gaps.get(i).get());
            }
            return findings(make, design, all);
        });
        return pieces;
    }

    private static List<Finding> findings(Findings make, Design design, List<Clearance.Gap> gaps) {
        Map<String, List<Clearance.Gap>> byMover = new LinkedHashMap<>();
        for (Clearance.Gap gap : gaps) {
            byMover.computeIfAbsent(gap.moving(), m -> new ArrayList<>()).add(gap);
        }
        List<Finding> all = new ArrayList<>();
        double wanted = design.limits().clearance();
        byMover.forEach((mover, its) -> all.addAll(mover(make, mover, its, wanted)));
        for (String door : SwingingDoors.aside(design)) {
            all.add(make.cannot(door, "its hinge line is not along the pivot: its swing is not looked at"));
        }
        if (all.isEmpty()) {
            all.add(make.cannot(
                    "",
                    byMover.isEmpty()
                            ? "nothing that moves overlaps anything else along the pivot"
                            : "only what the tank may rest on is drawn, and it keeps clear of that"));
        }
        return all;
    }

    /** One finding for the nearest neighbour, with the next ones named, and one for each other that is too near. */
    private static List<Finding> mover(Findings make, String mover, List<Clearance.Gap> gaps, double wanted) {
        List<Finding> all = new ArrayList<>();
        List<Clearance.Gap> free = new ArrayList<>();
        for (Clearance.Gap gap : gaps) {
            if (gap.gap() <= 0 || (!gap.rest() && gap.gap() < wanted)) {
                all.add(found(make, mover + " to " + gap.other(), gap, wanted, tooNear(gap)));
            } else if (!gap.rest()) {
                free.add(gap);
            }
        }
        if (!free.isEmpty()) {
            free.sort((p, q) -> Double.compare(p.gap(), q.gap()));
            List<Text> list = new ArrayList<>();
            for (Clearance.Gap gap : free.subList(0, Math.min(LISTED, free.size()))) {
                list.add(Text.words(gap.other() + " ")
                        .plus(Text.amount(gap.gap(), Kind.LENGTH, "mm", 0))
                        .plus(" at ")
                        .plus(Text.degrees(gap.tilt(), 0)));
            }
            all.add(found(
                    make, mover, free.get(0), wanted, Text.words("nearest: ").plus(Text.join(", ", list))));
        }
        return all;
    }

    private static Finding found(Findings make, String part, Clearance.Gap gap, double wanted, Text note) {
        Extreme at = Extreme.at(gap.gap(), gap.tilt());
        double demand = gap.rest() ? Math.max(wanted, 1e-6) : wanted;
        if (gap.gap() > 0 && demand <= 0) {
            return make.given(part, demand, gap.gap(), 1, Kind.LENGTH, 0, at, Verdict.PASS, note);
        }
        double utilisation = gap.gap() > 0 ? demand / gap.gap() : Double.POSITIVE_INFINITY;
        Verdict verdict = utilisation > 1 ? Verdict.FAIL : Verdict.PASS;
        return make.given(part, demand, gap.gap(), 1, Kind.LENGTH, utilisation, at, verdict, note);
    }

    private static Text tooNear(Clearance.Gap gap) {
        Text tilt = Text.degrees(gap.tilt(), 1);
        Text what = gap.gap() > 0
                ? Text.of("{} at {}", Text.amount(gap.gap(), Kind.LENGTH, "mm", 1), tilt)
                : Text.of("they touch from {}", tilt);
        if (gap.moves().isEmpty()) {
            return gap.rest() ? what.plus(": the tank does not come off it") : what;
        }
        List<Text> ways = new ArrayList<>();
        for (Clearance.Move move : gap.moves()) {
            double by = Math.ceil(MM * move.by()) / MM;
            ways.add(Text.amount(by, Kind.LENGTH, "mm", 0).plus(" " + word(move.towards())));
        }
        return what.plus("; move the " + gap.other() + " ").plus(Text.join(" or ", ways));
    }

    private static String word(Vec2 towards) {
        if (towards.x() == 0) {
            return towards.y() > 0 ? "up" : "down";
        }
        return towards.x() > 0 ? "towards the dump side" : "away from the dump side";
    }
}
