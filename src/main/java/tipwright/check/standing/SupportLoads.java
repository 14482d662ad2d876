// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import java.util.Arrays;
import java.util.List;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * Shares a force square to the ground between supports: equal springs that only press, under a stiff frame, so R = max(0, a + b x + c
 * z). Of all sinks and leans a, b, c the one that balances the force is where sum(R^2) / 2 - F s is least, s the sink under the force:
 * a convex function, found by Newton's steps, halved where they go too far. With three supports this is plain statics. Source:
 * elementary statics; least energy of springs (any text on structures); equal springs: common practice, no source.
 */
public final class SupportLoads {
    private static final int ROUNDS = 200;
    private static final double CLOSE = 1e-11;
    private static final double FLAT = 1e-12;

    private final Vec3[] arms;

    /** Places of the supports from where the force acts, in parts of the farthest; the first coordinate is 1. */
    private SupportLoads(List<Vec2> supports, Vec2 at) {
        double far =
                supports.stream().mapToDouble(p -> p.minus(at).norm()).max().orElse(1);
        arms = supports.stream()
                .map(p -> p.minus(at).times(1 / far))
                .map(p -> new Vec3(1, p.x(), p.y()))
                .toArray(Vec3[]::new);
    }

    /**
     * Force on each support, N; all NaN when the force acts outside of them, so that it tips over, or when they are in one line.
     *
     * @param supports x and z, m
     * @param force N, pressing
     * @param at x and z where it acts on the ground, m
     */
    public static double[] of(List<Vec2> supports, double force, Vec2 at) {
        double[] shares = new SupportLoads(supports, at).shares();
        return Arrays.stream(shares).map(s -> s * force).toArray();
    }

    private double[] shares() {
        Vec3 lean = new Vec3(1.0 / arms.length, 0, 0);
        Vec3[] all = stiffness(new Vec3(2, 0, 0), 0);
        if (!(det(all) > FLAT * arms.length * Math.pow(all[1].y() + all[2].z(), 2))) {
            return none();
        }
        for (int round = 0; round < ROUNDS; round++) {
            Vec3 left = left(lean);
            if (left.norm() <= CLOSE) {
                Vec3 found = lean.plus(solved(stiffness(lean, FLAT), left));
                return Arrays.stream(arms)
                        .mapToDouble(found::dot)
                        .map(share -> share > CLOSE ? share : 0)
                        .toArray();
            }
            lean = lean.plus(step(lean, left));
        }
        return none();
    }

    private double[] none() {
        double[] none = new double[arms.length];
        Arrays.fill(none, Double.NaN);
        return none;
    }

    /** What of the force, and of its moments, the supports do not bear. */
    private Vec3 left(Vec3 lean) {
        Vec3 left = new Vec3(1, 0, 0);
        for (Vec3 arm : arms) {
            left = left.minus(arm.times(Math.max(0, lean.dot(arm))));
        }
        return left;
    }

    /** Newton's, or as much of it as makes the energy or what is left smaller. */
    private Vec3 step(Vec3 lean, Vec3 left) {
        Vec3 step = solved(stiffness(lean, FLAT), left);
        for (int i = 0; i < ROUNDS && step.norm() > FLAT && !better(lean, step, left); i++) {
            step = step.times(0.5);
        }
        return step;
    }

    private boolean better(Vec3 lean, Vec3 step, Vec3 left) {
        Vec3 there = lean.plus(step);
        return left(there).norm() < left.norm() / 2 || energy(there) < energy(lean) - 1e-4 * left.dot(step);
    }

    private double energy(Vec3 lean) {
        double sum = -lean.x();
        for (Vec3 arm : arms) {
            double press = Math.max(0, lean.dot(arm));
            sum += press * press / 2;
        }
        return sum;
    }

    /** Rows of the second derivatives of the energy: of the supports that press, and a little of its own to have an inverse. */
    private Vec3[] stiffness(Vec3 lean, double own) {
        Vec3[] rows = {new Vec3(own, 0, 0), new Vec3(0, own, 0), new Vec3(0, 0, own)};
        for (Vec3 arm : arms) {
            if (lean.dot(arm) > 0) {
                rows[0] = rows[0].plus(arm.times(arm.x()));
                rows[1] = rows[1].plus(arm.times(arm.y()));
                rows[2] = rows[2].plus(arm.times(arm.z()));
            }
        }
        return rows;
    }

    private static double det(Vec3[] rows) {
        return rows[0].dot(rows[1].cross(rows[2]));
    }

    private static Vec3 solved(Vec3[] rows, Vec3 right) {
        return new Vec3(
                        right.dot(rows[1].cross(rows[2])),
                        right.dot(rows[2].cross(rows[0])),
                        right.dot(rows[0].cross(rows[1])))
                .times(1 / det(rows));
    }
}
