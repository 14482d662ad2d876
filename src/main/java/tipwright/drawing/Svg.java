// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import java.util.Locale;
import tipwright.geometry.Vec2;

/** Writes drawings as SVG, one unit a millimetre. */
public final class Svg {
    private Svg() {}

    /**
     * The file's text.
     *
     * @param sized whether width and height in mm are given; not for a figure inside a page
     */
    public static String of(Drawing drawing, boolean sized) {
        StringBuilder out = new StringBuilder(4096);
        String w = n(drawing.width());
        String h = n(drawing.height());
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ")
                .append(w)
                .append(' ')
                .append(h)
                .append('"');
        if (sized) {
            out.append(" width=\"").append(w).append("mm\" height=\"").append(h).append("mm\"");
        }
        out.append(" font-family=\"Liberation Sans, Arial, sans-serif\">\n<title>")
                .append(escaped(drawing.title()))
                .append("</title>\n");
        for (Mark mark : drawing.marks()) {
            mark(drawing, mark, out);
        }
        return out.append("</svg>\n").toString();
    }

    private static void mark(Drawing d, Mark mark, StringBuilder out) {
        if (mark instanceof Mark.Path path) {
            out.append("<path d=\"");
            char step = 'M';
            for (Vec2 p : path.points()) {
                out.append(step).append(x(d, p)).append(' ').append(y(d, p));
                step = 'L';
            }
            out.append(path.closed() ? "Z\"" : "\"");
            pen(mark.pen(), out);
        } else if (mark instanceof Mark.Ring ring) {
            out.append("<circle cx=\"")
                    .append(x(d, ring.centre()))
                    .append("\" cy=\"")
                    .append(y(d, ring.centre()))
                    .append("\" r=\"")
                    .append(n(ring.radius()))
                    .append('"');
            pen(mark.pen(), out);
        } else if (mark instanceof Mark.Label label) {
            out.append("<text x=\"")
                    .append(x(d, label.at()))
                    .append("\" y=\"")
                    .append(y(d, label.at()))
                    .append("\" font-size=\"")
                    .append(n(label.height()))
                    .append('"');
            if (label.anchor() >= 0) {
                out.append(" text-anchor=\"")
                        .append(label.anchor() == 0 ? "middle" : "end")
                        .append('"');
            }
            if (label.turn() != 0) {
                out.append(" transform=\"rotate(")
                        .append(n(-label.turn()))
                        .append(' ')
                        .append(x(d, label.at()))
                        .append(' ')
                        .append(y(d, label.at()))
                        .append(")\"");
            }
            out.append(" fill=\"")
                    .append(colour(mark.pen().colour()))
                    .append("\">")
                    .append(escaped(label.text()))
                    .append("</text>\n");
        }
    }

    private static void pen(Pen pen, StringBuilder out) {
        out.append(" fill=\"").append(colour(pen.fill())).append('"');
        if (pen.colour() >= 0) {
            out.append(" stroke=\"")
                    .append(colour(pen.colour()))
                    .append("\" stroke-width=\"")
                    .append(n(pen.width()))
                    .append('"');
            if (pen.dash() > 0) {
                out.append(" stroke-dasharray=\"").append(n(pen.dash())).append('"');
            }
        }
        out.append("/>\n");
    }

    private static String x(Drawing d, Vec2 p) {
        return n(p.x() - d.low().x());
    }

    private static String y(Drawing d, Vec2 p) {
        return n(d.high().y() - p.y());
    }

    private static String colour(int rgb) {
        return rgb < 0 ? "none" : String.format(Locale.ROOT, "#%06x", rgb);
    }

    private static String n(double value) {
        double rounded = Math.rint(value * 1000) / 1000;
        long whole = Math.round(rounded);
        return rounded == whole ? Long.toString(whole) : Double.toString(rounded);
    }

    static String escaped(String text) {
        return Signs.plain(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
