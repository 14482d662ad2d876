// SPDX-License-Identifier: Apache-2.0
package tipwright.design.joint;

import tipwright.design.key.FromParts;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;

/**
 * One bearing where it sits.
 *
 * @param z m along the pivot axis
 * @param base side-view direction from the shaft to the housing's base, any length; down when left out
 * @param locating whether this one takes the load along the axis; the first bearing does when none is marked
 */
public record Support(
        @Note("Where it sits along the pivot") @Measured(Kind.LENGTH) double z,
        @Note("A name from the parts files, or its data in place") @FromParts("bearings") Bearing bearing,
        @Note("Side-view direction from the shaft to the housing's base") @Measured(Kind.RATIO) @Preset("[0, -1]")
                Vec2 base,
        @Note("yes: this one takes the load along the axis; left out: the first does") @Preset("false")
                boolean locating) {}
