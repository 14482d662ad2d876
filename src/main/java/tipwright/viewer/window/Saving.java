// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import javafx.geometry.Pos;
import tipwright.viewer.editor.Draft;

/** Saves the design: where it came from, or, when that is nowhere yet, where it is told. */
final class Saving {
    private final WindowState shown;
    private final Banner banner;
    private final Overlay over;
    private final MainWindow.Office office;

    Saving(WindowState shown, Banner banner, Overlay over, MainWindow.Office office) {
        this.shown = shown;
        this.banner = banner;
        this.over = over;
        this.office = office;
    }

    /** Saves, and on success does something more. */
    void saveAnd(Runnable then) {
        Path to = shown.editor().file();
        if (to != null) {
            try {
                write(to, then);
            } catch (IOException e) {
                banner.tell("save", "Not saved: " + e.getMessage());
            }
            return;
        }
        SavePane[] pane = new SavePane[1];
        pane[0] = new SavePane(
                "Save the design",
                usual(".yaml"),
                place -> {
                    write(place, then);
                    over.takeAway(pane[0]);
                },
                () -> over.takeAway(pane[0]));
        over.lay(pane[0], Pos.CENTER, () -> {});
        pane[0].ask();
    }

    /** A name for a file beside the design, or in the folder at hand. */
    Path usual(String end) {
        Path file = shown.editor().file();
        Path folder = Draft.of(shown.editor()).folder();
        String name = file == null || file.getFileName() == null
                ? shown.editor().name()
                : file.getFileName().toString().replaceAll("\\.[^.]*$", "");
        String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        Path at = folder == null ? Path.of(System.getProperty("user.dir", ".")) : folder;
        return at.resolve((plain.isEmpty() ? "machine" : plain) + end);
    }

    private void write(Path to, Runnable then) throws IOException {
        shown.editor().save(to);
        office.used(to);
        banner.hide("disk");
        shown.renew();
        then.run();
    }
}
