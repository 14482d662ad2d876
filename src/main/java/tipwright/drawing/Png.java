// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import javax.imageio.ImageIO;
import tipwright.geometry.Vec2;

/** Writes drawings as PNG, without a screen. */
public final class Png {
    private Png() {}

    /**
     * Writes the picture.
     *
     * @param scale pixels a millimetre
     */
    public static void write(Drawing drawing, double scale, OutputStream out) throws IOException {
        int w = (int) Math.ceil(drawing.width() * scale);
        int h = (int) Math.ceil(drawing.height() * scale);
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, w, h);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        Font font = font();
        AffineTransform toPixels = new AffineTransform();
        toPixels.scale(scale, -scale);
        toPixels.translate(-drawing.low().x(), -drawing.high().y());
        for (Mark mark : drawing.marks()) {
            mark(g, mark, font, toPixels, scale);
        }
        g.dispose();
        out.write(bytes(image));
    }

    /** A picture as the bytes of a PNG file: the encoder never sees a disk that may be full. */
    public static byte[] bytes(BufferedImage image) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        if (!ImageIO.write(image, "png", out)) {
            throw new IOException("this Java has no encoder for PNG");
        }
        return out.toByteArray();
    }

    private static Font font() throws IOException {
        try (InputStream in = Lettering.open()) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (FontFormatException e) {
            throw new IOException(e);
        }
    }

    private static void mark(Graphics2D g, Mark mark, Font font, AffineTransform at, double scale) {
        if (mark instanceof Mark.Label label) {
            Font sized = font.deriveFont((float) (label.height() * scale));
            double width = sized.getStringBounds(label.text(), g.getFontRenderContext())
                    .getWidth();
            Vec2 p = label.at();
            AffineTransform old = g.getTransform();
            java.awt.geom.Point2D start = at.transform(new java.awt.geom.Point2D.Double(p.x(), p.y()), null);
            g.translate(start.getX(), start.getY());
            g.rotate(-Math.toRadians(label.turn()));
            g.setColor(new Color(mark.pen().colour()));
            g.setFont(sized);
            g.drawString(label.text(), (float) (-width * (label.anchor() + 1) / 2), 0f);
            g.setTransform(old);
            return;
        }
        Path2D shape = new Path2D.Double();
        if (mark instanceof Mark.Ring ring) {
            double r = ring.radius();
            shape.append(
                    new Ellipse2D.Double(ring.centre().x() - r, ring.centre().y() - r, 2 * r, 2 * r), false);
        } else if (mark instanceof Mark.Path path) {
            for (Vec2 p : path.points()) {
                if (shape.getCurrentPoint() == null) {
                    shape.moveTo(p.x(), p.y());
                } else {
                    shape.lineTo(p.x(), p.y());
                }
            }
            if (path.closed()) {
                shape.closePath();
            }
        }
        shape.transform(at);
        paint(g, shape, mark.pen(), scale);
    }

    private static void paint(Graphics2D g, Path2D shape, Pen pen, double scale) {
        if (pen.fill() >= 0) {
            g.setRenderingHint(
                    RenderingHints.KEY_ANTIALIASING,
                    pen.colour() < 0 ? RenderingHints.VALUE_ANTIALIAS_OFF : RenderingHints.VALUE_ANTIALIAS_ON);
            g.setColor(new Color(pen.fill()));
            g.fill(shape);
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        }
        if (pen.colour() >= 0) {
            float width = (float) Math.max(0.7, pen.width() * scale);
            float dash = (float) (pen.dash() * scale);
            g.setStroke(
                    dash > 0
                            ? new BasicStroke(
                                    width,
                                    BasicStroke.CAP_BUTT,
                                    BasicStroke.JOIN_ROUND,
                                    1f,
                                    new float[] {dash, dash},
                                    0f)
                            : new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.setColor(new Color(pen.colour()));
            g.draw(shape);
        }
    }
}
