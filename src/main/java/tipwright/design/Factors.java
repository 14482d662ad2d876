// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/** Safety factors; utilisation = demand / (capacity / factor). Source of the presets: common practice, no source. */
public record Factors(
        @Note("Static safety s0 wanted of a rolling bearing (ISO 76)")
                @Measured(value = Kind.RATIO, preset = "2.0", atLeast = "0.1")
                double bearingStatic,
        @Note("On a bearing housing's strength") @Measured(value = Kind.RATIO, preset = "2.0", atLeast = "0.1")
                double bearingHousing,
        @Note("On the actuator's rated push, pull and hold")
                @Measured(value = Kind.RATIO, preset = "1.0", atLeast = "0.1")
                double service,
        @Note("On the buckling load of rods and links") @Measured(value = Kind.RATIO, preset = "3.0", atLeast = "0.1")
                double buckling,
        @Note("On the yield of the actuator's pins") @Measured(value = Kind.RATIO, preset = "2.0", atLeast = "0.1")
                double pin,
        @Note("On the yield of the pivot shaft") @Measured(value = Kind.RATIO, preset = "2.0", atLeast = "0.1")
                double shaft,
        @Note("On the allowed pressure in a plain bush") @Measured(value = Kind.RATIO, preset = "1.5", atLeast = "0.1")
                double bush,
        @Note("On hinges and latches") @Measured(value = Kind.RATIO, preset = "2.0", atLeast = "0.1") double door,
        @Note("On the moment that keeps the machine from tipping over")
                @Measured(value = Kind.RATIO, preset = "1.5", atLeast = "0.1")
                double tipOver,
        @Note("On welds, beyond the factor in the allowed 0.30 of the electrode's strength")
                @Measured(value = Kind.RATIO, preset = "1.0", atLeast = "0.1")
                double weld,
        @Note("On the design strength of bolts") @Measured(value = Kind.RATIO, preset = "1.5", atLeast = "0.1")
                double bolt,
        @Note("On the yield of lugs, and of links in tension or bending")
                @Measured(value = Kind.RATIO, preset = "2.0", atLeast = "0.1")
                double lug,
        @Note("On the yield of the cross member") @Measured(value = Kind.RATIO, preset = "1.67", atLeast = "0.1")
                double crossMember,
        @Note("On the yield of the tank's wall, round or flat, and of a tube's face under a bracket")
                @Measured(value = Kind.RATIO, preset = "1.5", atLeast = "0.1")
                double wall,
        @Note("On the friction that keeps it from skidding")
                @Measured(value = Kind.RATIO, preset = "1.5", atLeast = "0.1")
                double skid,
        @Note("On what ties the tank down on the road") @Measured(value = Kind.RATIO, preset = "1.25", atLeast = "0.1")
                double road) {

    /** No factor on anything: what a part bears before it yields. */
    public static Factors none() {
        return new Factors(1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1);
    }
}
