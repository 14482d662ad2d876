// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import org.jspecify.annotations.Nullable;
import tipwright.design.file.FileField;
import tipwright.design.tank.Interior;
import tipwright.geometry.Vec3;

/**
 * A tank's shape with its dimension lines; the numbers are typed into them. Not to scale: it says which size is which. A shape has one
 * when it has a size for each way it is seen.
 */
final class ShapeSketch extends VBox {
    private static final double EM = 14;
    private static final double FIELD = 8.2;

    private final List<String> shown = new ArrayList<>();
    private final CardState card;
    private final Pane drawing = new Pane();

    private ShapeSketch(CardState card) {
        this.card = card;
        drawing.setMinSize(22 * EM, 14 * EM);
        drawing.setPrefSize(22 * EM, 14 * EM);
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
            boolean heads = over != null && over.written();
            FileField length = over != null && heads ? over : along;
            Rectangle tank = new Rectangle(9.5 * EM, 1.5 * EM, 11 * EM, 7.5 * EM);
            tank.setArcWidth(heads ? 4 * EM : 1);
            tank.setArcHeight(5 * EM);
            sketch.ink(tank);
            sketch.upright(across, 9 * EM, 1.5 * EM, 9 * EM);
            sketch.level(length, 9.5 * EM, 20.5 * EM, 9.8 * EM);
            return sketch;
        }
        if (size != null && size.meaning().type() == Vec3.class && size.inner().size() == 3) {
            sketch.ink(new Rectangle(9.5 * EM, 3.5 * EM, 9 * EM, 5.5 * EM));
            sketch.ink(new Line(9.5 * EM, 3.5 * EM, 12 * EM, 1.5 * EM));
            sketch.ink(new Line(18.5 * EM, 3.5 * EM, 21 * EM, 1.5 * EM));
            sketch.ink(new Line(12 * EM, 1.5 * EM, 21 * EM, 1.5 * EM));
            sketch.ink(new Line(21 * EM, 1.5 * EM, 21 * EM, 7 * EM));
            sketch.ink(new Line(21 * EM, 7 * EM, 18.5 * EM, 9 * EM));
            sketch.upright(size.inner().get(1), 9 * EM, 3.5 * EM, 9 * EM);
            sketch.level(size.inner().get(0), 9.5 * EM, 18.5 * EM, 9.8 * EM);
            sketch.place(size.inner().get(2), "z, along the pivot", 0.2 * EM, 0);
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

    private void ink(Shape shape) {
        shape.setStyle("-fx-fill: transparent; -fx-stroke: -fx-text-background-color; -fx-stroke-width: 1.8;");
        drawing.getChildren().add(shape);
    }

    private void dimension(double x1, double y1, double x2, double y2) {
        boolean level = y1 == y2;
        double tick = 0.35 * EM;
        for (Line line : List.of(
                new Line(x1, y1, x2, y2),
                level ? new Line(x1, y1 - tick, x1, y1 + tick) : new Line(x1 - tick, y1, x1 + tick, y1),
                level ? new Line(x2, y2 - tick, x2, y2 + tick) : new Line(x2 - tick, y2, x2 + tick, y2))) {
            line.setStyle("-fx-stroke: -fx-accent; -fx-stroke-width: 1.4;");
            drawing.getChildren().add(line);
        }
    }

    private void upright(FileField f, double x, double y1, double y2) {
        dimension(x, y1, x, y2);
        place(f, FieldWords.title(f.label()), 0.2 * EM, (y1 + y2) / 2 - 2 * EM);
    }

    private void level(FileField f, double x1, double x2, double y) {
        dimension(x1, y, x2, y);
        place(f, FieldWords.title(f.label()), (x1 + x2 - FIELD * EM) / 2, y + 0.3 * EM);
    }

    private void place(FileField f, String words, double x, double y) {
        ValueRow row = new ValueRow(card, f, true);
        TextField field = row.field();
        field.setPrefWidth(FIELD * EM);
        if (row.getChildren().get(0) instanceof Label label) {
            label.setText(words);
        }
        row.relocate(x, y);
        row.setMaxWidth(FIELD * EM);
        card.put(row);
        shown.add(f.path());
        drawing.getChildren().add(row);
        getChildren().add(row.problem());
    }
}
