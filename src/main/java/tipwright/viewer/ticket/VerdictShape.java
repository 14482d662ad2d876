// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.ticket;

import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.StrokeLineCap;
import tipwright.check.rule.Verdict;
import tipwright.viewer.scene.Theme;

/** The shapes of the verdicts, so that nobody has to go by colour: a ticked disc, a triangle, a crossed square, a hollow ring. */
public final class VerdictShape {
    private VerdictShape() {}

    /** A mark of a size, pixels. */
    public static Node of(Verdict verdict, Theme theme, double size) {
        Color colour = theme.verdict(verdict);
        double r = size / 2;
        Rectangle room = new Rectangle(size, size, Color.TRANSPARENT);
        Group mark =
                switch (verdict) {
                    case PASS -> new Group(
                            room, new Circle(r, r, r, colour), line(theme, size, 0.27, 0.53, 0.43, 0.69, 0.74, 0.33));
                    case CLOSE -> {
                        Polygon triangle = new Polygon(r, 0, size, 0.92 * size, 0, 0.92 * size);
                        triangle.setFill(colour);
                        yield new Group(
                                room,
                                triangle,
                                line(theme, size, 0.5, 0.35, 0.5, 0.60),
                                line(theme, size, 0.5, 0.765, 0.5, 0.77));
                    }
                    case FAIL -> {
                        Rectangle square = new Rectangle(0.04 * size, 0.04 * size, 0.92 * size, 0.92 * size);
                        square.setFill(colour);
                        yield new Group(
                                room,
                                square,
                                line(theme, size, 0.29, 0.29, 0.71, 0.71),
                                line(theme, size, 0.29, 0.71, 0.71, 0.29));
                    }
                    case NOT_CHECKED -> {
                        Circle ring = new Circle(r, r, 0.84 * r, Color.TRANSPARENT);
                        ring.setStroke(colour);
                        ring.setStrokeWidth(0.11 * size);
                        ring.getStrokeDashArray().setAll(0.2 * size, 0.16 * size);
                        yield new Group(room, ring);
                    }
                };
        mark.setAccessibleText(verdict.word());
        return mark;
    }

    private static Polyline line(Theme theme, double size, double... points) {
        Polyline line = new Polyline();
        for (double p : points) {
            line.getPoints().add(p * size);
        }
        line.setStroke(theme.panel());
        line.setStrokeWidth(0.12 * size);
        line.setStrokeLineCap(StrokeLineCap.ROUND);
        line.setFill(null);
        return line;
    }
}
