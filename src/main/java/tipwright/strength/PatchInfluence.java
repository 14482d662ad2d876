// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import java.util.List;

/**
 * What each kind of load on a footprint does to the wall under it, worked out once: any number of loads can then be asked for at the
 * cost of a few sums, as the theory is linear.
 */
public final class PatchInfluence {
    private final List<Layer> layers;

    /**
     * One wall looked at: its thickness, m, and the forces of unit loads at points of it.
     */
    record Layer(double wall, List<UnitForces> units) {}

    PatchInfluence(List<Layer> layers) {
        this.layers = List.copyOf(layers);
    }

    /** This and another one, of which the worse counts. */
    PatchInfluence or(PatchInfluence other) {
        return new PatchInfluence(
                List.of(layers, other.layers).stream().flatMap(List::stream).toList());
    }

    /** The most that the wall under the footprint sees; stresses by von Mises. */
    public ShellPatch.Worst worst(PatchLoad load) {
        double equivalent = 0;
        double direct = 0;
        double moved = 0;
        for (Layer layer : layers) {
            double wall = layer.wall();
            for (UnitForces units : layer.units()) {
                ShellForces f = units.under(load);
                equivalent = Math.max(equivalent, f.equivalent(wall));
                moved = Math.max(moved, Math.abs(f.moved()));
                for (int face = -1; face <= 1; face += 2) {
                    direct = Math.max(direct, Math.abs(f.around(wall, face)));
                    direct = Math.max(direct, Math.abs(f.along(wall, face)));
                }
            }
        }
        return new ShellPatch.Worst(equivalent, direct, moved);
    }
}
