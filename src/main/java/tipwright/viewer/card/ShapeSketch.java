// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Arc;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import javafx.scene.transform.Scale;
import org.jspecify.annotations.Nullable;
import tipwright.design.file.FileField;
import tipwright.design.tank.Interior;
import tipwright.geometry.Vec3;

/**
 * A tank's shape from the side with its dimension lines; the numbers are typed into them. Not to scale: it says which size is which. A shape has one
 * when it has a size for each way it is seen.
 */
final class ShapeSketch extends VBox {
    /** Width of a number, in sizes of the text. */
    private static final double FIELD = 8.2;

    private final List<String> shown = new ArrayList<>();
    private final CardState card;
    private final Pane drawing = new Pane();
    private final double em;

    private ShapeSketch(CardState card) {
        this.card = card;
        em = card.em();
        drawing.setMinSize(22 * em, 14 * em);
        drawing.setPrefSize(22 * em, 14 * em);
        getChildren().add(drawing);
    }

    /** The sketch of a tank's inside; null for any other field, and for a shape whose sizes are no plain lengths. */
    static @Nullable ShapeSketch of(CardState card, FileField f) {
        if (f.meaning().type() != Interior.class) {
            return null;
        }
        FileField around = one(f, "around");
        FileField along = one(f, "length");
        FileField over = one(f, "over-heads");
        FileField across = around != null && around.written() ? around : one(f, "diameter");
        FileField size = one(f, "size");
        ShapeSketch sketch = new ShapeSketch(card);
        if (across != null && along != null) {
            boolean overHeads = over != null && over.written();
            FileField length = over != null && overHeads ? over : along;
            FileField heads = one(f, "heads");
            boolean flat = heads == null
                    || !heads.written()
                    || heads.text().replaceAll("[\\[\\], ]|flat", "").isEmpty();
            sketch.ink(new Rectangle(11, 1.5, 8, 7.5));
            if (!flat) {
                sketch.ink(head(11, 90));
                sketch.ink(head(19, 270));
            }
            sketch.upright(across, flat ? 10 : 8.6, 1.5, 9);
            sketch.level(length, overHeads && !flat ? 9 : 11, overHeads && !flat ? 21 : 19, 9.8);
            return sketch;
        }
        if (size != null && size.meaning().type() == Vec3.class && size.inner().size() == 3) {
            sketch.ink(new Rectangle(9.5, 3.5, 9, 5.5));
            sketch.ink(new Polyline(9.5, 3.5, 12, 1.5, 21, 1.5, 21, 7, 18.5, 9));
            sketch.ink(new Line(18.5, 3.5, 21, 1.5));
            sketch.upright(size.inner().get(1), 9, 3.5, 9);
            sketch.level(size.inner().get(0), 9.5, 18.5, 9.8);
            sketch.place(size.inner().get(2), "z, along the pivot", 0.2, 0);
            sketch.shown.add(size.path());
            GroupRow problems = new GroupRow(card, size);
            card.put(problems);
            sketch.getChildren().add(problems);
            return sketch;
        }
        return null;
    }

    private static @Nullable FileField one(FileField f, String key) {
        return f.inner().stream()
                .filter(i -> i.meaning().key().equals(key))
                .findFirst()
                .orElse(null);
    }

    /** Whether a field is typed into here. */
    boolean shows(FileField f) {
        return shown.contains(f.path());
    }

    /** A dished head at x, bulging to the left from 90 deg, to the right from 270 deg. */
    private static Arc head(double x, double start) {
        Arc arc = new Arc(x, 5.25, 2, 3.75, start, 180);
        arc.setType(ArcType.OPEN);
        return arc;
    }

    /** Adds a shape whose places are given in sizes of the text. */
    private void ink(Shape shape) {
        shape.getTransforms().add(new Scale(em, em));
        shape.setStyle(
                "-fx-fill: transparent; -fx-stroke: -fx-text-background-color; -fx-stroke-width: " + 1.8 / em + ";");
        drawing.getChildren().add(shape);
    }

    private void dimension(double x1, double y1, double x2, double y2) {
        boolean level = y1 == y2;
        double tick = 0.35;
        for (Line line : List.of(
                new Line(x1, y1, x2, y2),
                level ? new Line(x1, y1 - tick, x1, y1 + tick) : new Line(x1 - tick, y1, x1 + tick, y1),
                level ? new Line(x2, y2 - tick, x2, y2 + tick) : new Line(x2 - tick, y2, x2 + tick, y2))) {
            line.getTransforms().add(new Scale(em, em));
            line.setStyle("-fx-stroke: -fx-accent; -fx-stroke-width: " + 1.4 / em + ";");
            drawing.getChildren().add(line);
        }
    }

    private void upright(FileField f, double x, double y1, double y2) {
        dimension(x, y1, x, y2);
        place(f, FieldWords.title(f.label()), 0.2, (y1 + y2) / 2 - 2);
    }

    private void level(FileField f, double x1, double x2, double y) {
        dimension(x1, y, x2, y);
        place(f, FieldWords.title(f.label()), (x1 + x2 - FIELD) / 2, y + 0.3);
    }

    private void place(FileField f, String words, double x, double y) {
        ValueRow row = new ValueRow(card, f, true);
        TextField field = row.field();
        field.setPrefWidth(FIELD * em);
        if (row.getChildren().get(0) instanceof Label label) {
            label.setText(words);
        }
        row.relocate(x * em, y * em);
        row.setMaxWidth(FIELD * em);
        card.put(row);
        shown.add(f.path());
        drawing.getChildren().add(row);
        getChildren().add(row.problem());
    }
}
