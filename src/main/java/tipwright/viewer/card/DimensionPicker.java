// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import tipwright.viewer.editor.MeasuredPoint;

/** Chooses two points of the machine to put a dimension line between. */
public final class DimensionPicker extends FlowPane {
    private final CardHost host;
    private final ComboBox<String> from = new ComboBox<>();
    private final ComboBox<String> to = new ComboBox<>();

    /** A picker for the lines of an overlay. */
    public DimensionPicker(CardHost host, DimensionOverlay overlay) {
        super(8, 4);
        this.host = host;
        getStylesheets().add(CardStyle.sheet());
        getStyleClass().add("part-card");
        Button add = new Button("Measure");
        add.setId("measure");
        add.setOnAction(e -> {
            String one = from.getValue();
            String other = to.getValue();
            if (one == null || other == null || one.equals(other)) {
                host.say("Choose two different points to measure between.");
            } else {
                overlay.add(one, other);
            }
        });
        Button clear = new Button("Take lines away");
        clear.setId("measure-none");
        clear.setOnAction(e -> overlay.clear());
        getChildren().addAll(named("From", from, "measure-from"), from, named("to", to, "measure-to"), to, add, clear);
        refresh();
    }

    private static Label named(String words, ComboBox<String> box, String id) {
        Label label = new Label(words);
        label.setLabelFor(box);
        box.setId(id);
        box.setAccessibleText("measure " + words.toLowerCase(java.util.Locale.ROOT));
        return label;
    }

    /** Offers the points that there are now. */
    public void refresh() {
        List<String> labels = MeasuredPoint.of(host.editor()).stream()
                .map(MeasuredPoint::label)
                .toList();
        for (ComboBox<String> box : List.of(from, to)) {
            String chosen = box.getValue();
            box.getItems().setAll(labels);
            box.setValue(labels.contains(chosen) ? chosen : null);
        }
    }
}
