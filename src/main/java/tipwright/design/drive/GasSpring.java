// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * A gas spring: its push rises linearly from drawn out to pressed in. Source: makers' force-stroke diagrams; common practice.
 *
 * @param extended length drawn out, m
 * @param stroke m
 * @param force push when fully out, N
 * @param compressedForce push when pressed in by the whole stroke, N
 * @param friction of its seals, against the motion either way, N
 * @param z m along the pivot axis
 */
@Choice("gas-spring")
public record GasSpring(
        @Note("What it is called") String name,
        @Note("One end") Anchor from,
        @Note("The other end") Anchor to,
        @Note("Pin to pin when fully out") @Measured(value = Kind.LENGTH, above = "0 mm") double extended,
        @Note("How far it can be pressed in") @Measured(value = Kind.LENGTH, above = "0 mm") double stroke,
        @Note("Push when fully out") @Measured(value = Kind.FORCE, atLeast = "0 N") double force,
        @Note("Push when pressed in by the whole stroke") @Measured(value = Kind.FORCE, atLeast = "0 N")
                double compressedForce,
        @Note("Friction of its seals") @Measured(value = Kind.FORCE, preset = "0 N", atLeast = "0 N") double friction,
        @Note("Where it sits along the pivot") @Measured(value = Kind.LENGTH, preset = "0 mm") double z)
        implements Assist, LineSpring {
    /** Absolute temperature at which makers state the force, K. Source: common practice, no source. */
    public static final double STATED = 293.15;

    /**
     * This spring at another temperature, with part of its gas gone: its force goes with both. Source: Gay-Lussac's law.
     *
     * @param kelvin temperature, K
     * @param lost share of the gas that has leaked out, 0 to 1
     */
    public GasSpring at(double kelvin, double lost) {
        double share = kelvin / STATED * (1 - lost);
        return new GasSpring(name, from, to, extended, stroke, force * share, compressedForce * share, friction, z);
    }

    @Override
    public double push(double length) {
        return force + (compressedForce - force) * (extended - length) / stroke;
    }

    @Override
    public double energy(double length) {
        double in = extended - length;
        return force * in + (compressedForce - force) * in * in / (2 * stroke);
    }

    @Override
    public double shortest() {
        return extended - stroke;
    }

    @Override
    public double longest() {
        return extended;
    }
}
