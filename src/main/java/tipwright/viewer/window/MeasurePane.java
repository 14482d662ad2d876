// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Pane;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.geometry.Vec2;
import tipwright.viewer.card.DimensionOverlay;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.editor.Handle;
import tipwright.viewer.editor.MeasuredPoint;
import tipwright.viewer.scene.Camera;

/**
 * Measuring in the picture: beside the pin that was clicked on stands 'Measure from here'; then every point can be clicked on, or gone
 * to with Tab, and a dimension line lies between the two.
 */
final class MeasurePane extends Pane {
    private static final double BESIDE = 14;

    private final WindowState shown;
    private final PicturePane picture;
    private final Overlay over;
    private final DimensionOverlay lines;
    private final Pane beside = new Pane();
    private final Button here = new Button("Measure from here");
    private final Label hint = new Label();
    private final List<Target> targets = new ArrayList<>();
    private @Nullable String offered;
    private boolean offering;

    /** A point that can be measured to. */
    private record Target(MeasuredPoint point, Button button, Label name) {}

    /**
     * Nothing is measured yet.
     *
     * @param lines where the dimension lines lie
     */
    MeasurePane(WindowState shown, PicturePane picture, Overlay over, DimensionOverlay lines) {
        this.shown = shown;
        this.picture = picture;
        this.over = over;
        this.lines = lines;
        setId("measuring-points");
        setPickOnBounds(false);
        beside.setPickOnBounds(false);
        here.setId("measure-here");
        here.setVisible(false);
        here.setOnAction(e -> {
            String from = offered;
            if (from != null) {
                begin(from);
            }
        });
        beside.getChildren().add(here);
        hint.getStyleClass().add("legend");
        hint.setId("measuring-hint");
    }

    /** What lies under the rings of the pins. */
    Pane beside() {
        return beside;
    }

    /** Offers to measure from a pin, by its name; null: from none. */
    void offer(@Nullable String pin) {
        offered = pin;
        offering = true;
        here.setAccessibleText("measure from the " + pin);
        place();
    }

    /** Measures from a point by its name, which is the pin that was clicked on last unless another is given. */
    void begin(@Nullable String point) {
        String from = point == null ? offered : point;
        DumpStates dump = shown.dump();
        List<MeasuredPoint> all = MeasuredPoint.of(shown.editor());
        if (dump == null || all.stream().noneMatch(p -> p.label().equals(from))) {
            return;
        }
        end();
        offering = false;
        shown.stand(dump.first());
        picture.lookFrom(Camera.Place.SIDE);
        for (MeasuredPoint to : all) {
            if (!to.label().equals(from)) {
                target(String.valueOf(from), to);
            }
        }
        hint.setText("From the " + from
                + ": click the point to measure to, or go to it with Tab and press Enter. Esc ends it.");
        over.lay(hint, Pos.BOTTOM_CENTER, this::end);
        place();
        targets.get(0).button.requestFocus();
    }

    private void target(String from, MeasuredPoint to) {
        Label name = new Label(to.label());
        name.getStyleClass().add("legend");
        name.setMouseTransparent(true);
        Button button = new Button();
        button.setId("measure-to-" + to.label().replaceAll("[^a-z0-9]+", "-"));
        button.getStyleClass().add("target");
        button.setAccessibleText("measure to the " + to.label());
        name.visibleProperty().bind(button.hoverProperty().or(button.focusedProperty()));
        button.setOnAction(e -> measure(from, to.label()));
        button.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ENTER) {
                measure(from, to.label());
                e.consume();
            }
        });
        targets.add(new Target(to, button, name));
        getChildren().addAll(button, name);
    }

    private void measure(String from, String to) {
        if (!targets.isEmpty()) {
            over.takeAway(hint);
            end();
            lines.add(from, to);
        }
    }

    private void end() {
        over.takeAway(hint);
        targets.clear();
        getChildren().clear();
        place();
    }

    /** Puts all of it where it belongs in the picture. */
    void place() {
        DumpStates dump = shown.dump();
        MachineState now = shown.now();
        if (dump == null || now == null) {
            return;
        }
        Design design = dump.design();
        Handle pin = shown.editor().handles().stream()
                .filter(h -> h.label().equals(offered))
                .findFirst()
                .orElse(null);
        here.setVisible(pin != null && offering && !picture.zones().isVisible());
        if (pin != null) {
            Vec2 at = picture.planeOf(design, now, pin.at()).of(pin.at());
            here.autosize();
            here.relocate(
                    Math.max(0, Math.min(at.x() + BESIDE, picture.getWidth() - here.getWidth())),
                    Math.max(0, Math.min(at.y() + BESIDE, picture.getHeight() - here.getHeight())));
        }
        for (Target target : targets) {
            Vec2 at = picture.planeOf(design, now, target.point.at()).of(target.point.at());
            target.button.autosize();
            target.button.relocate(at.x() - target.button.getWidth() / 2, at.y() - target.button.getHeight() / 2);
            target.name.autosize();
            target.name.relocate(at.x() + BESIDE, at.y() - BESIDE - target.name.getHeight());
        }
    }
}
