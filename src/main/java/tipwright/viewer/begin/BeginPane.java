// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.begin;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import tipwright.check.SideThreads;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.design.file.ShippedDesigns;
import tipwright.interview.Interview;
import tipwright.viewer.scene.Theme;

/** The start: a new machine question by question, a file, one of those that were worked on, or an example by its picture. */
public final class BeginPane extends StackPane {
    private static final double WIDE = 60;
    private static final double HIGH = 40;
    private static final double TEXT_TO_MM = 5;

    private final Remembered remembered;
    private final Beginner beginner;
    private final double em;
    private final Theme theme;
    private final Label wrong = new Label();
    private final TextField file = new TextField();
    private final ScrollPane choices = new ScrollPane();
    private final ExecutorService painter = SideThreads.queue("examples");

    /**
     * The start.
     *
     * @param em height of the text, pixels
     */
    public BeginPane(Remembered remembered, Beginner beginner, Theme theme, double em) {
        this.remembered = remembered;
        this.beginner = beginner;
        this.theme = theme;
        this.em = em;
        setId("begin-pane");
        wrong.setId("begin-wrong");
        wrong.setWrapText(true);
        wrong.managedProperty().bind(wrong.textProperty().isNotEmpty());
        VBox all =
                new VBox(head("Tipwright", "big"), head("Checks a tilting slurry tank before you weld it.", "faint"));
        all.getStyleClass().add("begin");
        all.getChildren().addAll(first(), wrong);
        List<Path> files = remembered.files();
        if (!files.isEmpty()) {
            all.getChildren().addAll(head("Worked on before", "head"), recent(files));
        }
        all.getChildren()
                .addAll(head("Examples, all invented; a change is saved as a file of your own", "head"), examples());
        choices.setContent(all);
        choices.setFitToWidth(true);
        choices.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        getChildren().add(choices);
        setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ESCAPE && getChildren().get(0) != choices) {
                choices();
                e.consume();
            }
        });
    }

    private static Label head(String words, String style) {
        Label label = new Label(words);
        label.getStyleClass().add(style);
        label.setWrapText(true);
        return label;
    }

    private Node first() {
        Interview left = Interview.resumed(remembered.left());
        Button ask = new Button("New machine, question by question");
        ask.setId("begin-new");
        ask.setOnAction(e -> ask(Interview.start()));
        Button goOn = new Button("Go on with " + left.given() + " answers");
        goOn.setId("begin-go-on");
        goOn.setOnAction(e -> ask(left));
        goOn.setVisible(left.given() > 0);
        goOn.setManaged(left.given() > 0);
        file.setId("begin-file");
        file.setPromptText("a file, such as my-tank.yaml");
        file.setAccessibleText("file to open; Enter opens it");
        file.setPrefColumnCount(22);
        file.setOnAction(e -> open(file.getText()));
        Button open = new Button("Open");
        open.setId("begin-open");
        open.setOnAction(e -> open(file.getText()));
        Button browse = new Button("Browse ...");
        browse.setId("begin-browse");
        browse.setOnAction(e -> browse());
        HBox opening = new HBox(file, open, browse);
        opening.getStyleClass().add("line");
        FlowPane line = new FlowPane(ask, goOn, opening);
        line.getStyleClass().add("begin-choices");
        return line;
    }

    private Node recent(List<Path> files) {
        FlowPane line = new FlowPane();
        line.getStyleClass().add("begin-choices");
        for (int i = 0; i < files.size(); i++) {
            Path path = files.get(i);
            Button button = new Button(String.valueOf(path.getFileName()));
            button.setId("recent-" + i);
            button.setAccessibleText("open " + path);
            button.setTooltip(new javafx.scene.control.Tooltip(path.toString()));
            button.setOnAction(e -> open(path.toString()));
            line.getChildren().add(button);
        }
        return line;
    }

    private Node examples() {
        FlowPane all = new FlowPane();
        all.setId("examples");
        all.getStyleClass().add("begin-choices");
        double wide = 15 * em;
        double high = wide * HIGH / WIDE;
        for (String name : ShippedDesigns.names()) {
            StackPane frame = new StackPane();
            frame.setMinSize(wide, high);
            frame.setMaxSize(wide, high);
            Button button = new Button(name, frame);
            button.setId("example-" + name);
            button.setContentDisplay(ContentDisplay.TOP);
            button.getStyleClass().add("example");
            button.setWrapText(true);
            button.setMaxWidth(wide + 2 * em);
            button.setOnAction(e -> beginner.example(name));
            all.getChildren().add(button);
            painter.execute(() -> paint(name, button, frame, wide));
        }
        return all;
    }

    private void paint(String name, Button button, StackPane frame, double wide) {
        if (!(DesignFile.shipped(name + ".yaml") instanceof Reading.Good good)) {
            return;
        }
        Design design = good.design();
        byte[] png = Thumbnail.png(design, WIDE, HIGH, Math.max(TEXT_TO_MM, wide / WIDE));
        Platform.runLater(() -> {
            button.setText(design.name());
            if (design.about() != null) {
                button.setAccessibleText(design.name() + ": " + design.about());
            }
            if (png != null) {
                ImageView view = new ImageView(new Image(new ByteArrayInputStream(png)));
                view.setFitWidth(wide);
                view.setPreserveRatio(true);
                frame.getChildren().setAll(view);
            }
        });
    }

    private void browse() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Open a design");
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("Designs", "*.yaml", "*.yml"));
        File chosen = chooser.showOpenDialog(getScene().getWindow());
        if (chosen != null) {
            open(chosen.toString());
        }
    }

    private void open(String typed) {
        try {
            Path path = Path.of(typed.strip());
            if (typed.isBlank() || !Files.isRegularFile(path)) {
                wrong.setText(
                        typed.isBlank() ? "Type the name of a file, or browse." : "There is no file " + path + ".");
            } else {
                beginner.open(path);
            }
        } catch (InvalidPathException e) {
            wrong.setText("'" + typed + "' is no name for a file.");
        }
    }

    private void ask(Interview interview) {
        AskPane pane = new AskPane(interview, remembered, theme, em, beginner::fresh, this::choices);
        getChildren().setAll(pane);
        pane.ready();
    }

    private void choices() {
        getChildren().setAll(choices);
        choices.requestFocus();
    }

    /** Tells what went wrong. */
    public void say(String words) {
        wrong.setText(words);
    }

    /** Ends with the window, or when it makes room for a machine. */
    public void end() {
        painter.shutdownNow();
    }

    /** Takes the keys. */
    public void ready() {
        Node first = lookup("#begin-new");
        if (first != null) {
            first.requestFocus();
        }
    }
}
