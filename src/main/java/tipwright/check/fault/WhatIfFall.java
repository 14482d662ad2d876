// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Row;
import tipwright.check.actuator.Ratings;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Sweep;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.Cylinder;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.around.WhatIf;
import tipwright.load.Gravity;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;

/** What holds the load when a hose bursts or the power is lost, and how fast it sinks when nothing does. */
final class WhatIfFall {
    private static final double OIL = 870;
    private static final double COEFFICIENT = 0.62;

    private final Findings make;
    private final Analysis analysis;
    private final Design design;

    private WhatIfFall(Findings make, Analysis analysis) {
        this.make = make;
        this.analysis = analysis;
        this.design = analysis.design();
    }

    static List<Finding> find(Findings make, Analysis analysis) {
        WhatIfFall fall = new WhatIfFall(make, analysis);
        List<Finding> all = new ArrayList<>();
        List<PlacedActuator> actuators = fall.design.drive().actuators();
        if (actuators.stream().allMatch(p -> p.actuator() instanceof Cylinder)) {
            boolean locked = fall.design.whatIf().lockValve();
            all.add(locked ? fall.held("burst hose", "the lock valve holds the load where it is") : fall.burst());
        }
        all.add(fall.held("lost power", "it stays where it is"));
        return all;
    }

    private Finding held(String part, String good) {
        double rated = Ratings.together(design, WhatIfFall::hold);
        if (!(rated > 0)) {
            return make.missing(part, "actuator.hold missing");
        }
        Findings.Worst worst = Sweep.rows(analysis, r -> Math.abs(r.rest().force()));
        double factor = design.factors().service();
        String note = worst.value() * factor <= rated ? good : "it cannot hold the load, which comes down by itself";
        return make.compare(part, worst.value(), rated, factor, Kind.FORCE, worst, note);
    }

    private static double hold(Actuator actuator) {
        Double hold = actuator.ratedHold();
        return hold == null ? 0 : hold;
    }

    private Finding burst() {
        WhatIf whatIf = design.whatIf();
        Sinking fastest = fastest();
        Row row = fastest.load().rows().get(fastest.at());
        Findings.Worst worst =
                new Findings.Worst(fastest.speed(), row.tilt(), fastest.load().name());
        String bore = Quantities.show(whatIf.leakBore(), Kind.LENGTH, UnitSystem.METRIC);
        String note = worst.value() > 0
                ? String.format(
                                Locale.ROOT,
                                "sinks from %.1f deg to rest in %.1f s through a bore of %s; ",
                                Math.toDegrees(worst.tilt()),
                                seconds(fastest.load().rows(), fastest.at()),
                                bore)
                        + "a lock valve screwed to the cylinder would hold it (what-if.lock-valve)"
                : "nothing pushes the rod in";
        return make.compare("burst hose", worst.value(), whatIf.fallSpeed(), 1, Kind.SPEED, worst, note);
    }

    /**
     * Speed at which the load sinks, m/s: what the rod does times force over weight, and no faster than it could fall freely down
     * to where the linkage begins or ends.
     */
    private double sinking(List<Row> rows, int at) {
        Row row = rows.get(at);
        double weight = row.load().mass() * Gravity.G;
        double force = row.rest().force();
        Row end = force * row.pose().arm() > 0 ? rows.get(0) : rows.get(rows.size() - 1);
        double height = design.site().up().dot(row.centroid().minus(end.centroid()));
        double free = Math.sqrt(2 * Gravity.G * Math.max(0, height));
        return weight > 0 ? Math.min(free, rodSpeed(row) * Math.abs(force) / weight) : 0;
    }

    /**
     * The load that sinks fastest.
     *
     * @param speed m/s
     * @param at number of its row
     */
    private record Sinking(double speed, CaseResult load, int at) {}

    private Sinking fastest() {
        Sinking fastest = new Sinking(0, analysis.cases().get(0), 0);
        for (CaseResult load : analysis.cases()) {
            for (int i = 0; i < load.rows().size(); i++) {
                double speed = sinking(load.rows(), i);
                fastest = speed > fastest.speed() ? new Sinking(speed, load, i) : fastest;
            }
        }
        return fastest;
    }

    /** The slowest of the cylinders sets the speed, m/s. */
    private double rodSpeed(Row row) {
        List<PlacedActuator> actuators = design.drive().actuators();
        double force = row.rest().force() / actuators.size();
        double bore = design.whatIf().leakBore();
        double slowest = Double.POSITIVE_INFINITY;
        for (PlacedActuator p : actuators) {
            double area =
                    p.actuator() instanceof Cylinder c ? c.oilArea(row.pose().length(), force > 0) : 0;
            double flow = area > 0
                    ? COEFFICIENT * Math.PI * bore * bore / 4 * Math.sqrt(2 * Math.abs(force) / (area * OIL))
                    : 0;
            slowest = Math.min(slowest, area > 0 ? flow / area : 0);
        }
        return slowest;
    }

    /** Time from the worst tilt until the load no longer drives the rod, s. */
    private double seconds(List<Row> rows, int at) {
        double sense =
                Math.signum(rows.get(at).rest().force() * rows.get(at).pose().arm());
        int step = sense > 0 ? -1 : 1;
        double time = 0;
        for (int i = at; i + step >= 0 && i + step < rows.size(); i += step) {
            Row here = rows.get(i);
            Row next = rows.get(i + step);
            double speed = 0.5 * (rodSpeed(here) + rodSpeed(next));
            if (next.rest().force() * next.pose().arm() * sense <= 0 || !(speed > 0)) {
                break;
            }
            time += Math.abs(next.pose().length() - here.pose().length()) / speed;
        }
        return time;
    }
}
