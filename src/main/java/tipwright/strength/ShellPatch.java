// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

/**
 * A rectangular footprint on the wall of a round shell, through which a bracket, a cradle or a lug passes its load: local bending of
 * the wall.
 *
 * <p>The load presses evenly (force) or in proportion to the distance from the middle (moments), square to the wall. Linear theory of
 * thin shells: good for a wall up to a tenth of the radius and while the wall moves by no more than about its thickness; forces along
 * the wall are no part of it. A footprint wider than a radian either way is too much of the shell to be called local.
 *
 * @param shell its mid-surface and ends
 * @param place of its middle from the shell's first end, m
 * @param halfLength half of the footprint along the shell, m
 * @param halfWidth half of the footprint around the shell, along the arc, m
 */
public record ShellPatch(CylinderShell shell, double place, double halfLength, double halfWidth) {
    private static final double[] STEPS = {-1, -0.5, 0, 0.5, 1};

    /** @throws IllegalArgumentException if the footprint is empty, passes an end or goes round by more than a radian either way */
    public ShellPatch {
        Limit.positive("halfLength", halfLength);
        Limit.positive("halfWidth", halfWidth);
        Limit.within("place", place, halfLength, shell.length() - halfLength);
        Limit.within("halfWidth", halfWidth, 0, shell.radius());
    }

    /**
     * Forces in the wall at a place.
     *
     * @param place along the shell from its first end, m
     * @param angle around from the footprint's middle, rad
     */
    public ShellForces at(PatchLoad load, double place, double angle) {
        return new ShellSeries(shell, this).forces(load, new double[] {place}, new double[] {angle})[0][0];
    }

    /**
     * The most that the wall under the footprint sees, looked for at 25 points from edge to edge.
     *
     * <p>Source: {@link ShellSeries}; stresses by von Mises.
     */
    public Worst worst(PatchLoad load) {
        double[] places = new double[STEPS.length];
        double[] angles = new double[STEPS.length];
        for (int i = 0; i < STEPS.length; i++) {
            places[i] = place + STEPS[i] * halfLength;
            angles[i] = STEPS[i] * halfWidth / shell.radius();
        }
        double wall = shell.wall();
        double equivalent = 0;
        double direct = 0;
        double moved = 0;
        for (ShellForces[] row : new ShellSeries(shell, this).forces(load, places, angles)) {
            for (ShellForces f : row) {
                equivalent = Math.max(equivalent, f.equivalent(wall));
                moved = Math.max(moved, Math.abs(f.moved()));
                for (int face = -1; face <= 1; face += 2) {
                    direct = Math.max(direct, Math.abs(f.around(wall, face)));
                    direct = Math.max(direct, Math.abs(f.along(wall, face)));
                }
            }
        }
        return new Worst(equivalent, direct, moved);
    }

    /**
     * The greatest under a footprint.
     *
     * @param equivalent stress, Pa, von Mises
     * @param direct stress along or around, Pa
     * @param moved how far the wall gives way, m; linear theory holds up to about the wall's thickness
     */
    public record Worst(double equivalent, double direct, double moved) {}
}
