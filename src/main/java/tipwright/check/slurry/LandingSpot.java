// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import org.jspecify.annotations.Nullable;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.design.Design;
import tipwright.design.around.Receiver;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Gravity;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** The landing place nearest to an edge of the receiver's mouth, or farthest beyond it. Belongs to one search. */
final class LandingSpot {
    private final Receiver receiver;
    private final double width;
    private final double wanted;
    private final Stream.Fall fall;
    private final Extreme.Search inside = Extreme.Search.smallest();
    private double at;
    private double speed;

    LandingSpot(Design design, Receiver receiver) {
        this.receiver = receiver;
        width = receiver.far().minus(receiver.near()).norm();
        wanted = design.limits().landing();
        fall = new Stream.Fall(receiver, design.site().up().xy().times(-Gravity.G));
    }

    /** Where something comes down: 0 at the near edge, 1 at the far one; NaN: it never does. */
    double lands(Vec2 from, Vec2 velocity) {
        return fall.lands(from, velocity);
    }

    /** The same of coordinates, m and m/s. */
    double lands(double x, double y, double alongX, double alongY) {
        return fall.lands(x, y, alongX, alongY);
    }

    /** The part of a direction that leads from the near edge to the far one. */
    double along(Vec2 direction) {
        return direction.dot(receiver.far().minus(receiver.near()));
    }

    /**
     * What leaves a point.
     *
     * @param from m
     * @param velocity m/s in the side view
     * @param leaving its whole speed, m/s
     * @param loadCase null: whatever the load is
     */
    void offer(
            double tilt,
            Vec3 from,
            Vec2 velocity,
            double leaving,
            @Nullable String loadCase,
            @Nullable MotionDirection direction) {
        offer(tilt, lands(from.xy(), velocity), leaving, loadCase, direction);
    }

    /** The same of what is known to come down somewhere, as {@link #lands} tells. */
    void offer(
            double tilt, double lands, double leaving, @Nullable String loadCase, @Nullable MotionDirection direction) {
        double here = Double.isNaN(lands) ? Double.NEGATIVE_INFINITY : width * Math.min(lands, 1 - lands);
        if (inside.offer(here, tilt, loadCase, direction)) {
            at = lands * width;
            speed = leaving;
        }
    }

    /** Whether anything was offered. */
    boolean any() {
        return !Double.isNaN(inside.found().tilt());
    }

    /** Slower than this, m/s, it just falls. */
    private static final double SLOW = 0.05;

    /** 'the jet lands 110 mm inside the edge, 100 mm wanted'. */
    static Text says(String what, Finding f) {
        return !Double.isFinite(f.has())
                ? Text.words(what + " does not come down in the pit or bin")
                : f.has() < 0
                        ? Text.of(
                                what + " lands {} outside the pit or bin; it has to land {} inside",
                                Text.amount(-f.has(), Kind.LENGTH),
                                f.needed())
                        : Text.of(
                                what + " lands {} inside the edge of the pit or bin, {} wanted", f.there(), f.needed());
    }

    Finding finding(Findings make, String part, String before) {
        Extreme worst = inside.found();
        if (!any()) {
            return make.cannot(part, "the opening is not open within the tilt range");
        }
        Text where = Double.isNaN(at)
                ? Text.words("it does not come down on the " + receiver.name())
                : Text.of("{} past the near edge of the ", Text.amount(at, Kind.LENGTH, "mm", 0))
                        .plus(receiver.name())
                        .plus(Text.of(", which is {} wide", Text.amount(width, Kind.LENGTH, "mm", 0)));
        Text note = Text.words(before).plus(where);
        if (speed >= SLOW) {
            note = note.plus(Text.of(", at {}", Text.amount(speed, Kind.SPEED, "m/s", 1)));
        }
        return make.compare(part, wanted, worst.value(), 1, Kind.LENGTH, worst, note);
    }
}
