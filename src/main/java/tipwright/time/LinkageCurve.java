// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Forces;
import tipwright.geometry.Vec3;

/**
 * The linkage as smooth functions of the tilt.
 *
 * <p>At rest and without friction the actuators' force is affine in mass and first moments of the load, F = f0 + m (a + b x + c y),
 * so four balances at each tilt give it for every load.
 */
final class LinkageCurve {
    private static final double STEP = Math.toRadians(1);
    private static final double UNIT = 1000;

    private final Forces forces;
    private final Grid grid;
    private final double[] length;
    private final double[] arm;
    private final double[] none;
    private final double[] mass;
    private final double[] alongX;
    private final double[] alongY;

    private LinkageCurve(Forces forces) {
        this.forces = forces;
        int n = forces.count();
        double[] tilts = new double[n];
        length = new double[n];
        arm = new double[n];
        none = new double[n];
        mass = new double[n];
        alongX = new double[n];
        alongY = new double[n];
        for (int i = 0; i < n; i++) {
            tilts[i] = forces.tilt(i);
            length[i] = forces.length(i);
            arm[i] = forces.arm(i);
            none[i] = forces.force(i, 0, Vec3.ZERO, 0);
            mass[i] = (forces.force(i, UNIT, Vec3.ZERO, 0) - none[i]) / UNIT;
            alongX[i] = (forces.force(i, UNIT, new Vec3(1, 0, 0), 0) - none[i]) / UNIT - mass[i];
            alongY[i] = (forces.force(i, UNIT, new Vec3(0, 1, 0), 0) - none[i]) / UNIT - mass[i];
        }
        grid = new Grid(tilts);
    }

    /**
     * The linkage of an analysis from its first tilt to its last.
     *
     * @throws CannotComputeException when it reaches one tilt only
     */
    static LinkageCurve of(Analysis analysis) throws CannotComputeException {
        double from = analysis.poses().get(0).tilt();
        double to = analysis.poses().get(analysis.poses().size() - 1).tilt();
        int steps = Math.max(4, (int) Math.ceil((to - from) / STEP));
        double[] tilts = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            tilts[i] = from + (to - from) * i / steps;
        }
        Forces forces = Forces.of(analysis.design(), tilts, analysis.wind());
        if (!(to > from) || forces.count() < 2) {
            throw new CannotComputeException(analysis.design().name() + ": the tank cannot move from stowed");
        }
        return new LinkageCurve(forces);
    }

    Grid grid() {
        return grid;
    }

    Forces forces() {
        return forces;
    }

    /** Length of the actuators, m. */
    double length(double tilt) {
        return grid.smooth(length, tilt);
    }

    /** dL/dtilt, m per rad. */
    double arm(double tilt) {
        return grid.smooth(arm, tilt);
    }

    /** +1 when the rod goes out as the tank tips, -1 when it goes in. */
    int way() {
        return arm[0] < 0 ? -1 : 1;
    }

    /** Force of all actuators at rest without friction, N. */
    double rest(double tilt, double load, Vec3 centroid) {
        return grid.smooth(none, tilt)
                + load
                        * (grid.smooth(mass, tilt)
                                + centroid.x() * grid.smooth(alongX, tilt)
                                + centroid.y() * grid.smooth(alongY, tilt));
    }
}
