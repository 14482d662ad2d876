// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.io.File;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import javafx.geometry.Point2D;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;
import tipwright.viewer.card.CardHost;
import tipwright.viewer.card.DimensionOverlay;
import tipwright.viewer.card.DimensionPicker;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.photo.PhotoPane;
import tipwright.viewer.scene.Camera;

/** What can be asked for beside the machine itself: search, measuring, a photo, handing over. Each is opened by its button and closed by it, or by Esc. */
final class Tools {
    private static final String MEASURE = "measure";

    /** Nearer to stowed than this, the machine counts as stowed, rad. */
    private static final double STOWED = 1e-3;

    private final WindowState shown;
    private final PicturePane picture;
    private final Overlay over;
    private final StackPane beside;
    private final Saving saving;
    private final CardHost host;
    private final DimensionOverlay dimensions;
    private final MeasurePane measuring;
    private final Map<String, Tool> open = new LinkedHashMap<>();

    /**
     * Something that is open.
     *
     * @param end tidies up when it is closed
     */
    private record Tool(Node node, Runnable end) {}

    /**
     * Nothing is open yet.
     *
     * @param beside where the ticket stands
     */
    Tools(WindowState shown, PicturePane picture, Overlay over, StackPane beside, Saving saving, CardHost host) {
        this.shown = shown;
        this.picture = picture;
        this.over = over;
        this.beside = beside;
        this.saving = saving;
        this.host = host;
        dimensions = new DimensionOverlay(host, this::seen);
        measuring = new MeasurePane(shown, picture, over, dimensions);
        picture.lay(measuring.beside(), true, () -> {});
        picture.lay(dimensions, false, dimensions::refresh);
        picture.lay(measuring, false, measuring::place);
    }

    /** Puts their buttons on the bar. */
    void on(TopBar top) {
        top.add(button("Search", "search", "search for better places of the pins", this::search));
        MenuButton more = new MenuButton("Tools");
        more.setId("tools");
        more.getItems().add(item("Measure between two points", "measuring", this::measure));
        more.getItems().add(item("From a photo", "from-photo", this::photo));
        top.add(button("Hand over", "hand-over", "report, sheet, pictures", this::paper));
        top.add(more);
    }

    private static MenuItem item(String words, String id, Runnable deed) {
        MenuItem item = new MenuItem(words);
        item.setId(id);
        item.setOnAction(e -> deed.run());
        return item;
    }

    private static Button button(String words, String id, String said, Runnable deed) {
        Button button = new Button(words);
        button.setId(id);
        button.setAccessibleText(said);
        button.setOnAction(e -> deed.run());
        return button;
    }

    /** Closes what is open by that name, or opens it. */
    private void toggle(String name, StackPane place, Pos where, Supplier<Tool> made) {
        Tool before = open.remove(name);
        if (before != null) {
            over.takeAway(before.node);
            before.end.run();
            return;
        }
        Tool tool = made.get();
        over.lay(place, tool.node, where, () -> {
            tool.end.run();
            open.remove(name);
        });
        open.put(name, tool);
    }

    private void search() {
        toggle("search", beside, Pos.TOP_RIGHT, () -> {
            picture.lookFrom(Camera.Place.SIDE);
            picture.zones().show(true);
            SearchPane pane = new SearchPane(shown, picture.ghosts(), picture.zones(), this::search);
            return new Tool(pane, pane::end);
        });
    }

    private void paper() {
        toggle("paper", beside, Pos.TOP_RIGHT, () -> {
            HandOverPane pane = new HandOverPane(shown, saving, this::paper);
            return new Tool(pane, pane::end);
        });
    }

    /** Dimension lines belong to the stowed machine from the side: it is shown so. */
    private void measure() {
        DumpStates dump = shown.dump();
        if (dump == null && !open.containsKey(MEASURE)) {
            return;
        }
        toggle(MEASURE, beside, Pos.TOP_RIGHT, () -> {
            if (dump != null) {
                shown.stand(dump.first());
            }
            picture.lookFrom(Camera.Place.SIDE);
            Button close = button("Close", "measuring-close", "close measuring", this::measure);
            VBox box = new VBox(new DimensionPicker(host, dimensions), close);
            box.getStyleClass().add("card");
            box.setMaxSize(Double.MAX_VALUE, Region.USE_PREF_SIZE);
            return new Tool(box, dimensions::clear);
        });
    }

    private void photo() {
        toggle("photo", over, Pos.CENTER, () -> {
            PhotoPane pane = new PhotoPane(host, shown.theme());
            Button choose = button("Open a photo ...", "photo-open", "open a photo", () -> choose(pane));
            Button close = button("Close", "photo-close", "close the photo", this::photo);
            FlowPane buttons = new FlowPane(choose, close);
            buttons.getStyleClass().add("strip");
            pane.setTop(buttons);
            pane.getStyleClass().add("page");
            return new Tool(pane, () -> {});
        });
    }

    private void choose(PhotoPane pane) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Open a photo");
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("Photos", "*.png", "*.jpg", "*.jpeg"));
        File chosen = chooser.showOpenDialog(pane.getScene().getWindow());
        if (chosen != null) {
            pane.open(chosen.toPath());
        }
    }

    /** Measuring between points in the picture. */
    MeasurePane measuring() {
        return measuring;
    }

    /** Where a point is in the picture; null while the tank is up, since the tape is held to a stowed machine. */
    private @Nullable Point2D seen(Vec2 stowed) {
        DumpStates dump = shown.dump();
        MachineState now = shown.now();
        if (dump == null || now == null || Math.abs(now.tilt() - dump.first()) > STOWED) {
            return null;
        }
        Vec2 p = picture.planeOf(dump.design(), now, stowed).of(stowed);
        return new Point2D(p.x(), p.y());
    }

    /** Ends with the window. */
    void end() {
        open.values().forEach(tool -> tool.end.run());
    }
}
