// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;

/** Looks twice a second whether the file on the disk is another than the one that was read, and takes it in. */
final class FileWatch {
    private final WindowState shown;
    private final Banner banner;
    private final Timeline clock = new Timeline(new KeyFrame(Duration.millis(500), e -> look()));
    private @Nullable FileTime seen;
    private @Nullable Path of;

    FileWatch(WindowState shown, Banner banner) {
        this.shown = shown;
        this.banner = banner;
    }

    void start() {
        clock.setCycleCount(Animation.INDEFINITE);
        clock.play();
    }

    /** Ends with the window. */
    void end() {
        clock.stop();
    }

    private void look() {
        Path file = shown.editor().file();
        if (file == null) {
            return;
        }
        try {
            FileTime time = Files.getLastModifiedTime(file);
            if (!file.equals(of)) {
                of = file;
                seen = null;
            }
            if (time.equals(seen)) {
                return;
            }
            seen = time;
            String onDisk = Files.readString(file);
            if (!shown.editor().isSaved(onDisk)) {
                changed(onDisk);
            }
        } catch (IOException gone) {
            // in the middle of being written, or taken away: the next look tells
            seen = null;
        }
    }

    private void changed(String onDisk) {
        if (!shown.editor().unsaved()) {
            reload();
            banner.tell("disk", "The file was changed outside this window. Reloaded.");
            return;
        }
        banner.tell(
                "disk",
                "Another program changed the file while you have unsaved work.",
                new Banner.Choice("Load the file (Undo brings your changes back)", "take-file", this::reload),
                new Banner.Choice("Keep my changes", "keep-mine", () -> {
                    shown.editor().stay(onDisk);
                    shown.renew();
                }));
    }

    private void reload() {
        try {
            shown.editor().reload();
            shown.renew();
        } catch (IOException e) {
            banner.tell("disk", "The file cannot be read: " + e.getMessage());
        }
    }
}
