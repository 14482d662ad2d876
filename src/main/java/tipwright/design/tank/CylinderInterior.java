// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.design.key.Counted;
import tipwright.design.key.ExactlyOne;
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
 * @param around circumference outside, m; null when the diameter is given
 * @param overHeads length over both heads, outside, m; null when the length is given
 * @param dishDepth depth of torispherical heads, m; null when the knuckle tells it
 */
@Choice("cylinder")
@ExactlyOne({"diameter", "around"})
@ExactlyOne({"length", "over-heads"})
public record CylinderInterior(
        @Note("Direction of its axis: x, y, z or a list") @Measured(Kind.RATIO) Vec3 axis,
        @Note("Inside; or give around") @Measured(value = Kind.LENGTH, above = "0 mm", given = true) double diameter,
        @Note("Of the straight shell between the heads; or give over-heads")
                @Measured(value = Kind.LENGTH, atLeast = "0 mm", given = true)
                double length,
        @Note("One for both ends, or two with the -axis end first") @Counted(atLeast = 1, atMost = 2) @Preset("flat")
                List<HeadShape> heads,
        @Note("Crown radius of a torispherical head over the diameter")
                @Measured(value = Kind.RATIO, preset = "100 %", above = "50 %", atMost = "300 %")
                double crown,
        @Note("Knuckle radius of a torispherical head over the diameter")
                @Measured(value = Kind.RATIO, preset = "6 %", atLeast = "1 %", atMost = "49 %")
                double knuckle,
        @Note("Middle of the straight shell, tank stowed") @Measured(Kind.LENGTH) Vec3 centre,
        @Note("Circumference of the shell by tape, outside") @Measured(value = Kind.LENGTH, above = "0 mm") @Nullable
                Double around,
        @Note("Length over both heads, outside") @Measured(value = Kind.LENGTH, above = "0 mm") @Nullable
                Double overHeads,
        @Note("Depth of a torispherical head, in place of its knuckle")
                @Measured(value = Kind.LENGTH, above = "0 mm")
                @Nullable
                Double dishDepth)
        implements Interior {
    /** An axis this near to an axis of the machine lies along it. */
    private static final double SQUARE = 1e-9;

    private static final double SMALLEST_KNUCKLE = 0.005;
    private static final double LARGEST_KNUCKLE = 0.495;

    /** With all sizes of the inside known. */
    public CylinderInterior(
            Vec3 axis,
            double diameter,
            double length,
            List<HeadShape> heads,
            double crown,
            double knuckle,
            Vec3 centre) {
        this(axis, diameter, length, heads, crown, knuckle, centre, null, null, null);
    }

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

    @Override
    public @Nullable Opening open(Tank.Open side) {
        Vec3 out = Opening.out(side);
        double along = axis.unit().dot(out);
        HeadShape head = heads.get(along > 0 ? heads.size() - 1 : 0);
        return Math.abs(along) > 1 - SQUARE && head == HeadShape.FLAT
                ? Opening.round(side, diameter, centre.plus(out.times(length / 2)))
                : null;
    }

    @Override
    public Interior withoutWall(Tank.Open side, double wall) {
        Vec3 out = Opening.out(side);
        return new CylinderInterior(
                axis, diameter, length + wall, heads, crown, knuckle, centre.plus(out.times(wall / 2)));
    }

    @Override
    public boolean needsWall() {
        return around != null || overHeads != null;
    }

    @Override
    public Interior inside(double wall, boolean outside) {
        double measured = around != null ? around / Math.PI : diameter;
        double bore = outside || around != null ? measured - 2 * wall : measured;
        double corner = dishDepth == null ? knuckle : knuckle(dishDepth - (outside ? wall : 0), bore);
        CylinderInterior shell = new CylinderInterior(axis, bore, length, heads, crown, corner, centre);
        if (overHeads == null && (!outside || heads.stream().anyMatch(h -> h != HeadShape.FLAT))) {
            return shell;
        }
        double depths = shell.headDepths();
        double all = overHeads == null ? length : overHeads;
        return new CylinderInterior(axis, bore, all - 2 * wall - depths, heads, crown, corner, centre);
    }

    /** Knuckle radius over the diameter with which a torispherical head is so deep; its limits where none is. */
    private double knuckle(double depth, double bore) {
        double low = SMALLEST_KNUCKLE;
        double high = LARGEST_KNUCKLE;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            if (new Head.Torispherical(crown, middle).depth(bore) < depth) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    /** Depth of both heads together, inside, m. */
    public double headDepths() {
        return head(heads.get(0)).depth(diameter)
                + head(heads.get(heads.size() - 1)).depth(diameter);
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
