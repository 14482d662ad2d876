// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.Arrays;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.analysis.Row;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.design.actuator.Cylinder;
import tipwright.strength.Impact;
import tipwright.time.Cycle;
import tipwright.time.Moment;
import tipwright.time.Timing;

/**
 * A valve shuts at once while the tank comes down: the moving mass runs into the oil that is shut in, the hose as far as it is described,
 * the rod, and what the structure gives.
 *
 * <p>Peak = static force + v sqrt(k m), m the kinetic energy of tank and load over half the square of the rod's speed. Source: energy of
 * the mass goes into the springs.
 */
final class WhatIfShut {
    private static final String PART = "valve shuts on the way down";

    private final Analysis analysis;
    private final MovingMass moving;

    WhatIfShut(Analysis analysis) {
        this.analysis = analysis;
        moving = new MovingMass(analysis);
    }

    static List<Finding> find(Findings make, Analysis analysis, Timing timing, List<Check> rules) {
        boolean oil = analysis.design().drive().actuators().stream().allMatch(p -> p.actuator() instanceof Cylinder);
        if (!oil) {
            return List.of();
        }
        if (timing.missing() != null) {
            return List.of(make.untimed(PART, timing));
        }
        WhatIfShut shut = new WhatIfShut(analysis);
        double[] peaks = shut.peaks(timing);
        if (Arrays.stream(peaks).max().orElse(0) == 0) {
            return List.of(make.cannot(PART, "it does not come down in the dump in time"));
        }
        int way = analysis.poses().get(0).arm() > 0 ? 1 : -1;
        return new DrivePath(make, analysis, rules)
                .under(
                        PART,
                        "stopped at once, the load",
                        row -> way > 0 ? peaks[analysis.at(row.tilt())] : 0,
                        row -> way < 0 ? peaks[analysis.at(row.tilt())] : 0);
    }

    /** Greatest force against the motion at each pose, N; 0 where nothing comes down [pose]. */
    private double[] peaks(Timing timing) {
        double[] peaks = new double[analysis.poses().size()];
        for (Cycle cycle : timing.cycles()) {
            for (Moment m : cycle.moments()) {
                Row row = m.phase() == Moment.Phase.LOWER && m.draw().speed() > 0 ? moving.row(cycle.load(), m) : null;
                if (row != null) {
                    int i = moving.nearest(m.tilt());
                    peaks[i] = Math.max(peaks[i], peak(row, m));
                }
            }
        }
        return peaks;
    }

    double peak(Row row, Moment m) {
        int way = row.pose().arm() > 0 ? 1 : -1;
        double stiffness = moving.onOil(m.length(), way > 0);
        double jolt =
                stiffness > 0 ? Impact.force(moving.atRod(row, m), m.draw().speed(), stiffness) : 0;
        return Math.max(0, way * m.force() + jolt);
    }
}
