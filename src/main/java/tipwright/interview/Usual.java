// SPDX-License-Identifier: Apache-2.0
package tipwright.interview;

import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;
import tipwright.quantity.Marks;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;
import tipwright.quantity.UnitSystem;

/**
 * Usual answers that follow from those before: each shape has a machine that works, and its places and sizes are moved and stretched to
 * the tank that was measured. Lengths are on a mark of the tape.
 */
final class Usual {
    /** What an actuator keeps to spare before it is closed and before it is fully out, m; an actuator told anew keeps more. */
    private static final double SPARE = 0.006;

    private static final double MORE = 0.012;
    private static final double DEGREE = Math.toRadians(1);

    private final Answers a;
    private final Sample sample;
    private final UnitSystem units;

    Usual(Answers a) {
        this.a = a;
        this.units = a.unit().equals("in") ? UnitSystem.US : UnitSystem.METRIC;
        boolean us = units == UnitSystem.US;
        this.sample = a.is("shape", "tub")
                ? us ? Sample.TUB_US : Sample.TUB
                : a.is("shape", "drum") ? us ? Sample.DRUM_US : Sample.DRUM : us ? Sample.ROUND_US : Sample.ROUND;
    }

    /**
     * A machine that works.
     *
     * @param around its shell; a tub has none
     * @param dish how deep its front head is; only a round tank has one
     * @param door across the opening, and the door's weight; likewise
     * @param low corner of its tank at the front and the bottom, from the mark
     * @param high the opposite one
     * @param bottom how long a tub is at the bottom; a shell needs none
     * @param width of a tub; a shell needs none
     * @param volume of slurry
     * @param tilt how far it tips, deg
     */
    private record Sample(
            String around,
            String dish,
            String door,
            String low,
            String high,
            String bottom,
            String width,
            String pivot,
            String framePin,
            String tankPin,
            String lengths,
            String bearings,
            String volume,
            int tilt) {
        static final Sample ROUND_US = new Sample(
                "89 1/8 in",
                "4 7/8 in",
                "27 in, about 38 lb",
                "5 in, 11 3/8 in",
                "55 in, 39 3/4 in",
                "",
                "",
                "54 in, 10 in",
                "36 1/4 in, -12 5/8 in",
                "30 in, 9 3/8 in",
                "22 1/2 in, 18 in",
                "34 in",
                "100 gal",
                45);
        static final Sample ROUND = new Sample(
                "2264 mm",
                "124 mm",
                "686 mm, about 17 kg",
                "127 mm, 289 mm",
                "1397 mm, 1010 mm",
                "",
                "",
                "1372 mm, 254 mm",
                "921 mm, -320 mm",
                "762 mm, 238 mm",
                "570 mm, 460 mm",
                "860 mm",
                "380 L",
                45);
        static final Sample TUB_US = new Sample(
                "",
                "",
                "",
                "0 in, 12 in",
                "60 in, 36 in",
                "36 in",
                "40 in",
                "46 in, 17 in",
                "38 in, -15 in",
                "30 in, 10 in",
                "26 in, 20 1/4 in",
                "34 in",
                "130 gal",
                75);
        static final Sample TUB = new Sample(
                "",
                "",
                "",
                "0 mm, 300 mm",
                "1500 mm, 900 mm",
                "900 mm",
                "1000 mm",
                "1150 mm, 430 mm",
                "950 mm, -370 mm",
                "750 mm, 260 mm",
                "650 mm, 505 mm",
                "860 mm",
                "450 L",
                75);
        static final Sample DRUM_US = new Sample(
                "71 in",
                "",
                "",
                "0 in, 12 in",
                "22 5/8 in, 46 5/8 in",
                "",
                "",
                "25 1/4 in, 41 3/4 in",
                "13 1/2 in, 89 in",
                "0 in, 12 1/2 in",
                "8 in, 74 in",
                "30 in",
                "40 gal",
                120);
        static final Sample DRUM = new Sample(
                "1800 mm",
                "",
                "",
                "0 mm, 300 mm",
                "573 mm, 1180 mm",
                "",
                "",
                "640 mm, 1060 mm",
                "340 mm, 2260 mm",
                "0 mm, 320 mm",
                "200 mm, 1850 mm",
                "760 mm",
                "150 L",
                120);
    }

    String around() {
        return sample.around;
    }

    String dish() {
        return Marks.show(metres(sample.dish) * thicker(), units);
    }

    /** Its plate weighs as its area does. */
    String door() {
        String[] parts = sample.door.split("[, ]+");
        double across = metres(parts[0] + " " + parts[1]) * thicker();
        long weight = Math.max(1, Math.round(Double.parseDouble(parts[3]) * Math.pow(thicker(), 2)));
        return Marks.show(across, units) + ", about " + weight + " " + parts[4] + ", above";
    }

    /** The corner that is asked for first. */
    String low() {
        return sample.low;
    }

    /** Opposite the lowest line, as far as the tape said. */
    String tankHigh() {
        boolean drum = a.is("shape", "drum");
        String along = a.text(drum ? "height" : "length");
        if (!a.has("around") || along.isEmpty()) {
            return sample.high;
        }
        double across = a.metres(a.text("around")) / Math.PI;
        double length = a.metres(along);
        return shown(corner().plus(drum ? new Vec2(across, length) : new Vec2(length, across)));
    }

    String bottomDump() {
        Vec2 front = known("bottom-front", sample.low);
        return shown(front.plus(new Vec2(metres(sample.bottom), 0)));
    }

    String topDump() {
        Vec2 front = known("bottom-front", sample.low);
        Vec2 dump = known("bottom-dump", bottomDump());
        double scale = positive((dump.x() - front.x()) / metres(sample.bottom));
        Vec2 whole = place(sample.high).minus(place(sample.low));
        return shown(front.plus(whole.times(scale)));
    }

    String topFront() {
        double x = known("bottom-front", sample.low).x();
        return shown(new Vec2(x, known("top-dump", topDump()).y()));
    }

    String pivot() {
        return moved(sample.pivot);
    }

    String framePin() {
        return aboutPivot(sample.framePin);
    }

    String tankPin() {
        return aboutPivot(sample.tankPin);
    }

    String bearings() {
        return Marks.show(metres(sample.bearings) * wider(), units);
    }

    /** As large a share of the tank as in the sample, in two figures. */
    String volume() {
        Vec2 stretch = stretch();
        double share = stretch.x() * stretch.y() * wider();
        String[] parts = sample.volume.split(" ");
        double number = Double.parseDouble(parts[0]) * share;
        double step = Math.pow(10, Math.floor(Math.log10(number)) - 1);
        return share == 1 ? sample.volume : Quantities.number(Math.rint(number / step) * step) + " " + parts[1];
    }

    /** Those of the sample where they reach; else an actuator that does, with the pins where they are. */
    String lengths() {
        Vec2 pivot = known("pivot", pivot());
        Vec2 frame = known("frame-pin", framePin());
        Vec2 tank = known("tank-pin", tankPin()).minus(pivot);
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int i = 0; i <= sample.tilt; i++) {
            double length = pivot.plus(tank.tilted(i * DEGREE)).minus(frame).norm();
            least = Math.min(least, length);
            most = Math.max(most, length);
        }
        String[] parts = sample.lengths.split(", ");
        double closed = metres(parts[0]);
        if (closed <= least - SPARE && closed + metres(parts[1]) >= most + SPARE) {
            return sample.lengths;
        }
        double told = Math.max(MORE, least - MORE);
        return Marks.show(told, units) + ", " + Marks.show(most + MORE - told, units);
    }

    String tilt() {
        return sample.tilt + " deg";
    }

    /** A place of the sample, moved and stretched as the tank is. */
    private String moved(String place) {
        Vec2 from = place(sample.low);
        Vec2 stretch = stretch();
        Vec2 off = place(place).minus(from);
        return shown(corner().plus(new Vec2(off.x() * stretch.x(), off.y() * stretch.y())));
    }

    /** A pin of the sample, as it lies about the pivot; stretched alike both ways, so that the actuator turns the tank as far. */
    private String aboutPivot(String pin) {
        Vec2 stretch = stretch();
        Vec2 off = place(pin).minus(place(sample.pivot)).times(Math.sqrt(stretch.x() * stretch.y()));
        return shown(known("pivot", pivot()).plus(off));
    }

    /** How many times as thick the shell is. */
    private double thicker() {
        return a.has("around") ? a.metres(a.text("around")) / metres(sample.around) : 1;
    }

    private Vec2 corner() {
        return known(a.is("shape", "tub") ? "bottom-front" : "tank-low", sample.low);
    }

    /** How many times as long and as high the tank is. */
    private Vec2 stretch() {
        Vec2 own = known(a.is("shape", "tub") ? "top-dump" : "tank-high", sample.high)
                .minus(corner());
        Vec2 size = place(sample.high).minus(place(sample.low));
        return new Vec2(positive(own.x() / size.x()), positive(own.y() / size.y()));
    }

    /** How many times as wide it is. */
    private double wider() {
        if (a.is("shape", "tub")) {
            return a.has("width") ? a.metres(a.text("width")) / metres(sample.width) : 1;
        }
        return a.is("shape", "drum") ? stretch().x() : stretch().y();
    }

    /** A scale as far as it is one: that a tank was drawn the wrong way round is told elsewhere. */
    private static double positive(double share) {
        return share > 0 ? share : 1;
    }

    private Vec2 known(String id, String otherwise) {
        @Nullable Vec2 at = a.at(id);
        return at == null ? place(otherwise) : at;
    }

    private Vec2 place(String text) {
        String[] parts = text.split(", ");
        return new Vec2(metres(parts[0]), metres(parts[1]));
    }

    private double metres(String text) {
        try {
            return Quantities.parse(text, Kind.LENGTH);
        } catch (QuantityException e) {
            throw new IllegalStateException("no length: " + text, e);
        }
    }

    private String shown(Vec2 at) {
        return Marks.show(at.x(), units) + ", " + Marks.show(at.y(), units);
    }
}
