// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec3;

/** The inside of the tank. Adding a shape: one record here and its name in the permits clause. */
@Choice("shape")
public sealed interface Interior permits CylinderInterior, BoxInterior, PrismInterior, MeshInterior {
    /** The closed solid, in metres, stowed. */
    Solid solid();

    /** Its open rim where the drawing shows one, in order, m, stowed; empty: it is closed as drawn. */
    default List<Vec3> mouth() {
        return List.of();
    }

    /** Whether its sizes are of the outside and the wall is needed to know the inside. */
    default boolean needsWall() {
        return false;
    }

    /**
     * The inside of a tank that was measured.
     *
     * @param wall thickness, m
     * @param outside whether its sizes are those of the outside; else only those that can be nothing else
     */
    default Interior inside(double wall, boolean outside) {
        return this;
    }

    /** The opening that takes up a whole flat side; null when that side is not flat and square to its axis. */
    default @Nullable Opening open(Tank.Open side) {
        return null;
    }

    /**
     * The inside where no wall was there to be taken off an outside size.
     *
     * @param side that is open
     * @param wall thickness that was taken off, m
     */
    default Interior withoutWall(Tank.Open side, double wall) {
        return this;
    }
}
