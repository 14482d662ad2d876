// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.design.Design;
import tipwright.design.actuator.Cylinder;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Rod;
import tipwright.design.supply.Pump;
import tipwright.design.supply.ReturnLine;
import tipwright.fluid.OilColumn;
import tipwright.geometry.Range;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec3;
import tipwright.strength.Impact;
import tipwright.time.Moment;

/**
 * Tank and load as they move, and the springs that stop them at the rod.
 *
 * <p>On the safe side: no damping, no air in the oil; contents that turn with the tank, their inertia about their own centroid as that of
 * a block as long and as high as the tank. Source: bulk modulus 1.8 GPa: texts on oil hydraulics (public pages, read).
 */
final class MovingMass {
    private static final double BULK = 1.8e9;
    /** Oil that is left beside the piston at the end of its stroke. Source: common practice, no source. */
    private static final double LEFT = 0.002;

    private final Analysis analysis;
    private final double extent;

    MovingMass(Analysis analysis) {
        this.analysis = analysis;
        Solid solid = analysis.vessel().solid();
        Range along = solid.extent(new Vec3(1, 0, 0));
        Range up = solid.extent(new Vec3(0, 1, 0));
        extent = along.span() * along.span() + up.span() * up.span();
    }

    /** The row of a load case nearest to a moment; null: there is none. */
    @Nullable
    Row row(String load, Moment m) {
        List<Row> rows = analysis.cases().stream()
                .filter(c -> c.name().equals(load))
                .findFirst()
                .map(CaseResult::rows)
                .orElse(List.of());
        int i = nearest(m.tilt());
        return i < rows.size() ? rows.get(i) : null;
    }

    /** Number of the pose nearest to a tilt, rad. */
    int nearest(double tilt) {
        int best = 0;
        for (int i = 1; i < analysis.poses().size(); i++) {
            double gap = Math.abs(analysis.poses().get(i).tilt() - tilt);
            best = gap < Math.abs(analysis.poses().get(best).tilt() - tilt) ? i : best;
        }
        return best;
    }

    /** Mass at the rod that has the kinetic energy of the tank with its contents, kg. */
    double atRod(Row row, Moment m) {
        return Impact.referred(inertia(row, m), row.pose().arm());
    }

    /** Twice the kinetic energy of tank and contents over the square of the tilting speed, kg m2. */
    double inertia(Row row, Moment m) {
        double more = analysis.design().slurry().mixtureDensity()
                * (m.volume() - row.load().volume());
        double mass = Math.max(0, row.load().mass() + more);
        double way = way(row, row.load().centroid());
        return mass * (way * way + extent / 12);
    }

    /** How far a point of the tank, as stowed, moves for one radian, m. */
    double way(Row row, Vec3 point) {
        return path(row, point).norm();
    }

    /** Which way a point of the tank, as stowed, goes for one radian, m: from the tilt before to the tilt after. */
    Vec3 path(Row row, Vec3 point) {
        int i = analysis.at(row.tilt());
        Pose before = analysis.poses().get(Math.max(0, i - 1));
        Pose after = analysis.poses().get(Math.min(analysis.poses().size() - 1, i + 1));
        double turn = after.tilt() - before.tilt();
        return turn > 0 ? after.place(point).minus(before.place(point)).times(1 / turn) : Vec3.ZERO;
    }

    /**
     * Stiffness of shut-in oil, rod and structure at the rod, N/m, all actuators together.
     *
     * @param in whether the rod is stopped on its way in
     */
    double onOil(double length, boolean in) {
        List<Double> each = new ArrayList<>();
        for (PlacedActuator p : analysis.design().drive().actuators()) {
            if (p.actuator() instanceof Cylinder c) {
                double out = Math.max(0, length - p.actuator().closed());
                double column = Math.max(LEFT, in ? out : p.actuator().stroke() - out);
                double area = c.oilArea(length, in);
                double oil = area > 0 ? new OilColumn(area, area * column + hose(), BULK, widening()).stiffness() : 0;
                each.add(oil > 0 ? Impact.inSeries(oil, rod(p, length)) : 0);
            }
        }
        return structured(each);
    }

    /** Stiffness of rod and structure alone at the rod, N/m; infinite where neither is known. */
    double onRods(double length) {
        return structured(analysis.design().drive().actuators().stream()
                .map(p -> rod(p, length))
                .toList());
    }

    private double structured(List<Double> each) {
        double sum = each.stream().mapToDouble(k -> k).sum();
        Double structure = analysis.design().whatIf().structure();
        return structure == null || !(sum > 0) ? sum : Impact.inSeries(sum, structure);
    }

    private static double rod(PlacedActuator p, double length) {
        Rod rod = p.actuator().rod();
        double out = length - p.actuator().closed();
        return rod == null || !(out > 0) ? Double.POSITIVE_INFINITY : rod.modulus() * rod.area() / out;
    }

    /** Oil between piston and valve in the hose, m3; none where the hose is not described, so that the valve sits at the cylinder. */
    private double hose() {
        ReturnLine line = line();
        return line == null ? 0 : Math.PI / 4 * line.bore() * line.bore() * line.length();
    }

    private double widening() {
        Double modulus = analysis.design().whatIf().hose();
        return modulus == null ? 0 : hose() / modulus;
    }

    private @Nullable ReturnLine line() {
        Design design = analysis.design();
        boolean told = design.whatIf().hose() != null && !design.whatIf().lockValve();
        return told && design.supply() instanceof Pump pump ? pump.returnLine() : null;
    }
}
