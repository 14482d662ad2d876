// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.List;
import tipwright.geometry.Vec2;

/** Where the words of the metre bar stand in a picture: beside the bar, off the legend and inside the picture. */
final class BarName {
    /** The bar is looked at in so many places. */
    private static final int LOOKS = 40;

    /** Of the gap, level with the start of the bar. */
    private static final double NEAR = 0.6;

    private BarName() {}

    /**
     * A box in a picture, pixels, y down.
     *
     * @param x of its left side
     * @param y of its top
     */
    record Box(double x, double y, double width, double height) {
        private boolean holds(Vec2 p, double room) {
            return p.x() > x - room && p.x() < x + width + room && p.y() > y - room && p.y() < y + height + room;
        }

        private boolean meets(Box other) {
            return x < other.x + other.width
                    && other.x < x + width
                    && y < other.y + other.height
                    && other.y < y + height;
        }

        private boolean inside(double right, double foot) {
            return x >= 0 && y >= 0 && x + width <= right && y + height <= foot;
        }
    }

    /**
     * The upper left corner of the words, pixels.
     *
     * @param from start of the bar
     * @param to its end
     * @param words their width and height
     * @param legend what they may not lie on either
     * @param gap between them and the bar
     * @param picture width and height
     */
    static Vec2 place(Vec2 from, Vec2 to, Vec2 words, Box legend, double gap, Vec2 picture) {
        Vec2 left = from.x() <= to.x() ? from : to;
        Vec2 right = from.x() <= to.x() ? to : from;
        Vec2 middle = from.plus(to).times(0.5);
        double above = Math.min(from.y(), to.y()) - gap - words.y();
        double below = Math.max(from.y(), to.y()) + gap;
        List<Vec2> places = List.of(
                new Vec2(left.x() - words.x(), left.y() + gap),
                new Vec2(left.x() - words.x() - NEAR * gap, left.y() - words.y() / 2),
                new Vec2(middle.x() - words.x() / 2, below),
                new Vec2(right.x() + gap, right.y() - words.y() / 2),
                new Vec2(right.x() - words.x(), below),
                new Vec2(middle.x() - words.x() / 2, above),
                new Vec2(right.x() - words.x(), above));
        for (Vec2 at : places) {
            Box box = new Box(at.x(), at.y(), words.x(), words.y());
            if (box.inside(picture.x(), picture.y()) && !box.meets(legend) && !on(box, from, to, gap / 2)) {
                return at;
            }
        }
        return places.get(0);
    }

    /** The top of other words that stand at a place: above the bar where they would lie on it, pixels. */
    static double off(Vec2 at, Vec2 words, Vec2 from, Vec2 to, double gap) {
        boolean on = on(new Box(at.x(), at.y(), words.x(), words.y()), from, to, gap / 2);
        return on ? Math.min(from.y(), to.y()) - gap - words.y() : at.y();
    }

    private static boolean on(Box box, Vec2 from, Vec2 to, double room) {
        for (int i = 0; i <= LOOKS; i++) {
            if (box.holds(from.plus(to.minus(from).times((double) i / LOOKS)), room)) {
                return true;
            }
        }
        return false;
    }
}
