// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * Shares a force square to the ground between supports: springs that only press, under a stiff frame, so R = k max(0, a + b x + c
 * z). Of all sinks and leans a, b, c the one that balances the force is where sum(R^2 / k) / 2 - F s is least, s the sink under the force:
 * a convex function, found by Newton's steps, halved where they go too far. With three supports this is plain statics. Source:
 * elementary statics; least energy of springs (any text on structures); equal springs: common practice, no source.
 */
public final class SupportLoads {
    private static final int ROUNDS = 200;
    private static final double CLOSE = 1e-11;
    private static final double FLAT = 1e-12;

    private final int count;
    private final double[] x;
    private final double[] z;
    private final double[] hard;
    private final double far;

    /**
     * Places of the supports from where the force acts, in parts of the farthest.
     *
     * @param hard stiffness of each over that of the middle one
     */
    private SupportLoads(List<Vec2> supports, double[] hard, Vec2 at) {
        this.hard = hard;
        count = supports.size();
        x = new double[count];
        z = new double[count];
        double most = 0;
        for (Vec2 support : supports) {
            most = Math.max(most, support.minus(at).norm());
        }
        far = count == 0 ? 1 : most;
        for (int i = 0; i < count; i++) {
            Vec2 arm = supports.get(i).minus(at).times(1 / far);
            x[i] = arm.x();
            z[i] = arm.y();
        }
    }

    /** How far a support is pressed, in parts of the force over the stiffness of the middle one; below 0: it has lifted off. */
    private double pressed(Vec3 lean, int i) {
        return lean.x() + lean.y() * x[i] + lean.z() * z[i];
    }

    /**
     * Force on each support, N; all NaN when the force acts outside of them, so that it tips over, or when they are in one line.
     *
     * @param supports x and z, m
     * @param force N, pressing
     * @param at x and z where it acts on the ground, m
     */
    public static double[] of(List<Vec2> supports, double force, Vec2 at) {
        double[] equal = new double[supports.size()];
        Arrays.fill(equal, 1);
        SupportLoads loads = new SupportLoads(supports, equal, at);
        return loads.shares(loads.found(), force);
    }

    /**
     * Loads on unlike springs.
     *
     * @param loads on each, N
     * @param lean how much more they sink for each metre along x and along z
     */
    record OnSprings(List<Double> loads, Vec2 lean) {
        /** Copies the list. */
        OnSprings {
            loads = List.copyOf(loads);
        }
    }

    /**
     * The same on springs of their own; null when it tips over.
     *
     * @param springs stiffness of each, N/m
     */
    static @Nullable OnSprings onSprings(List<Vec2> supports, List<Double> springs, double force, Vec2 at) {
        double mean = springs.stream().mapToDouble(k -> k).average().orElseThrow();
        double[] hard = springs.stream().mapToDouble(k -> k / mean).toArray();
        SupportLoads loads = new SupportLoads(supports, hard, at);
        Vec3 found = loads.found();
        if (found == null) {
            return null;
        }
        List<Double> all = Arrays.stream(loads.shares(found, force)).boxed().toList();
        double sinks = force / mean / loads.far;
        return new OnSprings(all, new Vec2(found.y(), found.z()).times(sinks));
    }

    /** Of a force on each support; all NaN where there is no rest. */
    private double[] shares(@Nullable Vec3 found, double force) {
        double[] loads = new double[count];
        for (int i = 0; i < count; i++) {
            double share = found == null ? Double.NaN : hard[i] * pressed(found, i);
            loads[i] = share <= CLOSE ? 0 : share * force;
        }
        return loads;
    }

    /** Sink and leans in parts of the force; null when it tips over. */
    private @Nullable Vec3 found() {
        Vec3 lean = new Vec3(1.0 / count, 0, 0);
        Vec3[] all = stiffness(new Vec3(2, 0, 0), 0);
        if (!(det(all) > FLAT * count * Math.pow(all[1].y() + all[2].z(), 2))) {
            return null;
        }
        for (int round = 0; round < ROUNDS; round++) {
            Vec3 left = left(lean);
            if (left.norm() <= CLOSE) {
                return lean.plus(solved(stiffness(lean, FLAT), left));
            }
            lean = lean.plus(step(lean, left));
        }
        return null;
    }

    /** What of the force, and of its moments, the supports do not bear. */
    private Vec3 left(Vec3 lean) {
        double force = 1;
        double alongX = 0;
        double alongZ = 0;
        for (int i = 0; i < count; i++) {
            double press = hard[i] * Math.max(0, pressed(lean, i));
            force -= press;
            alongX -= press * x[i];
            alongZ -= press * z[i];
        }
        return new Vec3(force, alongX, alongZ);
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
        for (int i = 0; i < count; i++) {
            double press = Math.max(0, pressed(lean, i));
            sum += hard[i] * press * press / 2;
        }
        return sum;
    }

    /** Rows of the second derivatives of the energy: of the supports that press, and a little of its own to have an inverse. */
    private Vec3[] stiffness(Vec3 lean, double own) {
        double all = own;
        double toX = 0;
        double toZ = 0;
        double xx = own;
        double xz = 0;
        double zz = own;
        for (int i = 0; i < count; i++) {
            if (pressed(lean, i) > 0) {
                all += hard[i];
                toX += hard[i] * x[i];
                toZ += hard[i] * z[i];
                xx += hard[i] * x[i] * x[i];
                xz += hard[i] * x[i] * z[i];
                zz += hard[i] * z[i] * z[i];
            }
        }
        return new Vec3[] {new Vec3(all, toX, toZ), new Vec3(toX, xx, xz), new Vec3(toZ, xz, zz)};
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
