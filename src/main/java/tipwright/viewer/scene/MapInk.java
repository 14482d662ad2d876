// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import tipwright.placement.Limit;
import tipwright.sheet.MapShades;

/** The colours of a placement map on the screen: a ramp where it fits, a hatch for each limit that stands against it. */
public final class MapInk {
    private static final double SOLID = 0.92;
    private static final int EVERY = 7;

    private final int line;
    private final int paper;
    private final int stroke;
    private final int[] bands = new int[MapShades.WORDS.size()];

    /** For a theme. */
    public MapInk(Theme theme) {
        line = argb(theme.ink(), 1);
        paper = argb(theme.panel(), 0.72);
        for (int band = 0; band < bands.length; band++) {
            int rgb = MapShades.colour(band);
            bands[band] = argb(Color.rgb(rgb >> 16, (rgb >> 8) & 0xff, rgb & 0xff), SOLID);
        }
        stroke = argb(theme.ink().interpolate(theme.panel(), 0.3), 0.9);
    }

    /** Between regions. */
    int line() {
        return line;
    }

    /** Of a band of utilisation, 0xaarrggbb. */
    int band(int band) {
        return bands[band];
    }

    /** Of a pixel in the hatch of a limit, 0xaarrggbb. */
    int hatched(int hatch, int x, int y) {
        return drawn(hatch, x, y) ? stroke : paper;
    }

    private static boolean drawn(int hatch, int x, int y) {
        if (hatch == MapShades.hatchBarred()) {
            return Math.floorMod(x / 3 + y / 3, 2) == 0;
        }
        return switch (hatch % 7) {
            case 0 -> x % EVERY < 2 && y % EVERY < 2;
            case 1 -> (x + y) % EVERY == 0;
            case 2 -> Math.floorMod(x - y, EVERY) == 0;
            case 3 -> y % EVERY == 0;
            case 4 -> x % EVERY == 0;
            case 5 -> (x + y) % (2 * EVERY) == 0 || Math.floorMod(x - y, 2 * EVERY) == 0;
            default -> x % (EVERY + 2) == 0 || y % (EVERY + 2) == 0;
        };
    }

    /** An opaque colour with an opacity, multiplied by it as the graphics library wants it. */
    private static int argb(Color c, double opacity) {
        int a = (int) Math.round(255 * opacity);
        return a << 24
                | (int) Math.round(a * c.getRed()) << 16
                | (int) Math.round(a * c.getGreen()) << 8
                | (int) Math.round(a * c.getBlue());
    }

    /** An image of pixels from these colours [row down by row]. */
    static WritableImage image(int[] pixels, int width, int height) {
        WritableImage image = new WritableImage(width, height);
        image.getPixelWriter().setPixels(0, 0, width, height, PixelFormat.getIntArgbPreInstance(), pixels, 0, width);
        return image;
    }

    /** A piece of a band for the legend, pixels. */
    public WritableImage swatch(int band, int width, int height) {
        int[] pixels = new int[width * height];
        java.util.Arrays.fill(pixels, band(band));
        return image(pixels, width, height);
    }

    /** A piece of a limit's hatch for the legend, pixels. */
    public WritableImage swatch(Limit limit, int width, int height) {
        return hatch(MapShades.hatch(limit), width, height);
    }

    /** A piece of the hatch of what fails another check, for the legend, pixels. */
    public WritableImage swatchBarred(int width, int height) {
        return hatch(MapShades.hatchBarred(), width, height);
    }

    private WritableImage hatch(int hatch, int width, int height) {
        int[] pixels = new int[width * height];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = hatched(hatch, i % width + 1, i / width + 1);
        }
        return image(pixels, width, height);
    }
}
