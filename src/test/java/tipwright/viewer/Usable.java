// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.stage.Stage;

/** What everybody needs to be able to use a window, of all that it shows now. */
public record Usable(Stage stage) {
    private List<Node> seen() {
        List<Node> all = new ArrayList<>();
        walk(stage.getScene().getRoot(), all);
        return all;
    }

    private static void walk(Node node, List<Node> all) {
        if (node.isVisible()) {
            all.add(node);
            if (node instanceof Parent parent) {
                parent.getChildrenUnmodifiable().forEach(child -> walk(child, all));
            }
        }
    }

    /** Whatever is pressed or typed into is so many pixels high and wide. */
    public void assertTargets(double least) {
        List<String> small = new ArrayList<>();
        for (Node node : seen()) {
            boolean inner = node.getParent() instanceof ComboBoxBase;
            boolean target = !inner
                    && (node instanceof ButtonBase
                            || node instanceof TextField
                            || node instanceof ChoiceBox
                            || node instanceof ComboBoxBase);
            if (target && (((Region) node).getHeight() < least || ((Region) node).getWidth() < least)) {
                small.add(node + " " + ((Region) node).getWidth() + " x " + ((Region) node).getHeight());
            }
        }
        assertThat(small).isEmpty();
    }

    /** Text against what is behind it. Source: WCAG 2.2, success criterion 1.4.3, 4.5 to 1. */
    public void assertContrast() {
        List<String> weak = new ArrayList<>();
        for (Node node : seen()) {
            if (node instanceof Labeled label
                    && label.getText() != null
                    && !label.getText().isEmpty()
                    && !label.isDisabled()
                    && label.getTextFill() instanceof Color ink) {
                Color behind = behind(label);
                double ratio = Contrast.of(ink, behind);
                if (ratio < 4.5) {
                    weak.add(label.getText() + ": " + ink + " on " + behind + " " + ratio);
                }
            }
        }
        assertThat(weak).isEmpty();
    }

    private static Color behind(Node node) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (at instanceof Region region && region.getBackground() != null) {
                for (var fill : region.getBackground().getFills()) {
                    if (fill.getFill() instanceof Color c && c.getOpacity() == 1) {
                        return c;
                    }
                }
            }
        }
        return Color.TRANSPARENT;
    }

    /** Whatever takes the keys says what it is. */
    public void assertNames() {
        List<String> nameless = new ArrayList<>();
        for (Node node : seen()) {
            String text = node instanceof Labeled label ? label.getText() : "";
            String said = node.getAccessibleText();
            boolean named = (text != null && !text.isEmpty()) || (said != null && !said.isEmpty());
            if (node.isFocusTraversable() && !named && !(node instanceof ScrollPane) && node.getId() != null) {
                nameless.add(node.toString());
            }
        }
        assertThat(nameless).isEmpty();
    }

    /** At one and a half times the size every control is still whole, as wide as it wants to be, or lies in something that scrolls. */
    public void assertNothingCutOff() {
        List<String> cut = new ArrayList<>();
        for (Node node : seen()) {
            if (node instanceof ButtonBase button) {
                var at = button.localToScene(button.getLayoutBounds());
                boolean scrolls = false;
                for (Node up = button; up != null; up = up.getParent()) {
                    scrolls |= up instanceof ScrollPane;
                }
                boolean outside = at.getMaxX() > stage.getScene().getWidth() + 1
                        || at.getMaxY() > stage.getScene().getHeight() + 1
                        || at.getMinX() < 0;
                boolean narrow = button.getWidth() < button.prefWidth(-1) - 1 && !button.isWrapText();
                if (!scrolls && (outside || narrow)) {
                    cut.add(button.getText() + " " + at);
                }
            }
        }
        assertThat(cut).isEmpty();
    }
}
