// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * An extension spring: slack up to its free length, then its initial tension and its rate. Source: helical extension springs in
 * any text on machine elements (from memory).
 *
 * @param free length without load, hook to hook, m
 * @param rate N/m
 * @param tension initial tension of the wound coils, N
 * @param longest length allowed, m
 * @param z m along the pivot axis
 */
@Choice("extension-spring")
public record ExtensionSpring(
        @Note("What it is called") String name,
        @Note("One end") Anchor from,
        @Note("The other end") Anchor to,
        @Note("Hook to hook without load") @Measured(value = Kind.LENGTH, above = "0 mm") double free,
        @Note("Force per length that it is stretched") @Measured(value = Kind.STIFFNESS, above = "0 N/mm") double rate,
        @Note("Initial tension of the coils") @Measured(value = Kind.FORCE, preset = "0 N", atLeast = "0 N")
                double tension,
        @Note("Longest length allowed") @Measured(value = Kind.LENGTH, above = "0 mm") double longest,
        @Note("Where it sits along the pivot") @Measured(value = Kind.LENGTH, preset = "0 mm") double z)
        implements Assist, LineSpring {
    @Override
    public double push(double length) {
        double out = length - free;
        return out > 0 ? -(tension + rate * out) : 0;
    }

    @Override
    public double energy(double length) {
        double out = Math.max(0, length - free);
        return tension * out + rate * out * out / 2;
    }

    @Override
    public double friction() {
        return 0;
    }

    @Override
    public double shortest() {
        return 0;
    }
}
