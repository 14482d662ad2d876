// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.editor;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.report.WholeFile;

/**
 * Where unsaved work outlives a crash: one file for each design, gone once the work is saved.
 *
 * @param file to keep it in
 */
public record Recovery(Path file) {
    /**
     * The place for a design.
     *
     * @param folder for all of them
     * @param design its full name
     */
    public static Recovery of(Path folder, String design) {
        String last = design.substring(Math.max(design.lastIndexOf('/'), design.lastIndexOf('\\')) + 1);
        return new Recovery(folder.resolve(Integer.toHexString(design.hashCode()) + "-" + last));
    }

    /** Usual folder for all of them. */
    public static Path folder() {
        String set = System.getProperty("tipwright.unsaved");
        boolean linux = System.getProperty("os.name", "").startsWith("Linux");
        return set == null ? folder(System.getenv(), System.getProperty("user.home"), linux) : Path.of(set);
    }

    /**
     * Usual folder for all of them.
     *
     * @param environment variables of the process
     * @param home of the user, where HOME is not set
     * @param linux whether folders are named as on Linux. Source: XDG Base Directory Specification 0.8, XDG_STATE_HOME
     */
    static Path folder(Map<String, String> environment, String home, boolean linux) {
        String own = environment.getOrDefault("HOME", "");
        Path at = Path.of(own.isEmpty() ? home : own);
        if (!linux) {
            return at.resolve(".tipwright").resolve("unsaved");
        }
        Path state = Path.of(environment.getOrDefault("XDG_STATE_HOME", ""));
        return (state.isAbsolute() ? state : at.resolve(".local").resolve("state"))
                .resolve("tipwright")
                .resolve("unsaved");
    }

    /** Keeps a text; null: there is nothing to keep. A disk that cannot be written to is no reason to stop the work. */
    void keep(@Nullable String text) {
        try {
            if (text == null) {
                Files.deleteIfExists(file);
                return;
            }
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            WholeFile.writePrivate(file, out -> out.write(bytes));
        } catch (IOException e) {
            System.err.println("tipwright: unsaved work cannot be kept safe: " + e.getMessage());
        }
    }

    /** What was left from the last time; null when nothing was. */
    public @Nullable String left() {
        try {
            return Files.exists(file) ? Files.readString(file) : null;
        } catch (IOException e) {
            return null;
        }
    }
}
