// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;
import tipwright.placement.PlacementMap;
import tipwright.sheet.MapShades;

/**
 * A placement map as pixels of the picture.
 *
 * @param x of the left edge in the picture
 * @param y of the upper edge in the picture
 * @param step side of one of its pixels in pixels of the picture
 * @param width its pixels across
 * @param height its pixels down
 * @param argb colours multiplied by their opacity [row down by row]
 */
@SuppressWarnings("ArrayRecordComponent")
record MapRaster(int x, int y, int step, int width, int height, int[] argb) {
    private static final int MANY = 160_000;

    /** Paints; null when nothing of it is in the picture. */
    static @Nullable MapRaster of(PlacementMap map, PlaneView view, MapInk ink) {
        double w = Double.POSITIVE_INFINITY;
        double n = w;
        double e = -w;
        double s = -w;
        for (Vec2 corner : map.zone()) {
            Vec2 p = view.of(corner);
            if (Double.isNaN(p.x())) {
                return null;
            }
            w = Math.min(w, p.x());
            e = Math.max(e, p.x());
            n = Math.min(n, p.y());
            s = Math.max(s, p.y());
        }
        int x = (int) Math.max(0, Math.floor(w));
        int y = (int) Math.max(0, Math.floor(n));
        int across = (int) Math.min(view.width(), Math.ceil(e)) - x;
        int down = (int) Math.min(view.height(), Math.ceil(s)) - y;
        if (across < 1 || down < 1) {
            return null;
        }
        int step = across * down > MANY ? 2 : 1;
        int width = (across + step - 1) / step;
        int height = (down + step - 1) / step;
        return new MapRaster(x, y, step, width, height, paint(map, view.lookup(), ink, x, y, step, width, height));
    }

    private static int[] paint(
            PlacementMap map, PlaneView.Lookup lookup, MapInk ink, int x, int y, int step, int width, int height) {
        int[] pixels = new int[width * height];
        int[] above = new int[width];
        for (int j = 0; j < height; j++) {
            int left = -1;
            for (int i = 0; i < width; i++) {
                Vec2 p = lookup.stowed(x + (i + 0.5) * step, y + (j + 0.5) * step);
                int row = cell(p.y() - map.low().y(), map.cell());
                int column = cell(p.x() - map.low().x(), map.cell());
                int kind = MapShades.kind(map, row, column);
                boolean border = (i > 0 && left != kind) || (j > 0 && above[i] != kind);
                if (border) {
                    pixels[j * width + i] = ink.line();
                } else if (kind == 0) {
                    pixels[j * width + i] = ink.band(MapShades.band(map.utilisation()[row][column]));
                } else if (kind > 0) {
                    pixels[j * width + i] = ink.hatched(kind - 1, x + i, y + j);
                }
                left = kind;
                above[i] = kind;
            }
        }
        return pixels;
    }

    private static int cell(double from, double cell) {
        return Double.isFinite(from) ? (int) Math.floor(from / cell) : -1;
    }
}
