// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.ticket;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.application.Platform;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Result;
import tipwright.check.SideThreads;
import tipwright.check.StagedCheck;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.file.Problem;
import tipwright.design.file.Reading;
import tipwright.doubt.Doubter;
import tipwright.remedy.FixSearch;
import tipwright.remedy.Shop;
import tipwright.remedy.TriedFix;
import tipwright.remedy.TriedFixes;
import tipwright.report.Checked;
import tipwright.viewer.editor.Draft;
import tipwright.viewer.editor.Solved;

/** Works the whole answer out beside the window: stage by stage, and last what fixes it. A newer question ends an older one. */
public final class TicketWorker {
    private static final String CANNOT = "cannot be worked out: ";
    /** Something that nobody waits for in vain then. */
    private static final String FAULT = "the rest cannot be told: the program has a fault; save your work";

    private static final String FIXES = "fixes are being tried";

    private final AtomicInteger newest = new AtomicInteger();
    private final Consumer<Judged> watcher;
    private final ExecutorService verdicts = SideThreads.queue("verdict");
    private final ExecutorService rest = SideThreads.queue("fixes");
    private volatile @Nullable Work latest;
    /** What was asked and has not begun. */
    private volatile @Nullable Runnable next;

    /** What the latest whole answer was made of. */
    private record Work(Question asked, Checked checked, Judged told) {}

    /** Tells a watcher, on the window's thread. */
    public TicketWorker(Consumer<Judged> watcher) {
        this.watcher = watcher;
    }

    /** Forgets what was asked: something is being moved, or nothing can be computed. */
    public void cancel() {
        newest.incrementAndGet();
        next = null;
    }

    /**
     * Takes the question in; the work starts with {@link #begin}.
     *
     * @param known what is known at once
     * @param read what the draft says
     * @return what to show meanwhile
     */
    public Judged ask(Draft draft, Solved known, Reading.Good read) {
        int mine = newest.incrementAndGet();
        Judged first = Judged.asked(known);
        next = () -> judge(new Question(draft, read, mine), first);
        return first;
    }

    /** Begins with what was asked last, if nothing has ended it. */
    public void begin() {
        Runnable work = next;
        next = null;
        if (work != null && !verdicts.isShutdown()) {
            verdicts.execute(work);
        }
    }

    private record Question(Draft draft, Reading.Good read, int number) {
        Checked with(Result result) {
            List<String> remarks = read.warnings().stream().map(Problem::text).toList();
            return new Checked(result, read.assumptions(), remarks);
        }

        Shop shop() {
            return Shop.of(draft.parts(read.design()), read.units());
        }
    }

    private boolean wanted(Question asked) {
        return asked.number() == newest.get();
    }

    private void tell(Judged judged, Question asked) {
        Platform.runLater(() -> {
            if (wanted(asked)) {
                watcher.accept(judged);
            }
        });
    }

    private void judge(Question asked, Judged first) {
        Judged known = first;
        try {
            StagedCheck check = StagedCheck.of(first.early().analysis());
            if (wanted(asked)) {
                known = known.atRest(check.atRest());
                tell(known, asked);
            }
            if (wanted(asked)) {
                Judged verdict = known.checked(asked.with(check.inTime()));
                known = verdict;
                tell(known, asked);
                rest.execute(() -> finish(asked, check, verdict));
            }
        } catch (RejectedExecutionException e) {
            // the window was closed meanwhile
            cancel();
        } catch (CannotComputeException e) {
            tell(known.endsWith(CANNOT + e.getMessage()), asked);
        } catch (RuntimeException | Error fault) {
            tell(known.endsWith(FAULT), asked);
            throw fault;
        }
    }

    /** How full it may be, then what fixes it. */
    private void finish(Question asked, StagedCheck check, Judged verdict) {
        if (!wanted(asked)) {
            return;
        }
        try {
            Result result = check.whole();
            boolean fine =
                    result.verdict() == Verdict.PASS && asked.read().uncertain().isEmpty();
            Judged filled = verdict.filled(asked.with(result), List.of(), fine ? "" : FIXES);
            tell(filled, asked);
            if (!fine && wanted(asked)) {
                fix(asked, result, filled);
            }
        } catch (CannotComputeException e) {
            tell(verdict.endsWith(CANNOT + e.getMessage()), asked);
        } catch (RuntimeException | Error fault) {
            tell(verdict.endsWith(FAULT), asked);
            throw fault;
        }
    }

    private void fix(Question asked, Result result, Judged filled) {
        // what is close can wait while something fails
        TriedFixes tried = FixSearch.of(result, asked::shop, result.verdict() != Verdict.FAIL, () -> wanted(asked));
        List<ReadyFix> ready = ready(asked, tried, result);
        if (!wanted(asked)) {
            return;
        }
        Checked checked = asked.with(result);
        Checked all = new Checked(
                result,
                checked.assumptions(),
                checked.remarks(),
                tried,
                Doubter.ask(asked.read(), result.findings()),
                List.of());
        done(new Work(asked, all, filled.filled(all, ready, "")));
    }

    /** The fixes of which each was written into the text, read again and checked again. */
    private List<ReadyFix> ready(Question asked, TriedFixes tried, Result result) {
        Reading.Good read = asked.read();
        Draft draft = asked.draft();
        Function<Design, @Nullable String> changes = draft.changes(read);
        List<ReadyFix> ready = new ArrayList<>();
        for (TriedFix fix : tried.all()) {
            if (!wanted(asked)) {
                return List.of();
            }
            String text = changes.apply(fix.design());
            ready.add(new ReadyFix(fix, text != null && holds(draft, text, fix, result) ? text : null));
        }
        return ready;
    }

    private void done(Work work) {
        latest = work;
        tell(work.told, work.asked);
    }

    /** Looks for fixes of one finding that is only close, while something else fails; they come as the others do. */
    public void look(Finding finding) {
        int mine = newest.get();
        rest.execute(() -> {
            Work work = latest;
            if (work == null || work.asked.number() != mine || !wanted(work.asked)) {
                return;
            }
            Checked was = work.checked;
            Result result = was.result();
            TriedFixes more = FixSearch.of(result, work.asked::shop, finding, () -> wanted(work.asked));
            List<ReadyFix> ready = ready(work.asked, more, result);
            Checked with = new Checked(
                    result, was.assumptions(), was.remarks(), was.fixes().plus(more), was.sure(), was.sizes());
            done(new Work(work.asked, with, work.told.plus(finding, with, ready)));
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
        rest.shutdown();
    }
}
