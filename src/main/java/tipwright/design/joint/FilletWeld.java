// SPDX-License-Identifier: Apache-2.0
package tipwright.design.joint;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.ExactlyOne;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.design.key.Sold;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * A group of fillet welds in one plane. In the plane u runs along the side view, v along z; when the plane is the side view
 * itself, u is x and v is y.
 *
 * @param at point that u and v are measured from; middle of a ready form, m, stowed
 * @param normal of the plane, any length
 * @param leg m
 * @param electrode strength of the weld metal, Pa
 */
@ExactlyOne({"rectangle", "lines", "round", "segments"})
public record FilletWeld(
        @Note("Middle of the weld group, tank stowed") @Measured(Kind.LENGTH) Vec3 at,
        @Note("Direction square to the plate that it is welded to") @Measured(Kind.RATIO) @Preset("[0, 1, 0]")
                Vec3 normal,
        @Note("Leg of the fillet") @Measured(value = Kind.LENGTH, above = "0 mm") @Sold(value = "leg", usual = "6 mm")
                double leg,
        @Note("Tensile strength of the weld metal; 70 ksi is E70")
                @Measured(value = Kind.PRESSURE, preset = "70 ksi", above = "0 Pa")
                double electrode,
        @Note("Welded all round a rectangle") @Nullable Rectangle rectangle,
        @Note("Two equal seams") @Nullable Lines lines,
        @Note("Welded all round a pipe") @Nullable Round round,
        @Note("Straight seams one by one") @Preset List<Seam> segments) {

    private static final int ROUND_PARTS = 120;

    /** The plane counts as edge-on in the side view when its square lies this near to it. */
    private static final double EDGE_ON = 0.5;

    /**
     * All round a rectangle.
     *
     * @param u m
     * @param v m
     */
    public record Rectangle(
            @Note("Size along the side view") @Measured(value = Kind.LENGTH, above = "0 mm") double u,
            @Note("Size along the pivot") @Measured(value = Kind.LENGTH, above = "0 mm") double v) {}

    /**
     * Two seams along u or v.
     *
     * @param length of each, m
     * @param apart between them, m
     */
    public record Lines(
            @Note("Length of each") @Measured(value = Kind.LENGTH, above = "0 mm") double length,
            @Note("Between them") @Measured(value = Kind.LENGTH, above = "0 mm") double apart,
            @Note("Way that they run: u along the side view, v along the pivot") @Preset("u") Way along) {}

    /** Direction in the plane. */
    public enum Way {
        U,
        V
    }

    /**
     * Round a pipe.
     *
     * @param diameter m
     */
    public record Round(@Note("Of the bar") @Measured(value = Kind.LENGTH, above = "0 mm") double diameter) {}

    /**
     * A straight seam.
     *
     * @param from [u, v], m
     * @param to [u, v], m
     */
    public record Seam(
            @Note("One end: [u, v]") @Measured(value = Kind.LENGTH, within = true) Vec2 from,
            @Note("Other end: [u, v]") @Measured(value = Kind.LENGTH, within = true) Vec2 to) {}

    /** The same elsewhere, moved by so much, m. */
    public FilletWeld movedBy(Vec3 by) {
        return new FilletWeld(at.plus(by), normal, leg, electrode, rectangle, lines, round, segments);
    }

    /** How far a pin stands off the plane of the weld in the side view, m; NaN where that plane is the side view. */
    public double off(Vec2 pin) {
        Vec2 square = square(normal);
        return square.norm() > 0 ? Math.abs(pin.minus(at.xy()).dot(square)) : Double.NaN;
    }

    /** The direction square to a plane in the side view, of length 1; zero where the plane is the side view, or nearly. */
    static Vec2 square(Vec3 normal) {
        Vec2 flat = normal.unit().xy();
        return flat.norm() < EDGE_ON ? Vec2.ZERO : flat.unit();
    }

    /** Every seam; a round one as a polygon of many. */
    public List<Seam> seams() {
        if (rectangle != null) {
            double a = rectangle.u() / 2;
            double b = rectangle.v() / 2;
            return closed(List.of(new Vec2(-a, -b), new Vec2(a, -b), new Vec2(a, b), new Vec2(-a, b)));
        }
        if (lines != null) {
            Vec2 half = lines.along() == Way.U ? new Vec2(lines.length() / 2, 0) : new Vec2(0, lines.length() / 2);
            Vec2 off = lines.along() == Way.U ? new Vec2(0, lines.apart() / 2) : new Vec2(lines.apart() / 2, 0);
            return List.of(
                    new Seam(off.minus(half), off.plus(half)),
                    new Seam(off.times(-1).minus(half), half.minus(off)));
        }
        if (round != null) {
            double r = round.diameter() / 2;
            return closed(IntStream.range(0, ROUND_PARTS)
                    .mapToObj(i -> new Vec2(0, r).tilted(2 * Math.PI * i / ROUND_PARTS))
                    .toList());
        }
        return segments;
    }

    private static List<Seam> closed(List<Vec2> corners) {
        return IntStream.range(0, corners.size())
                .mapToObj(i -> new Seam(corners.get(i), corners.get((i + 1) % corners.size())))
                .toList();
    }
}
