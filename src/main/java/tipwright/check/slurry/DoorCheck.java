// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Extreme;
import tipwright.analysis.Row;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Fix;
import tipwright.check.rule.Trait;
import tipwright.design.Design;
import tipwright.design.Limits;
import tipwright.design.tank.CaseName;
import tipwright.design.tank.Door;
import tipwright.design.tank.DoorMass;
import tipwright.design.tank.Opening;
import tipwright.geometry.Plane;
import tipwright.geometry.Vec3;
import tipwright.load.Fill;
import tipwright.load.Gravity;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Hinge and latches of a closed door under the slurry. */
public final class DoorCheck implements Check {
    /** Cosine of the angle to straight up within which an opening looks up. */
    private static final double UP = 0.99;

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
        return part.isEmpty() ? title() : Text.capital(part) + ": load";
    }

    @Override
    public String rule() {
        return "With the outlet shut, at every tilt, the pressure on the closed door is shared between hinge and latches by its"
                + " moment about the hinge line, the door's own weight too where it is given; each stays within its rating."
                + " Settled solids press as heavily as a liquid of their weight.";
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
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.OPENING);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Fix.of("stronger hinges or latches{}, or more latches", finding, limits);
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        Findings make = new Findings(this, analysis.design());
        List<Opening> openings = analysis.design().tank().openings();
        if (!openings.isEmpty() && openings.stream().allMatch(DoorCheck::mouth)) {
            return List.of();
        }
        if (openings.stream().allMatch(o -> o.door() == null)) {
            return List.of(make.missing("", "tank.openings.door missing: no door is described"));
        }
        List<CaseResult> shut =
                analysis.cases().stream().filter(DoorCheck::pressesOnAShutDoor).toList();
        if (shut.isEmpty()) {
            return List.of(make.cannot("", "every load case with the outlet shut is under cases: skip:"));
        }
        double first = analysis.poses().get(0).tilt();
        List<Finding> all = new ArrayList<>();
        for (Opening o : analysis.design().tank().openings()) {
            Door door = o.door();
            if (door != null) {
                all.addAll(both(make, analysis, shut, o, door));
            } else if (o.opensAt() > first) {
                all.add(make.missing(
                        o.name(), "tank.openings: '" + o.name() + "': door missing; something holds it shut at first"));
            }
        }
        return all;
    }

    /** An open mouth: it looks up when the tank is stowed, nothing closes it, and none opens it on the way. */
    private static boolean mouth(Opening o) {
        double up = Math.abs(o.areaVector().unit().y());
        return up > UP && o.door() == null && !(o.opensAt() > 0);
    }

    /** Liquid that has nowhere to go: held, under it settled solids or not, or rainwater. */
    static boolean pressesOnAShutDoor(CaseResult load) {
        return !load.name().equals(CaseName.DRAINING.key())
                && load.rows().stream().anyMatch(r -> {
                    Fill fill = r.load().fill();
                    return fill != null && fill.stuff() == Fill.Stuff.LIQUID;
                });
    }

    private static List<Finding> both(
            Findings make, Analysis analysis, List<CaseResult> shut, Opening opening, Door door) {
        double factor = analysis.design().factors().door();
        Shut closed = Shut.of(analysis.design(), opening, door);
        Extreme.Search latches = Extreme.Search.largest();
        Extreme.Search hinges = Extreme.Search.largest();
        for (CaseResult load : shut) {
            for (Row row : load.rows()) {
                double[] forces = closed.forces(row);
                latches.offer(forces[0], row.tilt(), load.name(), null);
                hinges.offer(forces[1], row.tilt(), load.name(), null);
            }
        }
        Extreme latch = latches.found();
        Extreme hinge = hinges.found();
        return List.of(
                part(make, opening, "latch", latch, door.latchRating(), closed.mass(), factor),
                part(make, opening, "hinge", hinge, door.hingeRating(), closed.mass(), factor));
    }

    /**
     * A door that is shut.
     *
     * @param design whose door it is
     * @param mass of the door; null: not told
     * @param outline of the opening under it, m
     * @param normal of the outline, unit vector outward
     */
    private record Shut(Design design, Door door, @Nullable DoorMass mass, List<Vec3> outline, Vec3 normal) {
        static Shut of(Design design, Opening opening, Door door) {
            Vec3 normal = opening.areaVector().unit();
            return new Shut(design, door, DoorMass.of(design.tank(), opening), opening.rimPoints(), normal);
        }

        /** On each latch, and on the hinge line, N. */
        double[] forces(Row row) {
            DoorLoad load = load(row);
            double latch = latchForce(door, normal, load);
            double hinge = load.force() - latch;
            if (mass == null) {
                return new double[] {Math.abs(latch) / door.latches(), Math.abs(hinge)};
            }
            double turn = row.pose().bodies().get(row.pose().tank()).turn();
            Vec3 weight = design.site().up().tilted(-turn).times(-mass.mass() * Gravity.G);
            double outward = weight.dot(normal);
            Vec3 moment = mass.centre().times(outward);
            double held = latchForce(door, normal, new DoorLoad(outward, moment));
            double along = weight.minus(normal.times(weight.dot(normal))).norm();
            return new double[] {Math.abs(latch + held) / door.latches(), Math.hypot(hinge + outward - held, along)};
        }

        private DoorLoad load(Row row) {
            Fill fill = row.load().fill();
            if (fill == null || fill.stuff() != Fill.Stuff.LIQUID) {
                return DoorLoad.NONE;
            }
            double liquid = design.slurry().liquidDensity() * Gravity.G;
            Plane bed = fill.bed();
            return bed == null
                    ? DoorLoad.of(outline, fill.surface(), design.slurry().mixtureDensity() * Gravity.G)
                    : DoorLoad.layered(
                            outline,
                            fill.surface(),
                            bed,
                            liquid,
                            design.slurry().cakeDensity() * Gravity.G);
        }
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
            Findings make,
            Opening opening,
            String what,
            Extreme worst,
            @Nullable Double rating,
            @Nullable DoorMass mass,
            double factor) {
        String name = opening.name() + " " + what;
        if (rating == null) {
            return make.missing(name, "door." + what + "-rating missing");
        }
        String note = "latch".equals(what) ? "load on each latch, door shut" : "load on the hinge line, door shut";
        String weight = mass == null ? "; without the door's own weight: door.mass missing" : "";
        return make.compare(name, worst.value(), rating, factor, Kind.FORCE, worst, note + weight);
    }
}
