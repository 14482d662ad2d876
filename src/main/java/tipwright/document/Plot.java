// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.text.NumberFormat;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.text.TextUtils;
import org.jfree.data.xy.DefaultXYDataset;
import tipwright.drawing.SvgCanvas;

/** Lines over a common axis; told apart by dashes, marks and a name beside the end of each, never by colour. */
final class Plot {
    private static final int WIDTH = 760;
    private static final int HEIGHT = 300;
    private static final float TEXT = 13;
    private static final int MARKS = 7;
    private static final float[][] DASHES = {{}, {9, 4}, {2, 3}, {12, 3, 2, 3}, {5, 5}, {16, 4}, {9, 3, 2, 3, 2, 3}};

    private static final Pattern CLIP =
            Pattern.compile(" clip-path=\"[^\"]*\"| xml:space=\"preserve\"|<clipPath.*?</clipPath>");

    private final Font font;
    private int made;

    Plot(Font font) {
        this.font = font.deriveFont(TEXT);
        // Text along the axis stays text; the library's other way draws each letter as a shape.
        TextUtils.setUseDrawRotatedStringWorkaround(false);
    }

    /** A plot as an SVG element. */
    Figure of(String caption, String xAxis, String yAxis, List<PlotCurve> curves) {
        DefaultXYDataset data = new DefaultXYDataset();
        Marks renderer = new Marks(curves);
        NumberAxis x = axis(xAxis);
        NumberAxis y = axis(yAxis);
        XYPlot plot = new XYPlot(data, x, y, renderer);
        for (int i = 0; i < curves.size(); i++) {
            PlotCurve c = curves.get(i);
            data.addSeries(c.name(), new double[][] {c.x(), c.y()});
            renderer.setSeriesShape(i, mark(i));
            renderer.setSeriesPaint(i, Color.BLACK);
            renderer.setSeriesStroke(i, stroke(c, i));
        }
        x.setLowerMargin(0);
        x.setUpperMargin(0);
        plot.setBackgroundPaint(Color.WHITE);
        plot.setDomainGridlinePaint(Color.LIGHT_GRAY);
        plot.setRangeGridlinePaint(Color.LIGHT_GRAY);
        plot.setRangeZeroBaselineVisible(true);
        JFreeChart chart = new JFreeChart(null, font, plot, false);
        chart.setBackgroundPaint(Color.WHITE);
        String names = String.join(", ", curves.stream().map(PlotCurve::name).toList());
        return new Figure(svg(chart, curves), caption + ": " + yAxis + " over " + xAxis + "; lines: " + names, caption);
    }

    private String svg(JFreeChart chart, List<PlotCurve> curves) {
        PlotNames names = new PlotNames(curves, font);
        double height = Math.max(HEIGHT, names.height());
        SvgCanvas canvas = new SvgCanvas(WIDTH, height, "plot" + made++ + "-", 1);
        double left = WIDTH - names.width();
        ChartRenderingInfo info = new ChartRenderingInfo();
        chart.draw(canvas.pen(), new Rectangle2D.Double(0, 0, left, height), info);
        names.draw(canvas.pen(), chart.getXYPlot(), info.getPlotInfo().getDataArea(), left);
        // All lines lie within the axes: nothing has to be cut off.
        return CLIP.matcher(canvas.element()).replaceAll("");
    }

    private NumberAxis axis(String label) {
        NumberAxis axis = new NumberAxis(label);
        axis.setLabelFont(font);
        axis.setTickLabelFont(font);
        axis.setAutoRangeIncludesZero(false);
        NumberFormat plain = NumberFormat.getInstance(Locale.ROOT);
        plain.setGroupingUsed(false);
        axis.setNumberFormatOverride(plain);
        return axis;
    }

    static Stroke stroke(PlotCurve c, int i) {
        if (c.limit()) {
            return new BasicStroke(0.8f);
        }
        float[] dash = DASHES[i % DASHES.length];
        float[] pattern = dash.length == 0 ? null : dash;
        return new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, pattern, 0);
    }

    static Shape mark(int i) {
        double s = 3.5;
        return switch (i % 6) {
            case 0 -> new Ellipse2D.Double(-s, -s, 2 * s, 2 * s);
            case 1 -> new Rectangle2D.Double(-s, -s, 2 * s, 2 * s);
            case 2 -> polygon(0, -s - 1, s + 1, s, -s - 1, s);
            case 3 -> polygon(0, -s - 1.5, s + 1.5, 0, 0, s + 1.5, -s - 1.5, 0);
            case 4 -> polygon(0, s + 1, s + 1, -s, -s - 1, -s);
            default -> AffineTransform.getRotateInstance(Math.PI / 4)
                    .createTransformedShape(new Rectangle2D.Double(-s - 1, -1, 2 * s + 2, 2));
        };
    }

    private static Path2D polygon(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        path.closePath();
        return path;
    }

    /** Draws black lines with a mark here and there. */
    private static final class Marks extends XYLineAndShapeRenderer {
        private static final long serialVersionUID = 1;

        private final transient List<PlotCurve> curves;

        Marks(List<PlotCurve> curves) {
            super(true, true);
            this.curves = curves;
            setDrawSeriesLineAsPath(true);
        }

        @Override
        public boolean getItemShapeVisible(
                int series, int item) { // each line's marks elsewhere, for lines that lie on each other
            PlotCurve c = curves.get(series);
            int step = Math.max(1, c.x().length / MARKS);
            int first = step * series / curves.size();
            return !c.limit() && item % step == first;
        }
    }
}
