// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;

/**
 * Makes answers of the best candidates: refined, checked in full, the best for each aim and other good compromises. What fails any
 * check is no answer: where nothing passes it goes under what nearly fits.
 */
final class Finish {
    private static final int OTHERS = 4;
    /** Answers nearer than this to each other are one, m. */
    private static final double APART = 0.02;

    private final Design design;
    private final Rechecker rechecker;
    private final Refiner refiner;
    private final CandidateEvaluator every;

    /**
     * What is left to do on a design with the tilt that is wanted.
     *
     * @param every judges at every tilt
     */
    Finish(Design design, CandidateEvaluator every, Refiner refiner, Rechecker rechecker) {
        this.design = design;
        this.every = every;
        this.refiner = refiner;
        this.rechecker = rechecker;
    }

    /**
     * What came of one actuator and aim.
     *
     * @param candidate passes the full check; null when none does
     * @param missed better by the search, but turned down by the full check; null: none
     */
    private record Outcome(@Nullable Candidate candidate, @Nullable Candidate missed) {}

    /**
     * What is found.
     *
     * @param answers pass every check
     * @param nearly when there are none: what comes nearest
     * @param notes in plain words
     * @param missed turned down by the full check
     */
    record Found(List<Answer> answers, List<Answer> nearly, List<String> notes, List<Candidate> missed) {}

    /**
     * What the best candidates come to.
     *
     * @param before turned down by the full check already
     */
    Found placement(Shortlist best, List<Candidate> before, WorkerPool pool) {
        List<Callable<Outcome>> work = new ArrayList<>();
        for (int a = 0; a < best.actuators(); a++) {
            for (Aim aim : Aim.values()) {
                List<Candidate> candidates = List.copyOf(best.of(a, aim));
                if (aim != Aim.PRICE && !candidates.isEmpty()) {
                    work.add(() -> outcome(candidates, aim, pool));
                }
            }
        }
        List<Candidate> good = new ArrayList<>();
        List<Candidate> missed = new ArrayList<>(before);
        for (Outcome outcome : pool.all(work)) {
            if (outcome.candidate() != null) {
                good.add(outcome.candidate());
            }
            if (outcome.missed() != null) {
                missed.add(outcome.missed());
            }
        }
        List<Answer> picked = pick(good.isEmpty() ? missed : good);
        List<String> notes = new ArrayList<>();
        tell(good, missed, notes);
        return new Found(good.isEmpty() ? List.of() : picked, good.isEmpty() ? picked : List.of(), notes, missed);
    }

    /** The first of the candidates that passes, refined if that passes too. */
    private Outcome outcome(List<Candidate> candidates, Aim aim, WorkerPool pool) {
        Candidate missed = null;
        for (Candidate candidate : candidates) {
            Candidate refined = pool.stopped() ? refiner.rounded(candidate) : refiner.refine(candidate, aim);
            // the first is checked in full whatever it is, to tell why it fails; the others if nothing quicker tells
            boolean first = missed == null;
            if ((first || every.violation(refined) == 0) && rechecker.passes(refined)) {
                return new Outcome(refined, missed);
            }
            missed = first ? refined : missed;
            if (first && rechecker.failsWhereverItIs(refined)) {
                return new Outcome(null, missed);
            }
            Candidate plain = refiner.rounded(candidate);
            if (every.violation(plain) == 0 && rechecker.passes(plain)) {
                return new Outcome(plain, missed);
            }
        }
        return new Outcome(null, missed);
    }

    private List<Answer> pick(List<Candidate> from) {
        Map<Candidate, List<Aim>> picked = new LinkedHashMap<>();
        for (Aim aim : Aim.values()) {
            Candidate candidate = best(from, aim);
            if (candidate != null && Double.isFinite(candidate.cost(aim))) {
                picked.computeIfAbsent(candidate, c -> new ArrayList<>()).add(aim);
            }
        }
        int others = 0;
        for (Candidate candidate : front(from)) {
            if (others < OTHERS && picked.keySet().stream().noneMatch(p -> p.near(candidate, APART))) {
                picked.put(candidate, List.of());
                others++;
            }
        }
        List<Answer> answers = new ArrayList<>();
        picked.forEach((candidate, aims) -> answers.add(answer(candidate, aims)));
        return answers;
    }

    private static @Nullable Candidate best(List<Candidate> all, Aim aim) {
        Candidate best = null;
        for (Candidate candidate : all) {
            best = best == null || candidate.betterThan(best, aim) ? candidate : best;
        }
        return best;
    }

    /** Those that no other beats, lowest utilisation first. */
    private static List<Candidate> front(List<Candidate> all) {
        List<Candidate> front = new ArrayList<>();
        for (Candidate candidate : all) {
            if (!front.contains(candidate) && all.stream().noneMatch(o -> o.beats(candidate))) {
                front.add(candidate);
            }
        }
        front.sort(Comparator.comparingDouble(Candidate::utilisation));
        return front;
    }

    private Answer answer(Candidate candidate, List<Aim> aims) {
        List<Finding> findings = rechecker.findings(candidate);
        Finding governing = null;
        for (Finding f : findings) {
            if (Limit.of(f) == candidate.governing()
                    && (governing == null || f.utilisation() > governing.utilisation())) {
                governing = f;
            }
        }
        List<Finding> failed =
                findings.stream().filter(f -> f.verdict() == Verdict.FAIL).toList();
        return new Answer(aims, candidate, candidate.in(design), findings, governing, failed);
    }

    private void tell(List<Candidate> good, List<Candidate> missed, List<String> notes) {
        Candidate best = best(good, Aim.UTILISATION);
        Candidate turnedDown = best(missed, Aim.UTILISATION);
        if (best != null && turnedDown != null && turnedDown.utilisation() < best.utilisation() - 0.005) {
            notes.add(turnedDown.actuator().name() + " could go down to " + Math.round(100 * turnedDown.utilisation())
                    + " %, but the full check of that place fails: " + rechecker.against(turnedDown));
        }
        if (best == null && turnedDown != null) {
            for (Finding f : rechecker.findings(turnedDown)) {
                if (f.verdict() == Verdict.FAIL && rechecker.everywhere(f)) {
                    notes.add("moving the mounts does not help, it fails anyway: " + f.title() + " ("
                            + f.note().metric() + ")");
                }
            }
        }
    }
}
