// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;

/** Finds where beside a point a label covers the least of what is drawn already. */
final class ClearPlace {
    private static final double[] FAR = {1, 1.5, 2.2, 3, 4};
    private static final double GAP = 3.2;
    private static final int OVER_TEXT = 30;
    /** Width of a line that a letter is read over with ease, mm; one twice as wide counts twice. */
    private static final double THIN = 0.15;
    /** What it costs to leave the page. */
    private static final double OFF = 1e6;

    private final List<Mark> drawn;
    private final List<Pane> labels;
    private final @Nullable Pane page;
    private final double height;
    private final double wide;

    /**
     * For a label.
     *
     * @param page that it must not leave; null: none
     */
    ClearPlace(List<Mark> drawn, double height, String text, @Nullable Pane page) {
        this.drawn = drawn;
        this.page = page;
        this.height = height;
        TextWidth widths = new TextWidth();
        wide = widths.of(text, height);
        labels = drawn.stream()
                .filter(Mark.Label.class::isInstance)
                .map(m -> box((Mark.Label) m, widths))
                .toList();
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
                double cost = covered(corner) + 2 * (far - 1) + (fits(corner) ? 0 : OFF);
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

    private boolean fits(Vec2 corner) {
        return page == null || page.holds(new Pane(corner, corner.plus(new Vec2(wide, height))));
    }

    private double covered(Vec2 corner) {
        Pane box = new Pane(corner.minus(new Vec2(0.6, 0.8)), corner.plus(new Vec2(wide + 0.6, height + 0.4)));
        double sum = 0;
        for (Mark mark : drawn) {
            if (mark instanceof Mark.Path path) {
                List<Vec2> p = path.points();
                double weight = Math.max(1, path.pen().width() / THIN);
                for (int i = path.closed() ? 0 : 1; i < p.size(); i++) {
                    sum += weight * box.length(p.get((i + p.size() - 1) % p.size()), p.get(i));
                }
            } else if (mark instanceof Mark.Ring ring) {
                Vec2 r = new Vec2(ring.radius(), ring.radius());
                sum += box.overlap(Pane.of(ring.centre().minus(r), ring.centre().plus(r)));
            }
        }
        for (Pane label : labels) {
            sum += OVER_TEXT * box.overlap(label) / (height * height);
        }
        return sum;
    }

    /** What a label takes, also a turned one. */
    private static Pane box(Mark.Label label, TextWidth widths) {
        double w = widths.of(label.text(), label.height());
        double turn = Math.toRadians(label.turn());
        Vec2 along = new Vec2(Math.cos(turn), Math.sin(turn));
        Vec2 up = new Vec2(-along.y(), along.x()).times(label.height());
        Vec2 start = label.at().minus(along.times(w * (label.anchor() + 1) / 2));
        Vec2 end = start.plus(along.times(w));
        Pane a = Pane.of(start, end.plus(up));
        Pane b = Pane.of(end, start.plus(up));
        return new Pane(
                new Vec2(
                        Math.min(a.low().x(), b.low().x()),
                        Math.min(a.low().y(), b.low().y())),
                new Vec2(
                        Math.max(a.high().x(), b.high().x()),
                        Math.max(a.high().y(), b.high().y())));
    }
}
