// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.scene.control.Label;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.HowFull;
import tipwright.check.Result;
import tipwright.design.Design;
import tipwright.quantity.Kind;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.MachineState;

/** How full the tank may be: worked out in the background once the design has stood still for a while. */
final class FullLine extends Label implements Panel {
    private final WindowState shown;
    private final PauseTransition wait = new PauseTransition(Duration.millis(700));
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "how full");
        thread.setDaemon(true);
        return thread;
    });
    private @Nullable Design asked;
    private @Nullable HowFull answer;

    FullLine(WindowState shown) {
        this.shown = shown;
        setId("how-full");
        setWrapText(true);
        getStyleClass().add("small");
        wait.setOnFinished(e -> ask());
    }

    @Override
    public void renew() {
        DumpStates dump = shown.dump();
        if (dump == null) {
            wait.stop();
            setText("");
        } else if (dump.design().equals(asked)) {
            tell();
        } else {
            answer = null;
            asked = null;
            setText("Fill limit: updates when you let go.");
            wait.playFromStart();
        }
    }

    /** Ends with the window. */
    void end() {
        wait.stop();
        worker.shutdown();
    }

    private void ask() {
        DumpStates dump = shown.dump();
        if (dump == null) {
            return;
        }
        Design design = dump.design();
        worker.execute(() -> {
            HowFull found = null;
            try {
                Result result = Checker.check(design);
                found = result.howFull();
            } catch (CannotComputeException e) {
                // the picture says why; there is no fill to tell
                found = null;
            }
            HowFull full = found;
            Platform.runLater(() -> {
                DumpStates now = shown.dump();
                if (now != null && now.design().equals(design)) {
                    asked = design;
                    answer = full;
                    tell();
                }
            });
        });
    }

    private void tell() {
        HowFull full = answer;
        if (full == null) {
            setText("Fails even with the tank empty.");
        } else if (full.limit() == null) {
            setText("Can be filled to the rim: " + shown.show(full.volume(), Kind.VOLUME) + ".");
        } else {
            setText(String.format(
                    Locale.ROOT,
                    "Fill to %.0f %% at most: %s, level switch %s above the bottom. Above that fails: %s.",
                    100 * full.fill(),
                    shown.show(full.volume(), Kind.VOLUME),
                    shown.show(full.level(), Kind.LENGTH),
                    full.limit()));
        }
    }

    @Override
    public void move(MachineState now) {
        // holds for all tilts
    }
}
