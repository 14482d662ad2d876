// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.Cursor;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polygon;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.around.KeepOut;
import tipwright.design.around.Mounts;
import tipwright.design.around.Zone;
import tipwright.design.drive.Drive;
import tipwright.design.file.Reading;
import tipwright.design.key.NameId;
import tipwright.geometry.Vec2;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.editor.Draft;
import tipwright.viewer.scene.Camera;
import tipwright.viewer.scene.PlaneView;
import tipwright.viewer.scene.Theme;

/** The zones in which pins may go, over the machine: corners are dragged, a new zone is drawn corner to corner. Each is one step of undo. */
final class ZonePane extends Pane {
    private static final double GRIP = 0.6;

    /** Zones are drawn at least so wide and so high, m. */
    private static final double LEAST = 0.01;

    /** From the pin to the edge of a zone that is put round it, m. */
    private static final double HALF = 0.1;

    private final WindowState shown;
    private final PicturePane picture;
    private final Consumer<String> say;
    private String drawing = "";
    private @Nullable Vec2 first;
    private @Nullable Drawn drawn;
    private Runnable watcher = () -> {};
    private final Grips grips;

    /** What the picture of the zones depends on. */
    private record Drawn(
            boolean on,
            @Nullable DumpStates dump,
            double tilt,
            Camera camera,
            double width,
            double height,
            double em,
            Theme theme) {
        static Drawn of(WindowState shown, PicturePane picture, boolean on) {
            MachineState now = shown.now();
            return new Drawn(
                    on,
                    shown.dump(),
                    now == null ? 0 : now.tilt(),
                    picture.picture().camera(),
                    picture.getWidth(),
                    picture.getHeight(),
                    shown.em(),
                    shown.theme());
        }
    }

    /**
     * Nothing is drawn yet.
     *
     * @param say tells what went wrong
     */
    ZonePane(WindowState shown, PicturePane picture, Consumer<String> say) {
        this.shown = shown;
        this.picture = picture;
        this.say = say;
        grips = new Grips(this, shown, this::place);
        setId("zones");
        setPickOnBounds(false);
        setVisible(false);
        setOnMousePressed(this::press);
        setOnMouseDragged(e -> {
            if (!drawing.isEmpty()) {
                e.consume();
            }
        });
        setOnMouseReleased(this::release);
    }

    /** Shows the zones or takes them away. */
    void show(boolean on) {
        setVisible(on);
        draw("");
        place();
    }

    /** Is told whenever the zones, or the design under them, are others. */
    void watch(Runnable told) {
        watcher = told;
    }

    /** The pin whose zone the next drag draws; empty: none. */
    String drawing() {
        return drawing;
    }

    /** Has the next drag draw the zone of a pin; empty: none. */
    void draw(String pin) {
        drawing = pin;
        first = null;
        setPickOnBounds(!pin.isEmpty());
        setCursor(pin.isEmpty() ? Cursor.DEFAULT : Cursor.CROSSHAIR);
    }

    private @Nullable Design design() {
        DumpStates dump = shown.dump();
        return dump == null ? null : dump.design();
    }

    private @Nullable PlaneView view(Design design, String pin) {
        MachineState now = shown.now();
        Vec2 at = design.drive().places(design.pivot().at()).get(pin);
        return now == null || at == null ? null : picture.planeOf(design, now, at);
    }

    private void press(MouseEvent e) {
        Design design = design();
        PlaneView view = design == null || drawing.isEmpty() ? null : view(design, drawing);
        if (view != null) {
            first = view.stowed(e.getX(), e.getY());
            e.consume();
        }
    }

    private void release(MouseEvent e) {
        Design design = design();
        Vec2 from = first;
        PlaneView view = design == null || drawing.isEmpty() ? null : view(design, drawing);
        if (view == null || from == null) {
            return;
        }
        Vec2 to = view.stowed(e.getX(), e.getY());
        e.consume();
        String pin = drawing;
        draw("");
        watcher.run();
        if (!(Math.abs(to.x() - from.x()) > LEAST) || !(Math.abs(to.y() - from.y()) > LEAST)) {
            say.accept("Drag from one corner of the zone to the other.");
            return;
        }
        box(pin, from, to);
    }

    /** Gives a place a square zone round where it is drawn, for those who draw with the keyboard. */
    void around(String pin) {
        draw("");
        Design design = design();
        Vec2 at = design == null
                ? null
                : design.drive().places(design.pivot().at()).get(pin);
        if (at != null) {
            Vec2 half = new Vec2(HALF, HALF);
            box(pin, at.minus(half), at.plus(half));
        }
    }

    private void box(String pin, Vec2 from, Vec2 to) {
        double west = Math.min(from.x(), to.x());
        double east = Math.max(from.x(), to.x());
        double low = Math.min(from.y(), to.y());
        double top = Math.max(from.y(), to.y());
        List<Vec2> corners =
                List.of(new Vec2(west, low), new Vec2(east, low), new Vec2(east, top), new Vec2(west, top));
        Draft draft = Draft.of(shown.editor());
        if (draft.read() instanceof Reading.Good good) {
            write(draft, () -> ZoneText.drawn(good, pin, corners, shown.editor().tape()));
        }
    }

    /** Lets a place stay where it is drawn. */
    void takeOut(String pin) {
        Draft draft = Draft.of(shown.editor());
        if (draft.read() instanceof Reading.Good good) {
            write(draft, () -> ZoneText.takenOut(good, pin));
        }
    }

    /** Moves the corner or the zone that has the keyboard by a step, m; false: none has. */
    boolean nudge(double x, double y) {
        return grips.nudge(new Vec2(x, y));
    }

    private interface Edit {
        String text();
    }

    private void write(Draft draft, Edit edit) {
        try {
            String text = edit.text();
            if (draft.with(text).read() instanceof Reading.Bad bad) {
                say.accept(bad.problems().get(0).text());
            } else {
                shown.editor().change(text);
            }
        } catch (IllegalArgumentException e) {
            say.accept("The zone cannot be written into the file: " + e.getMessage());
        }
        drawn = null;
        shown.renew();
    }

    /** Puts all of it where it belongs in the picture. */
    void place() {
        Drawn now = Drawn.of(shown, picture, isVisible());
        if (grips.held() || now.equals(drawn)) {
            return;
        }
        drawn = now;
        String focused = grips.focused();
        redraw();
        grips.focus(focused);
        watcher.run();
    }

    private void redraw() {
        getChildren().clear();
        grips.clear();
        Design design = design();
        Mounts mounts = design == null ? null : design.mounts();
        if (!isVisible() || design == null || mounts == null || picture.getHeight() <= 0) {
            return;
        }
        Map<String, Vec2> places = design.drive().places(design.pivot().at());
        for (String pin : places.keySet()) {
            Zone zone = mounts.zone(pin);
            PlaneView view = zone == null ? null : view(design, pin);
            String path = ZoneText.path(design, pin);
            if (zone != null && view != null && path != null) {
                zone(pin, zone, view, path);
            }
        }
        PlaneView frame = view(design, Drive.FRAME_PIN);
        if (frame != null) {
            for (KeepOut out : mounts.keepOuts()) {
                Polygon area = polygon(out.outline(), frame);
                area.setFill(shown.theme().ink().deriveColor(0, 1, 1, 0.35));
                area.setMouseTransparent(true);
                getChildren()
                        .addAll(
                                area,
                                name(
                                        "not here: " + out.name(),
                                        frame.of(out.outline().get(0))));
            }
        }
    }

    /** The upper left corner. */
    private static Vec2 corner(Zone zone) {
        return zone.outline().stream()
                .min(Comparator.comparingDouble(p -> p.x() - 2 * p.y()))
                .orElse(Vec2.ZERO);
    }

    private static Polygon polygon(List<Vec2> outline, PlaneView view) {
        Polygon area = new Polygon();
        for (Vec2 corner : outline) {
            Vec2 p = view.of(corner);
            area.getPoints().addAll(p.x(), p.y());
        }
        return area;
    }

    private Text name(String words, Vec2 at) {
        Text text = new Text(at.x() + 4, at.y() - 4, words);
        text.setFont(Font.font("System", 0.88 * shown.em()));
        text.setFill(shown.theme().ink());
        text.setMouseTransparent(true);
        return text;
    }

    private void zone(String pin, Zone zone, PlaneView view, String path) {
        Color ink = shown.theme().bearing();
        Polygon area = polygon(zone.outline(), view);
        area.setFill(ink.deriveColor(0, 1, 1, 0.15));
        area.setStroke(ink);
        area.setStrokeWidth(2);
        area.setMouseTransparent(true);
        String words = NameId.words(pin) + " zone";
        Text name = name(words, view.of(corner(zone)));
        name.setMouseTransparent(false);
        name.setId("zone-" + pin);
        getChildren().addAll(area, name);
        List<Circle> rings = new ArrayList<>();
        grips.add(name, words + ", all of it", view, by -> corners(path, all(zone), by), by -> {
            area.setTranslateX(by.getX());
            area.setTranslateY(by.getY());
            rings.forEach(g -> {
                g.setTranslateX(by.getX());
                g.setTranslateY(by.getY());
            });
        });
        for (int i = 0; i < zone.outline().size(); i++) {
            int number = i;
            Circle grip =
                    new Circle(area.getPoints().get(2 * i), area.getPoints().get(2 * i + 1), GRIP * shown.em());
            grip.setFill(ink);
            grip.setId("zone-" + pin + "-" + (i + 1));
            Vec2 at = zone.outline().get(i);
            grips.add(
                    grip,
                    "corner " + (i + 1) + " of the zone of the " + NameId.words(pin),
                    view,
                    by -> corners(path, Map.of(number, at), by),
                    by -> {
                        area.getPoints().set(2 * number, grip.getCenterX() + by.getX());
                        area.getPoints().set(2 * number + 1, grip.getCenterY() + by.getY());
                    });
            rings.add(grip);
        }
        getChildren().addAll(rings);
    }

    private static Map<Integer, Vec2> all(Zone zone) {
        Map<Integer, Vec2> all = new LinkedHashMap<>();
        zone.outline().forEach(p -> all.put(all.size(), p));
        return all;
    }

    /** Writes corners of an outline elsewhere, by number. */
    private void corners(String path, Map<Integer, Vec2> corners, Vec2 by) {
        Draft draft = Draft.of(shown.editor());
        write(draft, () -> {
            String text = draft.text();
            for (Map.Entry<Integer, Vec2> c : corners.entrySet()) {
                text = ZoneText.corner(
                        text,
                        path,
                        c.getKey(),
                        c.getValue().plus(by),
                        shown.editor().tape());
            }
            return text;
        });
    }
}
