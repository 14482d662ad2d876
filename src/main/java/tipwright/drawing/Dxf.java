// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import tipwright.geometry.Vec2;

/**
 * Writes drawings as DXF, release 12, in text: lines and texts by layer, one unit a millimetre. Fills are left out. Source: DXF
 * Reference, release 12 (from memory).
 */
public final class Dxf {
    private Dxf() {}

    /** The file's text, ASCII. */
    public static String of(Drawing drawing) {
        StringBuilder out = new StringBuilder(4096);
        pair(out, 999, "units: millimetres");
        section(out, "HEADER");
        pair(out, 9, "$ACADVER");
        pair(out, 1, "AC1009");
        corner(out, "$EXTMIN", drawing.low());
        corner(out, "$EXTMAX", drawing.high());
        pair(out, 0, "ENDSEC");
        tables(out, drawing);
        section(out, "ENTITIES");
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Mark.Label || mark.pen().colour() >= 0) {
                mark(out, mark);
            }
        }
        pair(out, 0, "ENDSEC");
        pair(out, 0, "EOF");
        return out.toString();
    }

    private static void tables(StringBuilder out, Drawing drawing) {
        Set<String> layers = new LinkedHashSet<>();
        layers.add("0");
        drawing.marks().forEach(m -> layers.add(layer(m)));
        section(out, "TABLES");
        pair(out, 0, "TABLE");
        pair(out, 2, "LTYPE");
        pair(out, 70, "2");
        lineType(out, "CONTINUOUS", "full", 0);
        lineType(out, "DASHED", "dashed", 4);
        pair(out, 0, "ENDTAB");
        pair(out, 0, "TABLE");
        pair(out, 2, "LAYER");
        pair(out, 70, Integer.toString(layers.size()));
        int colour = 7;
        for (String layer : layers) {
            pair(out, 0, "LAYER");
            pair(out, 2, layer);
            pair(out, 70, "0");
            pair(out, 62, Integer.toString(colour));
            pair(out, 6, "CONTINUOUS");
            colour = colour % 7 + 1;
        }
        pair(out, 0, "ENDTAB");
        pair(out, 0, "TABLE");
        pair(out, 2, "STYLE");
        pair(out, 70, "1");
        pair(out, 0, "STYLE");
        pair(out, 2, "STANDARD");
        pair(out, 70, "0");
        pair(out, 40, "0.0");
        pair(out, 41, "1.0");
        pair(out, 50, "0.0");
        pair(out, 71, "0");
        pair(out, 42, "3.5");
        pair(out, 3, "txt");
        pair(out, 4, "");
        pair(out, 0, "ENDTAB");
        pair(out, 0, "ENDSEC");
    }

    private static void lineType(StringBuilder out, String name, String words, double dash) {
        pair(out, 0, "LTYPE");
        pair(out, 2, name);
        pair(out, 70, "0");
        pair(out, 3, words);
        pair(out, 72, "65");
        pair(out, 73, dash > 0 ? "2" : "0");
        pair(out, 40, n(2 * dash));
        if (dash > 0) {
            pair(out, 49, n(dash));
            pair(out, 49, n(-dash));
        }
    }

    private static void mark(StringBuilder out, Mark mark) {
        if (mark instanceof Mark.Path path) {
            pair(out, 0, "POLYLINE");
            head(out, mark);
            pair(out, 66, "1");
            point(out, 10, Vec2.ZERO);
            pair(out, 70, path.closed() ? "1" : "0");
            for (Vec2 p : path.points()) {
                pair(out, 0, "VERTEX");
                pair(out, 8, layer(mark));
                point(out, 10, p);
            }
            pair(out, 0, "SEQEND");
            pair(out, 8, layer(mark));
        } else if (mark instanceof Mark.Ring ring) {
            pair(out, 0, "CIRCLE");
            head(out, mark);
            point(out, 10, ring.centre());
            pair(out, 40, n(ring.radius()));
        } else if (mark instanceof Mark.Label label) {
            pair(out, 0, "TEXT");
            head(out, mark);
            point(out, 10, label.at());
            pair(out, 40, n(label.height() * 0.7));
            pair(out, 1, ascii(label.text()));
            pair(out, 50, n(label.turn()));
            pair(out, 72, Integer.toString(label.anchor() + 1));
            point(out, 11, label.at());
        }
    }

    private static void head(StringBuilder out, Mark mark) {
        pair(out, 8, layer(mark));
        pair(out, 6, mark.pen().dash() > 0 ? "DASHED" : "CONTINUOUS");
    }

    private static String layer(Mark mark) {
        return mark.pen().layer().toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9_-]", "_");
    }

    private static String ascii(String text) {
        return text.replace("\u00b0", "%%d").replace("\u00b1", "%%p").replaceAll("[^\\x20-\\x7e]", "?");
    }

    private static void section(StringBuilder out, String name) {
        pair(out, 0, "SECTION");
        pair(out, 2, name);
    }

    private static void corner(StringBuilder out, String name, Vec2 p) {
        pair(out, 9, name);
        point(out, 10, p);
    }

    private static void point(StringBuilder out, int code, Vec2 p) {
        pair(out, code, n(p.x()));
        pair(out, code + 10, n(p.y()));
        pair(out, code + 20, "0.0");
    }

    private static void pair(StringBuilder out, int code, String value) {
        out.append(code).append('\n').append(value).append('\n');
    }

    private static String n(double value) {
        return Double.toString(Math.rint(value * 1e6) / 1e6);
    }
}
