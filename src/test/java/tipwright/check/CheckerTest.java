// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static tipwright.Swap.swap;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.geometry.NotConvergedException;
import tipwright.time.CycleTimer;
import tipwright.time.Timing;

/** A whole check, in its stages or at one go; what goes wrong on one of its threads is told by the one that asked. */
@Timeout(120)
class CheckerTest {
    private static final Design BOX =
            Examples.read(swap(Examples.BOX, "tilt: {to: 80 deg}", "tilt: {to: 80 deg, step: 8 deg}"));

    private static Result check(Duration patience, List<Early> told, Function<Analysis, Timing> timer)
            throws CannotComputeException {
        return Checker.check(BOX, new Early.Listener(patience, told::add, timer), true);
    }

    @Test
    void stagesAndOneGoAgree() throws CannotComputeException {
        Result whole = Checker.check(BOX);
        Analysis analysis = Analyser.analyse(BOX);
        StagedCheck stages = StagedCheck.of(analysis);
        Early early = stages.atRest();
        Result filled = stages.inTime();
        assertThat(filled.findings()).isEqualTo(whole.findings());
        assertThat(filled.howFull()).isNull();
        assertThat(stages.whole().howFull()).isEqualTo(whole.howFull()).isNotNull();
        assertThat(Checker.findings(BOX)).isEqualTo(whole.findings());
        assertThat(Checker.asFilled(BOX).findings()).isEqualTo(whole.findings());
        List<Finding> certain = early.certain()
                .filter(f -> whole.findings().stream().anyMatch(f::equals))
                .toList();
        assertThat(certain).hasSizeGreaterThan(early.findings().size() / 2);
    }

    @Test
    void whoWaitsIsToldOnceAndOnlyWhenItTakesLong() throws CannotComputeException {
        List<Early> told = new ArrayList<>();
        check(Duration.ofMinutes(5), told, CycleTimer::time);
        assertThat(told).isEmpty();
        CountDownLatch heard = new CountDownLatch(1);
        List<Early> slow = new ArrayList<>();
        Early.Listener listener = new Early.Listener(
                Duration.ofMillis(1),
                early -> {
                    slow.add(early);
                    heard.countDown();
                },
                analysis -> {
                    awaited(heard);
                    return CycleTimer.time(analysis);
                });
        Result result = Checker.check(BOX, listener, true);
        assertThat(slow).hasSize(1);
        assertThat(result.findings()).isEqualTo(Checker.findings(BOX));
    }

    private static void awaited(CountDownLatch heard) {
        try {
            heard.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void whatGoesWrongInTheDumpIsThrownToWhoAsked() {
        List<Early> told = new ArrayList<>();
        Duration long0 = Duration.ofMinutes(5);
        assertThatThrownBy(() -> check(long0, told, a -> {
                    throw new NotConvergedException("the dump, s");
                }))
                .isInstanceOf(CannotComputeException.class)
                .hasMessageContaining("Box")
                .hasMessageContaining("the dump, s");
        IllegalArgumentException fault = new IllegalArgumentException("a fault");
        assertThatThrownBy(() -> check(long0, told, a -> {
                    throw fault;
                }))
                .isSameAs(fault);
        StackOverflowError error = new StackOverflowError("deep");
        assertThatThrownBy(() -> check(long0, told, a -> {
                    throw error;
                }))
                .isSameAs(error);
    }

    @Test
    void whoIsInterruptedIsToldSo() {
        CountDownLatch never = new CountDownLatch(1);
        Thread asks = Thread.currentThread();
        List<Early> told = new ArrayList<>();
        assertThatThrownBy(() -> check(Duration.ofMinutes(5), told, a -> {
                    asks.interrupt();
                    awaited(never);
                    throw new IllegalStateException("nobody lets it go");
                }))
                .isInstanceOf(CannotComputeException.class)
                .hasMessageContaining("interrupted");
        assertThat(Thread.interrupted()).isTrue();
    }
}
