// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import tipwright.analysis.CannotComputeException;

/** Pieces of work for two threads: each is done once, and what goes wrong comes out where the answer is asked for. */
@Timeout(value = 60, unit = TimeUnit.SECONDS)
class SharedTasksTest {
    private final List<Integer> order = new ArrayList<>();

    private Callable<Integer> piece(int number) {
        return () -> {
            order.add(number);
            return 10 * number;
        };
    }

    private SharedTasks<Integer> three() {
        return new SharedTasks<>(List.of(piece(1), piece(2), piece(3)));
    }

    @Test
    void whoAsksBeginsAtTheFirstWhoHelpsAtTheLastAndEachIsDoneOnce() {
        SharedTasks<Integer> asked = three();
        assertThat(asked.all()).containsExactly(10, 20, 30);
        asked.help();
        assertThat(order).containsExactly(1, 2, 3);
        order.clear();
        SharedTasks<Integer> helped = three();
        helped.help();
        assertThat(order).containsExactly(3, 2, 1);
        assertThat(helped.get(1)).isEqualTo(20);
        assertThat(helped.all()).containsExactly(10, 20, 30);
        assertThat(order).hasSize(3);
    }

    /** The first piece waits for the last: the thread that asks is never done alone. */
    @Test
    void aSecondThreadHelpsWhereThereIsMoreThanOnePiece() {
        CountDownLatch begun = new CountDownLatch(1);
        List<String> threads = new ArrayList<>();
        SharedTasks<Integer> two = new SharedTasks<>(List.of(
                () -> {
                    begun.await();
                    return 1;
                },
                () -> {
                    threads.add(Thread.currentThread().getName());
                    begun.countDown();
                    return 2;
                }));
        assertThat(two.allByTwo("side")).containsExactly(1, 2);
        assertThat(threads).containsExactly("side");
        assertThat(new SharedTasks<>(List.of(piece(7))).allByTwo("side")).containsExactly(70);
        assertThat(new SharedTasks<Integer>(List.of()).allByTwo("side")).isEmpty();
    }

    private static <T> FutureTask<T> run(Callable<T> work) {
        FutureTask<T> task = new FutureTask<>(work);
        task.run();
        return task;
    }

    @Test
    void whatGoesWrongIsThrownAsItWas() {
        IllegalArgumentException wrong = new IllegalArgumentException("wrong");
        AssertionError error = new AssertionError("error");
        IOException checked = new IOException("checked");
        assertThat(SharedTasks.fault(new ExecutionException(wrong))).isSameAs(wrong);
        assertThat(SharedTasks.fault(new ExecutionException(checked)))
                .isInstanceOf(IllegalStateException.class)
                .hasCause(checked);
        assertThatThrownBy(() -> SharedTasks.fault(new ExecutionException(error)))
                .isSameAs(error);
        assertThatThrownBy(() -> SharedTasks.found(run(() -> {
                    throw wrong;
                })))
                .isSameAs(wrong);
        SharedTasks<Integer> tasks = new SharedTasks<>(List.of(piece(1), () -> {
            throw wrong;
        }));
        tasks.help();
        assertThat(tasks.get(0)).isEqualTo(10);
        assertThatThrownBy(() -> tasks.get(1)).isSameAs(wrong);
        assertThatThrownBy(tasks::all).isSameAs(wrong);
    }

    /** What cannot be computed is told as such; another fault stays what it is, also one that says that a state is wrong. */
    @Test
    void whatCannotBeComputedIsToldAsSuch() throws CannotComputeException {
        CannotComputeException cannot = new CannotComputeException("it jams");
        assertThat(SharedTasks.answer(run(() -> 4))).isEqualTo(4);
        assertThatThrownBy(() -> SharedTasks.answer(run(() -> {
                    throw cannot;
                })))
                .isSameAs(cannot);
        IllegalStateException state = new IllegalStateException("state", new IOException("why"));
        assertThatThrownBy(() -> SharedTasks.answer(run(() -> {
                    throw state;
                })))
                .isSameAs(state);
    }

    /** An interrupt does not lose the answer, and is not lost itself. */
    @Test
    void anInterruptIsKeptForLater() throws InterruptedException {
        CountDownLatch waits = new CountDownLatch(1);
        FutureTask<Integer> slow = new FutureTask<>(() -> {
            waits.await();
            return 5;
        });
        List<Object> seen = new ArrayList<>();
        Thread asks = new Thread(() -> {
            Thread.currentThread().interrupt();
            seen.add(SharedTasks.found(slow));
            seen.add(Thread.currentThread().isInterrupted());
        });
        Thread does = new Thread(slow);
        does.start();
        asks.start();
        while (asks.getState() != Thread.State.WAITING) {
            Thread.onSpinWait();
        }
        waits.countDown();
        asks.join();
        does.join();
        assertThat(seen).containsExactly(5, true);
        // nobody who is not interrupted is so afterwards
        assertThat(SharedTasks.found(run(() -> 6))).isEqualTo(6);
        assertThat(Thread.currentThread().isInterrupted()).isFalse();
    }
}
