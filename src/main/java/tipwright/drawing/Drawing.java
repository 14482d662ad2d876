// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;

/**
 * A flat drawing.
 *
 * @param title in plain words
 * @param low lowest corner of the page, mm
 * @param high highest corner of the page, mm
 * @param marks drawn in this order
 */
public record Drawing(String title, Vec2 low, Vec2 high, List<Mark> marks) {
    /** Copies the list. */
    public Drawing {
        marks = List.copyOf(marks);
    }

    public double width() {
        return high.x() - low.x();
    }

    public double height() {
        return high.y() - low.y();
    }

    /** This drawing k times as large. */
    public Drawing times(double k) {
        List<Mark> all = marks.stream().map(m -> moved(m, Vec2.ZERO, k)).toList();
        return new Drawing(title, low.times(k), high.times(k), all);
    }

    private static Mark moved(Mark mark, Vec2 by, double k) {
        Pen old = mark.pen();
        Pen pen = new Pen(old.layer(), old.colour(), old.width() * k, old.dash() * k, old.fill());
        if (mark instanceof Mark.Path path) {
            return new Mark.Path(
                    path.points().stream().map(p -> p.times(k).plus(by)).toList(), path.closed(), pen);
        }
        if (mark instanceof Mark.Ring ring) {
            return new Mark.Ring(ring.centre().times(k).plus(by), ring.radius() * k, pen);
        }
        Mark.Label label = (Mark.Label) mark;
        return new Mark.Label(
                label.at().times(k).plus(by), label.height() * k, label.anchor(), label.turn(), label.text(), pen);
    }

    /** Collects marks. Mutable: owned by one caller. */
    public static final class Board {
        private final List<Mark> marks = new ArrayList<>();
        private @Nullable Pane page;

        /** A line from a to b. */
        public void line(Vec2 a, Vec2 b, Pen pen) {
            marks.add(new Mark.Path(List.of(a, b), false, pen));
        }

        /** A closed outline. */
        public void outline(List<Vec2> points, Pen pen) {
            marks.add(new Mark.Path(points, true, pen));
        }

        /** An open line. */
        public void path(List<Vec2> points, Pen pen) {
            marks.add(new Mark.Path(points, false, pen));
        }

        /** A rectangle by two corners. */
        public void box(Vec2 a, Vec2 b, Pen pen) {
            outline(List.of(a, new Vec2(b.x(), a.y()), b, new Vec2(a.x(), b.y())), pen);
        }

        /** A circle. */
        public void ring(Vec2 centre, double radius, Pen pen) {
            marks.add(new Mark.Ring(centre, radius, pen));
        }

        /** Text; anchor -1 starts, 0 is the middle, 1 ends at the place. */
        public void text(Vec2 at, double height, int anchor, String text, Pen pen) {
            marks.add(new Mark.Label(at, height, anchor, 0, text, pen));
        }

        /** Labels are to stay on a page from one corner to another, mm. */
        public void keepLabelsOn(Vec2 low, Vec2 high) {
            page = new Pane(low, high);
        }

        /** Text beside a point, where it covers the least of what is drawn so far. */
        public void label(Vec2 point, double height, String text, Pen pen) {
            ClearPlace clear = new ClearPlace(marks, height, text, page);
            Vec2 corner = clear.beside(point);
            Vec2 end = clear.leader(point, corner);
            if (!end.equals(point)) {
                line(point, end, Pen.line("leaders", 0x606060, 0.13));
            }
            marks.add(new Mark.Label(corner, height, -1, 0, text, pen));
        }

        /** A number in a ring beside a point, where it covers the least of what is drawn so far. */
        public void balloon(Vec2 point, double height, String number, Pen pen) {
            ClearPlace clear = new ClearPlace(marks, 1.7 * height, "00", page);
            Vec2 corner = clear.beside(point);
            Vec2 middle = corner.plus(new Vec2(0.9 * height, 0.85 * height));
            double radius = 0.85 * height;
            Vec2 way = middle.minus(point);
            if (way.norm() > radius) {
                line(point, middle.minus(way.unit().times(radius)), Pen.line("leaders", 0x606060, 0.13));
            }
            ring(middle, radius, pen.filled(0xffffff));
            marks.add(new Mark.Label(middle.minus(new Vec2(0, 0.36 * height)), height, 0, 0, number, pen));
        }

        /** Text turned by degrees against the clock. */
        public void text(Vec2 at, double height, int anchor, double turn, String text, Pen pen) {
            marks.add(new Mark.Label(at, height, anchor, turn, text, pen));
        }

        /** All marks of another drawing, moved. */
        public void add(Drawing other, Vec2 by) {
            other.marks().forEach(m -> marks.add(moved(m, by, 1)));
        }

        /** The drawing on a page from one corner to another, mm. */
        public Drawing on(String title, Vec2 low, Vec2 high) {
            return new Drawing(title, low, high, marks);
        }
    }
}
