// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.ref.WeakReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;
import tipwright.viewer.OneScreen;
import tipwright.viewer.Patience;
import tipwright.viewer.Trial;
import tipwright.viewer.start.DesignName;

/** Opens and closes the window again and again: {@code -Dtest.windows=100}, with a display. */
@ExtendWith({OneScreen.class, ApplicationExtension.class})
@EnabledIfSystemProperty(
        named = "test.windows",
        matches = "[0-9]+",
        disabledReason = "takes minutes; asked for by hand")
class OpenCloseTest {
    private static final int WARM = 20;
    private static final long MEGABYTE = 1 << 20;

    private Stage stage;
    private MainWindow window;

    @Test
    void closedWindowsLeaveNothingBehind(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("trial.yaml");
        Files.writeString(file, Trial.text());
        int cycles = Math.max(2 * WARM, Integer.getInteger("test.windows"));
        List<WeakReference<MainWindow>> closed = new ArrayList<>();
        long warm = 0;
        for (int i = 1; i <= cycles; i++) {
            WaitForAsyncUtils.waitForAsyncFx(20_000, () -> {
                stage = new Stage();
                window = WindowProgram.open(stage, new DesignName(file.toString(), false), folder.resolve("unsaved"));
                stage.show();
                return null;
            });
            waitFor(() -> window.shown().dump() != null);
            WaitForAsyncUtils.waitForAsyncFx(20_000, () -> window.transport().toggle());
            waitFor(() -> window.shown().spot().tilt() > 0);
            closed.add(new WeakReference<>(window));
            WaitForAsyncUtils.waitForAsyncFx(20_000, () -> {
                stage.fireEvent(new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST));
                stage.hide();
            });
            window = null;
            stage = null;
            if (i == WARM) {
                warm = used();
            }
            if (i % WARM == 0) {
                System.out.printf("%d windows: heap %.1f MB%s%n", i, used() / (double) MEGABYTE, resident());
            }
        }
        long after = used();
        assertThat(closed.stream().filter(w -> w.get() != null).count())
                .as("closed windows that are still held")
                .isLessThanOrEqualTo(2);
        assertThat(after - warm).as("growth of the heap, bytes").isLessThan(3 * MEGABYTE);
    }

    private static void waitFor(BooleanSupplier met) {
        Patience.waitFor(20, met);
    }

    /** Bytes of the heap in use after collections, the least of several: what was under way is done by then. */
    private static long used() {
        long least = Long.MAX_VALUE;
        for (int i = 0; i < 6; i++) {
            WaitForAsyncUtils.waitForFxEvents();
            WaitForAsyncUtils.sleep(100, TimeUnit.MILLISECONDS);
            System.gc();
            least = Math.min(
                    least,
                    ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed());
        }
        return least;
    }

    /** What the whole process occupies, where the system tells. */
    private static String resident() {
        try {
            return Files.readAllLines(Path.of("/proc/self/status")).stream()
                    .filter(line -> line.startsWith("VmRSS"))
                    .map(line -> ", " + line.replaceAll("\\s+", " "))
                    .findFirst()
                    .orElse("");
        } catch (IOException e) {
            return "";
        }
    }
}
