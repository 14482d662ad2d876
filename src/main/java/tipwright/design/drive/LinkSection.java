// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import org.jspecify.annotations.Nullable;
import tipwright.design.joint.Lug;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.quantity.Kind;

/**
 * What a link between two pins is made of.
 *
 * @param body the link's name in the mechanism
 * @param section of each of its bars
 * @param bars side by side, bearing alike; of a link on both sides of the machine, on each side
 * @param hole for the pin, through the bar along the pivot axis, m; 0: none
 * @param eye at its ends, around the pin; null: not known
 * @param yield Pa
 * @param modulus Young's modulus, Pa
 */
public record LinkSection(
        @Note("The link's name") String body,
        @Note("Cross-section of each of its bars") Section section,
        @Note("How many bars bear together; of links on both sides, on each side")
                @Preset("1")
                @Counted(atLeast = 1, atMost = 8)
                int bars,
        @Note("Hole for the pin through the bar; left out: none")
                @Measured(value = Kind.LENGTH, preset = "0 mm", atLeast = "0 mm")
                double hole,
        @Note("The eye at each end: the plate around the pin, all that share the load of one link") @Nullable Lug eye,
        @Note("Yield strength of its steel") @Measured(value = Kind.PRESSURE, preset = "235 MPa", above = "0 Pa")
                double yield,
        @Note("Young's modulus; 205 GPa for steel") @Measured(value = Kind.PRESSURE, preset = "205 GPa", above = "0 Pa")
                double modulus) {

    /** Second moment of one bar about its weaker axis, m4. */
    public double weakInertia() {
        return Math.min(section.inertia(), section.inertiaAcross());
    }

    /** What is left of one bar beside the hole, m2. */
    public double netArea() {
        return section.area() - section.drilled(hole);
    }
}
