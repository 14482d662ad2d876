// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import javafx.application.Application;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.stage.Stage;
import tipwright.viewer.editor.Recovery;
import tipwright.viewer.start.DesignName;

/** Opens the window. Ends with 3 when it cannot be drawn. */
public final class WindowProgram {

    private WindowProgram() {}

    /**
     * Runs.
     *
     * @param args name of the design, and whether it came with the program; none: the start, where one is chosen
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
            Path unsaved = Recovery.folder();
            stage.setWidth(FirstSize.width());
            stage.setHeight(FirstSize.height());
            if (args.isEmpty()) {
                new FrontDesk(unsaved).begin(stage);
                stage.show();
                return;
            }
            MainWindow window = open(stage, new DesignName(args.get(0), Boolean.parseBoolean(args.get(1))), unsaved);
            stage.show();
            window.picture().requestFocus();
        }
    }

    /** A window on a design, with what a crash has left of it on offer. */
    static MainWindow open(Stage stage, DesignName name, Path unsaved) throws IOException {
        return new FrontDesk(unsaved).open(stage, name);
    }
}
