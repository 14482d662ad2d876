// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tipwright.design.joint.BallInsert;
import tipwright.design.joint.Bearing;
import tipwright.design.joint.HousingStrength;
import tipwright.quantity.Kind;

/** Two bearings apart from each other that fit the shaft. */
final class PivotRules {
    private static final double APART = 1e-3;
    private static final double FIT = 0.5e-3;

    private PivotRules() {}

    static void check(Facts facts) {
        String first = "pivot.bearings[1]";
        String second = "pivot.bearings[2]";
        Double z1 = facts.number(first + ".z");
        Double z2 = facts.number(second + ".z");
        if (z1 != null && Facts.is(z2, z -> Math.abs(z - z1) < APART)) {
            facts.wrong(second + ".z", "both bearings sit at z " + Facts.say(z1, Kind.LENGTH) + "; they must be apart");
        }
        boolean both = Boolean.TRUE.equals(facts.bound().get(first + ".locating", Boolean.class))
                && Boolean.TRUE.equals(facts.bound().get(second + ".locating", Boolean.class));
        if (both) {
            facts.wrong(second + ".locating", "only one bearing may take the load along the axis");
        }
        Double shaft = facts.number("pivot.shaft.diameter");
        for (String path : List.of(first, second)) {
            Bearing bearing = facts.bound().get(path + ".bearing", Bearing.class);
            if (bearing != null && Facts.is(shaft, d -> Math.abs(d - bearing.bore()) > FIT)) {
                String key = facts.sources().find(path + ".bearing.bore") != null ? ".bearing.bore" : ".bearing";
                facts.wrong(
                        path + key,
                        "the bore of " + Facts.say(bearing.bore(), Kind.LENGTH) + " does not fit the shaft of "
                                + Facts.say(shaft == null ? 0 : shaft, Kind.LENGTH));
            }
        }
        for (Bound.Found<BallInsert> ball : facts.bound().all(BallInsert.class)) {
            housing(facts, ball);
        }
    }

    private static void housing(Facts facts, Bound.Found<BallInsert> ball) {
        Map<Double, Integer> seen = new HashMap<>();
        List<HousingStrength> housing = ball.value().housing();
        for (int i = 0; i < housing.size(); i++) {
            Integer before = seen.putIfAbsent(housing.get(i).angle(), i + 1);
            if (before != null) {
                ball.wrong(
                        facts.problems(),
                        Paths.item("housing", i + 1) + ".angle",
                        "the strength at " + Facts.say(housing.get(i).angle(), Kind.ANGLE) + " is given twice (entry "
                                + before + "); keep one");
            }
        }
    }
}
