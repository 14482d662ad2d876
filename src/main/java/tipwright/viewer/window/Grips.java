// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.Node;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Shape;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;
import tipwright.viewer.scene.PlaneView;

/** What is dragged over the picture with the mouse, or moved by the keys while it has the keyboard. */
final class Grips {
    private final Pane pane;
    private final WindowState shown;
    private final Runnable redraw;
    private final Map<Node, Consumer<Vec2>> movers = new HashMap<>();
    private boolean held;
    private Point2D from = Point2D.ZERO;
    private Vec2 waiting = Vec2.ZERO;

    /**
     * None yet.
     *
     * @param pane on which they lie
     * @param redraw puts all of it where it belongs
     */
    Grips(Pane pane, WindowState shown, Runnable redraw) {
        this.pane = pane;
        this.shown = shown;
        this.redraw = redraw;
    }

    /** Whether one is being dragged. */
    boolean held() {
        return held;
    }

    /** Forgets all of them. */
    void clear() {
        movers.clear();
    }

    /** Moves the one that has the keyboard by a step, m; false: none has. */
    boolean nudge(Vec2 by) {
        Node owner = pane.getScene() == null ? null : pane.getScene().getFocusOwner();
        @Nullable Consumer<Vec2> mover = owner == null ? null : movers.get(owner);
        if (owner == null || mover == null) {
            return false;
        }
        // a key that is held down comes faster than the machine is solved: steps that wait are taken together
        if (waiting.norm() == 0) {
            Platform.runLater(() -> {
                Vec2 all = waiting;
                waiting = Vec2.ZERO;
                mover.accept(all);
                redraw.run();
            });
        }
        waiting = waiting.plus(by);
        return true;
    }

    /** The one that has the keyboard, by its id; empty: none has. */
    String focused() {
        return movers.keySet().stream()
                .filter(Node::isFocused)
                .map(Node::getId)
                .findFirst()
                .orElse("");
    }

    /** Gives the keyboard back to the one with an id, if it is there. */
    void focus(String id) {
        movers.keySet().stream().filter(n -> n.getId().equals(id)).findFirst().ifPresent(Node::requestFocus);
    }

    /**
     * One more.
     *
     * @param said for those who hear it
     * @param moved is told by how much, m, at the end
     * @param live is told by how much, pixels, on the way
     */
    void add(Shape grip, String said, PlaneView view, Consumer<Vec2> moved, Consumer<Point2D> live) {
        movers.put(grip, moved);
        grip.setCursor(Cursor.MOVE);
        grip.setAccessibleRole(AccessibleRole.BUTTON);
        grip.setAccessibleText(said);
        grip.setAccessibleHelp("Alt and an arrow move it");
        grip.setFocusTraversable(true);
        grip.focusedProperty().addListener((o, was, is) -> {
            grip.setStroke(is ? shown.theme().ink() : null);
            grip.setStrokeWidth(is ? 2 : 0);
        });
        grip.setOnMousePressed(e -> {
            held = true;
            grip.requestFocus();
            from = pane.sceneToLocal(e.getSceneX(), e.getSceneY());
            e.consume();
        });
        grip.setOnMouseDragged(e -> {
            Point2D by = pane.sceneToLocal(e.getSceneX(), e.getSceneY()).subtract(from);
            grip.setTranslateX(by.getX());
            grip.setTranslateY(by.getY());
            live.accept(by);
            e.consume();
        });
        grip.setOnMouseReleased(e -> {
            held = false;
            Point2D to = pane.sceneToLocal(e.getSceneX(), e.getSceneY());
            Point2D start = from;
            if (!to.equals(start)) {
                moved.accept(view.stowed(to.getX(), to.getY()).minus(view.stowed(start.getX(), start.getY())));
            }
            redraw.run();
            e.consume();
        });
    }
}
