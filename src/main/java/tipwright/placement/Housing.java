// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.Comparator;
import java.util.List;
import tipwright.design.Design;
import tipwright.design.joint.BallInsert;
import tipwright.design.joint.HousingStrength;
import tipwright.design.joint.Support;
import tipwright.geometry.Vec2;

/** How much a load asks of a bearing's housing by its direction, as the check of the housing does. Immutable. */
final class Housing {
    private final double[][] angles = new double[2][];
    private final double[][] strengths = new double[2][];
    private final Vec2[] base = new Vec2[2];

    Housing(Design design) {
        for (int k = 0; k < 2; k++) {
            Support s = design.pivot().bearings().get(k);
            base[k] = s.base().unit();
            List<HousingStrength> figures = s.bearing() instanceof BallInsert insert
                    ? insert.housing().stream()
                            .sorted(Comparator.comparingDouble(HousingStrength::angle))
                            .toList()
                    : List.of();
            angles[k] = figures.stream().mapToDouble(HousingStrength::angle).toArray();
            strengths[k] = figures.stream().mapToDouble(HousingStrength::load).toArray();
        }
    }

    boolean known(int bearing) {
        return angles[bearing].length > 0;
    }

    /** Greatest strength in any direction, N; infinite when not known. */
    double greatest(int bearing) {
        double most = known(bearing) ? 0 : Double.POSITIVE_INFINITY;
        for (double s : strengths[bearing]) {
            most = Math.max(most, s);
        }
        return most;
    }

    /** Load over strength in its direction. */
    double share(int bearing, double x, double y, double size) {
        if (angles[bearing].length == 0 || size == 0) {
            return 0;
        }
        Vec2 b = base[bearing];
        double angle = Math.abs(Math.atan2(b.x() * y - b.y() * x, b.x() * x + b.y() * y));
        return size / strength(angles[bearing], strengths[bearing], angle);
    }

    private static double strength(double[] angles, double[] loads, double angle) {
        if (angle <= angles[0]) {
            return loads[0];
        }
        for (int i = 1; i < angles.length; i++) {
            if (angle <= angles[i]) {
                double share = (angle - angles[i - 1]) / (angles[i] - angles[i - 1]);
                return loads[i - 1] + share * (loads[i] - loads[i - 1]);
            }
        }
        return loads[loads.length - 1];
    }
}
