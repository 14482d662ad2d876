// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import tipwright.quantity.Marks;
import tipwright.viewer.scene.Camera;

/** The keyboard: everything that the mouse can do. */
final class Keys {
    private static final double DEGREE = Math.toRadians(1);
    private static final double TURN = Math.toRadians(6);

    private final WindowState shown;
    private final Actions actions;
    private final Transport transport;
    private final PicturePane picture;
    private final HeldKeys held = new HeldKeys(System::nanoTime);

    Keys(WindowState shown, Actions actions, Transport transport, PicturePane picture) {
        this.shown = shown;
        this.actions = actions;
        this.transport = transport;
        this.picture = picture;
    }

    void listen(Node root) {
        root.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            boolean typing = root.getScene().getFocusOwner() instanceof TextInputControl;
            boolean pressed = root.getScene().getFocusOwner() instanceof ButtonBase
                    || root.getScene().getFocusOwner() instanceof ChoiceBox;
            if (held.pressed(e.getCode(), () -> done(e, typing, pressed))) {
                e.consume();
            }
        });
        root.addEventFilter(KeyEvent.KEY_RELEASED, e -> held.released(e.getCode()));
    }

    private boolean done(KeyEvent e, boolean typing, boolean focused) {
        if (e.isControlDown() || e.isMetaDown()) {
            return withControl(e, typing);
        }
        if (e.isAltDown()) {
            return nudge(e);
        }
        if (e.getCode() == KeyCode.ESCAPE) {
            return actions.close();
        }
        return e.getCode() == KeyCode.F1 ? help() : !typing && plain(e, focused);
    }

    private boolean help() {
        actions.keys();
        return true;
    }

    private boolean withControl(KeyEvent e, boolean typing) {
        switch (e.getCode()) {
            case Z -> {
                if (e.isShiftDown()) {
                    actions.redo();
                } else {
                    actions.undo();
                }
            }
            case Y -> actions.redo();
            case S -> actions.save();
            case O -> actions.begin();
            case PLUS, ADD, EQUALS -> actions.textSize(1);
            case MINUS, SUBTRACT -> actions.textSize(-1);
            case DIGIT0, NUMPAD0 -> actions.textSize(0);
            case LEFT, RIGHT, UP, DOWN -> {
                if (typing) {
                    return false;
                }
                double yaw = e.getCode() == KeyCode.LEFT ? -TURN : e.getCode() == KeyCode.RIGHT ? TURN : 0;
                double pitch = e.getCode() == KeyCode.DOWN ? -TURN : e.getCode() == KeyCode.UP ? TURN : 0;
                picture.setCamera(picture.picture().camera().turned(yaw, pitch));
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean nudge(KeyEvent e) {
        double step = Marks.step(shown.units()) * (e.isShiftDown() ? 10 : 1);
        double x = e.getCode() == KeyCode.LEFT ? -step : e.getCode() == KeyCode.RIGHT ? step : 0;
        double y = e.getCode() == KeyCode.DOWN ? -step : e.getCode() == KeyCode.UP ? step : 0;
        if (x == 0 && y == 0) {
            return false;
        }
        if (!picture.zones().nudge(x, y)) {
            picture.handles().nudge(x, y);
        }
        return true;
    }

    private boolean plain(KeyEvent e, boolean onButton) {
        if (onButton && e.getCode() == KeyCode.SPACE) {
            return false;
        }
        double step = e.isShiftDown() ? 5 * DEGREE : DEGREE;
        switch (e.getCode()) {
            case SPACE -> transport.toggle();
            case LEFT -> transport.step(-step);
            case RIGHT -> transport.step(step);
            case HOME -> transport.jump(0);
            case END -> transport.jump(1);
            case COMMA -> transport.faster(-1);
            case PERIOD -> transport.faster(1);
            case C -> nextCase();
            case U -> actions.units();
            case T -> actions.theme();
            case P -> picture.handles().chooseNext();
            case H -> actions.hoses();
            case D -> actions.measure();
            case M -> picture.where().toggle();
            case F -> picture.fit();
            case PLUS, ADD, EQUALS -> picture.setCamera(
                    picture.picture().camera().zoomed(1 / 1.15));
            case MINUS, SUBTRACT -> picture.setCamera(picture.picture().camera().zoomed(1.15));
            case DIGIT1 -> actions.lookFrom(Camera.Place.CORNER);
            case DIGIT2 -> actions.lookFrom(Camera.Place.SIDE);
            case DIGIT3 -> actions.lookFrom(Camera.Place.END);
            case DIGIT4 -> actions.lookFrom(Camera.Place.ABOVE);
            default -> {
                return false;
            }
        }
        return true;
    }

    private void nextCase() {
        var dump = shown.dump();
        if (dump != null) {
            List<String> all =
                    dump.analysis().cases().stream().map(c -> c.name()).toList();
            shown.setLoadCase(all.get((all.indexOf(shown.loadCase()) + 1) % all.size()));
        }
    }
}
