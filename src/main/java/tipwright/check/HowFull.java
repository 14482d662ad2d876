// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import org.jspecify.annotations.Nullable;

/**
 * How full may it be?
 *
 * @param fill largest share of the interior that passes every check that depends on the load, 0 to 1
 * @param volume m3
 * @param mass of the slurry, kg
 * @param level height of the surface over the lowest point of the stowed interior, m: where the level switch sits
 * @param densityWhenFull the densest mixture with which a tank filled to the brim passes, kg/m3; NaN when not even plain liquid
 *     does
 * @param limit the check that stops it from being fuller; null when it may be full
 */
public record HowFull(
        double fill, double volume, double mass, double level, double densityWhenFull, @Nullable String limit) {}
