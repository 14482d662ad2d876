// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import tipwright.analysis.BodyPosition;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * How a body's side view lies in the picture, both ways.
 *
 * @param z of the plane, m
 * @param body whose stowed points are meant
 * @param width of the picture, pixels
 * @param height of the picture, pixels
 */
public record PlaneView(Camera camera, double z, BodyPosition body, double width, double height) {
    /** Where a stowed point is in the picture, pixels; NaN behind the camera. */
    public Vec2 of(Vec2 stowed) {
        Vec2 p = body.place(stowed);
        return camera.project(new Vec3(p.x(), p.y(), z), width, height);
    }

    /** The stowed point behind a place in the picture, pixels, m; not finite where the line of sight runs along the plane. */
    public Vec2 stowed(double x, double y) {
        return lookup().stowed(x, y);
    }

    /** Tells which stowed points lie behind the pixels. */
    Lookup lookup() {
        double scale = Math.tan(Camera.FIELD / 2) / (height / 2);
        Vec3 right = camera.right().times(scale);
        Vec3 down = camera.up().times(-scale);
        Vec3 first = camera.forward().plus(right.times(-width / 2)).plus(down.times(-height / 2));
        return new Lookup(
                camera.at(), first, right, down, z, Math.cos(body.turn()), Math.sin(body.turn()), body.origin());
    }

    /** The line of sight through a pixel is first + x right + y down. */
    record Lookup(Vec3 at, Vec3 first, Vec3 right, Vec3 down, double z, double cos, double sin, Vec2 shift) {
        /** The stowed point behind a place in the picture, m; not finite where the line of sight runs along the plane. */
        Vec2 stowed(double x, double y) {
            double k = (z - at.z()) / (first.z() + x * right.z() + y * down.z());
            double px = at.x() + k * (first.x() + x * right.x() + y * down.x()) - shift.x();
            double py = at.y() + k * (first.y() + x * right.y() + y * down.y()) - shift.y();
            return k > 0 ? new Vec2(px * cos - py * sin, py * cos + px * sin) : new Vec2(Double.NaN, Double.NaN);
        }
    }
}
