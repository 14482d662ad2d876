// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Row;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.design.tank.Door;
import tipwright.design.tank.Opening;
import tipwright.geometry.Vec3;
import tipwright.load.Fill;
import tipwright.load.Gravity;
import tipwright.quantity.Kind;

/** Hinge and latches of a closed door under the slurry. */
public final class DoorCheck implements Check {
    @Override
    public String id() {
        return "door";
    }

    @Override
    public String title() {
        return "Door";
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
            return List.of(make.missing("", "the load case 'held' is left out by the design"));
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
        Worst latch = new Worst();
        Worst hinge = new Worst();
        for (Row row : held.rows()) {
            Fill fill = row.load().fill();
            if (fill != null) {
                DoorLoad load = DoorLoad.of(outline, fill.surface(), weight);
                double onLatch = latchForce(door, normal, load);
                latch.offer(Math.abs(onLatch) / door.latches(), row.tilt());
                hinge.offer(Math.abs(load.force() - onLatch), row.tilt());
            }
        }
        return List.of(
                part(make, opening, "latch", latch, door.latchRating(), factor),
                part(make, opening, "hinge", hinge, door.hingeRating(), factor));
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
            Findings make, Opening opening, String what, Worst worst, @Nullable Double rating, double factor) {
        String name = opening.name() + " " + what;
        if (rating == null) {
            return make.missing(name, "door." + what + "-rating missing");
        }
        String note = "latch".equals(what) ? "load on each latch, door shut" : "load on the hinge line, door shut";
        return make.compare(
                name,
                worst.value,
                rating,
                factor,
                Kind.FORCE,
                new Findings.Worst(worst.value, worst.tilt, "held"),
                note);
    }

    private static final class Worst {
        private double value;
        private double tilt;

        void offer(double candidate, double at) {
            if (candidate > value) {
                value = candidate;
                tilt = at;
            }
        }
    }
}
