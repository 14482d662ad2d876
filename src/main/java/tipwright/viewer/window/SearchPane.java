// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.Collectors;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.check.SideThreads;
import tipwright.design.Design;
import tipwright.design.NumberedPlace;
import tipwright.design.around.Mounts;
import tipwright.design.around.Zone;
import tipwright.design.file.Reading;
import tipwright.design.key.NameId;
import tipwright.placement.Aim;
import tipwright.placement.Answer;
import tipwright.placement.Candidate;
import tipwright.placement.PartsBox;
import tipwright.placement.Placement;
import tipwright.placement.Progress;
import tipwright.placement.Welder;
import tipwright.quantity.Kind;
import tipwright.quantity.Marks;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.editor.Draft;

/** The search for better places of the pins: zones, how far it is, the best so far, the answers; one of them is taken over as one step. */
final class SearchPane extends VBox {
    private final WindowState shown;
    private final GhostPane ghosts;
    private final ZonePane zones;
    private final SearchWorker worker = new SearchWorker(this::news);
    private final Button start = new Button("Search");
    private final Button stop = new Button("Stop, keep the best so far");
    private final ToggleButton weld = new ToggleButton("Weld tolerance");
    private final ProgressBar progress = new ProgressBar(0);
    private final Label state = new Label();
    private final VBox answers = new VBox();
    private final VBox places = new VBox();
    private List<Answer> found = List.of();
    private @Nullable Design searched;
    private int chosen = -1;

    SearchPane(WindowState shown, GhostPane ghosts, ZonePane zones, Runnable leave) {
        this.shown = shown;
        this.ghosts = ghosts;
        this.zones = zones;
        setId("search-pane");
        getStyleClass().add("card");
        Label head = new Label("Better places for the pins");
        head.getStyleClass().add("figure");
        Label how = new Label(
                "Each pin is tried anywhere in its zone; one without a zone stays where it is drawn. Drag the corners of a"
                        + " zone in the picture, or its name to move all of it.");
        how.setWrapText(true);
        start.setId("search-start");
        start.setOnAction(e -> start());
        stop.setId("search-stop");
        stop.setOnAction(e -> worker.stop());
        progress.setMaxWidth(Double.MAX_VALUE);
        progress.setAccessibleText("how far the search is");
        state.setId("search-state");
        state.setWrapText(true);
        Button close = new Button("Close");
        close.setId("search-close");
        close.setOnAction(e -> leave.run());
        weld.setId("weld-tolerance");
        weld.setOnAction(e -> tolerance());
        FlowPane buttons = new FlowPane(start, stop, weld, close);
        buttons.getStyleClass().add("begin-choices");
        answers.getStyleClass().add("fold");
        places.setId("zoned-places");
        places.getStyleClass().add("fold");
        zones.watch(this::list);
        list();
        ScrollPane scroll = new ScrollPane(new VBox(head, how, buttons, progress, state, answers, places));
        scroll.getContent().getStyleClass().add("ticket");
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().add(scroll);
        searching(false);
    }

    /** A line for each place that can be moved: whether it has a zone, and buttons for another. */
    private void list() {
        DumpStates dump = shown.dump();
        List<Node> lines = new ArrayList<>();
        if (dump != null) {
            NumberedPlace.of(dump.design()).forEach(place -> lines.add(line(dump.design(), place)));
        }
        places.getChildren().setAll(lines);
    }

    private Node line(Design design, NumberedPlace place) {
        String pin = place.key();
        Mounts mounts = design.mounts();
        Zone zone = mounts == null ? null : mounts.zone(ZoneText.zoned(design, pin));
        boolean drawing = zones.drawing().equals(pin);
        Label name = new Label(place.name() + (zone == null ? ": stays" : ": " + size(zone)));
        name.setWrapText(true);
        name.setId("zone-of-" + pin);
        HBox.setHgrow(name, Priority.ALWAYS);
        name.setMaxWidth(Double.MAX_VALUE);
        Button draw = new Button(drawing ? "Put one round it" : "Draw");
        draw.setAccessibleText((drawing ? "put a zone round the " : "draw the zone of the ") + place.name());
        draw.setId("draw-" + pin);
        draw.setMinWidth(USE_PREF_SIZE);
        draw.setOnAction(e -> draw(pin, place.name()));
        Button out = new Button("Take out");
        out.setAccessibleText("take the zone of the " + place.name() + " out, so that it stays where it is drawn");
        out.setId("take-out-" + pin);
        out.setMinWidth(USE_PREF_SIZE);
        out.setDisable(zone == null);
        out.setOnAction(e -> zones.takeOut(pin));
        HBox line = new HBox(name, draw, out);
        line.getStyleClass().add("line");
        line.setAlignment(Pos.CENTER_LEFT);
        return line;
    }

    /** The first press has the next drag draw it; a second one puts a zone round the pin, without a mouse. */
    private void draw(String pin, String name) {
        if (zones.drawing().equals(pin)) {
            zones.around(pin);
            state.setText("");
        } else {
            zones.draw(pin);
            state.setText("Drag in the picture from one corner of the zone of the " + name
                    + " to the other; or press again to put one round it.");
        }
        list();
        if (places.lookup("#draw-" + pin) instanceof Button again) {
            again.requestFocus();
        }
    }

    private String size(Zone zone) {
        double wide = spread(zone, true);
        double high = spread(zone, false);
        return Marks.bare(wide, shown.units()) + " x " + Marks.show(high, shown.units())
                + (zone.holes() == null ? "" : ", rows of holes");
    }

    private static double spread(Zone zone, boolean across) {
        DoubleSummaryStatistics all =
                zone.outline().stream().mapToDouble(p -> across ? p.x() : p.y()).summaryStatistics();
        return all.getMax() - all.getMin();
    }

    private void searching(boolean on) {
        start.setDisable(on);
        stop.setDisable(!on);
        progress.setVisible(on);
        progress.setManaged(on);
    }

    private void start() {
        DumpStates dump = shown.dump();
        if (dump == null) {
            return;
        }
        if (dump.design().mounts() == null) {
            state.setText("The design says nowhere where a pin may go: draw a zone first.");
            return;
        }
        searched = dump.design();
        found = List.of();
        chosen = -1;
        answers.getChildren().clear();
        ghosts.show(List.of());
        searching(true);
        state.setText("Searching ...");
        worker.start(dump.design(), shown.editor().tape());
    }

    private void news(SearchWorker.News news) {
        Progress now = news.progress();
        if (now != null) {
            progress.setProgress(now.share());
            state.setText(now.words()
                    + (Double.isNaN(news.secondsLeft()) ? "" : ", about " + Math.round(news.secondsLeft()) + " s left")
                    + "; " + best(now.best()));
            Candidate best = now.best();
            Design from = searched;
            if (best != null && from != null) {
                ghosts.show(List.of(new GhostPane.Ghost("best so far", best.in(from), true)));
            }
        }
        if (news.over()) {
            searching(false);
            state.setText(news.fault());
            Placement placement = news.found();
            if (placement != null) {
                found(placement);
            }
        }
    }

    private static String best(@Nullable Candidate best) {
        return best == null
                ? "nothing fits yet"
                : "best so far: the worst check is " + percent(best.utilisation()) + " used, with "
                        + best.actuator().name();
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    private void found(Placement placement) {
        List<String> said = new ArrayList<>(placement.notes());
        found = placement.answers().isEmpty() ? placement.nearly() : placement.answers();
        if (placement.answers().isEmpty()) {
            said.add(
                    !found.isEmpty()
                            ? "Nothing fits. What nearly fits, and what fails of it:"
                            : placement.unknown()
                                    ? "Stopped before it found anything; this does not mean that nothing fits."
                                    : "No position works. " + String.join("; ", placement.misses()));
        } else {
            said.add(found.size() + (found.size() == 1 ? " answer" : " answers")
                    + "; each passes every check there. Nothing is changed before you take one over.");
        }
        state.setText(String.join("\n", said));
        for (int i = 0; i < found.size(); i++) {
            answers.getChildren().add(row(i, found.get(i)));
        }
        choose(found.isEmpty() ? -1 : 0);
    }

    private Node row(int i, Answer answer) {
        Candidate c = answer.candidate();
        String places = c.seats().stream()
                .map(s -> NameId.words(s.name()) + " " + Marks.show(s.at().x(), shown.units()) + ", "
                        + Marks.show(s.at().y(), shown.units()))
                .collect(Collectors.joining("; "));
        String aims = answer.aims().isEmpty()
                ? "good all round"
                : answer.aims().stream().map(Aim::words).collect(Collectors.joining(", "));
        String fails = answer.failed().isEmpty()
                ? ""
                : "\nfails: "
                        + answer.failed().stream()
                                .map(f -> f.title())
                                .distinct()
                                .collect(Collectors.joining("; "));
        ToggleButton button = new ToggleButton(
                (i + 1) + ": " + aims + "\n" + places + "\n" + c.actuator().name()
                        + ", worst check " + percent(c.utilisation()) + " used, " + shown.show(c.force(), Kind.FORCE)
                        + (Double.isFinite(c.time()) ? ", up in " + shown.show(c.time(), Kind.TIME) : "") + fails);
        button.setId("answer-" + (i + 1));
        button.setWrapText(true);
        button.setMaxWidth(Double.MAX_VALUE);
        button.setAlignment(Pos.CENTER_LEFT);
        button.setOnAction(e -> choose(i));
        Button take = new Button("Take " + (i + 1) + " over");
        take.setId("take-" + (i + 1));
        take.setOnAction(e -> take(answer));
        return new VBox(button, take);
    }

    private void choose(int i) {
        chosen = i;
        List<GhostPane.Ghost> all = new ArrayList<>();
        for (int k = 0; k < found.size(); k++) {
            all.add(new GhostPane.Ghost(Integer.toString(k + 1), found.get(k).design(), k == i));
            if (answers.lookup("#answer-" + (k + 1)) instanceof ToggleButton button) {
                button.setSelected(k == chosen);
            }
        }
        ghosts.show(all);
    }

    private void take(Answer answer) {
        Draft draft = Draft.of(shown.editor());
        if (!(draft.read() instanceof Reading.Good good) || !good.design().equals(searched)) {
            state.setText("The design has been changed since the search; search again.");
            return;
        }
        String text = draft.changes(good).apply(answer.design());
        if (text == null) {
            state.setText(
                    "This answer cannot be written into the file by itself: its places are given by the tape, or the actuator by its"
                            + " data. 'tipwright place' prints what to put there.");
            return;
        }
        shown.editor().change(text);
        searched = null;
        ghosts.show(List.of());
        boolean brackets = !answer.design().fastenings().equals(good.design().fastenings());
        state.setText("Taken over" + (brackets ? ", brackets and all" : "") + "; Undo brings back what was there.");
        shown.renew();
    }

    /** Works out beside the window how far every pin may be off, and draws it as a ring round each. */
    private void tolerance() {
        ghosts.allow(0);
        DumpStates dump = shown.dump();
        if (!weld.isSelected() || dump == null) {
            return;
        }
        Design design = dump.design();
        state.setText("How far the pins may be off is being worked out ...");
        SideThreads.start("weld tolerance", () -> {
            String said;
            double off = 0;
            try {
                off = new Welder(design).tolerance(PartsBox.weld(design), 0, 1).largest();
                said = off > 0
                        ? "Every pin may be off by up to " + shown.show(off, Kind.LENGTH)
                                + " each way, and every limit is still kept. The rings are drawn " + GhostPane.LARGER
                                + " times as large."
                        : "It fails as drawn: there is nothing to spare for welds that are off.";
            } catch (CannotComputeException e) {
                said = String.valueOf(e.getMessage());
            }
            String words = said;
            double ring = off;
            Platform.runLater(() -> told(design, words, ring));
        });
    }

    private void told(Design design, String words, double ring) {
        DumpStates dump = shown.dump();
        if (weld.isSelected() && dump != null && dump.design().equals(design)) {
            state.setText(words);
            ghosts.allow(ring);
        }
    }

    /** Ends the search. */
    void end() {
        worker.end();
        zones.watch(() -> {});
        ghosts.show(List.of());
        ghosts.allow(0);
        zones.show(false);
    }
}
