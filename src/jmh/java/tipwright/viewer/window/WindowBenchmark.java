// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import com.sun.javafx.tk.RenderJob;
import com.sun.javafx.tk.Toolkit;
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
 * The window at 1280 x 720 as a person has it: from a fill that is typed to the frame that has the numbers on the ticket, to the one that
 * has what the checks say that need no time, to the one that has the verdict of all checks, each drawn to the end and from a window at
 * rest; and how many pictures a second the dump plays with. Needs a display. Up to a sixtieth of a second of each is the wait for the
 * next frame.
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
        jvmArgsAppend = {
            "-XX:+UseSerialGC",
            "-Dprism.forceGPU=true",
            "-Dprism.lcdtext=false",
            "-Djava.awt.headless=true"
        })
public class WindowBenchmark {
    private static final double SECONDS_A_PICTURE = 0.08;

    @Param({"silt-trailer", "saw-skid", "six-link"})
    private String name;

    private final Semaphore frames = new Semaphore(0);
    private final Semaphore news = new Semaphore(0);
    private final Semaphore drawn = new Semaphore(0);
    private boolean newer;
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
                    newer = true;
                }

                @Override
                public void judged() {
                    stage = made.shown().judged().stage();
                    newer = true;
                    news.release();
                }

                @Override
                public void move(MachineState now) {
                    // only what is told of the checks is waited for
                }
            });
            on.getScene().addPostLayoutPulseListener(this::laid);
            return made;
        });
    }

    /** What is new is laid out: once this frame is out, whoever waits for it goes on. */
    private void laid() {
        if (newer) {
            newer = false;
            Platform.runLater(() -> Toolkit.getToolkit().addRenderJob(new RenderJob(drawn::release)));
        }
    }

    private void awaitFrame() throws InterruptedException {
        drawn.acquire();
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
        drawn.drainPermits();
        newer = false;
        window.changed();
        return taken;
    }

    /** How long the window is busy with an edit before it can draw. */
    @Benchmark
    public boolean busy() throws ExecutionException, InterruptedException {
        return onWindow(this::edited);
    }

    /** Until the frame is drawn that has the numbers on the ticket. */
    @Benchmark
    public boolean numbers() throws ExecutionException, InterruptedException {
        boolean taken = onWindow(this::edited);
        awaitFrame();
        return taken;
    }

    /** Until the frame is drawn that has every check that needs no time. */
    @Benchmark
    public boolean verdictAtRest() throws ExecutionException, InterruptedException {
        return told(Judged.Stage.AT_REST);
    }

    /** Until the frame is drawn that has the verdict of all checks. */
    @Benchmark
    public boolean verdict() throws ExecutionException, InterruptedException {
        return told(Judged.Stage.CHECKED);
    }

    private boolean told(Judged.Stage wanted) throws ExecutionException, InterruptedException {
        boolean taken = onWindow(this::edited);
        await(wanted);
        drawn.drainPermits();
        awaitFrame();
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
