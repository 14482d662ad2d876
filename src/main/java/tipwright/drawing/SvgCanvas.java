// SPDX-License-Identifier: Apache-2.0
package tipwright.drawing;

import java.awt.Graphics2D;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A canvas for Java's drawing calls that becomes an SVG element; text stays text. */
public final class SvgCanvas {
    private static final String SPACE = "http://www.w3.org/2000/svg";
    /** Of a drawing to be measured. */
    static final int FINE = 3;

    /** The library breaks its lines inside of tags. */
    private static final Pattern BREAK = Pattern.compile("\\n *(/?>)");

    /** Hints that the library writes and that are nobody's wish. */
    private static final List<String> HINTS =
            List.of("color-interpolation", "color-rendering", "image-rendering", "shape-rendering", "text-rendering");

    private static final String FAMILY = "font-family=\"'" + Lettering.FAMILY + "'\"";
    /** What stands in where a reader lacks the font; its letters are as wide. */
    private static final String FAMILIES = "font-family=\"'" + Lettering.FAMILY + "', Arial, sans-serif\"";

    private final double width;
    private final double height;
    private final Document document;
    private final SVGGraphics2D pen;

    /**
     * An empty canvas.
     *
     * @param prefix of the names inside it, so that several elements may stand in one page
     * @param decimals of every place
     */
    public SvgCanvas(double width, double height, String prefix, int decimals) {
        this.width = width;
        this.height = height;
        document = GenericDOMImplementation.getDOMImplementation().createDocument(SPACE, "svg", null);
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(null);
        context.setPrecision(decimals);
        context.setIDGenerator(new SVGIDGenerator() {
            @Override
            public String generateID(String kind) {
                return prefix + super.generateID(kind);
            }
        });
        pen = new SVGGraphics2D(context, false);
    }

    /** To draw with. */
    public Graphics2D pen() {
        return pen;
    }

    /** The element, without width and height. */
    public String element() {
        return element("", false);
    }

    /**
     * The element.
     *
     * @param title empty: none
     * @param sized whether its units are millimetres
     */
    String element(String title, boolean sized) {
        Element root = pen.getRoot();
        root.setAttributeNS(null, "viewBox", "0 0 " + number(width) + " " + number(height));
        if (sized) {
            root.setAttributeNS(null, "width", number(width) + "mm");
            root.setAttributeNS(null, "height", number(height) + "mm");
        }
        HINTS.forEach(hint -> root.removeAttributeNS(null, hint));
        if (!title.isEmpty()) {
            Element named = document.createElementNS(SPACE, "title");
            named.setTextContent(title);
            root.insertBefore(named, root.getFirstChild());
        }
        StringWriter out = new StringWriter();
        try {
            pen.stream(root, out, false, false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String text = out.toString();
        // The document's type and its header belong to a file, not to an element in a page.
        String element = BREAK.matcher(text.substring(text.indexOf("<svg "))).replaceAll("$1");
        return element.replace(" text-rendering=\"optimizeLegibility\"", "").replace(FAMILY, FAMILIES);
    }

    private static String number(double value) {
        double rounded = Math.rint(value * 1000) / 1000;
        long whole = Math.round(rounded);
        return rounded == whole ? Long.toString(whole) : Double.toString(rounded);
    }
}
