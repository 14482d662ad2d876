// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.atomic.AtomicInteger;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.design.Design;

/** What rules find with some fills, which two threads may work off together: each fill is looked at by one of them. */
final class SharedFills {
    private final Analysis stated;
    private final Design rough;
    private final List<Check> rules;
    private final List<Double> shares;
    private final List<CompletableFuture<List<Finding>>> found = new ArrayList<>();
    private final AtomicInteger next = new AtomicInteger();

    /**
     * Of a design; nothing has been looked at yet.
     *
     * @param rough the same with fewer tilts
     * @param shares of the interior that are filled
     */
    SharedFills(Analysis stated, Design rough, List<Check> rules, List<Double> shares) {
        this.stated = stated;
        this.rough = rough;
        this.rules = rules;
        this.shares = List.copyOf(shares);
        shares.forEach(share -> found.add(new CompletableFuture<>()));
    }

    /** Shares of the interior that are filled. */
    List<Double> shares() {
        return shares;
    }

    /** The design with fewer tilts. */
    Design rough() {
        return rough;
    }

    /** A workspace for one thread. */
    Conditions conditions() throws CannotComputeException {
        return new Conditions(rough, stated.emptying(), stated.vessel());
    }

    /** Looks at those that nobody has begun; what goes wrong is thrown where the findings are asked for. */
    void help() {
        if (next.get() < shares.size()) {
            try {
                work(conditions());
            } catch (CannotComputeException e) {
                // who asks for the findings makes the same workspace, and is told
                return;
            }
        }
    }

    private void work(Conditions mine) {
        for (int i = next.getAndIncrement(); i < shares.size(); i = next.getAndIncrement()) {
            try {
                found.get(i).complete(mine.find(stated.design().slurry().withFill(shares.get(i)), rules));
            } catch (CannotComputeException | RuntimeException | Error e) {
                found.get(i).completeExceptionally(e);
            }
        }
    }

    /**
     * What is found with each fill, in their order: looks at those that nobody has begun and waits for the others.
     *
     * @param mine workspace of this thread
     */
    List<List<Finding>> findings(Conditions mine) throws CannotComputeException {
        work(mine);
        List<List<Finding>> all = new ArrayList<>();
        for (CompletableFuture<List<Finding>> one : found) {
            try {
                all.add(one.join());
            } catch (CompletionException e) {
                if (e.getCause() instanceof CannotComputeException cannot) {
                    throw cannot;
                }
                if (e.getCause() instanceof RuntimeException fault) {
                    throw fault;
                }
                throw e;
            }
        }
        return all;
    }
}
