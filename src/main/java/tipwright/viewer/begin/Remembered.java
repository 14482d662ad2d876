// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.begin;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import tipwright.report.WholeFile;
import tipwright.viewer.scene.Theme;

/**
 * What the window remembers from one time to the next, for its user alone: files that were worked on, how it is shown, answers of an
 * interview that was left. Whatever cannot be read or written is no reason to stop the work.
 *
 * @param folder to keep it in
 */
public record Remembered(Path folder) {
    private static final int MOST = 8;
    private static final int LARGEST = 100_000;

    private Path window() {
        return folder.resolve("window.properties");
    }

    private Path answers() {
        return folder.resolve("new-machine.answers");
    }

    /** The files that were worked on and are still there, the last one first. */
    public List<Path> files() {
        Properties kept = read();
        List<Path> all = new ArrayList<>();
        for (int i = 0; i < MOST; i++) {
            String name = kept.getProperty("file." + i, "");
            if (!name.isEmpty() && isThere(name)) {
                all.add(Path.of(name));
            }
        }
        return all;
    }

    /** Whether there is such a file; a name may have been written on another system. */
    private static boolean isThere(String name) {
        try {
            return Files.isRegularFile(Path.of(name));
        } catch (InvalidPathException elsewhere) {
            return false;
        }
    }

    /** Puts a file first. */
    public void used(Path file) {
        Path full = file.toAbsolutePath();
        List<Path> all = new ArrayList<>(files());
        all.remove(full);
        all.add(0, full);
        Properties kept = read();
        for (int i = 0; i < Math.min(MOST, all.size()); i++) {
            kept.setProperty("file." + i, all.get(i).toString());
        }
        write(kept);
    }

    /** The colours last chosen. */
    public Theme theme() {
        return "light".equals(read().getProperty("theme")) ? Theme.LIGHT : Theme.DARK;
    }

    /**
     * The size of the text last chosen, 1 as usual.
     *
     * @param first where none was chosen yet
     */
    public double textSize(double first) {
        try {
            double size = Double.parseDouble(read().getProperty("text", Double.toString(first)));
            return Double.isFinite(size) ? size : first;
        } catch (NumberFormatException spoilt) {
            return first;
        }
    }

    /** Keeps how it is shown. */
    public void liked(Theme theme, double textSize) {
        Properties kept = read();
        kept.setProperty("theme", theme == Theme.LIGHT ? "light" : "dark");
        kept.setProperty("text", Double.toString(textSize));
        write(kept);
    }

    /** Answers of an interview that was left; empty: there are none. */
    String left() {
        return text(answers());
    }

    /** Keeps the answers so far; none: forgets them. */
    void leave(String saved) {
        try {
            if (saved.isEmpty()) {
                Files.deleteIfExists(answers());
            } else {
                byte[] bytes = saved.getBytes(StandardCharsets.UTF_8);
                WholeFile.writePrivate(answers(), out -> out.write(bytes));
            }
        } catch (IOException e) {
            System.err.println("tipwright: the answers cannot be kept: " + e.getMessage());
        }
    }

    private static String text(Path file) {
        try {
            return Files.isRegularFile(file) && Files.size(file) < LARGEST ? Files.readString(file) : "";
        } catch (IOException unread) {
            return "";
        }
    }

    private Properties read() {
        Properties kept = new Properties();
        try {
            kept.load(new StringReader(text(window())));
        } catch (IOException | IllegalArgumentException spoilt) {
            kept.clear();
        }
        return kept;
    }

    private void write(Properties kept) {
        try {
            StringWriter text = new StringWriter();
            kept.store(text, null);
            byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
            WholeFile.writePrivate(window(), out -> out.write(bytes));
        } catch (IOException e) {
            System.err.println("tipwright: what was used last cannot be kept: " + e.getMessage());
        }
    }
}
