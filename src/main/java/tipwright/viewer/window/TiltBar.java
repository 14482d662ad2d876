// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import javafx.geometry.VPos;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Row;
import tipwright.quantity.Kind;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.dump.Timeline;
import tipwright.viewer.scene.Theme;
import tipwright.viewer.ticket.Judged;

/**
 * The bar that the tilt is dragged in: across it the force of the actuators over the tilt, going up and, dashed, going back, with what
 * they are rated for; on one scale for all load cases, the others faint behind.
 */
final class TiltBar extends Region implements Panel {
    /** Of the window's height, where there is plenty. */
    private static final double SHARE = 0.12;
    /** Between the cursor and a label, in heights of the text: the grip's radius and some. */
    private static final double EDGE = 0.8;

    private final WindowState shown;
    private final Canvas canvas = new Canvas();
    private final Line cursor = new Line();
    private final Circle grip = new Circle();
    private final Text push = rating("rated-push");
    private final Text pull = rating("rated-pull");
    private @Nullable ForceScale scale;
    private @Nullable MachineState now;
    private double @Nullable [] timed;
    private boolean stale = true;

    TiltBar(WindowState shown) {
        this.shown = shown;
        setId("tilt-bar");
        getStyleClass().add("tilt-bar");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.SLIDER);
        setAccessibleText("tilt; Left and Right move it, the force is shown across it");
        setCursor(Cursor.H_RESIZE);
        getChildren().addAll(canvas, cursor, grip, push, pull);
        canvas.setMouseTransparent(true);
        cursor.setId("tilt-cursor");
        cursor.setMouseTransparent(true);
        grip.setMouseTransparent(true);
        setPickOnBounds(true);
        setOnMousePressed(this::pick);
        setOnMouseDragged(this::pick);
    }

    private static Text rating(String id) {
        Text words = new Text();
        words.setId(id);
        words.setManaged(false);
        words.setMouseTransparent(true);
        return words;
    }

    private double em() {
        return shown.em();
    }

    private double left() {
        return 4.6 * em();
    }

    private double right() {
        return getWidth() - 1.2 * em();
    }

    private double top() {
        return 0.6 * em();
    }

    private double foot() {
        return getHeight() - 1.6 * em();
    }

    private void pick(MouseEvent e) {
        DumpStates dump = shown.dump();
        if (dump != null && right() > left()) {
            requestFocus();
            double s = Math.max(0, Math.min(1, (e.getX() - left()) / (right() - left())));
            shown.tiltTo(dump.first() + s * (dump.last() - dump.first()));
        }
    }

    @Override
    protected double computePrefHeight(double width) {
        double window = getScene() == null ? 0 : getScene().getHeight();
        if (shown.low(window)) {
            return computeMinHeight(width);
        }
        return Math.max(7.4 * em(), SHARE * window);
    }

    @Override
    protected double computeMinHeight(double width) {
        return 5.4 * em();
    }

    @Override
    public void renew() {
        setVisible(shown.dump() != null);
        scale();
        timed = null;
        redraw();
    }

    @Override
    public void judged() {
        ForceScale before = scale;
        scale();
        if (!Objects.equals(before, scale)) {
            redraw();
        }
    }

    /** Draws it anew in the next frame, once whatever else changes until then. */
    private void redraw() {
        stale = true;
        requestLayout();
    }

    private void scale() {
        DumpStates dump = shown.dump();
        Judged judged = shown.judged();
        scale = dump == null || judged == null ? null : ForceScale.of(dump.analysis(), judged.findings());
    }

    @Override
    public void move(MachineState state) {
        now = state;
        cursor();
    }

    private void cursor() {
        MachineState at = now;
        ForceScale s = scale;
        if (at == null || s == null) {
            return;
        }
        double x = x(at.tilt());
        cursor.setStartX(x);
        cursor.setEndX(x);
        cursor.setStartY(top());
        cursor.setEndY(foot());
        grip.setCenterX(x);
        grip.setCenterY(y(s, at.raise().force()));
        beside(push, x);
        beside(pull, x);
    }

    /** At the end of the bar, or, where the cursor stands there, before it. */
    private void beside(Text words, double cursorAt) {
        double end = right() - 0.3 * em();
        double wide = words.getLayoutBounds().getWidth();
        boolean covered = cursorAt > end - wide - EDGE * em();
        words.setX((covered ? cursorAt - EDGE * em() : end) - wide);
    }

    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        DumpStates dump = shown.dump();
        MachineState at = now;
        if (dump == null || at == null) {
            return super.queryAccessibleAttribute(attribute, parameters);
        }
        return switch (attribute) {
            case VALUE -> Math.toDegrees(at.tilt());
            case MIN_VALUE -> Math.toDegrees(dump.first());
            case MAX_VALUE -> Math.toDegrees(dump.last());
            default -> super.queryAccessibleAttribute(attribute, parameters);
        };
    }

    @Override
    protected void layoutChildren() {
        if (canvas.getWidth() != getWidth() || canvas.getHeight() != getHeight()) {
            canvas.setWidth(getWidth());
            canvas.setHeight(getHeight());
            stale = true;
        }
        if (stale) {
            stale = false;
            draw();
        }
        cursor();
    }

    private double x(double tilt) {
        DumpStates dump = shown.dump();
        double span = dump == null ? 0 : dump.last() - dump.first();
        double s = dump == null || !(span > 0) ? 0 : (tilt - dump.first()) / span;
        return left() + s * (right() - left());
    }

    private double y(ForceScale s, double force) {
        double share = (force - s.low()) / (s.high() - s.low());
        return foot() - Math.max(-0.01, Math.min(1.01, share)) * (foot() - top());
    }

    private void draw() {
        GraphicsContext g = canvas.getGraphicsContext2D();
        Theme theme = shown.theme();
        g.clearRect(0, 0, getWidth(), getHeight());
        cursor.setStroke(theme.ink());
        cursor.setStrokeWidth(2);
        grip.setFill(theme.ink());
        grip.setRadius(0.5 * em());
        push.setText("");
        pull.setText("");
        DumpStates dump = shown.dump();
        ForceScale s = scale;
        if (dump == null || s == null || foot() < top() + em() || right() < left() + em()) {
            return;
        }
        g.setFill(theme.raised());
        g.fillRoundRect(left(), top(), right() - left(), foot() - top(), 0.4 * em(), 0.4 * em());
        g.setFont(Font.font("System", 0.88 * em()));
        // letters after lines: one kind after the other is drawn sooner than both in turn
        List<Runnable> letters = new ArrayList<>();
        forces(g, s, theme, letters);
        tilts(g, dump, theme, letters);
        CaseResult mine = dump.loadCase(shown.loadCase());
        for (CaseResult c : dump.analysis().cases()) {
            if (!c.name().equals(mine.name())) {
                curve(
                        g,
                        s,
                        dump,
                        forces(c, r -> r.raise().force()),
                        theme.faint().deriveColor(0, 1, 1, 0.4),
                        1);
            }
        }
        rated(g, s, theme);
        Color ink = theme.bearing();
        if (timed == null) {
            timed = timed(mine);
        }
        g.setLineDashes(0.3 * em(), 0.3 * em());
        curve(g, s, dump, forces(mine, r -> r.lower().force()), ink, 1.5);
        g.setLineDashes();
        curve(g, s, dump, timed, ink, 0.2 * em());
        g.setFill(theme.faint());
        letters.forEach(Runnable::run);
        cursor();
    }

    /** Force at each tilt on the way up, N: in the dump in time where it is known, else as the load case stands there. */
    private double[] timed(CaseResult mine) {
        DumpStates dump = shown.dump();
        double[] forces = forces(mine, r -> r.raise().force());
        for (int i = 0; dump != null && i < forces.length; i++) {
            Timeline.Spot moment = shown.moment(mine.rows().get(i).tilt());
            if (moment != null) {
                forces[i] = dump.at(mine.name(), moment).raise().force();
            }
        }
        return forces;
    }

    private static double[] forces(CaseResult c, ToDoubleFunction<Row> force) {
        return c.rows().stream().mapToDouble(force).toArray();
    }

    private void curve(GraphicsContext g, ForceScale s, DumpStates dump, double[] forces, Color colour, double width) {
        g.setStroke(colour);
        g.setLineWidth(width);
        g.beginPath();
        for (int i = 0; i < forces.length; i++) {
            g.lineTo(x(dump.analysis().poses().get(i).tilt()), y(s, forces[i]));
        }
        g.stroke();
    }

    private void forces(GraphicsContext g, ForceScale s, Theme theme, List<Runnable> letters) {
        letters.add(() -> {
            g.setTextBaseline(VPos.CENTER);
            g.setTextAlign(TextAlignment.RIGHT);
        });
        double last = Double.POSITIVE_INFINITY;
        for (double force : s.ticks(shown.units())) {
            double y = y(s, force);
            boolean room = last - y > 1.2 * em();
            last = room ? y : last;
            g.setStroke(force == 0 ? theme.faint() : theme.faint().deriveColor(0, 1, 1, 0.35));
            g.setLineWidth(1);
            g.strokeLine(left(), y, right(), y);
            if (room) {
                letters.add(() -> g.fillText(shown.show(force, Kind.FORCE), left() - 0.4 * em(), y));
            }
        }
    }

    private void tilts(GraphicsContext g, DumpStates dump, Theme theme, List<Runnable> letters) {
        double first = Math.toDegrees(dump.first());
        double last = Math.toDegrees(dump.last());
        double step = last - first > 40 ? 15 : last - first > 15 ? 5 : 1;
        g.setStroke(theme.faint());
        letters.add(() -> {
            g.setTextBaseline(VPos.BOTTOM);
            g.setTextAlign(TextAlignment.CENTER);
        });
        for (double t = Math.ceil(first / step) * step; t <= last + 1e-9; t += step) {
            double x = x(Math.toRadians(t));
            g.strokeLine(x, foot(), x, foot() + 0.3 * em());
            String words = String.format(java.util.Locale.ROOT, "%.0f\u00b0", t);
            letters.add(() -> g.fillText(words, x, getHeight()));
        }
    }

    private void rated(GraphicsContext g, ForceScale s, Theme theme) {
        line(g, s, theme, s.ratedPush(), push, "rated push ");
        line(g, s, theme, -s.ratedPull(), pull, "rated pull ");
    }

    private void line(GraphicsContext g, ForceScale s, Theme theme, double force, Text label, String name) {
        if (Double.isNaN(force) || force < s.low() || force > s.high()) {
            return;
        }
        double y = y(s, force);
        g.setStroke(theme.push());
        g.setLineWidth(2);
        g.strokeLine(left(), y, right(), y);
        label.setFont(Font.font("System", 0.88 * em()));
        label.setFill(theme.ink());
        label.setTextOrigin(force > 0 ? VPos.TOP : VPos.BOTTOM);
        label.setText(name + shown.show(Math.abs(force), Kind.FORCE));
        label.setY(y + (force > 0 ? 0.15 : -0.15) * em());
    }
}
