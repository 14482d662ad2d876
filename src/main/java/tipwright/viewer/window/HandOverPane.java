// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tipwright.analysis.CannotComputeException;
import tipwright.check.SideThreads;
import tipwright.design.file.Reading;
import tipwright.report.Checked;
import tipwright.viewer.editor.Draft;
import tipwright.viewer.paper.Paperwork;
import tipwright.viewer.paper.Press;
import tipwright.viewer.ticket.Judged;

/** What can be handed over: each is made beside the window, its first page shown, and written where it is told. */
final class HandOverPane extends VBox {
    private final WindowState shown;
    private final Saving saving;
    private final Label state = new Label();
    private final VBox made = new VBox();
    private final AtomicInteger newest = new AtomicInteger();
    private final ExecutorService press = SideThreads.queue("paper");

    HandOverPane(WindowState shown, Saving saving, Runnable leave) {
        this.shown = shown;
        this.saving = saving;
        setId("hand-over-pane");
        getStyleClass().add("card");
        Label head = new Label("Hand over");
        head.getStyleClass().add("figure");
        FlowPane choices = new FlowPane();
        choices.getStyleClass().add("begin-choices");
        for (Paperwork what : Paperwork.values()) {
            Button button = new Button(what.words());
            button.setId("make-" + what.name().toLowerCase(java.util.Locale.ROOT));
            button.setWrapText(true);
            button.setOnAction(e -> make(what));
            choices.getChildren().add(button);
        }
        Button close = new Button("Close");
        close.setId("hand-over-close");
        close.setOnAction(e -> leave.run());
        state.setId("hand-over-state");
        state.setWrapText(true);
        VBox content = new VBox(head, choices, close, state, made);
        content.getStyleClass().add("ticket");
        ScrollPane scroll = new ScrollPane(content);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().add(scroll);
    }

    private void make(Paperwork what) {
        Judged judged = shown.judged();
        Checked checked = judged == null ? null : judged.checked();
        Draft draft = Draft.of(shown.editor());
        made.getChildren().clear();
        if (checked == null || !(draft.read() instanceof Reading.Good good)) {
            state.setText("The check is not finished yet; try again in a moment.");
            return;
        }
        state.setText(what.words() + ": being made ...");
        int mine = newest.incrementAndGet();
        Press work = new Press(draft, good, checked, shown.units(), System.getenv());
        press.execute(() -> {
            try {
                Press.Made paper = work.make(what);
                Platform.runLater(() -> show(what, work, paper, mine));
            } catch (IOException | CannotComputeException e) {
                Platform.runLater(() -> fail(what, String.valueOf(e.getMessage()), mine));
            }
        });
    }

    private void fail(Paperwork what, String why, int mine) {
        if (mine == newest.get()) {
            state.setText(what.words() + ": not made: " + why);
        }
    }

    private void show(Paperwork what, Press work, Press.Made paper, int mine) {
        if (mine != newest.get()) {
            return;
        }
        state.setText(what.words() + ": ready; nothing is written before you save it.");
        SavePane[] save = new SavePane[1];
        save[0] = new SavePane(
                "Save: " + what.words(),
                saving.usual(what.end()),
                to -> {
                    work.write(paper, to);
                    state.setText("Written: " + to);
                    made.getChildren().clear();
                },
                () -> made.getChildren().clear());
        save[0].setMaxWidth(Double.MAX_VALUE);
        made.getChildren().setAll(save[0]);
        byte[] preview = paper.preview();
        if (preview != null) {
            ImageView view = new ImageView(new Image(new ByteArrayInputStream(preview)));
            view.setId("preview");
            view.setPreserveRatio(true);
            view.fitWidthProperty().bind(made.widthProperty().subtract(4));
            made.getChildren().add(view);
        }
        save[0].ask();
    }

    /** Ends what is under way. */
    void end() {
        newest.incrementAndGet();
        press.shutdown();
    }
}
