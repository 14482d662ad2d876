// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.start;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** The display to draw on: the one there is, or a virtual one of our own that ends with the work. */
final class Screen implements AutoCloseable {
    private final @Nullable Process virtual;
    private final String name;

    private Screen(@Nullable Process virtual, String name) {
        this.virtual = virtual;
        this.name = name;
    }

    /** Whether a window can be shown: away from Linux always, there when a display is named. */
    static boolean isThere(Map<String, String> environment) {
        boolean linux =
                System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("linux");
        return !linux || !environment.getOrDefault("DISPLAY", "").isEmpty();
    }

    /**
     * A display to draw on without a window.
     *
     * @param environment of the program
     * @throws IOException when there is none and none can be made; says what to install
     */
    static Screen open(Map<String, String> environment) throws IOException {
        if (isThere(environment)) {
            return new Screen(null, environment.getOrDefault("DISPLAY", ""));
        }
        Process process;
        try {
            process = new ProcessBuilder(
                            "Xvfb", "-displayfd", "1", "-screen", "0", "1280x800x24", "-nolisten", "tcp", "-noreset")
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            throw new IOException(
                    "there is no display, and no virtual one could be started; install one (Debian or Ubuntu: apt-get"
                            + " install xvfb xauth libgl1 libgl1-mesa-dri libglx-mesa0 libgtk-3-0 libxtst6 libxxf86vm1)"
                            + " or run this on a machine with a screen",
                    e);
        }
        Runtime.getRuntime().addShutdownHook(new Thread(process::destroy));
        String number =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8)).readLine();
        if (number == null) {
            process.destroy();
            throw new IOException("the virtual display Xvfb ended at once; try 'Xvfb -displayfd 1' by hand to see why");
        }
        return new Screen(process, ":" + number.strip());
    }

    /** The display's name; empty where there are no such names. */
    String name() {
        return name;
    }

    @Override
    public void close() {
        if (virtual != null) {
            virtual.destroy();
            try {
                virtual.waitFor(5, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
