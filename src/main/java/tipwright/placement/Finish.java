// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;

/** Turns the best grid candidates into answers: refined, checked in full, the best for each aim and other good compromises. */
final class Finish {
    private static final int OTHERS = 4;
    /** Answers nearer than this to each other are one, m. */
    private static final double APART = 0.02;

    private final Design design;
    private final Rechecker rechecker;
    private final Supplier<Polish> polish;

    /**
     * What is left to do.
     *
     * @param design with the tilt that is wanted
     * @param polish a new one for each piece of work
     */
    Finish(Design design, Supplier<Polish> polish) {
        this.design = design;
        this.polish = polish;
        rechecker = new Rechecker(design);
    }

    /**
     * What came of one actuator and aim.
     *
     * @param spot passes the full check; null when none does
     * @param missed better by the search, but turned down by the full check; null: none
     */
    private record Outcome(@Nullable Spot spot, @Nullable Spot missed) {}

    /** The answers; remarks are added to the notes. */
    List<Answer> answers(Best best, Crew crew, List<String> notes) {
        List<Callable<Outcome>> work = new ArrayList<>();
        for (int a = 0; a < best.actuators(); a++) {
            for (Aim aim : Aim.values()) {
                List<Spot> spots = List.copyOf(best.of(a, aim));
                if (aim != Aim.PRICE && !spots.isEmpty()) {
                    work.add(() -> outcome(spots, aim, crew));
                }
            }
        }
        List<Spot> good = new ArrayList<>();
        List<Spot> missed = new ArrayList<>();
        for (Outcome outcome : crew.all(work)) {
            if (outcome.spot() != null) {
                good.add(outcome.spot());
            }
            if (outcome.missed() != null) {
                missed.add(outcome.missed());
            }
        }
        return pick(good, missed, notes);
    }

    /** The first of the spots that passes, refined if that passes too. */
    private Outcome outcome(List<Spot> spots, Aim aim, Crew crew) {
        Polish refiner = polish.get();
        Spot missed = null;
        for (Spot spot : spots) {
            Spot refined = crew.stopped() ? refiner.rounded(spot) : refiner.refine(spot, aim);
            if (rechecker.passes(refined)) {
                return new Outcome(refined, missed);
            }
            missed = missed == null ? refined : missed;
            Spot plain = refiner.rounded(spot);
            if (rechecker.passes(plain)) {
                return new Outcome(plain, missed);
            }
        }
        return new Outcome(null, missed);
    }

    private List<Answer> pick(List<Spot> good, List<Spot> missed, List<String> notes) {
        List<Spot> from = good.isEmpty() ? missed : good;
        Map<Spot, List<Aim>> picked = new LinkedHashMap<>();
        for (Aim aim : Aim.values()) {
            Spot spot = best(from, aim);
            if (spot != null && Double.isFinite(spot.cost(aim))) {
                picked.computeIfAbsent(spot, s -> new ArrayList<>()).add(aim);
            }
        }
        int others = 0;
        for (Spot spot : front(from)) {
            if (others < OTHERS && picked.keySet().stream().noneMatch(p -> p.near(spot, APART))) {
                picked.put(spot, List.of());
                others++;
            }
        }
        List<Answer> answers = new ArrayList<>();
        picked.forEach((spot, aims) -> answers.add(answer(spot, aims)));
        tell(answers, best(from, Aim.UTILISATION), best(missed, Aim.UTILISATION), notes);
        return answers;
    }

    private static @Nullable Spot best(List<Spot> spots, Aim aim) {
        Spot best = null;
        for (Spot spot : spots) {
            best = best == null || spot.betterThan(best, aim) ? spot : best;
        }
        return best;
    }

    /** Those that no other beats, lowest utilisation first. */
    private static List<Spot> front(List<Spot> all) {
        List<Spot> front = new ArrayList<>();
        for (Spot spot : all) {
            if (!front.contains(spot) && all.stream().noneMatch(o -> o.beats(spot))) {
                front.add(spot);
            }
        }
        front.sort(Comparator.comparingDouble(Spot::utilisation));
        return front;
    }

    private Answer answer(Spot spot, List<Aim> aims) {
        List<Finding> findings = rechecker.findings(spot);
        Finding governing = null;
        for (Finding f : findings) {
            boolean same = Limit.of(f) == spot.governing();
            if (same && (governing == null || f.utilisation() > governing.utilisation())) {
                governing = f;
            }
        }
        List<Finding> failed =
                findings.stream().filter(f -> f.verdict() == Verdict.FAIL).toList();
        return new Answer(aims, spot, spot.in(design), findings, governing, failed);
    }

    private void tell(List<Answer> answers, @Nullable Spot best, @Nullable Spot missed, List<String> notes) {
        if (best != null && missed != null && missed.utilisation() < best.utilisation() - 0.005) {
            notes.add(missed.actuator().name() + " could go down to " + Math.round(100 * missed.utilisation())
                    + " %, but the full check of that place fails: " + rechecker.against(missed));
        }
        if (!answers.isEmpty()) {
            for (Finding f : answers.get(0).failed()) {
                if (rechecker.everywhere(f)) {
                    notes.add("moving the mounts does not help, it fails anyway:  " + f.title() + " ("
                            + f.note().metric() + ")");
                }
            }
        }
    }
}
