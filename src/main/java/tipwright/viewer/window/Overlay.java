// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;

/** What lies over the picture until it is closed; Esc closes what was opened last. */
final class Overlay extends StackPane {
    private final Opened opened = new Opened();
    private final Runnable uncovered;

    /**
     * Nothing lies there yet.
     *
     * @param uncovered is told when something has been closed by Esc
     */
    Overlay(Runnable uncovered) {
        this.uncovered = uncovered;
        setPickOnBounds(false);
        getStyleClass().add("over");
    }

    /**
     * Lays something over the picture.
     *
     * @param closed is told when Esc has closed it
     */
    void lay(Node node, Pos where, Runnable closed) {
        lay(this, node, where, closed);
    }

    /** Lays something over another pane, in the same order of closing. */
    void lay(StackPane place, Node node, Pos where, Runnable closed) {
        setAlignment(node, where);
        place.getChildren().add(node);
        opened.opened(node, () -> {
            place.getChildren().remove(node);
            closed.run();
            uncovered.run();
        });
    }

    /** Takes it away. */
    void takeAway(Node node) {
        opened.closed(node);
        if (node.getParent() instanceof StackPane place) {
            place.getChildren().remove(node);
        }
    }

    /** Shows something that is there all the while, or hides it when it shows. */
    void toggle(Node node) {
        if (node.isVisible()) {
            opened.closed(node);
            node.setVisible(false);
        } else {
            node.setVisible(true);
            opened.opened(node, () -> node.setVisible(false));
        }
    }

    /** Closes what was opened last; false when nothing is open. */
    boolean closeLast() {
        return opened.closeLast();
    }
}
