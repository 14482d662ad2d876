// SPDX-License-Identifier: Apache-2.0
package tipwright.design.joint;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * How one joint is held to its body.
 *
 * @param joint frame-pin, tank-pin, bearing-1, bearing-2, or a pin of the mechanism by its name
 * @param on the body that it is held to: frame, tank or a link; null: the body that it belongs to
 * @param seat where it sits on a round tank; null: not on its wall, or not known
 * @param flange that the bolts hold; null when not known
 * @param height from the pin to the plate behind it, m; null when not known
 */
public record Fastening(
        @Note("frame-pin, tank-pin, bearing-1, bearing-2, or a pin of the mechanism by its name") String joint,
        @Note("frame, tank or a link; left out: the body that the joint belongs to") @Nullable String on,
        @Note("Fillet welds that hold it") @Nullable FilletWeld weld,
        @Note("Bolts that hold it") @Nullable Bolts bolts,
        @Note("The lug with the hole for the pin") @Nullable Lug lug,
        @Note("Where it sits on the wall of a round tank") @Nullable Seat seat,
        @Note("The plate that the bolts hold") @Nullable Flange flange,
        @Note("From the pin's middle square to the plate behind it, that the actuator swings over")
                @Measured(value = Kind.LENGTH, above = "0 mm")
                @Nullable
                Double height) {
    /** The joints that are no pins of the mechanism: the two bearings of the pivot. */
    public static final List<String> BEARINGS = List.of("bearing-1", "bearing-2");

    /** On a sloping plate no mark of the tape is met; places there are told as finely as this, m. */
    private static final double FINE = 1e-4;

    /** A pin stands at least so far off the plate behind it, m. */
    private static final double NEAREST = 1e-3;

    /** Where what holds the joint is, m, stowed: weld, bolts and seat, as they are called in the file; those that are given. */
    public Map<String, Vec3> places() {
        Map<String, Vec3> places = new LinkedHashMap<>();
        if (weld != null) {
            places.put("weld", weld.at());
        }
        if (bolts != null) {
            places.put("bolts", bolts.at());
        }
        if (seat != null) {
            places.put("seat", seat.at());
        }
        return places;
    }

    /**
     * The same for a pin that is moved in the side view: what holds it slides along the plate that it is welded or screwed to, and the
     * pin comes nearer to that plate or goes farther from it.
     *
     * @param from where the pin was, m
     * @param by m
     * @param whole whether the plate goes along, so that nothing changes but the place
     * @param axis of a round tank, of length 1, along which its seat slides; zero where the tank is not round
     */
    public Fastening following(Vec2 from, Vec2 by, boolean whole, Vec3 axis) {
        Vec3 normal = weld != null ? weld.normal() : bolts != null ? bolts.normal() : new Vec3(0, 0, 1);
        Vec3 at = weld != null ? weld.at() : bolts != null ? bolts.at() : Vec3.ZERO;
        Vec2 square = whole ? Vec2.ZERO : FilletWeld.square(normal);
        double off = by.dot(square);
        Vec2 slides = by.minus(square.times(off));
        if (square.x() != 0 && square.y() != 0) {
            slides = new Vec2(Math.rint(slides.x() / FINE) * FINE, Math.rint(slides.y() / FINE) * FINE);
        }
        Vec3 way = new Vec3(slides.x(), slides.y(), 0);
        double side = Math.signum(from.minus(at.xy()).dot(square));
        return new Fastening(
                joint,
                on,
                weld == null ? null : weld.movedBy(way),
                bolts == null ? null : bolts.movedBy(way),
                lug,
                seat == null ? null : seat.movedBy(axis.times(way.dot(axis))),
                flange,
                height == null ? null : Double.valueOf(Math.max(NEAREST, height + side * off)));
    }
}
