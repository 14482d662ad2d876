// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import java.util.List;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;

/**
 * A rectangular tube along z that carries the actuator's frame pin; its ends rest on the frame's rails.
 *
 * @param at middle of the tube in the side view, m
 * @param height along y, m
 * @param width along x, m
 * @param wall m
 * @param z of its two ends, m
 * @param yield Pa
 * @param modulus Young's modulus, Pa
 */
public record CrossMember(
        @Note("Middle of the tube in the side view") @Measured(Kind.LENGTH) Vec2 at,
        @Note("Outside, upright") @Measured(value = Kind.LENGTH, above = "0 mm") double height,
        @Note("Outside, level") @Measured(value = Kind.LENGTH, above = "0 mm") double width,
        @Note("Thickness of its wall") @Measured(value = Kind.LENGTH, above = "0 mm", sheet = true) double wall,
        @Note("Where its ends rest along the pivot") @Counted(atLeast = 2, atMost = 2) @Measured(Kind.LENGTH)
                List<Double> z,
        @Note("Yield strength of its steel") @Measured(value = Kind.PRESSURE, preset = "235 MPa", above = "0 Pa")
                double yield,
        @Note("Young's modulus; 205 GPa for steel") @Measured(value = Kind.PRESSURE, preset = "205 GPa", above = "0 Pa")
                double modulus) {

    /** The same elsewhere, moved by so much, m. */
    public CrossMember movedBy(Vec2 by) {
        return new CrossMember(at.plus(by), height, width, wall, z, yield, modulus);
    }

    /** Its outside in the side view, m, counter-clockwise from below. */
    public List<Vec2> outline() {
        Vec2 half = new Vec2(width / 2, height / 2);
        Vec2 low = at.minus(half);
        Vec2 high = at.plus(half);
        return List.of(low, new Vec2(high.x(), low.y()), high, new Vec2(low.x(), high.y()));
    }

    /** Between the ends, m. */
    public double span() {
        return Math.abs(z.get(1) - z.get(0));
    }
}
