// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import tipwright.geometry.Vec2;

/**
 * What the kernel is held against: one candidate tilt by tilt, the closed form in plain numbers, friction repeated until it stands. Mutable: owned by one caller;
 * allocates nothing while it runs.
 */
final class PlainLoop {
    private static final int REPEATS = 60;
    private static final double CLOSE = 1e-11;

    final TiltLoads loads;
    private final double frameRadius;
    private final double tankRadius;

    /** Length of the actuator, m [tilt]. */
    final double[] length;
    /** Largest push and pull over the load cases, rest and both ways, N [tilt]; 0 or more. */
    final double[] push;

    final double[] pull;
    /** Largest force against the way up and against the way down, N [tilt]; 0 or more. */
    final double[] up;

    final double[] down;
    /** Largest force either way at rest, and largest pull at rest, N. */
    double rest;

    double restPull;
    /** Largest radial load, N [bearing]. */
    final double[] bearing = new double[2];
    /** Smallest angle between actuator and arm, rad; 0 at a dead centre or where friction locks. */
    double transmission;
    /** How many tilts it reaches. */
    int reached;

    private double radial1;
    private double radial2;
    private final double[] at = new double[4];

    PlainLoop(TiltLoads loads, double[] pinRadii) {
        this.loads = loads;
        frameRadius = pinRadii[0];
        tankRadius = pinRadii[1];
        int n = loads.tilts().length;
        length = new double[n];
        push = new double[n];
        pull = new double[n];
        up = new double[n];
        down = new double[n];
    }

    /** Works out a candidate. */
    void run(Vec2 frame, Vec2 tank) {
        double ax = frame.x() - loads.pivot().x();
        double ay = frame.y() - loads.pivot().y();
        double tx = tank.x() - loads.pivot().x();
        double ty = tank.y() - loads.pivot().y();
        double reach = Math.hypot(tx, ty);
        double sign = 0;
        rest = 0;
        restPull = 0;
        bearing[0] = 0;
        bearing[1] = 0;
        transmission = Math.PI / 2;
        reached = 0;
        for (int i = 0; i < length.length; i++) {
            double c = Math.cos(loads.tilts()[i]);
            double s = Math.sin(loads.tilts()[i]);
            double bx = tx * c + ty * s;
            double by = ty * c - tx * s;
            double lx = bx - ax;
            double ly = by - ay;
            double l = Math.hypot(lx, ly);
            double arm = (lx * by - ly * bx) / l;
            sign = sign == 0 ? Math.signum(arm) : sign;
            double h = (lx * bx + ly * by) / l;
            double kappa = (frameRadius * Math.abs(h) + tankRadius * Math.abs(l - h)) / l;
            if (!(sign * arm > kappa)) {
                transmission = 0;
                return;
            }
            transmission = Math.min(transmission, Math.asin(Math.min(1, Math.abs(arm) / reach)));
            double q = (tankRadius * Math.signum(l - h) - frameRadius * Math.signum(h)) / l;
            length[i] = l;
            push[i] = 0;
            pull[i] = 0;
            up[i] = 0;
            down[i] = 0;
            for (double[][][] load : loads.loads()) {
                if (!ways(i, load[i], lx / l, ly / l, arm, kappa, q, sign)) {
                    transmission = 0;
                    return;
                }
            }
            reached++;
        }
    }

    private boolean ways(
            int i, double[][] load, double ux, double uy, double arm, double kappa, double q, double sign) {
        double still = load[0][0] / arm;
        rest = Math.max(rest, Math.abs(still));
        restPull = Math.max(restPull, -still);
        take(i, still, load[0], ux, uy, 0);
        double raise = solve(load[1], ux, uy, arm, kappa, q, 1);
        if (!Double.isFinite(raise)) {
            return false;
        }
        take(i, raise, load[1], ux, uy, Math.abs(raise) * q);
        double lower = solve(load[2], ux, uy, arm, kappa, q, -1);
        if (!Double.isFinite(lower)) {
            return false;
        }
        take(i, lower, load[2], ux, uy, -Math.abs(lower) * q);
        up[i] = Math.max(up[i], sign * raise);
        down[i] = Math.max(down[i], -sign * lower);
        return true;
    }

    /** Force in balance with friction; NaN when it does not settle. */
    private double solve(double[] g, double ux, double uy, double arm, double kappa, double q, int way) {
        double f = g[0] / arm;
        for (int k = 0; k < REPEATS; k++) {
            radial(g, f, ux, uy, way * Math.abs(f) * q);
            double m = g[0] + way * (loads.radius()[0] * radial1 + loads.radius()[1] * radial2);
            double next = m / (arm - way * kappa * Math.signum(m * arm));
            if (Math.abs(next - f) <= CLOSE * (Math.abs(next) + 1)) {
                return next;
            }
            f = next;
        }
        return Double.NaN;
    }

    private void radial(double[] g, double f, double ux, double uy, double side) {
        for (int k = 0; k < 2; k++) {
            at[2 * k] = loads.share()[k] * (f * ux + side * uy) + g[1 + 2 * k];
            at[2 * k + 1] = loads.share()[k] * (f * uy - side * ux) + g[2 + 2 * k];
        }
        radial1 = Math.sqrt(at[0] * at[0] + at[1] * at[1]);
        radial2 = Math.sqrt(at[2] * at[2] + at[3] * at[3]);
    }

    private void take(int i, double f, double[] g, double ux, double uy, double side) {
        push[i] = Math.max(push[i], f);
        pull[i] = Math.max(pull[i], -f);
        radial(g, f, ux, uy, side);
        bearing[0] = Math.max(bearing[0], radial1);
        bearing[1] = Math.max(bearing[1], radial2);
    }
}
