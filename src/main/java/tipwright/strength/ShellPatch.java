// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import java.util.ArrayList;
import java.util.List;
import tipwright.quantity.Kind;

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
    /** Under a moment the greatest stress lies at about 0.8 of the half side; a coarser net misses a fifth of it. */
    private static final double[] STEPS = {-1, -0.8, -0.6, -0.3, 0, 0.3, 0.6, 0.8, 1};

    /** @throws IllegalArgumentException if the footprint is empty, passes an end or goes round by more than a radian either way */
    public ShellPatch {
        Precondition.positive("half the length of the seat", halfLength);
        Precondition.positive("half the width of the seat", halfWidth);
        Precondition.within(
                "the middle of the seat, along the shell from its end,",
                Kind.LENGTH,
                place,
                halfLength,
                shell.length() - halfLength);
        Precondition.within("half the width of the seat", Kind.LENGTH, halfWidth, 0, shell.radius());
    }

    /**
     * Forces in the wall at a place.
     *
     * @param place along the shell from its first end, m
     * @param angle around from the footprint's middle, rad
     */
    public ShellForces at(PatchLoad load, double place, double angle) {
        return new ShellSeries(shell, this).units(new double[] {place}, new double[] {angle})[0][0].under(load);
    }

    /**
     * What unit loads do at 81 points of the footprint from edge to edge: to be kept where many loads are asked for.
     *
     * <p>Source: {@link ShellSeries}.
     */
    public PatchInfluence influence() {
        double[] places = new double[STEPS.length];
        double[] angles = new double[STEPS.length];
        for (int i = 0; i < STEPS.length; i++) {
            places[i] = place + STEPS[i] * halfLength;
            angles[i] = STEPS[i] * halfWidth / shell.radius();
        }
        List<UnitForces> points = new ArrayList<>();
        for (UnitForces[] row : new ShellSeries(shell, this).units(places, angles)) {
            points.addAll(List.of(row));
        }
        return new PatchInfluence(List.of(new PatchInfluence.Layer(shell.wall(), points)));
    }

    /** The most that the wall under the footprint sees. */
    public Worst worst(PatchLoad load) {
        return influence().worst(load);
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
