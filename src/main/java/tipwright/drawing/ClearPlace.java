// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import java.util.List;
import tipwright.geometry.Vec2;

/** Finds where beside a point a label covers the least of what is drawn already. */
final class ClearPlace {
    /** Width of a letter to its height, on the average; common practice, no source. */
    private static final double LETTER = 0.52;

    private static final double[] FAR = {1, 1.5, 2.2, 3, 4};
    private static final double GAP = 3.2;
    private static final int OVER_TEXT = 30;

    private final List<Mark> drawn;
    private final double height;
    private final double wide;

    ClearPlace(List<Mark> drawn, double height, String text) {
        this.drawn = drawn;
        this.height = height;
        wide = LETTER * height * text.length();
    }

    /** A rectangle that stands upright. */
    private record Box(Vec2 low, Vec2 high) {
        static Box of(Vec2 a, Vec2 b) {
            return new Box(
                    new Vec2(Math.min(a.x(), b.x()), Math.min(a.y(), b.y())),
                    new Vec2(Math.max(a.x(), b.x()), Math.max(a.y(), b.y())));
        }

        double overlap(Box o) {
            double x = Math.min(high.x(), o.high.x()) - Math.max(low.x(), o.low.x());
            double y = Math.min(high.y(), o.high.y()) - Math.max(low.y(), o.low.y());
            return x > 0 && y > 0 ? x * y : 0;
        }

        /** Length of a stretch inside. Source: Liang and Barsky 1984, clipping by parameters. */
        double inside(Vec2 a, Vec2 b) {
            Vec2 d = b.minus(a);
            double from = 0;
            double to = 1;
            double[][] sides = {
                {-d.x(), a.x() - low.x()},
                {d.x(), high.x() - a.x()},
                {-d.y(), a.y() - low.y()},
                {d.y(), high.y() - a.y()}
            };
            for (double[] side : sides) {
                if (side[0] == 0 && side[1] < 0) {
                    return 0;
                }
                if (side[0] < 0) {
                    from = Math.max(from, side[1] / side[0]);
                } else if (side[0] > 0) {
                    to = Math.min(to, side[1] / side[0]);
                }
            }
            return to > from ? (to - from) * d.norm() : 0;
        }
    }

    /** Lower left corner of the label: near the point, and as clear as can be. */
    Vec2 beside(Vec2 point) {
        Vec2 best = point;
        double least = Double.POSITIVE_INFINITY;
        for (double far : FAR) {
            double r = GAP * far;
            double middle = -height / 2;
            Vec2[] tries = {
                new Vec2(r, -r - height / 3),
                new Vec2(r, r - height / 2),
                new Vec2(-r - wide, r - height / 2),
                new Vec2(-r - wide, -r - height / 3),
                new Vec2(1.2 * r, middle),
                new Vec2(-1.2 * r - wide, middle),
                new Vec2(-wide / 2, -1.2 * r - height),
                new Vec2(-wide / 2, 1.2 * r)
            };
            for (Vec2 t : tries) {
                Vec2 corner = point.plus(t);
                double cost = covered(corner) + 2 * (far - 1);
                if (cost < least - 1e-9) {
                    least = cost;
                    best = corner;
                }
            }
        }
        return best;
    }

    /** Where a leader from the point meets the label at this corner; the point itself when none is needed. */
    Vec2 leader(Vec2 point, Vec2 corner) {
        double x = Math.max(corner.x(), Math.min(point.x(), corner.x() + wide));
        double y = Math.max(corner.y() - 0.4, Math.min(point.y(), corner.y() + height + 0.2));
        Vec2 end = new Vec2(x, y);
        return end.minus(point).norm() > 1.6 * GAP ? end : point;
    }

    private double covered(Vec2 corner) {
        Box box = new Box(corner.minus(new Vec2(0.6, 0.8)), corner.plus(new Vec2(wide + 0.6, height + 0.4)));
        double sum = 0;
        for (Mark mark : drawn) {
            if (mark instanceof Mark.Path path) {
                List<Vec2> p = path.points();
                for (int i = path.closed() ? 0 : 1; i < p.size(); i++) {
                    sum += box.inside(p.get((i + p.size() - 1) % p.size()), p.get(i));
                }
            } else if (mark instanceof Mark.Ring ring) {
                Vec2 r = new Vec2(ring.radius(), ring.radius());
                sum += box.overlap(Box.of(ring.centre().minus(r), ring.centre().plus(r)));
            } else if (mark instanceof Mark.Label label) {
                sum += OVER_TEXT * box.overlap(box(label)) / (height * height);
            }
        }
        return sum;
    }

    /** What a label takes, also a turned one. */
    private static Box box(Mark.Label label) {
        double w = LETTER * label.height() * label.text().length();
        double turn = Math.toRadians(label.turn());
        Vec2 along = new Vec2(Math.cos(turn), Math.sin(turn));
        Vec2 up = new Vec2(-along.y(), along.x()).times(label.height());
        Vec2 start = label.at().minus(along.times(w * (label.anchor() + 1) / 2));
        Vec2 end = start.plus(along.times(w));
        Box a = Box.of(start, end.plus(up));
        Box b = Box.of(end, start.plus(up));
        return new Box(
                new Vec2(
                        Math.min(a.low().x(), b.low().x()),
                        Math.min(a.low().y(), b.low().y())),
                new Vec2(
                        Math.max(a.high().x(), b.high().x()),
                        Math.max(a.high().y(), b.high().y())));
    }
}
