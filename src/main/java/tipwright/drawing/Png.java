// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import javax.imageio.ImageIO;

/** Writes drawings as PNG, without a screen. */
public final class Png {
    /** Least width of a line, pixels. */
    private static final double THINNEST = 0.7;

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
        Font font = Lettering.font();
        new Painter(g, scale, text -> Signs.shown(text, font::canDisplay), THINNEST).paint(drawing);
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
}
