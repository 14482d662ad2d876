// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import java.util.List;
import tipwright.design.key.Choice;
import tipwright.design.key.Counted;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.geometry.Head;
import tipwright.geometry.RevolvedTank;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * A cylinder with two heads.
 *
 * @param axis direction of the axis, any length; x, y and z may be written as words
 * @param diameter inside, m
 * @param length of the straight shell between the heads, m
 * @param heads one for both, or two with the -axis end first
 * @param crown radius of a torispherical head over the diameter
 * @param knuckle radius of a torispherical head over the diameter
 * @param centre middle of the straight shell, m, stowed
 */
@Choice("cylinder")
public record CylinderInterior(
        @Note("Direction of its axis: x, y, z or a list") @Measured(Kind.RATIO) Vec3 axis,
        @Note("Inside") @Measured(value = Kind.LENGTH, above = "0 mm") double diameter,
        @Note("Of the straight shell between the heads") @Measured(value = Kind.LENGTH, atLeast = "0 mm") double length,
        @Note("One for both ends, or two with the -axis end first") @Counted(atLeast = 1, atMost = 2) @Preset("flat")
                List<HeadShape> heads,
        @Note("Crown radius of a torispherical head over the diameter")
                @Measured(value = Kind.RATIO, preset = "100 %", above = "50 %", atMost = "300 %")
                double crown,
        @Note("Knuckle radius of a torispherical head over the diameter")
                @Measured(value = Kind.RATIO, preset = "6 %", atLeast = "1 %", atMost = "49 %")
                double knuckle,
        @Note("Middle of the straight shell, tank stowed") @Measured(Kind.LENGTH) Vec3 centre)
        implements Interior {

    /** The form of a head. */
    public enum HeadShape {
        FLAT,
        HEMISPHERICAL,
        SEMI_ELLIPSOIDAL,
        TORISPHERICAL
    }

    @Override
    public Solid solid() {
        return RevolvedTank.of(
                centre, axis.unit(), diameter, length, head(heads.get(0)), head(heads.get(heads.size() - 1)));
    }

    private Head head(HeadShape shape) {
        return switch (shape) {
            case FLAT -> Head.flat();
            case HEMISPHERICAL -> Head.hemispherical();
            case SEMI_ELLIPSOIDAL -> Head.semiEllipsoidal();
            case TORISPHERICAL -> new Head.Torispherical(crown, knuckle);
        };
    }
}
