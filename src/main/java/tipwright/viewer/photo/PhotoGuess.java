// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.photo;

import java.util.List;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * A first guess of where the camera stood: the homography of four points by linear equations, taken apart with the usual lens. Source:
 * R. Hartley and A. Zisserman, Multiple View Geometry, chapters 4 and 8 (from memory).
 */
final class PhotoGuess {
    private PhotoGuess() {}

    /** The numbers of a {@link Lens}. */
    static double[] of(double width, double height, List<Vec2> places, List<Vec2> taps) {
        double f = Lens.USUAL_FOCAL * Math.max(width, height);
        double[][] a = new double[8][8];
        double[] b = new double[8];
        for (int i = 0; i < 4; i++) {
            Vec2 p = places.get(i);
            double u = (taps.get(i).x() - width / 2) / f;
            double v = (taps.get(i).y() - height / 2) / f;
            a[2 * i] = new double[] {p.x(), p.y(), 1, 0, 0, 0, -u * p.x(), -u * p.y()};
            a[2 * i + 1] = new double[] {0, 0, 0, p.x(), p.y(), 1, -v * p.x(), -v * p.y()};
            b[2 * i] = u;
            b[2 * i + 1] = v;
        }
        double[] h = new LUDecomposition(MatrixUtils.createRealMatrix(a))
                .getSolver()
                .solve(MatrixUtils.createRealVector(b))
                .toArray();
        Vec3 first = new Vec3(h[0], h[3], h[6]);
        Vec3 second = new Vec3(h[1], h[4], h[7]);
        double scale = 2 / (first.norm() + second.norm());
        Vec3 at = new Vec3(h[2], h[5], 1).times(scale);
        Vec3 x = first.unit();
        Vec3 y = second.minus(x.times(x.dot(second))).unit();
        Vec3 turn = turn(facing(x), facing(y), facing(x.cross(y)));
        return new double[] {turn.x(), turn.y(), turn.z(), at.x(), at.y(), at.z(), 0, 0, 0, 0};
    }

    /** As seen by one who looks straight at the plane: y down, z away. */
    private static Vec3 facing(Vec3 v) {
        return new Vec3(v.x(), -v.y(), -v.z());
    }

    /** Axis times angle of the rotation with these rows. */
    private static Vec3 turn(Vec3 x, Vec3 y, Vec3 z) {
        double angle = Math.acos(Math.max(-1, Math.min(1, (x.x() + y.y() + z.z() - 1) / 2)));
        Vec3 axis = new Vec3(z.y() - y.z(), x.z() - z.x(), y.x() - x.y());
        return axis.norm() < 1e-12 ? Vec3.ZERO : axis.unit().times(angle);
    }
}
