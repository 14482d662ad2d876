// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.geometry.Point2D;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Line;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.viewer.editor.DesignEditor;
import tipwright.viewer.editor.DimensionLine;
import tipwright.viewer.editor.MeasuredPoint;

/**
 * Dimension lines over the picture of the machine from the side: each shows the tape distance between two points, live, and takes
 * another that is typed. Lies over the picture and lets the mouse through but for its numbers.
 */
public final class DimensionOverlay extends Pane {
    private static final double TICK = 7;

    private final CardHost host;
    private final Function<Vec2, @Nullable Point2D> toPane;
    private final List<Drawn> lines = new ArrayList<>();

    /** One line with its controls. */
    private record Drawn(
            String from, String to, Line line, Line start, Line end, VBox box, TextField field, Label wrong) {}

    /**
     * An overlay without lines.
     *
     * @param toPane where a point of the side view, m, stowed, is on this pane; null: it is not seen stowed now
     */
    public DimensionOverlay(CardHost host, Function<Vec2, @Nullable Point2D> toPane) {
        this.host = host;
        this.toPane = toPane;
        getStylesheets().add(CardStyle.sheet());
        getStyleClass().add("part-card");
        setPickOnBounds(false);
        setId("dimensions");
    }

    /** Adds a line between two points by their labels, and moves the keyboard to its number. */
    public void add(String from, String to) {
        TextField field = new TextField();
        field.setPrefColumnCount(7);
        field.setMaxWidth(USE_PREF_SIZE);
        field.setId(FieldRow.id("dimension", from + "-" + to));
        field.setAccessibleText("distance from " + from + " to " + to);
        field.setAccessibleHelp("Enter makes it so, Escape puts it back, Delete with Control takes the line away");
        Label wrong = new Label();
        wrong.getStyleClass().add("problem");
        wrong.setWrapText(true);
        wrong.setMaxWidth(260);
        Button away = new Button("\u00d7");
        away.setId(FieldRow.id("dimension-away", from + "-" + to));
        away.setAccessibleText("take the line from " + from + " to " + to + " away");
        VBox box = new VBox(new HBox(field, away), wrong);
        box.setStyle("-fx-background-color: -fx-background;");
        Drawn drawn = new Drawn(from, to, ink(2), ink(2), ink(2), box, field, wrong);
        field.setOnAction(e -> take(drawn));
        away.setOnAction(e -> remove(drawn));
        field.addEventFilter(KeyEvent.KEY_PRESSED, e -> key(drawn, e));
        lines.add(drawn);
        getChildren().addAll(drawn.line, drawn.start, drawn.end, box);
        say(drawn, "");
        refresh();
        field.requestFocus();
    }

    private static Line ink(double width) {
        Line line = new Line();
        line.setMouseTransparent(true);
        line.setStyle("-fx-stroke: -fx-accent; -fx-stroke-width: " + width + ";");
        return line;
    }

    private void key(Drawn drawn, KeyEvent e) {
        if (e.getCode() == KeyCode.ESCAPE) {
            say(drawn, "");
            show(drawn, true);
            e.consume();
        } else if (e.getCode() == KeyCode.DELETE && e.isShortcutDown()) {
            remove(drawn);
            e.consume();
        }
    }

    private void remove(Drawn drawn) {
        lines.remove(drawn);
        getChildren().removeAll(drawn.line, drawn.start, drawn.end, drawn.box);
    }

    /** Takes all lines away. */
    public void clear() {
        List.copyOf(lines).forEach(this::remove);
    }

    private @Nullable DimensionLine measured(Drawn drawn) {
        return DimensionLine.of(MeasuredPoint.of(host.editor()), drawn.from, drawn.to);
    }

    private void take(Drawn drawn) {
        DimensionLine line = measured(drawn);
        if (line == null) {
            return;
        }
        DesignEditor editor = host.editor();
        String before = editor.sheet().text();
        List<String> why = line.type(editor, drawn.field.getText());
        say(drawn, String.join("\n", why));
        if (why.isEmpty()) {
            if (!before.equals(editor.sheet().text())) {
                host.changed();
            }
            refresh();
            show(drawn, true);
        } else {
            host.say(why.get(0));
        }
    }

    private static void say(Drawn drawn, String words) {
        drawn.wrong.setText(words);
        drawn.wrong.setVisible(!words.isEmpty());
        drawn.wrong.setManaged(!words.isEmpty());
    }

    /** Measures and draws again: whenever a point or the view has moved. */
    public void refresh() {
        lines.forEach(drawn -> show(drawn, false));
    }

    private void show(Drawn drawn, boolean number) {
        DimensionLine line = measured(drawn);
        Point2D from = line == null ? null : toPane.apply(line.from().at());
        Point2D to = line == null ? null : toPane.apply(line.to().at());
        for (var node : List.of(drawn.line, drawn.start, drawn.end, drawn.box)) {
            node.setVisible(from != null && to != null);
        }
        if (line == null || from == null || to == null) {
            return;
        }
        Point2D way = to.subtract(from);
        Point2D across = way.magnitude() == 0
                ? new Point2D(0, TICK)
                : new Point2D(-way.getY(), way.getX()).normalize().multiply(TICK);
        place(drawn.line, from, to);
        place(drawn.start, from.subtract(across), from.add(across));
        place(drawn.end, to.subtract(across), to.add(across));
        Point2D middle = from.midpoint(to);
        drawn.box.relocate(middle.getX() + TICK, middle.getY() + TICK);
        if (number || !drawn.field.isFocused() || drawn.field.getText().isEmpty()) {
            drawn.field.setText(
                    Quantities.show(line.distance(), Kind.LENGTH, host.editor().tape()));
        }
    }

    private static void place(Line line, Point2D from, Point2D to) {
        line.setStartX(from.getX());
        line.setStartY(from.getY());
        line.setEndX(to.getX());
        line.setEndY(to.getY());
    }
}
