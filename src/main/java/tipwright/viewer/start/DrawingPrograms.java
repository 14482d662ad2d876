// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.report.Scratch;

/** Starts the programs that draw and waits for them. */
public final class DrawingPrograms {
    private static final String STILLS = "tipwright.viewer.still.StillProgram";
    private static final String WINDOW = "tipwright.viewer.window.WindowProgram";

    private DrawingPrograms() {}

    /**
     * Makes stills.
     *
     * @return exit code: 0 made, 2 design not understood, 3 cannot be drawn
     * @throws IOException when nothing can be drawn on this machine; says what to install
     */
    public static int stills(FrameOrder order, Map<String, String> environment) throws IOException {
        try (Screen screen = Screen.open(environment)) {
            ProcessBuilder builder = new ProcessBuilder(DrawingJava.command(STILLS, false, order.arguments()))
                    .redirectOutput(ProcessBuilder.Redirect.INHERIT)
                    .redirectError(ProcessBuilder.Redirect.INHERIT);
            return run(builder, screen.name());
        }
    }

    /**
     * Makes stills and says nothing while it does.
     *
     * @return empty when they are made; else why they are not
     * @throws IOException when nothing can be drawn on this machine; says what to install
     */
    public static String quietStills(FrameOrder order, Map<String, String> environment) throws IOException {
        try (Screen screen = Screen.open(environment)) {
            try (Scratch scratch = Scratch.open()) {
                Path errors = scratch.file("errors.txt");
                ProcessBuilder builder = new ProcessBuilder(DrawingJava.command(STILLS, false, order.arguments()))
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .redirectError(errors.toFile());
                int code = run(builder, screen.name());
                String said = Files.readString(errors).strip();
                return code == 0 ? "" : said.isEmpty() ? "the drawing program ended with code " + code : said;
            }
        }
    }

    /**
     * Opens the window and waits until it is closed.
     *
     * @param design to open it on; null: the start, where one is chosen
     * @return exit code: 0 closed, 3 cannot be drawn
     * @throws IOException when there is no display
     */
    public static int window(@Nullable DesignName design, Map<String, String> environment) throws IOException {
        if (!Screen.isThere(environment)) {
            throw new IOException(
                    "there is no display to open a window on (DISPLAY is not set); 'tipwright frames' makes"
                            + " pictures without one");
        }
        List<String> arguments =
                design == null ? List.of() : List.of(design.name(), Boolean.toString(design.shipped()));
        ProcessBuilder builder = new ProcessBuilder(DrawingJava.command(WINDOW, true, arguments)).inheritIO();
        return run(builder, environment.getOrDefault("DISPLAY", ""));
    }

    private static int run(ProcessBuilder builder, String display) throws IOException {
        if (!display.isEmpty()) {
            builder.environment().put("DISPLAY", display);
        }
        Process process = builder.start();
        Thread end = new Thread(process::destroy);
        Runtime.getRuntime().addShutdownHook(end);
        try {
            int code = process.waitFor();
            Runtime.getRuntime().removeShutdownHook(end);
            return code;
        } catch (IllegalStateException ending) {
            return 3;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            process.destroy();
            return 3;
        }
    }
}
