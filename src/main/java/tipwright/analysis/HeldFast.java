// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import tipwright.geometry.Vec2;
import tipwright.linkage.Configuration;
import tipwright.linkage.Linkage;
import tipwright.linkage.ReactionSolver;

/**
 * What the actuators' force alone does to the joints while something holds the tank, at every pose of an analysis. It is known of those
 * joints that bear the same whatever holds the tank and wherever: a push one way, a push the other way and a moment on it, each held by
 * the actuators, load them in proportion to the actuators' force. Source: statics, sums of loads.
 */
public final class HeldFast {
    private static final double SAME = 1e-6;
    private static final double NOTHING = 1e-9;

    private final boolean[] driven;
    private final List<Vec2[]> each = new ArrayList<>();

    private HeldFast(int joints) {
        driven = new boolean[joints];
    }

    /** Of an analysed machine. */
    public static HeldFast of(Analysis analysis) {
        Mechanism mechanism = analysis.mechanism();
        HeldFast held = new HeldFast(mechanism.joints().size());
        if (held.driven.length < 2) {
            return held;
        }
        Arrays.fill(held.driven, true);
        try {
            Linkage linkage = Analyser.linkage(analysis.design());
            ReactionSolver solver = linkage.reactionSolver();
            double[] tilts = analysis.poses().stream().mapToDouble(Pose::tilt).toArray();
            for (Configuration here : linkage.sweep(tilts).configurations()) {
                held.look(here, solver, mechanism.tank());
            }
        } catch (CannotComputeException e) {
            throw new IllegalStateException("a linkage that was analysed", e);
        }
        return held;
    }

    private void look(Configuration here, ReactionSolver solver, int tank) {
        Vec2[] forces = new Vec2[driven.length];
        Arrays.fill(forces, Vec2.ZERO);
        each.add(forces);
        if (!solver.moveTo(here)) {
            Arrays.fill(driven, false);
            return;
        }
        double[] drive = new double[3];
        Vec2[][] bears = new Vec2[3][driven.length];
        int most = 0;
        for (int k = 0; k < drive.length; k++) {
            solver.clear();
            if (k == 2) {
                solver.turn(tank, 1);
            } else {
                solver.push(tank, 0, 0, k == 0 ? 1 : 0, k == 1 ? 1 : 0);
            }
            boolean solved = solver.solve();
            drive[k] = solved ? solver.force() : Double.NaN;
            for (int i = 0; i < driven.length; i++) {
                bears[k][i] = solved ? new Vec2(solver.jointX(i), solver.jointY(i)) : Vec2.ZERO;
            }
            most = Math.abs(drive[k]) > Math.abs(drive[most]) ? k : most;
        }
        for (int i = 0; i < driven.length; i++) {
            Vec2 share = bears[most][i].times(1 / drive[most]);
            double off = 0;
            double size = NOTHING;
            for (int k = 0; k < drive.length; k++) {
                off = Math.max(off, bears[k][i].minus(share.times(drive[k])).norm());
                size = Math.max(size, bears[k][i].norm());
            }
            driven[i] &= off <= SAME * size;
            forces[i] = share;
        }
    }

    /** Whether a joint bears the same wherever the tank is held. */
    public boolean driven(int joint) {
        return driven[joint];
    }

    /** Whether all joints of a body do, by number. */
    public boolean drivenBody(Mechanism mechanism, int body) {
        for (int i = 0; i < driven.length; i++) {
            JointPlan joint = mechanism.joints().get(i);
            if ((joint.a() == body || joint.b() == body) && !driven[i]) {
                return false;
            }
        }
        return true;
    }

    /**
     * Force of the second body on the first at each joint, N; nothing where it is not known [joint].
     *
     * @param pose number of the pose
     * @param drive force of all actuators, N; positive pushes
     */
    public List<Vec2> joints(int pose, double drive) {
        List<Vec2> forces = new ArrayList<>(driven.length);
        for (int i = 0; i < driven.length; i++) {
            forces.add(driven[i] ? each.get(pose)[i].times(drive) : Vec2.ZERO);
        }
        return forces;
    }
}
