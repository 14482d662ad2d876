// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.drive.Drive;
import tipwright.design.file.ChangedText;
import tipwright.design.file.PartsAtHand;
import tipwright.design.file.Reading;
import tipwright.linkage.Skeleton;
import tipwright.load.Contents;
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
                "Each pin is tried anywhere in its zone. Drag the corners of a zone in the picture; or press a button to"
                        + " draw a zone, then drag from one corner to the other.");
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
        ScrollPane scroll = new ScrollPane(new VBox(head, how, draw(), buttons, progress, state, answers));
        scroll.getContent().getStyleClass().add("ticket");
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().add(scroll);
        searching(false);
    }

    private Node draw() {
        FlowPane line = new FlowPane();
        line.getStyleClass().add("begin-choices");
        for (String pin : List.of(Drive.FRAME_PIN, Drive.TANK_PIN, Skeleton.PIVOT)) {
            Button button = new Button("Draw: " + pin.replace('-', ' '));
            button.setAccessibleText("draw the zone of the " + pin.replace('-', ' '));
            button.setId("draw-" + pin);
            button.setWrapText(true);
            button.setOnAction(e -> zones.draw(pin));
            line.getChildren().add(button);
        }
        return line;
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
            state.setText(Math.round(100 * now.share()) + " % searched"
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
                .map(s -> s.name().replace('-', ' ') + " " + Marks.show(s.at().x(), shown.units()) + ", "
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
        button.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
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
        PartsAtHand names = draft.parts(good.design());
        String text = ChangedText.of(good, answer.design(), new Contents(good.design()).capacity(), names::name);
        if (text == null || !(draft.with(text).read() instanceof Reading.Good)) {
            state.setText(
                    "This answer cannot be written into the file by itself: its places are given by the tape, or the actuator by its"
                            + " data. 'tipwright place' prints what to put there.");
            return;
        }
        shown.editor().change(text);
        searched = null;
        ghosts.show(List.of());
        state.setText("Taken over; Undo brings back what was there.");
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
        Thread thread = new Thread(() -> {
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
        thread.setName("weld tolerance");
        thread.setDaemon(true);
        thread.start();
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
        ghosts.show(List.of());
        ghosts.allow(0);
        zones.show(false);
    }
}
