// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

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
        @Measured(Kind.LENGTH) double z,
        @FromParts("bearings") Bearing bearing,
        @Measured(Kind.RATIO) @Preset("[0, -1]") Vec2 base,
        @Preset("false") boolean locating) {}
