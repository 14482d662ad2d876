// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.ticket;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import javafx.application.Platform;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.file.ChangedText;
import tipwright.design.file.PartsAtHand;
import tipwright.design.file.Problem;
import tipwright.design.file.Reading;
import tipwright.doubt.Doubter;
import tipwright.load.Contents;
import tipwright.remedy.FixSearch;
import tipwright.remedy.Shop;
import tipwright.remedy.TriedFix;
import tipwright.remedy.TriedFixes;
import tipwright.report.Checked;
import tipwright.viewer.editor.Draft;

/** Works the whole answer out beside the window: first the verdict, then how sure it is and what fixes it. A newer question ends an older one. */
public final class TicketWorker {
    private static final String TIME = "time and part fills are being worked out";
    private static final String FIXES = "fixes are being tried";

    private final AtomicInteger newest = new AtomicInteger();
    private final Consumer<Judged> watcher;
    private final ExecutorService verdicts = daemon("verdict");
    private final ExecutorService fixes = daemon("fixes");
    private volatile @Nullable Work latest;

    /** What the latest whole answer was made of. */
    private record Work(Draft draft, Reading.Good good, Checked checked, Judged told, int mine) {}

    /** Tells a watcher, on the window's thread. */
    public TicketWorker(Consumer<Judged> watcher) {
        this.watcher = watcher;
    }

    private static ExecutorService daemon(String name) {
        return Executors.newSingleThreadExecutor(work -> {
            Thread thread = new Thread(work, name);
            thread.setDaemon(true);
            return thread;
        });
    }

    /** Forgets what was asked: something is being moved, or nothing can be computed. */
    public void cancel() {
        newest.incrementAndGet();
    }

    /**
     * Asks for all of it.
     *
     * @param known what is known at once
     * @return what to show meanwhile
     */
    public Judged ask(Draft draft, tipwright.viewer.editor.Solved known) {
        int mine = newest.incrementAndGet();
        Judged first = Judged.first(known.analysis(), known.findings(), TIME);
        verdicts.execute(() -> judge(draft, first, mine));
        return first;
    }

    private boolean wanted(int mine) {
        return mine == newest.get();
    }

    private void tell(Judged judged, int mine) {
        Platform.runLater(() -> {
            if (wanted(mine)) {
                watcher.accept(judged);
            }
        });
    }

    private void judge(Draft draft, Judged first, int mine) {
        if (!wanted(mine) || !(draft.read() instanceof Reading.Good good)) {
            return;
        }
        try {
            Result result = Checker.check(good.design());
            List<String> remarks = good.warnings().stream().map(Problem::text).toList();
            Checked checked = new Checked(result, good.assumptions(), remarks);
            boolean fine = result.verdict() == Verdict.PASS && good.uncertain().isEmpty();
            tell(new Judged(first.early(), checked, List.of(), fine ? "" : FIXES), mine);
            if (!fine) {
                fixes.execute(() -> fix(draft, good, checked, first, mine));
            }
        } catch (CannotComputeException e) {
            tell(new Judged(first.early(), null, List.of(), "cannot be worked out: " + e.getMessage()), mine);
        }
    }

    private void fix(Draft draft, Reading.Good good, Checked checked, Judged first, int mine) {
        if (!wanted(mine)) {
            return;
        }
        Result result = checked.result();
        PartsAtHand names = draft.parts(good.design());
        // what is close can wait while something fails
        TriedFixes tried = FixSearch.of(
                result, () -> Shop.of(names, good.units()), result.verdict() != Verdict.FAIL, () -> wanted(mine));
        List<ReadyFix> ready = ready(draft, good, tried, result, mine);
        if (!wanted(mine)) {
            return;
        }
        Checked all = new Checked(
                result,
                checked.assumptions(),
                checked.remarks(),
                tried,
                Doubter.ask(good, result.findings()),
                List.of());
        done(new Work(draft, good, all, new Judged(first.early(), all, ready, ""), mine));
    }

    /** The fixes of which each was written into the text, read again and checked again. */
    private List<ReadyFix> ready(Draft draft, Reading.Good good, TriedFixes tried, Result result, int mine) {
        PartsAtHand names = draft.parts(good.design());
        double capacity = new Contents(good.design()).capacity();
        List<ReadyFix> ready = new ArrayList<>();
        for (TriedFix fix : tried.all()) {
            if (!wanted(mine)) {
                return List.of();
            }
            String text = ChangedText.of(good, fix.design(), capacity, names::name, t -> draft.with(t)
                    .read());
            ready.add(new ReadyFix(fix, text != null && holds(draft, text, fix, result) ? text : null));
        }
        return ready;
    }

    private void done(Work work) {
        latest = work;
        tell(work.told, work.mine);
    }

    /** Looks for fixes of one finding that is only close, while something else fails; they come as the others do. */
    public void look(Finding finding) {
        int mine = newest.get();
        fixes.execute(() -> {
            Work work = latest;
            if (work == null || work.mine != mine || !wanted(mine)) {
                return;
            }
            Result result = work.checked.result();
            PartsAtHand names = work.draft.parts(work.good.design());
            TriedFixes more =
                    FixSearch.of(result, () -> Shop.of(names, work.good.units()), finding, () -> wanted(mine));
            List<ReadyFix> ready = ready(work.draft, work.good, more, result, mine);
            Checked was = work.checked;
            Checked with = new Checked(
                    result, was.assumptions(), was.remarks(), was.fixes().plus(more), was.sure(), was.sizes());
            done(new Work(work.draft, work.good, with, work.told.plus(finding, with, ready), mine));
        });
    }

    /** Whether the fix comes to the same when its text is read again. */
    private static boolean holds(Draft draft, String text, TriedFix fix, Result before) {
        return draft.with(text).read() instanceof Reading.Good changed
                && FixSearch.holds(fix, before, changed.design());
    }

    /** Ends with the window. */
    public void end() {
        cancel();
        verdicts.shutdown();
        fixes.shutdown();
    }
}
