// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import java.util.List;

/**
 * What each kind of load on a footprint does to the wall under it, worked out once: any number of loads can then be asked for at the
 * cost of a few sums, as the theory is linear.
 */
public final class PatchInfluence {
    /** Stress along, around and shear of each kind of load. */
    private static final int NUMBERS = 9;

    private final List<Layer> layers;

    /** Of every point and face in turn, Pa by unit loads [(point, face) x {@link #NUMBERS}]: one long row, to be quick. */
    private final double[] stresses;

    /**
     * One wall looked at: its thickness, m, and the forces of unit loads at points of it.
     */
    record Layer(double wall, List<UnitForces> units) {}

    PatchInfluence(List<Layer> layers) {
        this.layers = List.copyOf(layers);
        int points = layers.stream().mapToInt(l -> l.units().size()).sum();
        stresses = new double[2 * points * NUMBERS];
        int at = 0;
        for (Layer layer : layers) {
            double wall = layer.wall();
            for (UnitForces units : layer.units()) {
                for (int face = -1; face <= 1; face += 2) {
                    for (ShellForces f : List.of(units.force(), units.around(), units.along())) {
                        stresses[at++] = f.along(wall, face);
                        stresses[at++] = f.around(wall, face);
                        stresses[at++] = f.shear(wall, face);
                    }
                }
            }
        }
    }

    /** Greatest equivalent stress that the wall under the footprint sees, Pa: that of {@link #worst}, quickly. */
    public double equivalent(PatchLoad load) {
        double a = load.force();
        double b = load.around();
        double c = load.along();
        double most = 0;
        for (int i = 0; i < stresses.length; i += NUMBERS) {
            double x = a * stresses[i] + b * stresses[i + 3] + c * stresses[i + 6];
            double y = a * stresses[i + 1] + b * stresses[i + 4] + c * stresses[i + 7];
            double t = a * stresses[i + 2] + b * stresses[i + 5] + c * stresses[i + 8];
            most = Math.max(most, x * x - x * y + y * y + 3 * t * t);
        }
        return Math.sqrt(most);
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
