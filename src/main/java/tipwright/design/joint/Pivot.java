// SPDX-License-Identifier: Apache-2.0
package tipwright.design.joint;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;

/**
 * The pivot.
 *
 * @param at the axis in the side view, m
 * @param bearings exactly two, at different z
 */
public record Pivot(
        @Note("The axis that the tank turns on, in the side view") @Measured(Kind.LENGTH) Vec2 at,
        @Note("The two bearings") @Counted(atLeast = 2, atMost = 2) List<Support> bearings,
        @Note("The shaft or stubs in the bearings") @Nullable Shaft shaft) {

    /** The same bearings with the axis elsewhere. */
    public Pivot movedTo(Vec2 where) {
        return new Pivot(where, bearings, shaft);
    }

    /** Half way between the two bearings along z, m. */
    public double middle() {
        return (bearings.get(0).z() + bearings.get(1).z()) / 2;
    }

    /** On which side a bearing is as seen from the dump end, towards which x runs: 'left' is the one further along z. */
    public String side(int bearing) {
        return bearings.get(bearing).z() > bearings.get(1 - bearing).z() ? "left" : "right";
    }

    /** A bearing so that one can point at it: 'bearing 2 (left)'. */
    public String name(int bearing) {
        return "bearing " + (bearing + 1) + " (" + side(bearing) + ")";
    }
}
