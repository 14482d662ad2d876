// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Extreme;
import tipwright.analysis.Row;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Fix;
import tipwright.check.rule.Titles;
import tipwright.check.rule.Trait;
import tipwright.design.Limits;
import tipwright.design.tank.Door;
import tipwright.design.tank.Opening;
import tipwright.geometry.Vec3;
import tipwright.load.Fill;
import tipwright.load.Gravity;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Hinge and latches of a closed door under the slurry. */
public final class DoorCheck implements Check {
    @Override
    public String id() {
        return "door";
    }

    @Override
    public String title() {
        return "Door: load on latch and hinge";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : Titles.first(part) + ": load";
    }

    @Override
    public String rule() {
        return "With all the slurry held in at every tilt, the pressure on the closed door is shared between hinge and latches"
                + " by its moment about the hinge line; each stays within its rating.";
    }

    @Override
    public String formula() {
        return "F_latch = integral(p lever dA) / lever_latch; F_hinge = F - F_latch; p = rho g depth";
    }

    @Override
    public String source() {
        return "hydrostatics of plane surfaces; maker's ratings";
    }

    @Override
    public Set<Trait> traits() {
        return Set.of(Trait.DEPENDS_ON_FILL);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Fix.of("stronger hinges or latches{}, or more latches", finding, limits);
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design().limits());
        if (analysis.design().tank().openings().stream().allMatch(o -> o.door() == null)) {
            return List.of(make.missing("", "tank.openings.door missing: no door is described"));
        }
        CaseResult held = analysis.cases().stream()
                .filter(c -> c.name().equals("held"))
                .findFirst()
                .orElse(null);
        if (held == null) {
            return List.of(make.missing("", "the load case 'held' (full, outlet shut) is under cases: skip:"));
        }
        double first = analysis.poses().get(0).tilt();
        List<Finding> all = new ArrayList<>();
        for (Opening o : analysis.design().tank().openings()) {
            Door door = o.door();
            if (door != null) {
                all.addAll(both(make, analysis, held, o, door));
            } else if (o.opensAt() > first) {
                all.add(make.missing(
                        o.name(), "tank.openings: '" + o.name() + "': door missing; something holds it shut at first"));
            }
        }
        return all;
    }

    private static List<Finding> both(Findings make, Analysis analysis, CaseResult held, Opening opening, Door door) {
        double weight = analysis.design().slurry().mixtureDensity() * Gravity.G;
        double factor = analysis.design().factors().door();
        List<Vec3> outline = opening.rimPoints();
        Vec3 normal = opening.areaVector().unit();
        Extreme latch =
                worst(held, row -> Math.abs(latchForce(door, normal, load(outline, row, weight))) / door.latches());
        Extreme hinge = worst(held, row -> {
            DoorLoad load = load(outline, row, weight);
            return Math.abs(load.force() - latchForce(door, normal, load));
        });
        return List.of(
                part(make, opening, "latch", latch, door.latchRating(), factor),
                part(make, opening, "hinge", hinge, door.hingeRating(), factor));
    }

    private static Extreme worst(CaseResult held, ToDoubleFunction<Row> value) {
        return Extreme.largest(List.of(held), null, value);
    }

    private static DoorLoad load(List<Vec3> outline, Row row, double weight) {
        Fill fill = row.load().fill();
        return fill == null ? DoorLoad.NONE : DoorLoad.of(outline, fill.surface(), weight);
    }

    /**
     * Force on all latches together, N, positive outward.
     *
     * @param normal of the door, unit vector, outward
     */
    static double latchForce(Door door, Vec3 normal, DoorLoad load) {
        Vec3 axis = door.hingeAxis().unit();
        Vec3 lever = normal.cross(axis);
        double moment = lever.dot(load.moment()) - lever.dot(door.hinge()) * load.force();
        return moment / lever.dot(door.latch().minus(door.hinge()));
    }

    private static Finding part(
            Findings make, Opening opening, String what, Extreme worst, @Nullable Double rating, double factor) {
        String name = opening.name() + " " + what;
        if (rating == null) {
            return make.missing(name, "door." + what + "-rating missing");
        }
        String note = "latch".equals(what) ? "load on each latch, door shut" : "load on the hinge line, door shut";
        return make.compare(name, worst.value(), rating, factor, Kind.FORCE, worst, note);
    }
}
