// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.photo;

import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * A camera before the machine: a pinhole with one radial term, u = c + f x (1 + k r^2). Its numbers, in order: three of the turn away
 * from looking straight at the plane, the place of the plane's origin before it (m), the logarithm of the focal length over the usual
 * one, k, and how far the lens sits off the middle, over the picture's width. Source: the pinhole with D. C. Brown's first radial term
 * (from memory).
 *
 * @param turn its axes: rows to the right, down and forward
 * @param at where the plane's origin is in its axes, m
 * @param focal pixels
 * @param bend k
 * @param middle of the picture as the lens has it, pixels
 */
@SuppressWarnings("ArrayRecordComponent")
record Lens(Vec3[] turn, Vec3 at, double focal, double bend, Vec2 middle) {
    static final int NUMBERS = 10;

    /** Of a phone's main lens, over the picture's longer side: 26 mm on a frame of 36 mm. Common practice, no source. */
    static final double USUAL_FOCAL = 26.0 / 36;

    private static final int ROUNDS = 25;

    static Lens of(double[] n, double width, double height) {
        double f = USUAL_FOCAL * Math.max(width, height) * Math.exp(n[6]);
        Vec2 middle = new Vec2(width * (0.5 + n[8]), height / 2 + width * n[9]);
        return new Lens(rows(new Vec3(n[0], n[1], n[2])), new Vec3(n[3], n[4], n[5]), f, n[7], middle);
    }

    /** Rodrigues' rotation of the axes that look straight at the plane: x to the right, y up turned into down, z towards the eye. */
    private static Vec3[] rows(Vec3 by) {
        double angle = by.norm();
        Vec3 k = angle > 1e-12 ? by.times(1 / angle) : new Vec3(1, 0, 0);
        Vec3[] straight = {new Vec3(1, 0, 0), new Vec3(0, -1, 0), new Vec3(0, 0, -1)};
        Vec3[] rows = new Vec3[3];
        for (int i = 0; i < 3; i++) {
            Vec3 v = straight[i];
            rows[i] = v.times(Math.cos(angle))
                    .plus(k.cross(v).times(Math.sin(angle)))
                    .plus(k.times(k.dot(v) * (1 - Math.cos(angle))));
        }
        return rows;
    }

    /** Where a point is in the picture, pixels; NaN behind it. */
    Vec2 project(Vec3 p) {
        double depth = turn[2].dot(p) + at.z();
        if (!(depth > 1e-6)) {
            return new Vec2(Double.NaN, Double.NaN);
        }
        Vec2 flat = new Vec2((turn[0].dot(p) + at.x()) / depth, (turn[1].dot(p) + at.y()) / depth);
        return middle.plus(flat.times(focal * (1 + bend * flat.dot(flat))));
    }

    /** The point at a z that is seen at a place in the picture, m. */
    Vec2 onPlane(Vec2 pixel, double z) {
        Vec2 bent = pixel.minus(middle).times(1 / focal);
        Vec2 flat = bent;
        for (int i = 0; i < ROUNDS; i++) {
            flat = bent.times(1 / (1 + bend * flat.dot(flat)));
        }
        Vec3 ray = out(new Vec3(flat.x(), flat.y(), 1));
        Vec3 eye = out(at).times(-1);
        double far = (z - eye.z()) / ray.z();
        return eye.plus(ray.times(far)).xy();
    }

    /** A direction in its axes as one of the machine. */
    private Vec3 out(Vec3 own) {
        return turn[0].times(own.x()).plus(turn[1].times(own.y())).plus(turn[2].times(own.z()));
    }
}
