// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import javafx.geometry.Pos;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.BodyPosition;
import tipwright.design.Design;
import tipwright.design.around.Mounts;
import tipwright.design.around.Zone;
import tipwright.design.drive.Drive;
import tipwright.geometry.Extent;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.placement.Pin;
import tipwright.placement.PlacementMap;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.editor.Handle;
import tipwright.viewer.scene.Camera;
import tipwright.viewer.scene.Theme;
import tipwright.viewer.scene.ZoneMap;

/** The switch for the map of where the chosen pin may go, and its legend; the map itself lies over the machine. */
final class WherePane extends VBox {
    /** Room for the legend, a share of the width. */
    private static final double LEGEND = 0.24;
    /** Room for the title, a share of the height. */
    private static final double TITLE = 0.28;

    private final WindowState shown;
    private final PicturePane picture;
    private final ZoneMap zone;
    private final ToggleButton button = new ToggleButton("Where this pin can go");
    private final MapLegend legend = new MapLegend();
    private final MapWorker worker = new MapWorker(this::take);
    private @Nullable Design asked;
    private Pin pin = Pin.FRAME;
    private @Nullable PlacementMap map;
    private boolean old;
    private boolean gaps;
    private @Nullable Camera before;
    private String fault = "";
    private @Nullable PlacementMap explained;
    private @Nullable Pin explainedPin;
    private @Nullable Theme explainedIn;

    WherePane(WindowState shown, PicturePane picture, ZoneMap zone) {
        this.shown = shown;
        this.picture = picture;
        this.zone = zone;
        setAlignment(Pos.TOP_RIGHT);
        setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
        setPickOnBounds(false);
        getStyleClass().add("over");
        button.setId("where");
        button.setTooltip(new Tooltip("Shows where the frame pin, or the tank pin when chosen, may go (M)"));
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(e -> switched());
        legend.managedProperty().bind(legend.visibleProperty());
        getChildren().addAll(button, legend);
    }

    /** Shows the map or takes it away. */
    void toggle() {
        if (isVisible()) {
            button.setSelected(!button.isSelected());
            switched();
        }
    }

    private void switched() {
        DumpStates dump = shown.dump();
        Camera from = before;
        if (button.isSelected() && dump != null) {
            before = picture.picture().camera();
            picture.setCamera(near(dump.design(), picture.getWidth() / Math.max(1, picture.getHeight())));
        } else if (from != null) {
            before = null;
            picture.setCamera(from);
        }
        renew();
    }

    /** From the side, so near that the zones fill the picture beside the legend. */
    private static Camera near(Design design, double aspect) {
        List<Vec2> all = new ArrayList<>(List.of(design.pivot().at()));
        if (design.mounts() != null) {
            for (Zone given : Arrays.asList(zone(design.mounts(), Pin.FRAME), zone(design.mounts(), Pin.TANK))) {
                all.addAll(given == null ? List.of() : given.outline());
            }
        }
        all.addAll(design.drive().places(design.pivot().at()).values());
        double z = design.drive().actuators().get(0).z();
        Extent extent = Extent.of(all);
        Vec2 low = extent.low();
        Vec2 high = extent.high();
        double beside = LEGEND * Math.max(extent.width(), aspect * extent.height());
        return Camera.fitting(
                Camera.Place.SIDE,
                new Vec3(low.x(), low.y(), z),
                new Vec3(high.x() + beside, high.y() + TITLE * extent.height(), z),
                aspect);
    }

    private static @Nullable Zone zone(Mounts mounts, Pin pin) {
        return mounts.zone(name(pin));
    }

    private static String name(Pin pin) {
        return pin == Pin.FRAME ? Drive.FRAME_PIN : Drive.TANK_PIN;
    }

    /** The design, the chosen pin or the theme may have changed. */
    void renew() {
        DumpStates dump = shown.dump();
        Design design = dump == null ? null : dump.design();
        Mounts mounts = design == null ? null : design.mounts();
        boolean can = design != null
                && mounts != null
                && design.drive().direct()
                && (zone(mounts, Pin.FRAME) != null || zone(mounts, Pin.TANK) != null);
        setVisible(can);
        boolean on = can && button.isSelected();
        legend.setVisible(on);
        zone.setVisible(on);
        picture.picture().setBrief(on);
        if (on && design != null && mounts != null) {
            ask(design, mounts);
        } else {
            worker.cancel();
            asked = null;
            map = null;
        }
        place();
    }

    private void ask(Design design, Mounts mounts) {
        Handle chosen = picture.handles().chosen();
        Pin wanted = chosen != null && chosen.label().equals("tank pin") ? Pin.TANK : Pin.FRAME;
        Zone given = zone(mounts, wanted);
        if (given == null) {
            worker.cancel();
            asked = null;
            map = null;
            old = false;
            pin = wanted;
            fault = "The design's mounts: give no zone for it.";
            return;
        }
        // the map is the same wherever its own pin is
        Vec2 any = given.outline().get(0);
        Vec2 own = design.drive().places(design.pivot().at()).get(name(wanted));
        Design same = design.withDrive(design.drive().moved(p -> p.equals(own) ? any : p));
        if (wanted == pin && same.equals(asked)) {
            return;
        }
        map = wanted == pin ? map : null;
        pin = wanted;
        asked = same;
        old = true;
        fault = "";
        worker.ask(same, wanted);
    }

    private void take(MapWorker.Answer answer) {
        if (asked == null || answer.pin() != pin) {
            return;
        }
        map = answer.map();
        fault = answer.fault();
        old = !answer.last();
        gaps = answer.gaps();
        place();
    }

    /** Lays the map over its zone, and says what it means. */
    void place() {
        MachineState now = shown.now();
        DumpStates dump = shown.dump();
        boolean on = legend.isVisible() && now != null && dump != null && picture.getHeight() > 0;
        if (!on || now == null || dump == null) {
            return;
        }
        BodyPosition body = now.bodies().get(pin == Pin.FRAME ? 0 : body());
        double z = dump.design().drive().actuators().get(0).z();
        zone.show(map, old, picture.plane(z, body), shown.theme(), shown.em());
        if (!Objects.equals(map, explained) || pin != explainedPin || shown.theme() != explainedIn) {
            explained = map;
            explainedPin = pin;
            explainedIn = shown.theme();
            legend.show(pin, map, shown.theme());
        }
        legend.tell(
                !fault.isEmpty()
                        ? fault
                        : old
                                ? "Being worked out ..."
                                : gaps
                                        ? "Gaps and all other checks are in it."
                                        : "Gaps and other checks are being looked at ...");
    }

    /** Number of the body that the tank pin is on. */
    private int body() {
        return shown.editor().handles().stream()
                .filter(h -> h.label().equals("tank pin"))
                .mapToInt(Handle::body)
                .findFirst()
                .orElse(0);
    }

    /** Whether a finished map is shown. */
    boolean finished() {
        return legend.isVisible() && map != null && !old;
    }

    /** The map shown; null when there is none. */
    @Nullable
    PlacementMap map() {
        return map;
    }

    /** Ends with the window. */
    void end() {
        worker.end();
    }
}
