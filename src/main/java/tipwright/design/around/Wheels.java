// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import java.util.List;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;

/**
 * Two wheels on one axle, one at each side.
 *
 * @param axle middle of the axle in the side view, m
 * @param diameter of a wheel over its tyre, m
 * @param width of a tyre, m
 * @param track between the middles of the two tyres, m
 */
public record Wheels(
        @Note("Middle of the axle in the side view") @Measured(Kind.LENGTH) Vec2 axle,
        @Note("Over the tyre") @Measured(value = Kind.LENGTH, above = "0 mm") double diameter,
        @Note("Of one tyre") @Measured(value = Kind.LENGTH, above = "0 mm") double width,
        @Note("From the middle of one tyre to the middle of the other") @Measured(value = Kind.LENGTH, above = "0 mm")
                double track) {
    /** Middle of each tyre along the pivot, m. */
    public List<Double> sides() {
        return List.of(-track / 2, track / 2);
    }
}
