// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.ticket;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import javafx.application.Platform;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Result;
import tipwright.check.StagedCheck;
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
import tipwright.viewer.editor.Solved;

/** Works the whole answer out beside the window: stage by stage, and last what fixes it. A newer question ends an older one. */
public final class TicketWorker {
    private static final String CANNOT = "cannot be worked out: ";
    private static final String FIXES = "fixes are being tried";

    private final AtomicInteger newest = new AtomicInteger();
    private final Consumer<Judged> watcher;
    private final ExecutorService verdicts = daemon("verdict");
    private final ExecutorService rest = daemon("fixes");

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
     * @param read what the draft says
     * @return what to show meanwhile
     */
    public Judged ask(Draft draft, Solved known, Reading.Good read) {
        int mine = newest.incrementAndGet();
        Judged first = Judged.asked(known);
        verdicts.execute(() -> judge(new Question(draft, read, mine), first));
        return first;
    }

    private record Question(Draft draft, Reading.Good read, int number) {
        Checked with(Result result) {
            List<String> remarks = read.warnings().stream().map(Problem::text).toList();
            return new Checked(result, read.assumptions(), remarks);
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
        }
    }

    private void fix(Question asked, Result result, Judged filled) {
        Reading.Good read = asked.read();
        PartsAtHand names = asked.draft().parts(read.design());
        // what is close can wait while something fails
        TriedFixes tried = FixSearch.of(
                result, Shop.of(names, read.units()), result.verdict() != Verdict.FAIL, () -> wanted(asked));
        List<ReadyFix> ready = new ArrayList<>();
        double capacity = new Contents(read.design()).capacity();
        for (TriedFix fix : tried.all()) {
            if (!wanted(asked)) {
                return;
            }
            String text = ChangedText.of(read, fix.design(), capacity, names::name);
            ready.add(new ReadyFix(fix, text != null && holds(asked.draft(), text, fix, result) ? text : null));
        }
        Checked checked = asked.with(result);
        Checked all = new Checked(
                result,
                checked.assumptions(),
                checked.remarks(),
                tried,
                Doubter.ask(read, result.findings()),
                List.of());
        tell(filled.filled(all, ready, ""), asked);
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
