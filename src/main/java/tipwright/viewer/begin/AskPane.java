// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.begin;

import java.util.function.BiConsumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import tipwright.interview.Interview;
import tipwright.interview.Question;
import tipwright.quantity.QuantityException;
import tipwright.quantity.Text;
import tipwright.viewer.scene.Theme;

/** Asks for a machine one question at a time, with a side view that grows. The answers are kept after each of them. */
final class AskPane extends HBox {
    private final Remembered remembered;
    private final BiConsumer<String, String> done;
    private final Label number = new Label();
    private final ProgressBar progress = new ProgressBar();
    private final Label question = new Label();
    private final Label tape = new Label();
    private final TextField answer = new TextField();
    private final Button usual = new Button();
    private final Button back = new Button("Back");
    private final Label wrong = new Label();
    private final SidePicture picture;
    private Interview interview;

    /**
     * Asks.
     *
     * @param done takes name and text of the design
     * @param leave goes back to the start
     */
    AskPane(
            Interview interview,
            Remembered remembered,
            Theme theme,
            double em,
            BiConsumer<String, String> done,
            Runnable leave) {
        this.interview = interview;
        this.remembered = remembered;
        this.done = done;
        setId("ask-pane");
        picture = new SidePicture(theme, em);
        HBox.setHgrow(picture, Priority.ALWAYS);
        number.setId("ask-number");
        number.getStyleClass().add("faint");
        progress.setMaxWidth(Double.MAX_VALUE);
        question.setId("ask-question");
        question.getStyleClass().add("figure");
        question.setWrapText(true);
        tape.setWrapText(true);
        answer.setId("ask-answer");
        answer.setOnAction(e -> next(answer.getText()));
        question.setLabelFor(answer);
        usual.setId("ask-usual");
        usual.setWrapText(true);
        usual.setMaxWidth(Double.MAX_VALUE);
        usual.setOnAction(e -> next(""));
        wrong.setId("ask-wrong");
        wrong.setWrapText(true);
        Button next = new Button("Next");
        next.setId("ask-next");
        next.setOnAction(e -> next(answer.getText()));
        back.setId("ask-back");
        back.setOnAction(e -> {
            show(this.interview.back());
            answer.requestFocus();
        });
        Button stop = new Button("To the start");
        stop.setId("ask-stop");
        stop.setOnAction(e -> leave.run());
        FlowPane buttons = new FlowPane(next, back, stop);
        buttons.getStyleClass().add("begin-choices");
        Label kept = new Label("All answers are kept; go on from the start another day.");
        kept.getStyleClass().addAll("small", "faint");
        kept.setWrapText(true);
        VBox asked = new VBox(number, progress, question, tape, answer, usual, wrong, buttons, kept);
        asked.getStyleClass().add("begin");
        ScrollPane scroll = new ScrollPane(asked);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.prefWidthProperty().bind(widthProperty().multiply(0.45));
        scroll.setMinWidth(USE_PREF_SIZE);
        getChildren().addAll(scroll, picture);
        show(interview);
    }

    /** Takes the keys. */
    void ready() {
        answer.requestFocus();
    }

    private void next(String typed) {
        try {
            show(interview.answer(typed));
        } catch (QuantityException e) {
            String says = String.valueOf(e.getMessage());
            wrong.setText(Text.capital(says) + ".");
            answer.getStyleClass().add("wrong");
        }
        answer.requestFocus();
        answer.selectAll();
    }

    private void show(Interview other) {
        interview = other;
        answer.getStyleClass().remove("wrong");
        wrong.setText("");
        Question asked = interview.next();
        if (asked == null) {
            remembered.leave("");
            String name = interview.answers().texts().getOrDefault("name", "machine");
            done.accept(name, interview.design());
            return;
        }
        remembered.leave(interview.saved());
        int all = interview.questions();
        number.setText((interview.given() + 1) + " of " + all);
        progress.setProgress((double) interview.given() / all);
        question.setText(asked.text());
        tape.setText(interview.tape());
        answer.setText("");
        answer.setAccessibleText(asked.text() + " " + interview.tape());
        answer.setPromptText("usual: " + interview.usual());
        usual.setText("Take the usual: " + interview.usual());
        back.setDisable(interview.given() == 0);
        picture.show(interview.sketch(), interview.units());
    }
}
