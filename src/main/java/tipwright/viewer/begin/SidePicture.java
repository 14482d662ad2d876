// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.begin;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Extent;
import tipwright.geometry.Vec2;
import tipwright.interview.SideSketch;
import tipwright.quantity.Marks;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.scene.Theme;

/** The side view of a machine that is being asked for, as far as it is known. */
final class SidePicture extends Region {
    private static final double INCH = 0.0254;
    private static final double[] BARS_METRIC = {0.05, 0.1, 0.2, 0.5, 1};
    private static final double[] BARS_US = {2 * INCH, 6 * INCH, 12 * INCH, 24 * INCH, 48 * INCH};

    private final Canvas canvas = new Canvas();
    private final Theme theme;
    private final double em;
    private @Nullable SideSketch sketch;
    private UnitSystem units = UnitSystem.METRIC;
    private double scale;
    private Vec2 corner = Vec2.ZERO;

    SidePicture(Theme theme, double em) {
        this.theme = theme;
        this.em = em;
        setId("side-picture");
        getChildren().add(canvas);
    }

    /** Shows as much as is known; the scale in the units of the tape. */
    void show(SideSketch other, UnitSystem tape) {
        sketch = other;
        units = tape;
        StringBuilder said = new StringBuilder("side view: " + (other.isEmpty() ? "nothing known yet" : "tank"));
        other.pins().keySet().forEach(sign -> said.append(", ").append(SideSketch.meaning(sign)));
        setAccessibleText(said.toString());
        draw();
    }

    @Override
    protected void layoutChildren() {
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        draw();
    }

    private void draw() {
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.setFill(theme.back());
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setFont(Font.font("System", em));
        g.setTextBaseline(VPos.CENTER);
        SideSketch known = sketch;
        if (known == null || known.isEmpty()) {
            g.setFill(theme.faint());
            g.setTextAlign(TextAlignment.CENTER);
            g.fillText("The side view grows here with your answers.", getWidth() / 2, getHeight() / 2);
            return;
        }
        fit(known);
        g.setLineWidth(2);
        g.setStroke(theme.ink());
        g.setFill(theme.raised());
        for (List<Vec2> outline : known.outlines()) {
            double[] x = outline.stream().mapToDouble(p -> at(p).x()).toArray();
            double[] y = outline.stream().mapToDouble(p -> at(p).y()).toArray();
            g.fillPolygon(x, y, x.length);
            g.strokePolygon(x, y, x.length);
        }
        Vec2 from = known.pins().get('F');
        Vec2 to = known.pins().get('T');
        if (from != null && to != null) {
            g.setStroke(theme.push());
            g.setLineWidth(0.4 * em);
            g.strokeLine(at(from).x(), at(from).y(), at(to).x(), at(to).y());
        }
        cross(g);
        known.pins().forEach((sign, p) -> pin(g, SideSketch.meaning(sign), at(p)));
        scaleBar(g);
        g.setFill(theme.faint());
        g.setTextAlign(TextAlignment.RIGHT);
        g.fillText("it dumps this way \u2192", getWidth() - em, em);
    }

    /** A bar of a round length, with its length. */
    private void scaleBar(GraphicsContext g) {
        double most = getWidth() / 3 / scale;
        double length = units == UnitSystem.US ? BARS_US[0] : BARS_METRIC[0];
        for (double longer : units == UnitSystem.US ? BARS_US : BARS_METRIC) {
            length = longer <= most ? longer : length;
        }
        double x = em;
        double y = getHeight() - em;
        g.setStroke(theme.faint());
        g.setLineWidth(2);
        g.strokeLine(x, y, x + scale * length, y);
        g.strokeLine(x, y - em / 3, x, y + em / 3);
        g.strokeLine(x + scale * length, y - em / 3, x + scale * length, y + em / 3);
        g.setFill(theme.faint());
        g.setTextAlign(TextAlignment.LEFT);
        g.fillText(Marks.show(length, units), x + scale * length + em / 2, y);
    }

    private void cross(GraphicsContext g) {
        Vec2 mark = at(Vec2.ZERO);
        g.setStroke(theme.bearing());
        g.setLineWidth(2);
        g.strokeLine(mark.x() - em / 2, mark.y(), mark.x() + em / 2, mark.y());
        g.strokeLine(mark.x(), mark.y() - em / 2, mark.x(), mark.y() + em / 2);
        g.setFill(theme.ink());
        g.setTextAlign(TextAlignment.LEFT);
        g.fillText("your mark", mark.x() + 0.6 * em, mark.y() + 0.8 * em);
    }

    private void pin(GraphicsContext g, String name, Vec2 p) {
        double r = 0.4 * em;
        g.setFill(theme.back());
        g.fillOval(p.x() - r, p.y() - r, 2 * r, 2 * r);
        g.setStroke(theme.ink());
        g.setLineWidth(2);
        g.strokeOval(p.x() - r, p.y() - r, 2 * r, 2 * r);
        g.setFill(theme.ink());
        g.setTextAlign(TextAlignment.LEFT);
        g.fillText(name, p.x() + 0.7 * em, p.y() - 0.7 * em);
    }

    private void fit(SideSketch known) {
        List<Vec2> all = new ArrayList<>(known.pins().values());
        known.outlines().forEach(all::addAll);
        all.add(Vec2.ZERO);
        Extent extent = Extent.of(all);
        Vec2 middle = extent.middle();
        double room = 6 * em;
        scale = Math.min(
                (getWidth() - room) / Math.max(0.1, extent.width()),
                (getHeight() - room) / Math.max(0.1, extent.height()));
        corner = new Vec2(getWidth() / 2 - scale * middle.x(), getHeight() / 2 + scale * middle.y());
    }

    private Vec2 at(Vec2 p) {
        return new Vec2(corner.x() + scale * p.x(), corner.y() - scale * p.y());
    }
}
