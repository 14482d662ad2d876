// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * A straight jar of slurry that has settled over night.
 *
 * @param grit height of what has settled, m
 * @param all height of all of it, m
 */
public record Jar(
        @Note("Height of what has settled") @Measured(value = Kind.LENGTH, atLeast = "0 mm") double grit,
        @Note("Height of all of it, water too") @Measured(value = Kind.LENGTH, above = "0 mm") double all) {

    /** Solids by volume, 0 to 1, when the settled grit holds this share of solids. */
    public double solids(double packing) {
        return packing * grit / all;
    }
}
