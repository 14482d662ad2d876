// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.design.Design;
import tipwright.design.actuator.Cylinder;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Rod;
import tipwright.fluid.OilColumn;
import tipwright.geometry.Range;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec3;
import tipwright.strength.Impact;
import tipwright.time.Cycle;
import tipwright.time.Moment;
import tipwright.time.Timing;

/**
 * A valve at the cylinder shuts at once while the tank comes down: the moving mass runs into the oil that is shut in, the rod, and what
 * the structure gives.
 *
 * <p>Peak = static force + v sqrt(k m), m the kinetic energy of tank and load over half the square of the rod's speed. On the safe
 * side: no damping, no air in the oil, no hose between piston and valve, contents that turn with the tank; their inertia about their own
 * centroid as that of a block as long and as high as the tank. Source: energy of the mass goes into the springs; bulk modulus 1.8 GPa:
 * texts on oil hydraulics (public pages, read).
 */
final class WhatIfShut {
    private static final String PART = "valve shuts on the way down";
    private static final double BULK = 1.8e9;
    /** Oil that is left beside the piston at the end of its stroke. Source: common practice, no source. */
    private static final double LEFT = 0.002;

    private final Analysis analysis;
    private final double extent;

    WhatIfShut(Analysis analysis) {
        this.analysis = analysis;
        Solid solid = analysis.design().tank().interior().solid();
        Range along = solid.extent(new Vec3(1, 0, 0));
        Range up = solid.extent(new Vec3(0, 1, 0));
        extent = along.span() * along.span() + up.span() * up.span();
    }

    static List<Finding> find(Findings make, Analysis analysis, Timing timing, List<Check> rules) {
        boolean oil = analysis.design().drive().actuators().stream().allMatch(p -> p.actuator() instanceof Cylinder);
        if (!oil) {
            return List.of();
        }
        if (timing.missing() != null) {
            return List.of(make.missing(PART, timing.missing()));
        }
        WhatIfShut shut = new WhatIfShut(analysis);
        double[] peaks = shut.peaks(timing);
        if (Arrays.stream(peaks).max().orElse(0) == 0) {
            return List.of(make.missing(PART, "it does not come down in the dump in time"));
        }
        int way = analysis.poses().get(0).arm() > 0 ? 1 : -1;
        List<Pose> poses = analysis.poses();
        return new DrivePath(make, analysis, rules)
                .under(
                        PART,
                        "stopped at once, the load",
                        row -> way > 0 ? peaks[poses.indexOf(row.pose())] : 0,
                        row -> way < 0 ? peaks[poses.indexOf(row.pose())] : 0);
    }

    /** Greatest force against the motion at each pose, N; 0 where nothing comes down [pose]. */
    private double[] peaks(Timing timing) {
        double[] peaks = new double[analysis.poses().size()];
        for (Cycle cycle : timing.cycles()) {
            List<Row> rows = rows(cycle.load());
            for (Moment m : cycle.moments()) {
                if (m.phase() == Moment.Phase.LOWER && m.draw().speed() > 0) {
                    int i = nearest(m.tilt());
                    if (i < rows.size()) {
                        peaks[i] = Math.max(peaks[i], peak(rows.get(i), m));
                    }
                }
            }
        }
        return peaks;
    }

    double peak(Row row, Moment m) {
        int way = row.pose().arm() > 0 ? 1 : -1;
        double more = analysis.design().slurry().mixtureDensity()
                * (m.volume() - row.load().volume());
        double mass = referred(row, Math.max(0, row.load().mass() + more));
        return Math.max(0, way * m.force() + Impact.force(mass, m.draw().speed(), stiffness(m.length(), way > 0)));
    }

    /** Mass at the rod that has the kinetic energy of the tank with its contents, kg. */
    private double referred(Row row, double mass) {
        int i = analysis.poses().indexOf(row.pose());
        Pose before = analysis.poses().get(Math.max(0, i - 1));
        Pose after = analysis.poses().get(Math.min(analysis.poses().size() - 1, i + 1));
        Vec3 centre = row.load().centroid();
        double turn = after.tilt() - before.tilt();
        double speed =
                turn > 0 ? after.place(centre).minus(before.place(centre)).norm() / turn : 0;
        return Impact.referred(mass * (speed * speed + extent / 12), row.pose().arm());
    }

    /** Stiffness of oil, rod and structure at the rod, N/m, all actuators together. */
    private double stiffness(double length, boolean in) {
        Design design = analysis.design();
        double sum = 0;
        for (PlacedActuator p : design.drive().actuators()) {
            Cylinder c = (Cylinder) p.actuator();
            double closed = p.actuator().closed();
            double out = Math.max(0, length - closed);
            double column = Math.max(LEFT, in ? out : p.actuator().stroke() - out);
            double area = c.oilArea(length, in);
            List<Double> springs = new ArrayList<>();
            springs.add(new OilColumn(area, area * column, BULK, 0).stiffness());
            Rod rod = p.actuator().rod();
            if (rod != null && out > 0) {
                springs.add(rod.modulus() * rod.area() / out);
            }
            sum += Impact.inSeries(springs.stream().mapToDouble(k -> k).toArray());
        }
        Double structure = design.whatIf().structure();
        return structure == null ? sum : Impact.inSeries(sum, structure);
    }

    private List<Row> rows(String load) {
        return analysis.cases().stream()
                .filter(c -> c.name().equals(load))
                .findFirst()
                .map(CaseResult::rows)
                .orElse(List.of());
    }

    private int nearest(double tilt) {
        int best = 0;
        for (int i = 1; i < analysis.poses().size(); i++) {
            double gap = Math.abs(analysis.poses().get(i).tilt() - tilt);
            best = gap < Math.abs(analysis.poses().get(best).tilt() - tilt) ? i : best;
        }
        return best;
    }
}
