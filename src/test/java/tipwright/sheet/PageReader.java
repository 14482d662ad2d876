// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet;

import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.jspecify.annotations.Nullable;

/** Reads the lines of a PDF's page back, in mm from its lower left corner. */
final class PageReader extends PDFGraphicsStreamEngine {
    private static final double MM = 25.4 / 72;

    private final List<Shape> shapes = new ArrayList<>();
    private GeneralPath path = new GeneralPath();

    private PageReader(PDPage page) {
        super(page);
    }

    /**
     * A line of the page.
     *
     * @param box around it, mm
     * @param curved whether it has curves, as a circle has
     */
    record Shape(Rectangle2D box, boolean curved) {}

    static List<Shape> shapes(PDPage page) throws IOException {
        PageReader reader = new PageReader(page);
        reader.processPage(page);
        return reader.shapes;
    }

    private void taken() {
        if (path.getCurrentPoint() != null) {
            boolean curved = false;
            double[] at = new double[6];
            for (PathIterator i = path.getPathIterator(null); !i.isDone(); i.next()) {
                curved |= i.currentSegment(at) == PathIterator.SEG_CUBICTO;
            }
            Rectangle2D b = path.getBounds2D();
            shapes.add(new Shape(
                    new Rectangle2D.Double(b.getX() * MM, b.getY() * MM, b.getWidth() * MM, b.getHeight() * MM),
                    curved));
        }
        path = new GeneralPath();
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        path.append(new Path2D.Double(new Rectangle2D.Double(p0.getX(), p0.getY(), 0, 0)), false);
    }

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void clip(int rule) {
        path = new GeneralPath();
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public @Nullable Point2D getCurrentPoint() {
        return path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        if (path.getCurrentPoint() != null) {
            path.closePath();
        }
    }

    @Override
    public void endPath() {
        path = new GeneralPath();
    }

    @Override
    public void strokePath() {
        taken();
    }

    @Override
    public void fillPath(int rule) {
        path = new GeneralPath();
    }

    @Override
    public void fillAndStrokePath(int rule) {
        taken();
    }

    @Override
    public void shadingFill(COSName name) {}
}
