// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.dump.Timeline;
import tipwright.viewer.start.DesignName;
import tipwright.viewer.ticket.Judged;

/**
 * The window at 1280 x 720 as a person has it: from a fill that is typed to the numbers on the ticket, to what the checks say that need
 * no time, to the verdict of all checks, each from a window at rest; and how many pictures a second the dump plays with. Needs a display.
 *
 * <p>Run: {@code xvfb-run -a -s '-screen 0 1280x800x24' mvn -q -B -Pbench test-compile exec:exec@bench -Djmh.args=WindowBenchmark}
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 30)
@Measurement(iterations = 15)
@Fork(
        value = 1,
        jvmArgsAppend = {"-XX:+UseSerialGC", "-Dprism.forceGPU=true", "-Djava.awt.headless=true"})
public class WindowBenchmark {
    private static final double SECONDS_A_PICTURE = 0.08;

    @Param({"silt-trailer", "saw-skid", "six-link"})
    private String name;

    private final Semaphore frames = new Semaphore(0);
    private final Semaphore news = new Semaphore(0);
    private MainWindow window;
    private AnimationTimer player;
    private volatile Judged.Stage stage;
    private int step;
    private double time;

    @Setup
    public void open() throws IOException, ExecutionException, InterruptedException {
        Path folder = Files.createTempDirectory("benchmark");
        FutureTask<Boolean> started = new FutureTask<>(() -> true);
        Platform.startup(started);
        started.get();
        window = onWindow(() -> {
            Stage on = new Stage();
            MainWindow made = WindowProgram.open(on, new DesignName(name, true), folder.resolve("unsaved"));
            on.setWidth(1280);
            on.setHeight(720);
            on.show();
            made.shown().add(new Panel() {
                @Override
                public void renew() {
                    stage = Judged.Stage.QUICK;
                }

                @Override
                public void judged() {
                    stage = made.shown().judged().stage();
                    news.release();
                }

                @Override
                public void move(MachineState now) {
                    // only what is told of the checks is waited for
                }
            });
            return made;
        });
    }

    private static <T> T onWindow(Callable<T> work) throws ExecutionException, InterruptedException {
        FutureTask<T> task = new FutureTask<>(work);
        Platform.runLater(task);
        return task.get();
    }

    /** Waits until nothing but fixes is still being worked out. */
    @Setup(Level.Iteration)
    public void rest() throws ExecutionException, InterruptedException {
        if (player == null && !onWindow(() -> window.shown().judged().checked() != null)) {
            await(Judged.Stage.FILLED);
        }
    }

    private void await(Judged.Stage wanted) throws InterruptedException {
        while (stage == null || stage.compareTo(wanted) < 0) {
            news.acquire();
        }
    }

    @TearDown
    public void close() throws ExecutionException, InterruptedException {
        onWindow(() -> {
            if (player != null) {
                player.stop();
            }
            window.shown().end();
            return true;
        });
        Platform.exit();
    }

    private boolean edited() {
        step++;
        boolean asVolume = name.equals("saw-skid");
        boolean taken = window.editor()
                .write(asVolume ? "slurry.volume" : "slurry.fill", 50 + step % 30 + (asVolume ? " gal" : " %"))
                .isEmpty();
        if (!taken) {
            throw new IllegalStateException("the fill was not taken");
        }
        window.changed();
        window.picture().getScene().getRoot().applyCss();
        window.picture().getScene().getRoot().layout();
        return taken;
    }

    /** Until the numbers stand on the ticket and everywhere else in the window. */
    @Benchmark
    public boolean numbers() throws ExecutionException, InterruptedException {
        return onWindow(this::edited);
    }

    /** Until every check that needs no time has been told. */
    @Benchmark
    public boolean verdictAtRest() throws ExecutionException, InterruptedException {
        boolean taken = onWindow(this::edited);
        await(Judged.Stage.AT_REST);
        return taken;
    }

    /** Until the verdict of all checks has been told. */
    @Benchmark
    public boolean verdict() throws ExecutionException, InterruptedException {
        boolean taken = onWindow(this::edited);
        await(Judged.Stage.CHECKED);
        return taken;
    }

    /** One picture of the dump as it plays, all of the window drawn. */
    @Benchmark
    @BenchmarkMode(Mode.Throughput)
    @OutputTimeUnit(TimeUnit.SECONDS)
    @Warmup(iterations = 3, time = 2)
    @Measurement(iterations = 3, time = 3)
    public void pictures() throws ExecutionException, InterruptedException {
        if (player == null) {
            player = onWindow(this::playing);
        }
        frames.acquire();
    }

    private AnimationTimer playing() {
        window.shown().setLoadCase("draining");
        @Nullable Timeline timeline = window.shown().timeline();
        AnimationTimer timer = new AnimationTimer() {
            @Override
            public void handle(long now) {
                time += SECONDS_A_PICTURE;
                window.shown().goTo(timeline.at(time % timeline.total()));
                frames.release();
            }
        };
        timer.start();
        return timer;
    }
}
