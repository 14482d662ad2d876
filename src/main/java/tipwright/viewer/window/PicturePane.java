// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Rectangle;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.BodyPosition;
import tipwright.analysis.Stop;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.geometry.Vec2;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.dump.Timeline;
import tipwright.viewer.editor.Handle;
import tipwright.viewer.scene.Camera;
import tipwright.viewer.scene.Picture;
import tipwright.viewer.scene.PlaneView;
import tipwright.viewer.scene.Theme;
import tipwright.viewer.scene.ZoneMap;
import tipwright.viewer.ticket.Judged;

/** The picture in the window: drag to go round it, drag with the right button to move it, turn the wheel to come nearer. */
final class PicturePane extends StackPane implements Panel {
    /** How many frames the machine may lag behind the numbers: a quarter of a second, unless the checks at rest come first. */
    private static final int BEHIND = 15;

    private static final double RADIANS_PER_PIXEL = 0.008;
    /** Places nearer than this are one, m. */
    private static final double SAME = 1e-6;

    private final WindowState state;
    private final Picture picture;
    private final Handles handles;
    private final WherePane where;
    private final GhostPane ghosts;
    private final ZonePane zones;
    private final List<Runnable> laid = new ArrayList<>();
    private @Nullable DumpStates shown;
    private String shownCase = "";
    private @Nullable Theme shownTheme;
    private final Behind late = new Behind(this::build);
    private double lastX;
    private double lastY;

    PicturePane(WindowState state, Handles.Watcher watcher) {
        this.state = state;
        picture = new Picture(state.theme());
        handles = new Handles(state, picture, watcher);
        setId("picture");
        setMinSize(200, 160);
        ZoneMap zone = new ZoneMap();
        picture.lay(zone);
        where = new WherePane(state, this, zone);
        setAlignment(where, Pos.TOP_RIGHT);
        Rectangle frame = new Rectangle();
        frame.widthProperty().bind(widthProperty());
        frame.heightProperty().bind(heightProperty());
        setClip(frame);
        ghosts = new GhostPane(state, this);
        zones = new ZonePane(state, this, watcher::say);
        getChildren().addAll(picture, ghosts, handles, zones, where);
        handles.setPickOnBounds(false);
        picture.setOnMousePressed(this::press);
        picture.setOnMouseDragged(this::drag);
        picture.setOnMouseClicked(e -> {
            if (e.isStillSincePress() && e.getButton() == MouseButton.PRIMARY && e.getClickCount() == 1) {
                picture.partAt(e.getX(), e.getY())
                        .ifPresent(part -> watcher.seen(part, e.getX() < picture.getWidth() / 2));
            }
        });
        picture.setOnScroll(this::scroll);
        picture.setOnZoom(e -> setCamera(picture.camera().zoomed(1 / e.getZoomFactor())));
        picture.setPickOnBounds(true);
    }

    private void press(MouseEvent e) {
        lastX = e.getX();
        lastY = e.getY();
        requestFocus();
    }

    private void drag(MouseEvent e) {
        double dx = e.getX() - lastX;
        double dy = e.getY() - lastY;
        press(e);
        boolean across = e.getButton() != MouseButton.PRIMARY || e.isShiftDown();
        setCamera(
                across
                        ? picture.camera().moved(dx / getHeight(), -dy / getHeight())
                        : picture.camera().turned(-dx * RADIANS_PER_PIXEL, dy * RADIANS_PER_PIXEL));
    }

    private void scroll(ScrollEvent e) {
        if (e.getDeltaY() != 0) {
            setCamera(picture.camera().zoomed(Math.pow(1.0016, -e.getDeltaY())));
        }
    }

    Picture picture() {
        return picture;
    }

    /** How the side view of a body lies in the picture, at a z, m. */
    PlaneView plane(double z, BodyPosition body) {
        return new PlaneView(picture.camera(), z, body, getWidth(), getHeight());
    }

    /** The same of the body that a stowed place of a design moves with: at its first actuator, the pivot at the bearing in front. */
    PlaneView planeOf(Design design, MachineState now, Vec2 stowed) {
        int body = Handle.body(design.drive().skeleton(design.pivot().at()), stowed);
        boolean pivot = stowed.minus(design.pivot().at()).norm() < SAME;
        return plane(
                Handles.depth(design, pivot),
                now.bodies().get(Math.min(body, now.bodies().size() - 1)));
    }

    Handles handles() {
        return handles;
    }

    WherePane where() {
        return where;
    }

    private void place() {
        handles.place();
        where.place();
        ghosts.place();
        zones.place();
        laid.forEach(Runnable::run);
    }

    /** Ends with the window. */
    void end() {
        late.end();
        handles.end();
        where.end();
    }

    void setCamera(Camera camera) {
        picture.setCamera(camera);
        place();
    }

    void lookFrom(Camera.Place place) {
        picture.lookFrom(place);
        place();
    }

    void fit() {
        picture.fit();
        place();
    }

    @Override
    public void renew() {
        DumpStates dump = state.dump();
        if (dump != null) {
            picture.setUnits(state.units());
            picture.setTextSize(state.em());
            boolean edited = shown != null && !dump.equals(shown) && state.theme() == shownTheme;
            boolean same = dump.equals(shown) && state.loadCase().equals(shownCase) && state.theme() == shownTheme;
            if (edited) {
                late.begin(state.moving() ? 1 : BEHIND);
            } else if (!same) {
                build();
            }
        } else {
            late.end();
        }
        handles.renew();
        where.renew();
    }

    /** Builds the machine anew, as it is now. */
    private void build() {
        late.end();
        DumpStates dump = state.dump();
        MachineState now = state.now();
        if (dump != null && now != null) {
            shown = dump;
            shownCase = state.loadCase();
            shownTheme = state.theme();
            picture.setTheme(shownTheme);
            picture.setDump(dump, shownCase);
            judged();
            move(now);
        }
    }

    /** Marks what fails; nothing, as long as that is not known. */
    @Override
    public void judged() {
        if (late.waits()) {
            // what the checks say is out first; until then drawing the machine would take the time that they need
            late.hasten(1);
            return;
        }
        Judged known = state.judged();
        picture.markFindings(
                known == null
                        ? List.of()
                        : known.findings().stream()
                                .filter(f -> f.verdict() == Verdict.FAIL)
                                .toList());
    }

    /** Marks what one finding is about. */
    void mark(Finding finding) {
        picture.markFindings(List.of(finding));
    }

    /**
     * Lays something over the machine.
     *
     * @param under whether the rings of the pins lie over it
     * @param place puts it where it belongs, whenever the picture is another
     */
    void lay(Pane pane, boolean under, Runnable place) {
        laid.add(place);
        getChildren().add(getChildren().indexOf(under ? handles : where), pane);
    }

    GhostPane ghosts() {
        return ghosts;
    }

    ZonePane zones() {
        return zones;
    }

    @Override
    public void move(MachineState now) {
        if (late.waits()) {
            return;
        }
        picture.lettering().setNote(note());
        picture.show(now);
        place();
    }

    private String note() {
        DumpStates dump = state.dump();
        Timeline.Spot spot = state.spot();
        @Nullable Stop stop = dump == null ? null : dump.analysis().stop();
        if (stop != null) {
            return "It stops: " + stop.why();
        }
        return Double.isNaN(spot.time()) ? "" : String.format(java.util.Locale.ROOT, "%.1f s", spot.time());
    }

    @Override
    protected void layoutChildren() {
        super.layoutChildren();
        place();
    }
}
