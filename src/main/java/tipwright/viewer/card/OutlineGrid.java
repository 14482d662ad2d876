// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polygon;
import tipwright.design.file.FieldEdit;
import tipwright.design.file.FileField;
import tipwright.design.file.FileFields;
import tipwright.geometry.Vec2;
import tipwright.viewer.editor.EditedOutline;

/**
 * An outline drawn by hand on a grid: corners are dragged, added by a double click, taken away with Delete; with the keyboard the arrows
 * move the corner. All goes to whole millimetres or eighths of an inch, and each change is one step of undo.
 */
final class OutlineGrid extends VBox {
    private static final double MARGIN = 24;
    private static final double RADIUS = 8;
    private static final int KEY_STEPS = 5;

    private final double width;
    private final double height;
    private final CardState card;
    private final String path;
    private final EditedOutline outline;
    private final Pane pane = new Pane();
    private final Polygon shape = new Polygon();
    private final List<Circle> dots = new ArrayList<>();
    private final Label where = new Label();
    private final double scale;
    private final Vec2 low;
    private List<Vec2> corners;

    private OutlineGrid(CardState card, String path, EditedOutline outline) {
        this.card = card;
        width = 24 * card.em();
        height = 17 * card.em();
        this.path = path;
        this.outline = outline;
        this.corners = outline.corners();
        low = outline.low();
        Vec2 span = outline.high().minus(low);
        scale = Math.min((width - 2 * MARGIN) / span.x(), (height - 2 * MARGIN) / span.y());
        pane.setMinSize(width, height);
        pane.setMaxSize(width, height);
        pane.setId(FieldRow.id("outline", path));
        shape.setStyle("-fx-fill: transparent; -fx-stroke: -fx-text-background-color; -fx-stroke-width: 2;");
        pane.getChildren().addAll(grid(), shape);
        for (int i = 0; i < corners.size(); i++) {
            dots.add(dot(i));
        }
        pane.getChildren().addAll(dots);
        pane.setOnMouseClicked(e -> {
            if (e.getClickCount() == 2) {
                add(here(e));
            }
        });
        where.getStyleClass().add("remark");
        where.setWrapText(true);
        Button more = new Button("Add a corner");
        more.setId(FieldRow.id("corner", path));
        more.setOnAction(e -> add(outline.middleOfLongest()));
        getChildren().addAll(pane, where, new FlowPane(8, 4, more));
        say("Drag a corner; double click adds one, Delete takes one away, arrows move it by " + outline.stepWords()
                + ".");
        draw();
    }

    /** The grid of an outline, with as many corners as it has so far. */
    static OutlineGrid of(CardState card, FileField f) {
        return new OutlineGrid(card, f.path(), EditedOutline.of(f, card.editor().tape()));
    }

    private Canvas grid() {
        Canvas canvas = new Canvas(width, height);
        canvas.setMouseTransparent(true);
        GraphicsContext g = canvas.getGraphicsContext2D();
        double step = outline.gridStep();
        g.setStroke(Color.gray(0.5, 0.45));
        for (double x = Math.ceil((low.x() - MARGIN / scale) / step) * step; x(x) <= width; x += step) {
            g.setLineWidth(Math.abs(x) < step / 2 ? 2 : 0.7);
            g.strokeLine(x(x), 0, x(x), height);
        }
        for (double y = Math.ceil((low.y() - MARGIN / scale) / step) * step; y(y) >= 0; y += step) {
            g.setLineWidth(Math.abs(y) < step / 2 ? 2 : 0.7);
            g.strokeLine(0, y(y), width, y(y));
        }
        return canvas;
    }

    private double x(double x) {
        return MARGIN + (x - low.x()) * scale;
    }

    private double y(double y) {
        return height - MARGIN - (y - low.y()) * scale;
    }

    private Vec2 here(MouseEvent e) {
        return outline.snapped(
                new Vec2(low.x() + (e.getX() - MARGIN) / scale, low.y() + (height - MARGIN - e.getY()) / scale));
    }

    private Circle dot(int i) {
        Circle dot = new Circle(RADIUS);
        dot.setStyle("-fx-fill: -fx-accent; -fx-stroke: -fx-text-background-color;");
        dot.setId(FieldRow.id("corner", path + "-" + (i + 1)));
        dot.setFocusTraversable(true);
        dot.setAccessibleText("corner " + (i + 1));
        dot.focusedProperty().addListener((o, was, is) -> {
            dot.setRadius(is ? RADIUS * 1.4 : RADIUS);
            if (is) {
                say("Corner " + (i + 1) + ": " + outline.words(corners.get(i)));
            }
        });
        dot.setOnMousePressed(e -> {
            dot.requestFocus();
            e.consume();
        });
        dot.setOnMouseDragged(e -> {
            Vec2 to = here(e);
            move(i, to);
            say("Corner " + (i + 1) + ": " + outline.words(to));
            e.consume();
        });
        dot.setOnMouseReleased(e -> {
            write(i);
            e.consume();
        });
        dot.setOnKeyPressed(e -> key(i, e));
        return dot;
    }

    private void key(int i, KeyEvent e) {
        double step = outline.step() * (e.isShiftDown() ? 1 : KEY_STEPS);
        Vec2 by =
                switch (e.getCode()) {
                    case LEFT -> new Vec2(-step, 0);
                    case RIGHT -> new Vec2(step, 0);
                    case UP -> new Vec2(0, step);
                    case DOWN -> new Vec2(0, -step);
                    default -> Vec2.ZERO;
                };
        if (!by.equals(Vec2.ZERO)) {
            move(i, outline.snapped(corners.get(i).plus(by)));
            write(i);
            e.consume();
        } else if (e.getCode() == javafx.scene.input.KeyCode.DELETE) {
            card.rebuild(t -> FieldEdit.takeOut(t, path + "[" + (i + 1) + "]"));
            e.consume();
        }
    }

    private void move(int i, Vec2 to) {
        List<Vec2> moved = new ArrayList<>(corners);
        moved.set(i, to);
        corners = moved;
        draw();
    }

    private void write(int i) {
        Vec2 to = corners.get(i);
        if (to.equals(outline.corners().get(i))) {
            return;
        }
        String[] xy = outline.written(i, to);
        String at = path + "[" + (i + 1) + "]";
        card.rebuild(t -> FieldEdit.point(t, at, xy[0], xy[1]));
    }

    private void add(Vec2 at) {
        int blank = outline.firstBlank();
        String[] xy = outline.written(-1, at);
        if (blank >= 0) {
            card.rebuild(t -> FieldEdit.set(FileFields.of(t), path + "[" + (blank + 1) + "]", xy[0] + ", " + xy[1]));
            return;
        }
        card.rebuild(t -> FieldEdit.addCorner(t, path, outline.edgeAt(at), xy[0], xy[1]));
    }

    private void draw() {
        shape.getPoints().clear();
        for (int i = 0; i < dots.size(); i++) {
            Vec2 c = corners.get(i);
            shape.getPoints().addAll(x(c.x()), y(c.y()));
            dots.get(i).setCenterX(x(c.x()));
            dots.get(i).setCenterY(y(c.y()));
        }
    }

    private void say(String words) {
        where.setText(words);
    }
}
