// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.function.UnaryOperator;
import tipwright.geometry.Vec2;

/**
 * Draws drawings by Java's own drawing calls. What takes the calls (a picture of pixels, an SVG, a page of a PDF) is not its
 * business. Lengths are worked out here, so that nothing depends on how somebody else scales lines.
 */
final class Painter {
    /** Letters are measured as on paper, not to whole pixels. */
    private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);

    private static final float MITRE = 10;

    private final Graphics2D g;
    private final Font font;
    private final double scale;
    private final UnaryOperator<String> shown;
    private final double thinnest;

    /**
     * To draw with.
     *
     * @param scale units of the canvas for a millimetre
     * @param shown what a text becomes where the canvas cannot show all signs
     * @param thinnest least width of a line, in units of the canvas; 0: as given
     */
    Painter(Graphics2D g, double scale, UnaryOperator<String> shown, double thinnest) {
        this.g = g;
        this.scale = scale;
        this.shown = shown;
        this.thinnest = thinnest;
        font = Lettering.font();
    }

    /** Draws everything; the upper left corner of the page comes to lie in the canvas's origin. */
    void paint(Drawing drawing) {
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Mark.Label label) {
                text(label, place(drawing, label.at()));
            } else if (mark instanceof Mark.Ring ring) {
                double r = ring.radius() * scale;
                Vec2 c = place(drawing, ring.centre());
                shape(new Ellipse2D.Double(c.x() - r, c.y() - r, 2 * r, 2 * r), mark.pen());
            } else if (mark instanceof Mark.Path path) {
                List<Vec2> points =
                        path.points().stream().map(p -> place(drawing, p)).toList();
                shape(line(points, path.closed()), mark.pen());
            }
        }
    }

    private Vec2 place(Drawing drawing, Vec2 p) {
        return new Vec2((p.x() - drawing.low().x()) * scale, (drawing.high().y() - p.y()) * scale);
    }

    private static Shape line(List<Vec2> points, boolean closed) {
        if (points.size() == 2) {
            Vec2 a = points.get(0);
            Vec2 b = points.get(1);
            return new Line2D.Double(a.x(), a.y(), b.x(), b.y());
        }
        Path2D path = new Path2D.Double();
        for (Vec2 p : points) {
            if (path.getCurrentPoint() == null) {
                path.moveTo(p.x(), p.y());
            } else {
                path.lineTo(p.x(), p.y());
            }
        }
        if (closed && path.getCurrentPoint() != null) {
            path.closePath();
        }
        return path;
    }

    private void text(Mark.Label label, Vec2 at) {
        String text = shown.apply(Signs.plain(label.text()));
        if (text.isBlank()) {
            return;
        }
        Font sized = font.deriveFont((float) (label.height() * scale));
        double width = sized.getStringBounds(text, MEASURE).getWidth();
        double back = -width * (label.anchor() + 1) / 2;
        g.setFont(sized);
        g.setColor(new Color(label.pen().colour()));
        if (label.turn() == 0) {
            g.drawString(text, (float) (at.x() + back), (float) at.y());
            return;
        }
        AffineTransform before = g.getTransform();
        g.translate(at.x(), at.y());
        g.rotate(-Math.toRadians(label.turn()));
        g.drawString(text, (float) back, 0f);
        g.setTransform(before);
    }

    private void shape(Shape shape, Pen pen) {
        if (pen.fill() >= 0) {
            // Areas that touch would show a seam if their edges were smoothed.
            smooth(pen.colour() >= 0);
            g.setColor(new Color(pen.fill()));
            g.fill(shape);
            smooth(true);
        }
        if (pen.colour() >= 0) {
            g.setStroke(stroke((float) Math.max(thinnest, pen.width() * scale), (float) (pen.dash() * scale)));
            g.setColor(new Color(pen.colour()));
            g.draw(shape);
        }
    }

    private void smooth(boolean on) {
        if (thinnest > 0) {
            g.setRenderingHint(
                    RenderingHints.KEY_ANTIALIASING,
                    on ? RenderingHints.VALUE_ANTIALIAS_ON : RenderingHints.VALUE_ANTIALIAS_OFF);
        }
    }

    private static BasicStroke stroke(float width, float dash) {
        return dash > 0
                ? new BasicStroke(
                        width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, MITRE, new float[] {dash, dash}, 0f)
                : new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, MITRE);
    }
}
