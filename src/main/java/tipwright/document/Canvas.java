// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A canvas for Java's drawing calls that becomes an SVG element; text stays text. */
final class Canvas {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final int DECIMALS = 3;

    private final int width;
    private final int height;
    private final SVGGraphics2D pen;

    /**
     * An empty canvas.
     *
     * @param prefix of the names inside it, so that several elements may stand in one page
     */
    Canvas(int width, int height, String prefix) {
        this.width = width;
        this.height = height;
        Document document = GenericDOMImplementation.getDOMImplementation().createDocument(SVG, "svg", null);
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(null);
        context.setPrecision(DECIMALS);
        context.setIDGenerator(new SVGIDGenerator() {
            @Override
            public String generateID(String kind) {
                return prefix + super.generateID(kind);
            }
        });
        pen = new SVGGraphics2D(context, false);
    }

    /** To draw with. */
    SVGGraphics2D pen() {
        return pen;
    }

    /** The element, without width and height. */
    String element() {
        Element root = pen.getRoot();
        root.setAttributeNS(null, "viewBox", "0 0 " + width + " " + height);
        StringWriter out = new StringWriter();
        try {
            pen.stream(root, out, false, false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String text = out.toString();
        // The document's type and its header belong to a file, not to an element in a page.
        return text.substring(text.indexOf("<svg "));
    }
}
