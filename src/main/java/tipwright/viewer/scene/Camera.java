// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * Camera: its position, and the projection of points onto the picture. Immutable.
 *
 * @param target the point in the middle of the picture, m
 * @param yaw rad; 0: along -z, as in the side view; positive: from further towards +x
 * @param pitch rad; positive: from above
 * @param distance from the target, m
 */
public record Camera(Vec3 target, double yaw, double pitch, double distance) {
    /** Height of the picture as an angle, rad. */
    public static final double FIELD = Math.toRadians(26);

    private static final double STEEPEST = Math.toRadians(89.9);

    /** Named places to look from. */
    public enum Place {
        CORNER("corner view", 0.62, 0.30),
        SIDE("side", 0, 0),
        END("dump end", Math.PI / 2, 0),
        ABOVE("above", 0, STEEPEST);

        private final String word;
        private final double yaw;
        private final double pitch;

        Place(String word, double yaw, double pitch) {
            this.word = word;
            this.yaw = yaw;
            this.pitch = pitch;
        }

        /** As shown. */
        public String word() {
            return word;
        }
    }

    /**
     * Looks from a place so that a box fits into the picture.
     *
     * @param low smallest corner, m
     * @param high largest corner, m
     * @param aspect width over height of the picture
     */
    public static Camera fitting(Place from, Vec3 low, Vec3 high, double aspect) {
        List<Vec3> corners = new ArrayList<>();
        for (double x : new double[] {low.x(), high.x()}) {
            for (double y : new double[] {low.y(), high.y()}) {
                corners.add(new Vec3(x, y, low.z()));
                corners.add(new Vec3(x, y, high.z()));
            }
        }
        return fitting(from, corners, aspect);
    }

    /**
     * Looks from a place so that some points fit into the picture.
     *
     * @param points m
     * @param aspect width over height of the picture
     */
    public static Camera fitting(Place from, List<Vec3> points, double aspect) {
        return new Camera(Vec3.ZERO, from.yaw, from.pitch, 1).fitted(points, aspect);
    }

    /** The same direction from where some points just fit, with a margin. */
    public Camera fitted(List<Vec3> points, double aspect) {
        Vec3 sum = points.stream().reduce(Vec3.ZERO, Vec3::plus).times(1.0 / points.size());
        double far = points.stream().mapToDouble(p -> p.minus(sum).norm()).max().orElse(1);
        Camera camera = new Camera(sum, yaw, pitch, 8 * far);
        for (int round = 0; round < 12; round++) {
            double w = 1e9;
            double e = -1e9;
            double n = 1e9;
            double s = -1e9;
            for (Vec3 p : points) {
                Vec2 at = camera.project(p, aspect, 1);
                w = Math.min(w, at.x());
                e = Math.max(e, at.x());
                n = Math.min(n, at.y());
                s = Math.max(s, at.y());
            }
            double share = Math.max((e - w) / aspect, s - n) / 0.86;
            double scale = 2 * Math.tan(FIELD / 2) * camera.distance;
            Vec3 moved = camera.target
                    .plus(camera.right().times(((w + e) / 2 - aspect / 2) * scale))
                    .plus(camera.up().times((0.5 - (n + s) / 2) * scale));
            camera = new Camera(moved, yaw, pitch, camera.distance * share);
        }
        return camera;
    }

    /** Turned by angles, rad. */
    public Camera turned(double byYaw, double byPitch) {
        double p = Math.max(-0.1, Math.min(STEEPEST, pitch + byPitch));
        return new Camera(target, yaw + byYaw, p, distance);
    }

    /** Nearer (below 1) or farther. */
    public Camera zoomed(double factor) {
        return new Camera(target, yaw, pitch, Math.max(0.2, Math.min(80, distance * factor)));
    }

    /** Moved across the picture; shares of its height, to the right and up. */
    public Camera moved(double toRight, double toTop) {
        double scale = 2 * Math.tan(FIELD / 2) * distance;
        return new Camera(
                target.minus(right().times(toRight * scale)).minus(up().times(toTop * scale)), yaw, pitch, distance);
    }

    /** Where the camera is, m. */
    public Vec3 at() {
        return target.minus(forward().times(distance));
    }

    Vec3 forward() {
        return new Vec3(-Math.cos(pitch) * Math.sin(yaw), -Math.sin(pitch), -Math.cos(pitch) * Math.cos(yaw));
    }

    Vec3 right() {
        return new Vec3(Math.cos(yaw), 0, -Math.sin(yaw));
    }

    Vec3 up() {
        return right().cross(forward());
    }

    /**
     * Where a point lies in a picture of a size.
     *
     * @return in the picture's own units, x to the right, y down; NaN for a point behind the camera
     */
    public Vec2 project(Vec3 p, double width, double height) {
        Vec3 from = p.minus(at());
        double depth = from.dot(forward());
        if (!(depth > 1e-6)) {
            return new Vec2(Double.NaN, Double.NaN);
        }
        double scale = height / 2 / Math.tan(FIELD / 2) / depth;
        return new Vec2(width / 2 + scale * from.dot(right()), height / 2 - scale * from.dot(up()));
    }

    /** The way of the line of sight through a place in the picture. */
    Vec3 sight(Vec2 inPicture, double width, double height) {
        double scale = Math.tan(FIELD / 2) / (height / 2);
        return forward()
                .plus(right().times((inPicture.x() - width / 2) * scale))
                .plus(up().times((height / 2 - inPicture.y()) * scale));
    }

    /** The point in the plane of a z that lies behind a place in the picture, m; NaN when the line of sight runs along it. */
    public Vec2 onPlane(Vec2 inPicture, double z, double width, double height) {
        Vec3 ray = sight(inPicture, width, height);
        double k = Math.abs(ray.z()) < 1e-9 ? Double.NaN : (z - at().z()) / ray.z();
        return at().plus(ray.times(k)).xy();
    }
}
