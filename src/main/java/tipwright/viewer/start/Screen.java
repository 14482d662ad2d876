// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.start;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** The display to draw on: the one there is, or a virtual one of our own that ends with the work. */
final class Screen implements AutoCloseable {
    private static final int MISSING = 127;

    /**
     * Runs Xvfb until its own input ends, which the system sees to when this process ends, however it ends; then whatever still
     * draws gets a second to notice too. A line in the input means that nothing draws any more.
     */
    private static final String KEEPER =
            """
            command -v Xvfb >/dev/null || exit 127
            Xvfb -displayfd 1 -screen 0 1280x800x24 -nolisten tcp -noreset &
            display=$!
            trap 'kill "$display" 2>/dev/null; wait "$display"' EXIT
            trap 'exit 1' HUP INT TERM
            exec >/dev/null
            read -r done || sleep 1
            """;

    private final @Nullable Process virtual;
    private final String name;

    private Screen(@Nullable Process virtual, String name) {
        this.virtual = virtual;
        this.name = name;
    }

    /** Whether a window can be shown: away from Linux always, there when a display is named. */
    static boolean isThere(Map<String, String> environment) {
        return !isLinux() || !environment.getOrDefault("DISPLAY", "").isEmpty();
    }

    private static boolean isLinux() {
        return System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("linux");
    }

    /**
     * A display to draw on without a window: on Linux a virtual one of our own, whatever display is named; without Xvfb the one that
     * is named.
     *
     * @param environment of the program
     * @throws IOException when there is none and none can be made; says what to install
     */
    static Screen open(Map<String, String> environment) throws IOException {
        if (!isLinux()) {
            return new Screen(null, "");
        }
        Process process = new ProcessBuilder("sh", "-c", KEEPER)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String number =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8)).readLine();
        Screen screen = new Screen(process, ":" + String.valueOf(number).strip());
        if (number != null) {
            return screen;
        }
        screen.close();
        if (process.isAlive() || process.exitValue() != MISSING) {
            throw new IOException("the virtual display Xvfb ended at once; try 'Xvfb -displayfd 1' by hand to see why");
        }
        if (isThere(environment)) {
            return new Screen(null, environment.getOrDefault("DISPLAY", ""));
        }
        throw new IOException(
                "there is no display, and no virtual one could be started; install one (Debian or Ubuntu: apt-get"
                        + " install xvfb xauth libgl1 libgl1-mesa-dri libglx-mesa0 libgtk-3-0 libxtst6 libxxf86vm1)"
                        + " or run this on a machine with a screen");
    }

    /** The display's name; empty where there are no such names. */
    String name() {
        return name;
    }

    @Override
    public void close() {
        if (virtual == null) {
            return;
        }
        try {
            try (OutputStream out = virtual.getOutputStream()) {
                out.write('\n');
            }
            if (!virtual.waitFor(5, TimeUnit.SECONDS)) {
                virtual.destroy();
            }
        } catch (IOException gone) {
            virtual.destroy();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
