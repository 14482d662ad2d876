// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How full may it be?
 *
 * @param fill largest share of the interior, 0 to 1, up to which every fill passes every check that depends on the load
 * @param volume m3
 * @param mass of the slurry, kg
 * @param level height of the surface over the lowest point of the stowed interior, m: where the level switch sits
 * @param densityWhenFull the densest mixture with which a tank filled to the brim passes, kg/m3; NaN when not even plain liquid
 *     does, or when it was not asked for
 * @param limit the check that stops it from being fuller; null when it may be full
 * @param bands the fills that do not pass, the least first
 */
public record HowFull(
        double fill,
        double volume,
        double mass,
        double level,
        double densityWhenFull,
        @Nullable String limit,
        List<Band> bands) {
    /** Copies the list. */
    public HowFull {
        bands = List.copyOf(bands);
    }

    /**
     * Fills that do not pass.
     *
     * @param from share of the interior
     * @param to share of the interior
     * @param limit the check that fails in the middle of them
     */
    public record Band(double from, double to, String limit) {}
}
