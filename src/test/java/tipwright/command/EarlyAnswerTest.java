// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tipwright.analysis.Analysis;
import tipwright.check.Early;
import tipwright.time.CycleTimer;
import tipwright.time.Timing;

/** A person who waits is told what is known; the dump in time is made slow by hand, no clock is waited for. */
class EarlyAnswerTest {
    private static final String WORKING = "The dump in time is still being worked out";
    private static final Timing LOST = new Timing(List.of(), "it did not converge 3 s after the start", true);

    private final CountDownLatch told = new CountDownLatch(1);
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    private int check(
            boolean person,
            CheckRun.Form form,
            @Nullable Path file,
            Duration patience,
            Function<Analysis, Timing> timer)
            throws FailedException {
        Function<Consumer<Early>, Early.Listener> listener = consumer -> new Early.Listener(
                patience,
                early -> {
                    consumer.accept(early);
                    told.countDown();
                },
                timer);
        return run(person, form, file, listener, DesignSource.find(null));
    }

    private int run(
            boolean person,
            CheckRun.Form form,
            @Nullable Path file,
            Function<Consumer<Early>, Early.Listener> listener,
            DesignSource design)
            throws FailedException {
        Terminal terminal = new Terminal(person, Map.of("NO_COLOR", "1"));
        return new CheckRun(new PrintWriter(out), new PrintWriter(err, true), terminal, listener)
                .run(design, form, new Shown(), file);
    }

    /** A person need not wait for a hundred other machines before the answer; a file gets it in its usual place. */
    @Test
    void howSureItIsFollowsTheAnswer() throws Exception {
        Path about = folder.resolve("about.yaml");
        Files.writeString(
                about,
                swap(Files.readString(Path.of("geometry/saw-skid.yaml")), "push: 2700 lbf", "push: about 2700 lbf"));
        DesignSource design = DesignSource.find(about.toString());
        run(true, CheckRun.Form.TEXT, null, Early.Listener::of, design);
        String told = out.toString();
        assertThat(told.indexOf("How sure")).isGreaterThan(told.indexOf("licensed"));
        assertThat(told.trim().lines().reduce((a, b) -> b).orElse("")).startsWith("  ");
        assertThat(told.split("How sure")).hasSize(2);
    }

    /** Ends only after the early answer has been given. */
    private Timing afterTheEarlyAnswer(Analysis analysis) {
        try {
            assertThat(told.await(1, TimeUnit.MINUTES)).isTrue();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
        return CycleTimer.time(analysis);
    }

    @Test
    void whatIsKnownIsPrintedBeforeTheWholeAnswer() throws FailedException {
        int code = check(true, CheckRun.Form.TEXT, null, Duration.ofMillis(1), this::afterTheEarlyAnswer);
        assertThat(code).isZero();
        String text = out.toString();
        assertThat(text)
                .startsWith("Silt trailer, so far\n")
                .containsOnlyOnce(WORKING)
                .contains("VERDICT: ");
        String early = text.substring(0, text.indexOf(WORKING));
        assertThat(early)
                .contains("No verdict yet", "Push         9.14 kN of 12 kN", "Stroke left  17 mm before it is closed")
                .contains("Bearing      bearing 2 (left): 5.34 kN of 9.5 kN")
                .doesNotContain("VERDICT", "Time ");
        assertThat(early.lines()).hasSizeLessThan(15);
        assertThat(text.substring(text.indexOf(WORKING)))
                .contains("\nSilt trailer\n", "Time         Up 69 s, down 66 s");
    }

    /** It must be out of the program's hands, or Ctrl-C would lose it. */
    @Test
    void whatIsKnownIsFlushed() throws FailedException {
        StringBuilder seen = new StringBuilder();
        Writer screen = new Writer() {
            private final StringBuilder held = new StringBuilder();

            @Override
            public void write(char[] text, int from, int length) {
                held.append(text, from, length);
            }

            @Override
            public void flush() {
                seen.append(held);
                held.setLength(0);
            }

            @Override
            public void close() {
                flush();
            }
        };
        Function<Consumer<Early>, Early.Listener> listener = consumer -> new Early.Listener(
                Duration.ofMillis(1),
                early -> {
                    consumer.accept(early);
                    assertThat(seen.toString()).contains(WORKING);
                    told.countDown();
                },
                this::afterTheEarlyAnswer);
        int code = new CheckRun(new PrintWriter(screen), new PrintWriter(err), new Terminal(true, Map.of()), listener)
                .run(DesignSource.find(null), CheckRun.Form.TEXT, new Shown(), null);
        assertThat(code).isZero();
        assertThat(told.getCount()).isZero();
    }

    @Test
    void aFileOrAPipeGetsTheWholeAnswerAlone() throws FailedException {
        assertThat(check(false, CheckRun.Form.TEXT, null, Duration.ofMillis(1), this::afterTheEarlyAnswer))
                .isZero();
        assertThat(out.toString()).startsWith("Silt trailer\n").doesNotContain(WORKING);
        Path file = folder.resolve("out.txt");
        assertThat(check(true, CheckRun.Form.TEXT, file, Duration.ofMillis(1), this::afterTheEarlyAnswer))
                .isZero();
        assertThat(file).content().startsWith("Silt trailer\n").doesNotContain(WORKING);
    }

    @Test
    void aQuickCheckSaysItOnce() throws FailedException {
        assertThat(check(true, CheckRun.Form.TEXT, null, Duration.ofMinutes(5), CycleTimer::time))
                .isZero();
        assertThat(out.toString()).startsWith("Silt trailer\n").doesNotContain(WORKING);
    }

    @Test
    void aDumpThatDoesNotConvergeIsNoPass() throws FailedException {
        int code = check(false, CheckRun.Form.TEXT, null, Duration.ofMinutes(5), analysis -> LOST);
        assertThat(code).isEqualTo(Exit.CANNOT_COMPUTE);
        assertThat(out.toString())
                .contains("it did not converge 3 s after the start")
                .containsPattern("VERDICT: (PASSES|CLOSE) SO FAR, \\d+ checks cannot tell")
                .doesNotContainPattern("VERDICT: (PASSES|CLOSE)\n");
    }
}
