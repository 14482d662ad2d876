// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.nio.file.Path;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;
import tipwright.check.rule.Finding;
import tipwright.geometry.Vec2;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.card.CardHost;
import tipwright.viewer.editor.DesignEditor;
import tipwright.viewer.editor.Handle;
import tipwright.viewer.editor.PartOfMachine;
import tipwright.viewer.scene.Camera;
import tipwright.viewer.scene.Theme;
import tipwright.viewer.ticket.Drawer;
import tipwright.viewer.ticket.ReadyFix;
import tipwright.viewer.ticket.TicketHost;
import tipwright.viewer.ticket.TicketPane;

/** Puts the window together: the picture with its strip of parts, the ticket beside it, the bar of the tilt below. */
public final class MainWindow implements Actions, Handles.Watcher, TicketHost, CardHost {
    private static final double BESIDE = 1.0 / 3;
    private static final double STEP = 0.1;
    /** Size of the text above which the picture is too narrow for all parts in a row. */
    private static final double WIDE = 1.15;

    private final Stage stage;
    private final WindowState shown;
    private final Scene scene;
    private final Banner banner = new Banner();
    private final KeysPane keys = new KeysPane();
    private final Overlay over;
    private final StackPane right = new StackPane();
    private final VBox left = new VBox();
    private final VBox foot = new VBox();
    private final PartStrip parts;
    private final CardPlace cards;
    private final Saving saving;
    private final Tools tools;
    private final MountsPanel mounts;
    private final PicturePane picture;
    private final Transport transport;
    private final Closing closing;
    private final Office office;

    /** What stands around the window: where one comes from, and what is kept for the next time. */
    public interface Office {
        /** Shows where a machine is begun or opened, in place of this window. */
        void begin(Stage stage);

        /** A file is being worked on. */
        void used(Path file);

        /** How it is shown has been changed. */
        void liked(Theme theme, double textSize);
    }

    /** A window on a design; it shows when the stage does. */
    public MainWindow(Stage stage, DesignEditor editor, Office office, Theme theme, double textSize) {
        this.stage = stage;
        this.office = office;
        shown = new WindowState(editor, theme, textSize);
        mounts = new MountsPanel(shown);
        picture = new PicturePane(shown, this);
        CurvesPane curves = new CurvesPane(shown);
        transport = new Transport(shown, curves);
        over = new Overlay(picture::requestFocus);
        saving = new Saving(shown, banner, over, office);
        closing = new Closing(stage, shown, banner, saving::saveAnd);
        TopBar top = new TopBar(shown, this);
        NumbersPanel numbers = new NumbersPanel(shown);
        TicketPane ticket = new TicketPane(
                this,
                new Drawer("at-this-tilt", "the numbers at this tilt", () -> numbers),
                new Drawer("places", "the places of the pins", () -> mounts));
        ProblemsPane problems = new ProblemsPane(shown);
        Cautionary cautions = new Cautionary(shown);
        parts = new PartStrip(shown, this::part);
        cards = new CardPlace(shown, over, parts, this, this::makeRoom);
        tools = new Tools(shown, picture, over, right, saving, this);
        tools.on(top);
        ScrollPane beside = new ScrollPane(ticket);
        beside.setId("beside");
        beside.setFitToWidth(true);
        beside.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        StackPane pictures = new StackPane(picture, problems, over, keys);
        left.getChildren().add(pictures);
        VBox.setVgrow(pictures, Priority.ALWAYS);
        pictures.setMinHeight(0);
        pictures.setPrefHeight(0);
        BorderPane all = new BorderPane();
        all.setTop(new VBox(top, banner));
        all.setCenter(left);
        all.setRight(right);
        right.getChildren().add(beside);
        foot.getChildren().addAll(transport, cautions);
        all.setBottom(foot);
        right.prefWidthProperty().bind(all.widthProperty().multiply(BESIDE));
        right.minWidthProperty().bind(right.prefWidthProperty());
        scene = stage.getScene() == null ? FirstSize.scene(all) : stage.getScene();
        scene.setRoot(all);
        for (Panel panel :
                List.of(top, picture, parts, numbers, mounts, curves, transport, problems, cautions, shownBy(ticket))) {
            shown.add(panel);
        }
        new Keys(shown, this, transport, picture).listen(all);
        all.heightProperty().addListener((of, before, now) -> {
            transport.fold(shown.low(now.doubleValue()));
            makeRoom();
        });
        stage.setScene(scene);
        stage.setTitle("Tipwright: " + editor.name());
        stage.setMinWidth(900);
        stage.setMinHeight(600);
        renew();
        picture.requestFocus();
        FileWatch watch = new FileWatch(shown, banner);
        watch.start();
        Runnable end = () -> {
            watch.end();
            tools.end();
            shown.end();
            transport.end();
            picture.end();
        };
        stage.setOnHidden(e -> end.run());
        ended = end;
    }

    private final Runnable ended;

    private Panel shownBy(TicketPane ticket) {
        return new Panel() {
            @Override
            public void renew() {
                ticket.show(shown.judged());
            }

            @Override
            public void judged() {
                ticket.show(shown.judged());
            }

            @Override
            public void move(tipwright.viewer.dump.MachineState now) {
                // the ticket looks at every tilt
            }
        };
    }

    /** The strip of parts lies under the picture; with large text, so that it stays one row, under the ticket too. */
    private void arrange() {
        makeRoom();
        transport.fold(shown.low(scene.getHeight()));
        left.getChildren().remove(parts);
        foot.getChildren().remove(parts);
        if (shown.textSize() > WIDE) {
            foot.getChildren().add(0, parts);
        } else {
            left.getChildren().add(parts);
        }
    }

    /** In a low window the bar of the tilt makes room for a card while one is open. */
    private void makeRoom() {
        boolean room = cards.isOpen() && shown.low(scene.getHeight());
        transport.setVisible(!room);
        transport.setManaged(!room);
    }

    private void renew() {
        arrange();
        scene.getStylesheets().setAll(WindowStyle.sheet(shown.theme(), shown.em()));
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
    public void seen(PartOfMachine part, boolean left) {
        cards.show(part, left ? Pos.TOP_RIGHT : Pos.TOP_LEFT);
    }

    /** Opens the card of a part, or closes it when it is open. */
    void part(PartOfMachine part) {
        cards.toggle(part);
    }

    @Override
    public DesignEditor editor() {
        return shown.editor();
    }

    @Override
    public void changed() {
        shown.renew();
    }

    @Override
    public void say(String message) {
        banner.tell("card", message);
    }

    @Override
    public void undo() {
        shown.editor().undo();
        renewAll();
    }

    @Override
    public void redo() {
        shown.editor().redo();
        renewAll();
    }

    private void renewAll() {
        shown.renew();
        cards.refresh();
    }

    @Override
    public void save() {
        saving.saveAnd(() -> {});
    }

    @Override
    public void begin() {
        closing.leave("go to the start", () -> {
            ended.run();
            office.begin(stage);
        });
    }

    @Override
    public void units() {
        shown.setUnits(shown.units() == UnitSystem.METRIC ? UnitSystem.US : UnitSystem.METRIC);
    }

    @Override
    public void theme() {
        shown.setTheme(shown.theme() == Theme.DARK ? Theme.LIGHT : Theme.DARK);
        liked();
    }

    @Override
    public void textSize(int way) {
        shown.setTextSize(way == 0 ? 1 : Math.rint((shown.textSize() + way * STEP) / STEP) * STEP);
        liked();
    }

    private void liked() {
        arrange();
        scene.getStylesheets().setAll(WindowStyle.sheet(shown.theme(), shown.em()));
        office.liked(shown.theme(), shown.textSize());
    }

    @Override
    public void keys() {
        over.toggle(keys);
    }

    @Override
    public boolean close() {
        return over.closeLast();
    }

    @Override
    public void lookFrom(Camera.Place place) {
        picture.lookFrom(place);
    }

    @Override
    public void picked(Handle handle) {
        tools.measuring().offer(handle.label());
    }

    @Override
    public void hoses() {
        picture.picture().setHoses(!picture.picture().hoses());
    }

    @Override
    public void measure() {
        tools.measuring().begin(null);
    }

    @Override
    public void measureFrom(String point) {
        tools.measuring().begin(point);
    }

    @Override
    public void dragging(Handle handle, Vec2 at, @Nullable String fault) {
        tools.measuring().offer(null);
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

    @Override
    public UnitSystem inUnits() {
        return shown.units();
    }

    @Override
    public Theme inTheme() {
        return shown.theme();
    }

    @Override
    public double em() {
        return shown.em();
    }

    @Override
    public void goTo(Finding finding) {
        String loadCase = finding.loadCase();
        if (loadCase != null) {
            shown.setLoadCase(loadCase);
        }
        if (!Double.isNaN(finding.tilt())) {
            transport.pause();
            shown.stand(finding.tilt());
        }
        picture.mark(finding);
    }

    @Override
    public void apply(ReadyFix fix) {
        String text = fix.text();
        if (text != null) {
            shown.editor().change(text);
            renewAll();
        }
    }

    @Override
    public void lookForFixes(Finding finding) {
        shown.lookForFixes(finding);
    }
}
