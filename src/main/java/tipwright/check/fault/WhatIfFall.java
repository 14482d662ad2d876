// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Row;
import tipwright.check.actuator.HoldCheck;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Usage;
import tipwright.design.Design;
import tipwright.design.actuator.Cylinder;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Sharing;
import tipwright.design.around.WhatIf;
import tipwright.load.Gravity;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** What holds the load when a hose bursts or the power is lost, and how fast it sinks when nothing does. */
final class WhatIfFall {
    private static final double OIL = 870;
    private static final double COEFFICIENT = 0.62;

    /** Below this a time says nothing, s. */
    private static final double SHORT = 0.1;

    private final Findings make;
    private final Analysis analysis;
    private final Design design;
    private final MovingMass moving;

    private WhatIfFall(Findings make, Analysis analysis) {
        this.make = make;
        this.analysis = analysis;
        this.design = analysis.design();
        this.moving = new MovingMass(analysis);
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
        Extreme worst = HoldCheck.worst(analysis);
        if (worst == null) {
            return make.missing(part, "actuator.hold missing");
        }
        Usage usage = HoldCheck.usage(analysis, worst);
        String note = usage.utilisation() <= 1 ? good : "the actuator cannot hold the tank; the tank comes down";
        return make.compare(part, usage, worst, Text.words(note));
    }

    private Finding burst() {
        WhatIf whatIf = design.whatIf();
        Extreme worst = fastest();
        Text note = Text.words("nothing pushes the rod in");
        if (worst.value() > 0) {
            double seconds = seconds(worst);
            Text when =
                    seconds < SHORT ? Text.NONE : Text.of(" to rest in {}", Text.amount(seconds, Kind.TIME, "s", 1));
            note = Text.of(
                    "sinks from {}{} through a bore of {}; a lock valve on the cylinder port would hold it"
                            + " (what-if.lock-valve)",
                    Text.degrees(worst.tilt(), 1),
                    when,
                    Text.size(whatIf.leakBore()));
        }
        return make.compare("burst hose", worst.value(), whatIf.fallSpeed(), 1, Kind.SPEED, worst, note);
    }

    /**
     * Speed at which the load sinks, m/s: what the rod does times the rise of the load over the way of the rod, since springs and wind
     * that bear some of the load do not slow it down as they ease the rod; or times force over weight, where it is they that drive the
     * rod. No faster than it could fall freely down to where the linkage begins or ends.
     */
    private double sinking(List<Row> rows, int at) {
        Row row = rows.get(at);
        double force = row.rest().force();
        Row end = force * row.pose().arm() > 0 ? rows.get(0) : rows.get(rows.size() - 1);
        double height = design.site().up().dot(row.centroid().minus(end.centroid()));
        double free = Math.sqrt(2 * Gravity.G * Math.max(0, height));
        double weight = row.load().mass() * Gravity.G;
        double rise = design.site().up().dot(moving.path(row, row.load().centroid()));
        double ratio = Math.max(Math.abs(rise / row.pose().arm()), Math.abs(force) / weight);
        return weight > 0 ? Math.min(free, rodSpeed(row) * ratio) : 0;
    }

    /** The load that sinks fastest, m/s. */
    private Extreme fastest() {
        Extreme.Search search = Extreme.Search.above(0);
        for (CaseResult load : analysis.cases()) {
            for (int i = 0; i < load.rows().size(); i++) {
                search.offer(sinking(load.rows(), i), load.rows().get(i).tilt(), load.name(), MotionDirection.RESTING);
            }
        }
        return search.found();
    }

    /** The slowest of the cylinders sets the speed, m/s. */
    private double rodSpeed(Row row) {
        List<PlacedActuator> actuators = design.drive().actuators();
        double[] shares =
                Sharing.shares(actuators, row.pose().length(), row.rest().force() > 0);
        double bore = design.whatIf().leakBore();
        double slowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < shares.length; i++) {
            double force = row.rest().force() * shares[i];
            double area = actuators.get(i).actuator() instanceof Cylinder c
                    ? c.oilArea(row.pose().length(), force > 0)
                    : 0;
            double flow = area > 0
                    ? COEFFICIENT * Math.PI * bore * bore / 4 * Math.sqrt(2 * Math.abs(force) / (area * OIL))
                    : 0;
            slowest = Math.min(slowest, area > 0 ? flow / area : 0);
        }
        return slowest;
    }

    /** Time from the worst tilt until the load no longer drives the rod, s. */
    private double seconds(Extreme worst) {
        List<Row> rows = analysis.cases().stream()
                .filter(c -> c.name().equals(worst.loadCase()))
                .findFirst()
                .orElseThrow()
                .rows();
        int at = rows.indexOf(worst.row(analysis.cases()));
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
