// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
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

    private final Vec3[] arms;
    private final double[] hard;
    private final double far;

    /**
     * Places of the supports from where the force acts, in parts of the farthest; the first coordinate is 1.
     *
     * @param hard stiffness of each over that of the middle one
     */
    private SupportLoads(List<Vec2> supports, double[] hard, Vec2 at) {
        this.hard = hard;
        far = supports.stream().mapToDouble(p -> p.minus(at).norm()).max().orElse(1);
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
        double[] equal = new double[supports.size()];
        Arrays.fill(equal, 1);
        SupportLoads loads = new SupportLoads(supports, equal, at);
        return loads.shares(loads.found()).map(s -> s * force).toArray();
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
        List<Double> all = loads.shares(found).map(s -> s * force).boxed().toList();
        double sinks = force / mean / loads.far;
        return new OnSprings(all, new Vec2(found.y(), found.z()).times(sinks));
    }

    private DoubleStream shares(@Nullable Vec3 found) {
        if (found == null) {
            return Arrays.stream(none());
        }
        return IntStream.range(0, arms.length).mapToDouble(i -> {
            double share = hard[i] * found.dot(arms[i]);
            return share > CLOSE ? share : 0;
        });
    }

    /** Sink and leans in parts of the force; null when it tips over. */
    private @Nullable Vec3 found() {
        Vec3 lean = new Vec3(1.0 / arms.length, 0, 0);
        Vec3[] all = stiffness(new Vec3(2, 0, 0), 0);
        if (!(det(all) > FLAT * arms.length * Math.pow(all[1].y() + all[2].z(), 2))) {
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

    private double[] none() {
        double[] none = new double[arms.length];
        Arrays.fill(none, Double.NaN);
        return none;
    }

    /** What of the force, and of its moments, the supports do not bear. */
    private Vec3 left(Vec3 lean) {
        Vec3 left = new Vec3(1, 0, 0);
        for (int i = 0; i < arms.length; i++) {
            left = left.minus(arms[i].times(hard[i] * Math.max(0, lean.dot(arms[i]))));
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
        for (int i = 0; i < arms.length; i++) {
            double press = Math.max(0, lean.dot(arms[i]));
            sum += hard[i] * press * press / 2;
        }
        return sum;
    }

    /** Rows of the second derivatives of the energy: of the supports that press, and a little of its own to have an inverse. */
    private Vec3[] stiffness(Vec3 lean, double own) {
        Vec3[] rows = {new Vec3(own, 0, 0), new Vec3(0, own, 0), new Vec3(0, 0, own)};
        for (int i = 0; i < arms.length; i++) {
            Vec3 arm = arms[i];
            if (lean.dot(arm) > 0) {
                rows[0] = rows[0].plus(arm.times(hard[i] * arm.x()));
                rows[1] = rows[1].plus(arm.times(hard[i] * arm.y()));
                rows[2] = rows[2].plus(arm.times(hard[i] * arm.z()));
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
