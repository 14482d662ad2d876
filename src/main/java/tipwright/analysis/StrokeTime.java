// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.PlacedActuator;

/**
 * How long the actuator runs for one dump when every tilt is met with the load that slows it most: an upper estimate, without the
 * time in which the slurry runs out.
 *
 * @param raise s; infinite when it stalls on the way
 * @param lower s; infinite when it stalls on the way
 */
public record StrokeTime(double raise, double lower) {
    /** Time of a dump; null when the actuators' speeds are not known. */
    public static @Nullable StrokeTime of(Analysis analysis) {
        double raise = 0;
        double lower = 0;
        List<PlacedActuator> actuators = analysis.design().drive().actuators();
        Actuator actuator = actuators.get(0).actuator();
        for (int i = 1; i < analysis.poses().size(); i++) {
            double way = analysis.poses().get(i).length()
                    - analysis.poses().get(i - 1).length();
            double length = analysis.poses().get(i).length() - way / 2;
            double sense = Math.signum(way);
            double up = against(analysis, i, sense, 1) / actuators.size();
            double down = against(analysis, i, -sense, -1) / actuators.size();
            Double fast = ActuatorSpeed.at(actuator, length, up, sense > 0);
            Double back = ActuatorSpeed.at(actuator, length, down, sense < 0);
            if (fast == null || back == null) {
                return null;
            }
            raise += Math.abs(way) / fast;
            lower += Math.abs(way) / back;
        }
        return new StrokeTime(raise, lower);
    }

    private static double against(Analysis analysis, int tilt, double way, int motion) {
        double worst = 0;
        for (CaseResult result : analysis.cases()) {
            Row row = result.rows().get(tilt);
            Balance balance = motion > 0 ? row.raise() : row.lower();
            worst = Math.max(worst, way * balance.force());
        }
        return worst;
    }
}
