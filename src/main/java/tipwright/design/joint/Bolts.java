// SPDX-License-Identifier: Apache-2.0
package tipwright.design.joint;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * Bolts of one kind in one plane; u and v as in a {@link FilletWeld}.
 *
 * @param at point that the positions are measured from, m, stowed
 * @param normal of the plane, out of the part that holds the bolts, any length
 * @param positions [u, v], m
 * @param diameter of the thread, m
 * @param stressArea of the thread, m2; null: from the diameter as a coarse thread, metric or inch
 * @param ultimate tensile strength, Pa
 */
public record Bolts(
        @Note("Middle of the bolts, tank stowed") @Measured(Kind.LENGTH) Vec3 at,
        @Note("Direction out of the part that they are screwed to") @Measured(Kind.RATIO) @Preset("[0, 1, 0]")
                Vec3 normal,
        @Note("Each bolt: [u along the side view, v along the pivot]")
                @Counted(atLeast = 1, atMost = 40)
                @Measured(value = Kind.LENGTH, within = true)
                List<Vec2> positions,
        @Note("Of the thread") @Measured(value = Kind.LENGTH, above = "0 mm", atMost = "100 mm") double diameter,
        @Note("Stress area of the thread; left out: coarse thread, metric or inch")
                @Measured(value = Kind.AREA, above = "0 mm2")
                @Nullable
                Double stressArea,
        @Note("Tensile strength; class 8.8: 800 MPa")
                @Measured(value = Kind.PRESSURE, preset = "800 MPa", above = "0 Pa")
                double ultimate) {
    /** The same elsewhere, moved by so much, m. */
    public Bolts movedBy(Vec3 by) {
        return new Bolts(at.plus(by), normal, positions, diameter, stressArea, ultimate);
    }
}
