// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.Locale;
import java.util.function.DoubleConsumer;
import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;
import tipwright.viewer.scene.Theme;

/** One curve against tilt with a cursor. */
final class TiltPlot extends Pane {
    private static final double SIDE = 6;

    private final Canvas canvas = new Canvas();
    private final Line cursor = new Line();
    private final Circle dot = new Circle(5);
    private final Text reading = new Text();
    private final String title;
    private @Nullable Curve curve;
    private Theme theme = Theme.DARK;
    private double em = WindowStyle.EM;
    private double tilt;
    private double value;

    /**
     * An empty plot.
     *
     * @param pick takes the tilt that was clicked on, rad
     */
    TiltPlot(String title, DoubleConsumer pick) {
        this.title = title;
        getChildren().addAll(canvas, cursor, dot, reading);
        reading.setTextOrigin(VPos.TOP);
        cursor.setStrokeWidth(1.5);
        setOnMousePressed(e -> pick(e, pick));
        setOnMouseDragged(e -> pick(e, pick));
    }

    private double top() {
        return 1.7 * em;
    }

    private double foot() {
        return 1.4 * em;
    }

    private void pick(MouseEvent e, DoubleConsumer pick) {
        Curve c = curve;
        if (c != null && c.tilts().length > 1) {
            double s = Math.max(0, Math.min(1, (e.getX() - SIDE) / (getWidth() - 2 * SIDE)));
            double first = c.tilts()[0];
            pick.accept(first + s * (c.tilts()[c.tilts().length - 1] - first));
        }
    }

    void show(Curve other, Theme colours, double textHeight) {
        curve = other;
        theme = colours;
        em = textHeight;
        setMinSize(8 * em, 7 * em);
        setPrefSize(18 * em, 9 * em);
        reading.setFont(Font.font("System", FontWeight.BOLD, em));
        draw();
        cursor(tilt, value);
    }

    void cursor(double atTilt, double atValue) {
        tilt = atTilt;
        value = atValue;
        Curve c = curve;
        if (c == null) {
            return;
        }
        double x = x(c, tilt);
        cursor.setStartX(x);
        cursor.setEndX(x);
        cursor.setStartY(top());
        cursor.setEndY(getHeight() - foot());
        dot.setCenterX(x);
        dot.setCenterY(y(c, value));
        String words = c.words().apply(value);
        if (!words.equals(reading.getText())) {
            reading.setText(words);
        }
        reading.setX(getWidth() - SIDE - reading.getLayoutBounds().getWidth());
        reading.setY(2);
    }

    @Override
    protected void layoutChildren() {
        if (canvas.getWidth() != getWidth() || canvas.getHeight() != getHeight()) {
            canvas.setWidth(getWidth());
            canvas.setHeight(getHeight());
            draw();
        }
        cursor(tilt, value);
    }

    private double x(Curve c, double at) {
        double first = c.tilts()[0];
        double span = c.tilts()[c.tilts().length - 1] - first;
        return SIDE + (span > 0 ? (at - first) / span : 0) * (getWidth() - 2 * SIDE);
    }

    private double y(Curve c, double at) {
        double s = (at - c.low()) / (c.high() - c.low());
        return getHeight() - foot() - Math.max(-0.02, Math.min(1.02, s)) * (getHeight() - top() - foot());
    }

    private void draw() {
        GraphicsContext g = canvas.getGraphicsContext2D();
        double w = getWidth();
        double h = getHeight();
        g.clearRect(0, 0, w, h);
        cursor.setStroke(theme.ink());
        dot.setFill(theme.ink());
        reading.setFill(theme.ink());
        g.setFont(Font.font("System", 0.88 * em));
        g.setFill(theme.faint());
        g.setTextBaseline(VPos.TOP);
        g.setTextAlign(TextAlignment.LEFT);
        g.fillText(title, SIDE, 4);
        Curve c = curve;
        if (c == null || h < top() + foot() + 10 || c.tilts().length < 2) {
            return;
        }
        double zero = y(c, Math.max(0, c.low()));
        g.setStroke(theme.faint());
        g.setLineWidth(1);
        g.strokeLine(SIDE, zero, w - SIDE, zero);
        ticks(g, c, h);
        limits(g, c, w);
        g.setStroke(theme.bearing());
        g.setLineWidth(2.5);
        g.beginPath();
        for (int i = 0; i < c.tilts().length; i++) {
            g.lineTo(x(c, c.tilts()[i]), y(c, c.values()[i]));
        }
        g.stroke();
    }

    private void ticks(GraphicsContext g, Curve c, double h) {
        double first = Math.toDegrees(c.tilts()[0]);
        double last = Math.toDegrees(c.tilts()[c.tilts().length - 1]);
        double step = last - first > 40 ? 15 : last - first > 15 ? 5 : 1;
        g.setTextBaseline(VPos.BOTTOM);
        for (double t = Math.ceil(first / step) * step; t <= last + 1e-9; t += step) {
            double x = x(c, Math.toRadians(t));
            g.setTextAlign(
                    t <= first + 1e-9
                            ? TextAlignment.LEFT
                            : t >= last - 0.02 * (last - first) ? TextAlignment.RIGHT : TextAlignment.CENTER);
            g.fillText(String.format(Locale.ROOT, "%.0f\u00b0", t), x, h - 2);
        }
    }

    private void limits(GraphicsContext g, Curve c, double w) {
        for (Curve.Limit limit : c.limits()) {
            if (limit.at() > c.high() || limit.at() < c.low()) {
                continue;
            }
            double y = y(c, limit.at());
            g.setStroke(theme.push());
            g.setLineWidth(1.5);
            g.setLineDashes(6, 4);
            g.strokeLine(SIDE, y, w - SIDE, y);
            g.setLineDashes();
            g.setFill(theme.faint());
            boolean under = y < top() + 1.2 * em;
            g.setTextBaseline(under ? VPos.TOP : VPos.BOTTOM);
            double[] v = c.values();
            boolean left = Math.abs(v[0] - limit.at()) > Math.abs(v[v.length - 1] - limit.at());
            g.setTextAlign(left ? TextAlignment.LEFT : TextAlignment.RIGHT);
            double x = left ? SIDE + 2 : w - SIDE - 2;
            g.fillText(limit.name() + " " + c.words().apply(limit.at()), x, under ? y + 2 : y - 2);
        }
    }
}
