// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * A bucket of slurry on a scale.
 *
 * @param volume of slurry in it, m3
 * @param full kg, with the bucket
 * @param empty the bucket alone, kg
 */
public record Bucket(
        @Note("Of the slurry in it: fill it to the mark") @Measured(value = Kind.VOLUME, above = "0 L") double volume,
        @Note("With the slurry, on the scale") @Measured(value = Kind.MASS, above = "0 kg") double full,
        @Note("The bucket alone") @Measured(value = Kind.MASS, atLeast = "0 kg") double empty) {

    /** Of the slurry, kg/m3. */
    public double density() {
        return (full - empty) / volume;
    }
}
