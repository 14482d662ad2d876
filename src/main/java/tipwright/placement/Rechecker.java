// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.Finding;
import tipwright.check.Verdict;
import tipwright.design.Design;

/** Picks the answers, each checked in full. What fails in the very same way at every place does not depend on the mounts. */
final class Rechecker {
    private static final int OTHERS = 4;
    /** Answers nearer than this to each other are one, m. */
    private static final double APART = 0.02;

    private final Task task;
    private final Map<Spot, @Nullable List<Finding>> checked = new HashMap<>();

    Rechecker(Task task) {
        this.task = task;
    }

    /** The best for each aim and other compromises that nothing beats; remarks are added to the notes. */
    List<Answer> answers(List<Spot> good, List<String> notes) throws CannotComputeException {
        List<Spot> front = front(good);
        List<Finding> drawn = Checker.findings(task.design());
        Map<Spot, List<Aim>> picked = new LinkedHashMap<>();
        for (Aim aim : Aim.values()) {
            Spot spot = best(good, aim, drawn);
            if (spot != null && Double.isFinite(spot.cost(aim))) {
                picked.computeIfAbsent(spot, s -> new ArrayList<>()).add(aim);
            }
        }
        int others = 0;
        for (Spot spot : front) {
            if (others < OTHERS && picked.keySet().stream().noneMatch(p -> near(p, spot)) && passes(spot, drawn)) {
                picked.put(spot, new ArrayList<>());
                others++;
            }
        }
        List<Answer> answers = new ArrayList<>();
        for (Map.Entry<Spot, List<Aim>> entry : picked.entrySet()) {
            answers.add(answer(entry.getKey(), entry.getValue()));
        }
        tell(answers, drawn, notes);
        return answers;
    }

    private static boolean near(Spot a, Spot b) {
        return a.actuator().equals(b.actuator())
                && a.framePin().minus(b.framePin()).norm() < APART
                && a.tankPin().minus(b.tankPin()).norm() < APART
                && a.pivot().minus(b.pivot()).norm() < APART;
    }

    /** Those that no other beats, lowest utilisation first. */
    static List<Spot> front(List<Spot> all) {
        List<Spot> front = new ArrayList<>();
        for (Spot spot : all) {
            if (!front.contains(spot) && all.stream().noneMatch(o -> o.beats(spot))) {
                front.add(spot);
            }
        }
        front.sort(Comparator.comparingDouble(Spot::utilisation));
        return front;
    }

    private @Nullable Spot best(List<Spot> good, Aim aim, List<Finding> drawn) throws CannotComputeException {
        List<Spot> sorted = new ArrayList<>(good);
        sorted.sort((a, b) -> a.betterThan(b, aim) ? -1 : b.betterThan(a, aim) ? 1 : 0);
        for (Spot spot : sorted) {
            if (passes(spot, drawn)) {
                return spot;
            }
        }
        return sorted.isEmpty() ? null : sorted.get(0);
    }

    private boolean passes(Spot spot, List<Finding> drawn) throws CannotComputeException {
        for (Finding f : findings(spot)) {
            if (f.verdict() == Verdict.FAIL && !sameIn(drawn, f)) {
                return false;
            }
        }
        return true;
    }

    private List<Finding> findings(Spot spot) throws CannotComputeException {
        List<Finding> known = checked.get(spot);
        if (known == null) {
            known = Checker.findings(spot.in(task.design()));
            checked.put(spot, known);
        }
        return known;
    }

    private static boolean sameIn(List<Finding> drawn, Finding f) {
        for (Finding d : drawn) {
            if (d.id().equals(f.id())) {
                return Objects.equals(d.verdict(), f.verdict())
                        && Math.abs(d.utilisation() - f.utilisation()) <= 1e-9 * (1 + Math.abs(f.utilisation()));
            }
        }
        return false;
    }

    private Answer answer(Spot spot, List<Aim> aims) throws CannotComputeException {
        Design design = spot.in(task.design());
        List<Finding> findings = findings(spot);
        Finding governing = findings.stream()
                .filter(f -> f.id().startsWith(spot.governing().check()))
                .max(Comparator.comparingDouble(Finding::utilisation))
                .orElse(findings.get(0));
        List<Finding> failed =
                findings.stream().filter(f -> f.verdict() == Verdict.FAIL).toList();
        return new Answer(aims, spot, design, findings, governing, failed);
    }

    private static void tell(List<Answer> answers, List<Finding> drawn, List<String> notes) {
        if (answers.isEmpty()) {
            return;
        }
        for (Finding f : answers.get(0).failed()) {
            if (sameIn(drawn, f)) {
                notes.add("fails wherever the mounts are: " + f.title() + " (" + f.note() + ")");
            }
        }
    }
}
