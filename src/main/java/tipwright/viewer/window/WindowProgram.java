// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.application.Application;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.stage.Stage;
import tipwright.viewer.editor.DesignEditor;
import tipwright.viewer.editor.Recovery;
import tipwright.viewer.start.DesignName;

/** Opens the window. Ends with 3 when it cannot be drawn. */
public final class WindowProgram {
    private WindowProgram() {}

    /**
     * Runs.
     *
     * @param args name of the design, and whether it came with the program
     */
    public static void main(String[] args) {
        try {
            Application.launch(Shown.class, args);
        } catch (RuntimeException | LinkageError e) {
            String display = System.getenv().getOrDefault("DISPLAY", "");
            System.err.println("tipwright: no window can be opened"
                    + (display.isEmpty() ? "" : " on the display '" + display + "' (DISPLAY)") + ": " + reason(e)
                    + "; 'tipwright frames' makes pictures without a display");
            Runtime.getRuntime().halt(3);
        }
    }

    private static String reason(Throwable e) {
        Throwable last = e;
        while (last.getCause() != null) {
            last = last.getCause();
        }
        String said = String.valueOf(last.getMessage());
        return said.contains("open DISPLAY") ? "it does not answer" : said;
    }

    /** What the drawing library starts: not the class with the main method, or Java would start the library before that. */
    public static final class Shown extends Application {
        @Override
        public void start(Stage stage) throws IOException {
            if (!Platform.isSupported(ConditionalFeature.SCENE3D)) {
                System.err.println("tipwright: this machine cannot draw in 3D: OpenGL is missing");
                Runtime.getRuntime().halt(3);
            }
            List<String> args = getParameters().getUnnamed();
            DesignName name = new DesignName(args.get(0), Boolean.parseBoolean(args.get(1)));
            MainWindow window = open(stage, name, Recovery.folder());
            stage.show();
            window.picture().requestFocus();
        }
    }

    /** A window on a design, with what a crash has left of it on offer. */
    static MainWindow open(Stage stage, DesignName name, Path unsaved) throws IOException {
        Path file = name.file();
        String full =
                file == null ? "shipped/" + name.name() : file.toAbsolutePath().toString();
        Recovery recovery = Recovery.of(unsaved, full);
        String left = recovery.left();
        String text = text(name);
        MainWindow window = new MainWindow(stage, new DesignEditor(name.name(), file, text, recovery));
        if (left != null && !left.equals(text)) {
            window.offer(left);
        }
        return window;
    }

    private static String text(DesignName name) throws IOException {
        Path file = name.file();
        if (file != null) {
            return Files.readString(file);
        }
        try (InputStream in = WindowProgram.class.getResourceAsStream("/tipwright/geometry/" + name.name() + ".yaml")) {
            if (in == null) {
                throw new IOException(name.name() + ": no such design came with the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
