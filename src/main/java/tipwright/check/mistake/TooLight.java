// SPDX-License-Identifier: Apache-2.0
package tipwright.check.mistake;

import java.util.List;
import tipwright.design.Design;
import tipwright.design.tank.Opening;
import tipwright.design.tank.Tank;
import tipwright.design.tank.Weighed;
import tipwright.load.Contents;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** A tank that is weighed and cannot weigh that. */
final class TooLight {
    private static final double STEEL = 7850;
    /** Thinner than any tank's wall, m. */
    private static final double THINNEST = 0.0005;
    /** Of the steel's weight. */
    private static final double LIGHT = 0.7;

    private static final double FAR = 0.04;
    private static final double GRAVITY = 9.80665;
    private static final double POUND = 2.20462;

    private TooLight() {}

    static List<Text> find(Design design) {
        Tank tank = design.tank();
        Weighed weighed = tank.mass();
        if (weighed == null) {
            return List.of();
        }
        double area = new Contents(design).solid().skin().area();
        for (Opening o : tank.openings()) {
            area -= o.areaVector().norm();
        }
        Double told = weighed.thickness();
        double wall = told == null ? THINNEST : told;
        double steel = area * wall * STEEL;
        double ratio = weighed.empty() / steel;
        if (told != null) {
            for (double factor : new double[] {GRAVITY, 1 / GRAVITY, POUND, 1 / POUND}) {
                if (Math.abs(ratio / factor - 1) < FAR) {
                    return List.of(Text.of(
                            "The empty tank is said to weigh {}; its wall of {} weighs {}, {}. Was it weighed in other"
                                    + " units?",
                            Text.amount(weighed.empty(), Kind.MASS),
                            Text.size(wall),
                            Text.amount(steel, Kind.MASS),
                            Text.words(
                                    factor == GRAVITY
                                            ? "9.81 times less, as newtons taken for kilograms would be"
                                            : factor == POUND
                                                    ? "2.2 times less, as pounds taken for kilograms would be"
                                                    : factor == 1 / POUND
                                                            ? "2.2 times more, as kilograms taken for pounds would be"
                                                            : "9.81 times more")));
                }
            }
        }
        return ratio < (told == null ? 1 : LIGHT)
                ? List.of(Text.of(
                        "The empty tank is said to weigh {}, less than its steel: {} of wall weigh {} even at {} thick.",
                        Text.amount(weighed.empty(), Kind.MASS),
                        Text.amount(area, Kind.AREA, "m2", 2),
                        Text.amount(steel, Kind.MASS),
                        Text.size(wall)))
                : List.of();
    }
}
