// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;
import tipwright.design.file.NamedFiles;
import tipwright.viewer.begin.BeginPane;
import tipwright.viewer.begin.Beginner;
import tipwright.viewer.begin.Remembered;
import tipwright.viewer.editor.DesignEditor;
import tipwright.viewer.editor.Recovery;
import tipwright.viewer.scene.Theme;
import tipwright.viewer.start.DesignName;

/** Leads from the start to a machine and back, and remembers what was worked on. */
final class FrontDesk implements MainWindow.Office {
    private static final int LARGEST = 10_000_000;
    /** Lines of a screen on which the text has its usual size. */
    private static final double USUAL = 1080;

    private final Path unsaved;
    private final Remembered remembered;

    /**
     * Nothing is shown yet.
     *
     * @param unsaved folder for work that is not saved; what is remembered lies beside it
     */
    FrontDesk(Path unsaved) {
        this.unsaved = unsaved;
        Path beside = unsaved.toAbsolutePath().getParent();
        remembered = new Remembered(beside == null ? unsaved : beside);
    }

    @Override
    public void begin(Stage stage) {
        Theme theme = remembered.theme();
        double em = WindowStyle.EM * textSize();
        BeginPane[] pane = new BeginPane[1];
        pane[0] = new BeginPane(
                remembered,
                new Beginner() {
                    @Override
                    public void open(Path file) {
                        go(stage, new DesignName(file.toString(), false), pane[0]);
                    }

                    @Override
                    public void example(String name) {
                        go(stage, new DesignName(name, true), pane[0]);
                    }

                    @Override
                    public void fresh(String name, String text) {
                        pane[0].end();
                        startFresh(stage, name, text);
                    }
                },
                theme,
                em);
        Scene scene = stage.getScene();
        if (scene == null) {
            scene = FirstSize.scene(pane[0]);
            stage.setScene(scene);
        } else {
            scene.setRoot(pane[0]);
        }
        scene.getStylesheets().setAll(WindowStyle.sheet(theme, em));
        stage.setTitle("Tipwright");
        stage.setOnCloseRequest(null);
        stage.setOnHidden(e -> pane[0].end());
        pane[0].ready();
    }

    private void go(Stage stage, DesignName name, BeginPane from) {
        try {
            open(stage, name).picture().requestFocus();
            from.end();
        } catch (IOException e) {
            from.say(name.name() + ": " + e.getMessage());
        }
    }

    /** A window on a design, with what a crash has left of it on offer. */
    MainWindow open(Stage stage, DesignName name) throws IOException {
        Path file = name.file();
        String full =
                file == null ? "shipped/" + name.name() : file.toAbsolutePath().toString();
        Recovery recovery = Recovery.of(unsaved, full);
        String left = recovery.left();
        String text = file == null ? shipped(name.name()) : Files.readString(file);
        MainWindow window = window(stage, new DesignEditor(name.name(), file, text, recovery));
        if (file != null) {
            remembered.used(file);
        }
        if (left != null && !left.equals(text)) {
            window.offer(left);
        }
        return window;
    }

    /** A window on a design that is in no file yet: all of it is unsaved work. */
    private void startFresh(Stage stage, String name, String text) {
        DesignEditor editor = new DesignEditor(name, null, text, Recovery.of(unsaved, "new/" + name));
        editor.stay("");
        window(stage, editor).picture().requestFocus();
    }

    private MainWindow window(Stage stage, DesignEditor editor) {
        return new MainWindow(stage, editor, this, remembered.theme(), textSize());
    }

    private static String shipped(String name) throws IOException {
        return new String(NamedFiles.shipped().read(name + ".yaml", LARGEST), StandardCharsets.UTF_8);
    }

    /** As last chosen; at first larger on a screen of many lines. */
    private double textSize() {
        double lines = Screen.getPrimary().getBounds().getHeight();
        return remembered.textSize(Math.max(1, Math.min(WindowStyle.LARGEST, Math.rint(10 * lines / USUAL) / 10)));
    }

    @Override
    public void used(Path file) {
        remembered.used(file);
    }

    @Override
    public void liked(Theme theme, double textSize) {
        remembered.liked(theme, textSize);
    }
}
