// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jfree.chart.plot.XYPlot;

/** Names of lines beside a plot, in the order in which the lines end, each with a sample of its line and a thin line to its end. */
final class PlotNames {
    private static final double STEP = 17;
    private static final double SAMPLE = 36;
    private static final double LEADER = 16;
    private static final double GAP = 5;
    private static final double MOST = 250;
    private static final String CUT = "...";

    private final List<PlotCurve> curves;
    private final Font font;
    private final FontRenderContext measure = new FontRenderContext(null, true, true);

    PlotNames(List<PlotCurve> curves, Font font) {
        this.curves = curves;
        this.font = font;
    }

    /** Room that they take beside the plot. */
    double width() {
        return LEADER
                + SAMPLE
                + 2 * GAP
                + curves.stream().mapToDouble(c -> wide(name(c))).max().orElse(0);
    }

    /** Least height that has room for all of them. */
    double height() {
        return (curves.size() + 1) * STEP;
    }

    private double wide(String text) {
        return font.getStringBounds(text, measure).getWidth();
    }

    private String name(PlotCurve curve) {
        String name = curve.name();
        int end = name.length();
        while (end > 1 && wide(name.substring(0, end) + (end < name.length() ? CUT : "")) > MOST) {
            end--;
        }
        return end < name.length() ? name.substring(0, end) + CUT : name;
    }

    /** Where a line ends in the picture, and which line it is. */
    private record End(int curve, double x, double y) {}

    /**
     * Draws them.
     *
     * @param area of the plot inside its axes
     * @param left where the room for the names begins
     */
    void draw(Graphics2D pen, XYPlot plot, Rectangle2D area, double left) {
        List<End> ends = ends(plot, area);
        double[] at = apart(ends.stream().mapToDouble(End::y).toArray(), STEP / 2, area.getMaxY());
        pen.setFont(font);
        for (int i = 0; i < ends.size(); i++) {
            End end = ends.get(i);
            PlotCurve curve = curves.get(end.curve());
            double x = left + LEADER;
            pen.setPaint(Color.GRAY);
            pen.setStroke(new BasicStroke(0.6f));
            pen.draw(new Line2D.Double(end.x() + 1, end.y(), x - 1, at[i]));
            pen.setPaint(Color.BLACK);
            pen.setStroke(Plot.stroke(curve, end.curve()));
            pen.draw(new Line2D.Double(x, at[i], x + SAMPLE, at[i]));
            if (!curve.limit()) {
                Shape mark = AffineTransform.getTranslateInstance(x + SAMPLE / 2, at[i])
                        .createTransformedShape(Plot.mark(end.curve()));
                pen.fill(mark);
            }
            pen.drawString(name(curve), (float) (x + SAMPLE + GAP), (float) (at[i] + 4.5));
        }
    }

    private List<End> ends(XYPlot plot, Rectangle2D area) {
        List<End> ends = new ArrayList<>();
        for (int i = 0; i < curves.size(); i++) {
            PlotCurve c = curves.get(i);
            int last = c.x().length - 1;
            while (last >= 0 && !Double.isFinite(c.y()[last])) {
                last--;
            }
            if (last >= 0) {
                ends.add(new End(
                        i,
                        plot.getDomainAxis().valueToJava2D(c.x()[last], area, plot.getDomainAxisEdge()),
                        plot.getRangeAxis().valueToJava2D(c.y()[last], area, plot.getRangeAxisEdge())));
            }
        }
        ends.sort(Comparator.comparingDouble(End::y));
        return ends;
    }

    /**
     * Places in the same order, as near as may be to where they are wanted, none nearer than a step to the next.
     *
     * @param wanted ascending
     * @return at least {@code low}, and at most {@code high} where there is room
     */
    static double[] apart(double[] wanted, double low, double high) {
        double[] at = wanted.clone();
        for (int i = at.length - 1; i >= 0; i--) {
            double most = i == at.length - 1 ? high : at[i + 1] - STEP;
            at[i] = Math.min(at[i], most);
        }
        for (int i = 0; i < at.length; i++) {
            double least = i == 0 ? low : at[i - 1] + STEP;
            at[i] = Math.max(at[i], least);
        }
        return at;
    }
}
