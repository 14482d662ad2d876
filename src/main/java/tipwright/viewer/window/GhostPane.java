// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import tipwright.design.Design;
import tipwright.geometry.Vec2;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.MachineState;

/** Where other places of the pins would be, over the machine: a ring for each pin, a dashed line for the actuator, a number; and how far each pin may be off. */
final class GhostPane extends Pane {
    private static final double RING = 0.55;
    /** Rings of weld tolerance are drawn so many times as large. */
    static final int LARGER = 10;

    private final WindowState shown;
    private final PicturePane picture;
    private List<Ghost> ghosts = List.of();
    private double tolerance;

    /**
     * A machine elsewhere.
     *
     * @param name in few letters: '1'
     * @param chosen whether it stands out
     */
    record Ghost(String name, Design design, boolean chosen) {}

    GhostPane(WindowState shown, PicturePane picture) {
        this.shown = shown;
        this.picture = picture;
        setMouseTransparent(true);
        setId("ghosts");
    }

    /** Shows these. */
    void show(List<Ghost> others) {
        ghosts = List.copyOf(others);
        place();
    }

    /** Draws a ring round each pin: how far it may be off, m; 0: none. */
    void allow(double off) {
        tolerance = off;
        place();
    }

    /** Puts all of them where they belong in the picture. */
    void place() {
        getChildren().clear();
        DumpStates dump = shown.dump();
        MachineState now = shown.now();
        if (dump == null || now == null || picture.getHeight() <= 0) {
            return;
        }
        if (tolerance > 0) {
            places(dump.design()).forEach((name, at) -> {
                Vec2 p = seen(dump.design(), now, at);
                Vec2 off = seen(dump.design(), now, at.plus(new Vec2(LARGER * tolerance, 0)));
                ring(p, off.minus(p).norm(), shown.theme().centroid(), 2);
            });
        }
        for (Ghost ghost : ghosts) {
            ghost(ghost, now);
        }
    }

    private static Map<String, Vec2> places(Design design) {
        return design.drive().places(design.pivot().at());
    }

    private void ghost(Ghost ghost, MachineState now) {
        Color ink = ghost.chosen() ? shown.theme().push() : shown.theme().ink();
        double width = ghost.chosen() ? 3 : 1.5;
        List<Vec2> ends = new ArrayList<>();
        places(ghost.design()).forEach((name, at) -> {
            Vec2 p = seen(ghost.design(), now, at);
            ring(p, RING * shown.em(), ink, width);
            boolean end = name.equals(tipwright.design.drive.Drive.FRAME_PIN)
                    || name.equals(ghost.design().drive().rodPinName());
            if (end) {
                ends.add(p);
            }
        });
        if (ends.size() == 2) {
            Line line = new Line(
                    ends.get(0).x(),
                    ends.get(0).y(),
                    ends.get(1).x(),
                    ends.get(1).y());
            line.setStroke(ink);
            line.setStrokeWidth(width);
            line.getStrokeDashArray().setAll(0.5 * shown.em(), 0.4 * shown.em());
            Text name =
                    new Text(ends.get(1).x() + RING * shown.em(), ends.get(1).y() - RING * shown.em(), ghost.name());
            name.setFill(ink);
            name.setFont(Font.font("System", FontWeight.BOLD, shown.em()));
            getChildren().addAll(line, name);
        }
    }

    private void ring(Vec2 at, double radius, Color ink, double width) {
        if (!Double.isFinite(at.x()) || !Double.isFinite(radius)) {
            return;
        }
        Circle ring = new Circle(at.x(), at.y(), Math.max(2, radius), Color.TRANSPARENT);
        ring.setStroke(ink);
        ring.setStrokeWidth(width);
        getChildren().add(ring);
    }

    private Vec2 seen(Design design, MachineState now, Vec2 at) {
        return picture.planeOf(design, now, at).of(at);
    }
}
