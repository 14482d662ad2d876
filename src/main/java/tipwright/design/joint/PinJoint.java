// SPDX-License-Identifier: Apache-2.0
package tipwright.design.joint;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.design.key.Sold;
import tipwright.quantity.Kind;

/**
 * A pin through a lug and its cheeks.
 *
 * @param diameter m
 * @param lug thickness of the middle lug, m
 * @param cheek thickness of each outer cheek, m
 * @param gap clearance between lug and each cheek, m
 * @param yield Pa
 * @param leans how far a ball joint in the eye lets it lean, rad; null: a plain eye
 */
public record PinJoint(
        @Note("Of the pin") @Measured(value = Kind.LENGTH, above = "0 mm") @Sold(value = "pin", usual = "20 mm")
                double diameter,
        @Note("double: lug between two cheeks; single: one cheek") @Preset("double") Shear shear,
        @Note("Thickness of the middle lug") @Measured(value = Kind.LENGTH, above = "0 mm") double lug,
        @Note("Thickness of each outer cheek") @Measured(value = Kind.LENGTH, above = "0 mm") double cheek,
        @Note("Between the lug and each cheek") @Measured(value = Kind.LENGTH, preset = "0 mm", atLeast = "0 mm")
                double gap,
        @Note("Yield strength of the pin's steel") @Measured(value = Kind.PRESSURE, preset = "235 MPa", above = "0 Pa")
                double yield,
        @Note("How far a ball joint in the eye lets it lean to one side; left out: a plain eye")
                @Measured(value = Kind.ANGLE, above = "0 deg", atMost = "45 deg")
                @Nullable
                Double leans) {

    /** A pin through a plain eye. */
    public PinJoint(double diameter, Shear shear, double lug, double cheek, double gap, double yield) {
        this(diameter, shear, lug, cheek, gap, yield, null);
    }

    /** How many sections of the pin carry the load. */
    public enum Shear {
        SINGLE,
        DOUBLE
    }
}
