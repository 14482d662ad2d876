// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.editor.DesignEditor;
import tipwright.viewer.editor.Handle;
import tipwright.viewer.scene.Camera;
import tipwright.viewer.scene.Theme;

/** Puts the window together. */
public final class MainWindow implements Actions, Handles.Watcher {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;
    private static final double BESIDE = 424;

    private final Stage stage;
    private final WindowState shown;
    private final Scene scene;
    private final Banner banner = new Banner();
    private final KeysPane keys = new KeysPane();
    private final MountsPanel mounts;
    private final PicturePane picture;
    private final Transport transport;

    /** A window on a design; it shows when the stage does. */
    public MainWindow(Stage stage, DesignEditor editor) {
        this.stage = stage;
        shown = new WindowState(editor);
        mounts = new MountsPanel(shown);
        picture = new PicturePane(shown, this);
        transport = new Transport(shown);
        new Closing(stage, shown, banner, this::saveAnd);
        TopBar top = new TopBar(shown, this);
        NumbersPanel numbers = new NumbersPanel(shown);
        ChecksPanel checks = new ChecksPanel(shown);
        FullLine full = new FullLine(shown);
        PlotStrip plots = new PlotStrip(shown);
        ProblemsPane problems = new ProblemsPane(shown);
        Cautionary cautions = new Cautionary(shown);
        checks.getChildren().add(1, full);
        VBox stack = new VBox(2, numbers, checks, mounts);
        ScrollPane beside = new ScrollPane(stack);
        beside.setFitToWidth(true);
        beside.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        beside.setPrefWidth(BESIDE);
        beside.setMinWidth(BESIDE);
        VBox.setVgrow(beside, Priority.ALWAYS);
        BorderPane all = new BorderPane();
        all.setTop(new VBox(top, banner));
        all.setCenter(new StackPane(picture, problems, keys));
        all.setRight(beside);
        all.setBottom(new VBox(2, plots, transport, cautions));
        scene = new Scene(all, WIDTH, HEIGHT);
        for (Panel panel : List.of(top, picture, numbers, checks, full, mounts, plots, transport, problems, cautions)) {
            shown.add(panel);
        }
        new Keys(shown, this, transport, picture).listen(scene);
        stage.setScene(scene);
        stage.setTitle("Tipwright: " + editor.name());
        stage.setMinWidth(900);
        stage.setMinHeight(600);
        renew();
        picture.requestFocus();
        FileWatch watch = new FileWatch(shown, banner);
        watch.start();
        stage.setOnHidden(e -> {
            watch.end();
            full.end();
            transport.end();
            picture.end();
        });
    }

    private void renew() {
        scene.getStylesheets().setAll(WindowStyle.sheet(shown.theme()));
        shown.renew();
    }

    /** Offers unsaved work that outlived a crash. */
    public void offer(String left) {
        banner.tell(
                "left",
                "Unsaved work from the last time was found.",
                new Banner.Choice("Restore it", "take-up", () -> {
                    shown.editor().change(left);
                    shown.renew();
                }),
                new Banner.Choice("Discard it", "throw-away", shown.editor()::abandon));
    }

    /** What the window shows. */
    WindowState shown() {
        return shown;
    }

    PicturePane picture() {
        return picture;
    }

    Transport transport() {
        return transport;
    }

    @Override
    public void undo() {
        shown.editor().undo();
        shown.renew();
    }

    @Override
    public void redo() {
        shown.editor().redo();
        shown.renew();
    }

    @Override
    public void save() {
        saveAnd(() -> {});
    }

    /** Saves, and on success does something more. */
    private void saveAnd(Runnable then) {
        Path to = shown.editor().file();
        if (to == null) {
            FileChooser chooser = new FileChooser();
            chooser.setTitle("Save the design as");
            chooser.setInitialFileName(shown.editor().name() + ".yaml");
            java.io.File chosen = chooser.showSaveDialog(stage);
            if (chosen == null) {
                return;
            }
            to = chosen.toPath();
        }
        try {
            shown.editor().save(to);
            banner.hide("disk");
            shown.renew();
            then.run();
        } catch (IOException e) {
            banner.tell("save", "Not saved: " + e.getMessage());
        }
    }

    @Override
    public void units() {
        shown.setUnits(shown.units() == UnitSystem.METRIC ? UnitSystem.US : UnitSystem.METRIC);
    }

    @Override
    public void theme() {
        shown.setTheme(shown.theme() == Theme.DARK ? Theme.LIGHT : Theme.DARK);
        scene.getStylesheets().setAll(WindowStyle.sheet(shown.theme()));
    }

    @Override
    public void keys() {
        keys.setVisible(!keys.isVisible());
    }

    @Override
    public void lookFrom(Camera.Place place) {
        picture.lookFrom(place);
    }

    @Override
    public void dragging(Handle handle, Vec2 at, @Nullable String fault) {
        mounts.dragging(handle, at);
        if (fault == null) {
            banner.hide("drag");
        } else {
            banner.tell("drag", "The pin cannot go there: " + fault);
        }
    }

    @Override
    public void chosen() {
        picture.where().renew();
    }

    @Override
    public void dropped() {
        banner.hide("drag");
    }
}
