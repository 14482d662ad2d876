// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.around.Receiver;
import tipwright.geometry.Vec2;
import tipwright.outline.MachinePart.Basis;

/** The two edges of the receiver's mouth, down to the ground where they stand above it. */
public final class ReceiverEdges {
    /** Thickness of an edge, on the far side of it, m. */
    private static final double THIN = 1e-3;

    private ReceiverEdges() {}

    /** None without a receiver. */
    public static List<MachinePart> of(Design design) {
        Receiver receiver = design.receiver();
        if (receiver == null) {
            return List.of();
        }
        Vec2 along = receiver.far().minus(receiver.near()).unit();
        return List.of(
                edge(design, receiver.name() + " near edge", receiver.near(), along.times(-THIN)),
                edge(design, receiver.name() + " far edge", receiver.far(), along.times(THIN)));
    }

    private static MachinePart edge(Design design, String name, Vec2 at, Vec2 away) {
        @Nullable
        Double ground = design.ground() == null ? null : design.ground().y();
        double foot = Math.min(at.y() - THIN, ground == null ? at.y() - THIN : ground);
        Vec2 down = new Vec2(0, foot - at.y());
        List<Vec2> outline = List.of(at, at.plus(down), at.plus(down).plus(away), at.plus(away));
        return new MachinePart(PartKind.RECEIVER, name, 0, Basis.GIVEN, Form.Drawn.of(outline, ZRange.ALL));
    }
}
