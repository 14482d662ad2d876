// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.ArrayList;
import java.util.List;
import javafx.animation.AnimationTimer;
import javafx.scene.Cursor;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;
import tipwright.check.joint.SteelBehindCheck;
import tipwright.design.Design;
import tipwright.design.joint.Fastening;
import tipwright.design.key.NameId;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.editor.DesignEditor.Along;
import tipwright.viewer.editor.Handle;
import tipwright.viewer.editor.PartOfMachine;
import tipwright.viewer.editor.Solved;
import tipwright.viewer.scene.Picture;

/** Rings over the pins that can be dragged. While one is dragged everything is solved anew, once a frame. */
final class Handles extends Pane {
    /** Of a ring, and smallest, pixels; it grows with the text. */
    private static final double LEAST = 11;

    private static final double RADIUS = 0.75;

    private final WindowState shown;
    private final Picture picture;
    private final Watcher watcher;
    private final List<Circle> rings = new ArrayList<>();
    private final AnimationTimer clock;
    private final List<Text> names = new ArrayList<>();
    private int chosen = -1;
    private int held = -1;
    private @Nullable Vec2 target;

    /** Is told what comes of a drag. */
    interface Watcher {
        /** A point is at another place; fault: why nothing can be solved there, else null. */
        void dragging(Handle handle, Vec2 at, @Nullable String fault);

        /** Something to tell. */
        void say(String message);

        /** Another point is chosen. */
        void chosen();

        /** The drag has ended. */
        void dropped();

        /** A pin was clicked on, or chosen by its key, and stayed where it is. */
        void picked(Handle handle);

        /**
         * A part of the machine was clicked on in the picture.
         *
         * @param left whether it is in the left half
         */
        void seen(PartOfMachine part, boolean left);
    }

    Handles(WindowState shown, Picture picture, Watcher watcher) {
        this.shown = shown;
        this.picture = picture;
        this.watcher = watcher;
        clock = new AnimationTimer() {
            @Override
            public void handle(long now) {
                follow();
            }
        };
        clock.start();
    }

    void renew() {
        List<Handle> all = shown.editor().handles();
        if (rings.size() != all.size()) {
            getChildren().clear();
            rings.clear();
            names.clear();
            for (int i = 0; i < all.size(); i++) {
                add(i, all.get(i));
            }
        }
        for (int i = 0; i < rings.size(); i++) {
            rings.get(i).setId("handle-" + NameId.of(all.get(i).label()));
            paint(i);
        }
        setVisible(shown.dump() != null);
        grow();
        place();
    }

    private double radius() {
        return Math.max(LEAST, RADIUS * shown.em());
    }

    /** Rings and names as large as the text. */
    private void grow() {
        Font font = Font.font("System", FontWeight.BOLD, shown.em());
        rings.forEach(ring -> ring.setRadius(radius()));
        names.stream().filter(name -> !name.getFont().equals(font)).forEach(name -> name.setFont(font));
    }

    private void add(int i, Handle handle) {
        Circle ring = new Circle(radius());
        ring.setCursor(Cursor.MOVE);
        ring.setStrokeWidth(3);
        ring.setAccessibleText("drag the " + handle.label());
        Text name = new Text(handle.label());
        name.setFont(Font.font("System", FontWeight.BOLD, shown.em()));
        name.setMouseTransparent(true);
        ring.setOnMousePressed(e -> {
            held = i;
            choose(i);
            e.consume();
        });
        ring.setOnMouseDragged(e -> {
            target = stowed(sceneToLocal(e.getSceneX(), e.getSceneY()));
            e.consume();
        });
        ring.setOnMouseReleased(e -> {
            drop();
            e.consume();
        });
        ring.hoverProperty().addListener((o, was, is) -> paint(i));
        rings.add(ring);
        names.add(name);
        getChildren().addAll(ring, name);
    }

    private void paintAll() {
        for (int i = 0; i < rings.size(); i++) {
            paint(i);
        }
    }

    private void paint(int i) {
        boolean on = i == chosen || rings.get(i).isHover();
        Color ink = shown.theme().ink();
        Color edge = on ? shown.theme().push() : ink;
        Color inside = ink.deriveColor(0, 1, 1, on ? 0.25 : 0.06);
        if (!edge.equals(rings.get(i).getStroke())
                || !inside.equals(rings.get(i).getFill())) {
            // what is as it was need not be drawn again
            rings.get(i).setStroke(edge);
            rings.get(i).setFill(inside);
        }
        if (!ink.equals(names.get(i).getFill())) {
            names.get(i).setFill(ink);
        }
        names.get(i).setVisible(on);
    }

    private @Nullable Vec2 stowed(javafx.geometry.Point2D mouse) {
        MachineState now = shown.now();
        if (now == null || held < 0) {
            return null;
        }
        Handle handle = shown.editor().handles().get(held);
        Vec2 p = picture.camera().onPlane(new Vec2(mouse.getX(), mouse.getY()), depth(handle), getWidth(), getHeight());
        if (!Double.isFinite(p.x()) || p.norm() > 50) {
            return null;
        }
        return now.bodies().get(handle.body()).stowed(p);
    }

    private double depth(Handle handle) {
        DumpStates dump = shown.dump();
        return dump == null ? 0 : depth(dump.design(), handle.path().equals(Handle.PIVOT));
    }

    /** The z at which a place is shown, m: the pivot at the bearing in front, all else at the first actuator. */
    static double depth(Design design, boolean pivot) {
        return pivot
                ? design.pivot().bearings().get(1).z()
                : design.drive().actuators().get(0).z();
    }

    /** Once a frame: takes the drag to where the mouse is now. */
    private void follow() {
        Vec2 to = target;
        target = null;
        if (to != null && held >= 0) {
            Handle handle = shown.editor().handles().get(held);
            String fault = shown.editor().drag(handle, to);
            watcher.dragging(handle, to, fault);
            if (fault == null) {
                shown.renew();
            }
            last = to;
        }
    }

    private @Nullable Vec2 last;
    private boolean told;
    private boolean warned;

    private void drop() {
        follow();
        Vec2 to = last;
        if (held >= 0 && to != null) {
            written(shown.editor().handles().get(held), to);
        }
        boolean moved = to != null;
        held = -1;
        last = null;
        watcher.dropped();
        if (moved) {
            shown.renew();
        } else {
            pick();
        }
    }

    private void written(Handle handle, Vec2 to) {
        Along along = shown.editor().drop(handle, to);
        if (along == Along.STAYED) {
            watcher.say(
                    "The pin was moved alone: its weld, bolts or links are placed by names or by the tape; move them in"
                            + " the file.");
        } else if (along == Along.WENT) {
            boolean untold = !warned && untold(handle);
            if (untold || !told) {
                watcher.say("What holds a pin goes along with it"
                        + (untold ? ": see that there is steel behind it there." : "."));
            }
            told = true;
            warned |= untold;
        }
    }

    /** Whether the checks cannot tell what is behind what holds a point, where it is now. */
    private boolean untold(Handle handle) {
        Solved solved = shown.editor().solved();
        List<String> joints =
                handle.path().equals(Handle.PIVOT) ? Fastening.BEARINGS : List.of(NameId.of(handle.label()));
        return solved == null || joints.stream().anyMatch(joint -> SteelBehindCheck.untold(solved.analysis(), joint));
    }

    /** Ends with the window. */
    void end() {
        clock.stop();
    }

    /** Chooses the next point for the keys. */
    void chooseNext() {
        if (!rings.isEmpty()) {
            choose((chosen + 1) % rings.size());
            pick();
        }
    }

    private void pick() {
        Handle handle = chosen();
        if (handle != null) {
            watcher.picked(handle);
        }
    }

    private void choose(int i) {
        chosen = i;
        paintAll();
        watcher.chosen();
    }

    /** The point that is chosen; null when none is. */
    @Nullable
    Handle chosen() {
        List<Handle> all = shown.editor().handles();
        return chosen >= 0 && chosen < all.size() ? all.get(chosen) : null;
    }

    /** Moves the chosen point by a step, m. */
    void nudge(double x, double y) {
        List<Handle> all = shown.editor().handles();
        if (chosen >= 0 && chosen < all.size()) {
            Handle handle = all.get(chosen);
            written(handle, handle.at().plus(new Vec2(x, y)));
            shown.renew();
        }
    }

    /** Puts the rings over their pins. */
    void place() {
        MachineState now = shown.now();
        List<Handle> all = shown.editor().handles();
        for (int i = 0; now != null && i < Math.min(rings.size(), all.size()); i++) {
            Handle h = all.get(i);
            Vec2 stowed = i == held && last != null ? last : h.at();
            Vec2 at = now.bodies()
                    .get(Math.min(h.body(), now.bodies().size() - 1))
                    .place(stowed);
            Vec2 p = picture.camera().project(new Vec3(at.x(), at.y(), depth(h)), getWidth(), getHeight());
            boolean seen = !Double.isNaN(p.x()) && p.x() > 0 && p.y() > 0 && p.x() < getWidth() && p.y() < getHeight();
            rings.get(i).setVisible(seen);
            rings.get(i).setCenterX(p.x());
            rings.get(i).setCenterY(p.y());
            names.get(i).setX(p.x() + radius() + 4);
            names.get(i).setY(p.y() - radius());
        }
    }
}
