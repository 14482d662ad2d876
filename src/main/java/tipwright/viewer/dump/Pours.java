// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.dump;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.tank.Opening;
import tipwright.geometry.Vec3;
import tipwright.load.Contents;

/** Where and how widely the contents run out. */
final class Pours {
    private static final double LEAST = 1e-6;

    private Pours() {}

    /**
     * The stream at a tilt.
     *
     * @param flow m3/s; none below a cubic centimetre a second
     */
    static @Nullable Pour at(Design design, Contents contents, DrawnPosition tank, double tilt, double flow) {
        if (!(flow > LEAST)) {
            return null;
        }
        Vec3 up = contents.up(tilt);
        Opening open = null;
        for (Opening opening : design.tank().openings()) {
            boolean lower = open == null || opening.lip(up) < open.lip(up);
            if (opening.opensAt() <= tilt + 1e-9 && lower) {
                open = opening;
            }
        }
        return open == null ? null : over(open, up, tank, flow);
    }

    private static @Nullable Pour over(Opening opening, Vec3 up, DrawnPosition tank, double flow) {
        List<Vec3> rim = opening.rimPoints();
        double lip = opening.lip(up);
        double most = Double.NEGATIVE_INFINITY;
        Vec3 lowest = rim.get(0);
        for (Vec3 p : rim) {
            most = Math.max(most, up.dot(p));
            lowest = up.dot(p) < up.dot(lowest) - 1e-12 ? p : lowest;
        }
        // the depth over the lip and the width there go together: a few rounds settle both
        double depth = 0.1 * (most - lip);
        double width = 0;
        for (int i = 0; i < 8; i++) {
            width = Math.max(1e-3, width(rim, up, lip + depth));
            depth = Math.cbrt(flow * flow / (width * width * 9.80665));
            depth = Math.min(depth, most - lip);
        }
        double z = middle(rim, up, lip + Math.max(depth, 1e-3));
        Vec3 normal =
                opening.areaVector().norm() > 0 ? tank.of(opening.areaVector()).minus(tank.of(Vec3.ZERO)) : up;
        Vec3 level = new Vec3(normal.x(), 0, normal.z());
        Vec3 way = level.norm() > 1e-9 ? level.unit() : new Vec3(1, 0, 0);
        return new Pour(tank.of(new Vec3(lowest.x(), lowest.y(), z)), way, flow, width);
    }

    /** How far the points of the rim below a height reach along z. */
    private static double width(List<Vec3> rim, Vec3 up, double height) {
        double[] range = range(rim, up, height);
        return range[1] - range[0];
    }

    private static double middle(List<Vec3> rim, Vec3 up, double height) {
        double[] range = range(rim, up, height);
        return 0.5 * (range[0] + range[1]);
    }

    private static double[] range(List<Vec3> rim, Vec3 up, double height) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < rim.size(); i++) {
            Vec3 a = rim.get(i);
            Vec3 b = rim.get((i + 1) % rim.size());
            double ha = up.dot(a) - height;
            double hb = up.dot(b) - height;
            if (ha <= 0) {
                low = Math.min(low, a.z());
                high = Math.max(high, a.z());
            }
            if (ha < 0 != hb < 0 && ha != hb) {
                double z = a.z() + (b.z() - a.z()) * ha / (ha - hb);
                low = Math.min(low, z);
                high = Math.max(high, z);
            }
        }
        return low > high ? new double[] {0, 0} : new double[] {low, high};
    }
}
