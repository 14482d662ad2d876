// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

/**
 * What a bracket does to the shell that it sits on, about the middle of its footprint.
 *
 * @param force square to the wall, N, positive outwards
 * @param around moment that tries to roll the bracket around the shell (its vector lies along the shell's axis), N m
 * @param along moment that tries to tip the bracket along the shell (its vector lies across the shell's axis), N m
 */
public record PatchLoad(double force, double around, double along) {
    /** Both together. */
    public PatchLoad plus(PatchLoad other) {
        return new PatchLoad(force + other.force, around + other.around, along + other.along);
    }

    /** So many times as much. */
    public PatchLoad times(double factor) {
        return new PatchLoad(factor * force, factor * around, factor * along);
    }
}
