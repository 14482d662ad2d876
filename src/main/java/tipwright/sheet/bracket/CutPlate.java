// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.bracket;

import java.util.List;
import tipwright.design.steel.Steel;
import tipwright.geometry.Extent;
import tipwright.geometry.Vec2;

/**
 * A flat plate as it is cut, in its own axes.
 *
 * @param outline corners, counter-clockwise, m; the first is not repeated
 * @param holes in it
 * @param thickness m; NaN where the design does not tell it
 */
public record CutPlate(List<Vec2> outline, List<PlateHole> holes, double thickness) {
    /** Copies the lists. */
    public CutPlate {
        outline = List.copyOf(outline);
        holes = List.copyOf(holes);
    }

    /**
     * A round hole.
     *
     * @param at middle, m
     * @param diameter m
     * @param pin whether a pin of the mechanism goes through it
     */
    public record PlateHole(Vec2 at, double diameter, boolean pin) {}

    /** A rectangle about its middle, m. */
    static List<Vec2> rectangle(double width, double height) {
        double w = width / 2;
        double h = height / 2;
        return List.of(new Vec2(-w, -h), new Vec2(w, -h), new Vec2(w, h), new Vec2(-w, h));
    }

    /** Lowest corner of the box around it, m. */
    public Vec2 low() {
        return Extent.of(outline).low();
    }

    /** Highest corner of the box around it, m. */
    public Vec2 high() {
        return Extent.of(outline).high();
    }

    /** The same lying on its side, turned to the left. */
    public CutPlate turned() {
        return new CutPlate(
                outline.stream().map(CutPlate::turned).toList(),
                holes.stream()
                        .map(h -> new PlateHole(turned(h.at()), h.diameter(), h.pin()))
                        .toList(),
                thickness);
    }

    private static Vec2 turned(Vec2 p) {
        return new Vec2(-p.y(), p.x());
    }

    /** Of one side, holes taken off, m2. */
    public double area() {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            twice += outline.get(i).cross(outline.get((i + 1) % outline.size()));
        }
        double all = Math.abs(twice) / 2;
        for (PlateHole hole : holes) {
            all -= Math.PI * hole.diameter() * hole.diameter() / 4;
        }
        return all;
    }

    /** Of steel, kg; NaN where its thickness is not known. */
    public double mass() {
        return area() * thickness * Steel.DENSITY;
    }
}
