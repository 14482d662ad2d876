// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.scene.Eye;

/** The keyboard: everything that the mouse can do. */
final class Keys {
    private static final double DEGREE = Math.toRadians(1);
    private static final double TURN = Math.toRadians(6);

    private final Desk desk;
    private final Deeds deeds;
    private final Transport transport;
    private final PicturePane picture;

    Keys(Desk desk, Deeds deeds, Transport transport, PicturePane picture) {
        this.desk = desk;
        this.deeds = deeds;
        this.transport = transport;
        this.picture = picture;
    }

    void listen(Scene scene) {
        scene.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            boolean typing = scene.getFocusOwner() instanceof TextInputControl;
            if (done(e, typing)) {
                e.consume();
            }
        });
    }

    private boolean done(KeyEvent e, boolean typing) {
        if (e.isControlDown() || e.isMetaDown()) {
            return withControl(e, typing);
        }
        if (e.isAltDown()) {
            return nudge(e);
        }
        return e.getCode() == KeyCode.F1 ? help() : !typing && plain(e);
    }

    private boolean help() {
        deeds.keys();
        return true;
    }

    private boolean withControl(KeyEvent e, boolean typing) {
        switch (e.getCode()) {
            case Z -> {
                if (e.isShiftDown()) {
                    deeds.redo();
                } else {
                    deeds.undo();
                }
            }
            case Y -> deeds.redo();
            case S -> deeds.save();
            case LEFT, RIGHT, UP, DOWN -> {
                if (typing) {
                    return false;
                }
                double yaw = e.getCode() == KeyCode.LEFT ? -TURN : e.getCode() == KeyCode.RIGHT ? TURN : 0;
                double pitch = e.getCode() == KeyCode.DOWN ? -TURN : e.getCode() == KeyCode.UP ? TURN : 0;
                picture.setEye(picture.picture().eye().turned(yaw, pitch));
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean nudge(KeyEvent e) {
        double step = (desk.units() == UnitSystem.METRIC ? 0.001 : 0.0254 / 16) * (e.isShiftDown() ? 10 : 1);
        switch (e.getCode()) {
            case LEFT -> picture.handles().nudge(-step, 0);
            case RIGHT -> picture.handles().nudge(step, 0);
            case UP -> picture.handles().nudge(0, step);
            case DOWN -> picture.handles().nudge(0, -step);
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean plain(KeyEvent e) {
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
            case U -> deeds.units();
            case T -> deeds.theme();
            case P -> picture.handles().chooseNext();
            case M -> picture.where().toggle();
            case F -> picture.fit();
            case PLUS, ADD, EQUALS -> picture.setEye(picture.picture().eye().zoomed(1 / 1.15));
            case MINUS, SUBTRACT -> picture.setEye(picture.picture().eye().zoomed(1.15));
            case DIGIT1 -> deeds.lookFrom(Eye.Place.CORNER);
            case DIGIT2 -> deeds.lookFrom(Eye.Place.SIDE);
            case DIGIT3 -> deeds.lookFrom(Eye.Place.END);
            case DIGIT4 -> deeds.lookFrom(Eye.Place.ABOVE);
            default -> {
                return false;
            }
        }
        return true;
    }

    private void nextCase() {
        var dump = desk.dump();
        if (dump != null) {
            List<String> all =
                    dump.analysis().cases().stream().map(c -> c.name()).toList();
            desk.setLoadCase(all.get((all.indexOf(desk.loadCase()) + 1) % all.size()));
        }
    }
}
