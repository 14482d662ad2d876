// SPDX-License-Identifier: Apache-2.0
package tipwright.check.mistake;

import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Row;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** Loads that are so large that the actuator's line must nearly pass through the pivot. */
final class OnTheLine {
    private static final double TIMES = 100;
    private static final double GRAVITY = 9.80665;

    private OnTheLine() {}

    static List<Text> find(Analysis analysis) {
        double most = 0;
        Row at = null;
        for (CaseResult c : analysis.cases()) {
            for (Row row : c.rows()) {
                double load = Math.max(load(row.rest()), Math.max(load(row.raise()), load(row.lower())));
                double times = load / (row.load().mass() * GRAVITY);
                if (times > most) {
                    most = times;
                    at = row;
                }
            }
        }
        if (at == null || most < TIMES) {
            return List.of();
        }
        return List.of(Text.of(
                "At {} a pin is almost on the line: the actuator passes the pivot at only {}, and {} of tank and load make"
                        + " {}, {} times their weight. A pin is probably in the wrong place.",
                Text.degrees(at.tilt(), 0),
                Text.amount(Math.abs(at.pose().arm()), Kind.LENGTH),
                Text.amount(at.load().mass(), Kind.MASS),
                Text.amount(most * at.load().mass() * GRAVITY, Kind.FORCE),
                Text.number(Math.floor(most), 0)));
    }

    /** The largest force on the actuator or a bearing, N. */
    private static double load(Balance b) {
        double most = Math.abs(b.force());
        for (Vec3 bearing : b.bearings()) {
            most = Math.max(most, bearing.norm());
        }
        return most;
    }
}
