// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.geometry.Vec2;
import tipwright.load.LoadTable;

/**
 * Works candidates out by an engine and judges them by the checks, at the design's tilts or at some of them. The loads do not depend
 * on the mechanism and are worked out once. Immutable: several threads may use it.
 */
final class CandidateEvaluator {
    private final Task task;
    private final CandidateEngine engine;
    private final Design design;
    private final LoadTable loads;
    private final Map<String, Finding> drawn;
    /** Whether at every tilt. */
    private final boolean whole;

    private CandidateEvaluator(
            Task task,
            CandidateEngine engine,
            Design design,
            LoadTable loads,
            Map<String, Finding> drawn,
            boolean whole) {
        this.task = task;
        this.engine = engine;
        this.design = design;
        this.loads = loads;
        this.drawn = drawn;
        this.whole = whole;
    }

    /** At every tilt of the design. */
    static CandidateEvaluator of(Task task, CandidateEngine engine) throws CannotComputeException {
        Design design = task.design();
        LoadTable loads = Analyser.loads(design);
        return new CandidateEvaluator(task, engine, design, loads, failures(engine, design, loads), true);
    }

    /** The same at about so many tilts, which are some of those here. */
    CandidateEvaluator at(int most) {
        int last = loads.tilts().length - 1;
        int every = Math.max(1, (last + most - 1) / most);
        int[] which = IntStream.rangeClosed(0, (last + every - 1) / every)
                .map(i -> Math.min(last, i * every))
                .toArray();
        LoadTable some = loads.at(which);
        return new CandidateEvaluator(task, engine, design, some, failures(engine, design, some), false);
    }

    /** The same tank and tilts in another task. */
    CandidateEvaluator on(Task other) {
        return new CandidateEvaluator(other, engine, other.design(), loads, drawn, whole);
    }

    private static Map<String, Finding> failures(CandidateEngine engine, Design as, LoadTable loads) {
        try {
            return BoundingChecks.otherFailures(engine.analyse(as, loads)).stream()
                    .collect(Collectors.toMap(Finding::id, f -> f, (f, g) -> g.worseThan(f) ? g : f));
        } catch (CannotComputeException impossible) {
            return Map.of();
        }
    }

    /** Loads of the tank at the tilts looked at. */
    LoadTable loads() {
        return loads;
    }

    /** The stroke's margin with which the utilisation is what is allowed, m. */
    double margin() {
        return task.design().limits().strokeMargin() / task.wants().utilisation();
    }

    /** How far the mechanism moves with its places put there, m. */
    Reach reach(List<Vec2> at) {
        return Reach.of(engine.lengths(moved(at, 0), loads.tilts()), loads.tilts().length);
    }

    /** The design with its places put there, and one of the actuators, by number. */
    Design moved(List<Vec2> at, int actuator) {
        return PlacedPoint.moved(
                design, task.seats(at), task.listed().get(actuator).actuator());
    }

    /** A candidate with one of the actuators, by number. */
    Judgement judged(List<Vec2> at, int actuator) {
        if (whole) {
            return engine.judgedWithinStroke(moved(at, actuator), loads);
        }
        try {
            return Judgement.of(engine.analyse(moved(at, actuator), loads));
        } catch (CannotComputeException impossible) {
            return Judgement.impossible();
        }
    }

    /**
     * How far the checks that are no limit of the search are from passing, gaps among them; what fails as drawn in the very same
     * way does not count. 0: all pass.
     */
    double violation(List<Vec2> at, int actuator) {
        double sum = 0;
        for (Finding f : otherFailures(at, actuator)) {
            Finding before = drawn.get(f.id());
            if (before == null || !Rechecker.same(before, f)) {
                sum += 0.5 + (f.utilisation() > 1 ? Math.min(1, f.utilisation() - 1) : 1);
            }
        }
        return sum;
    }

    /** The same of a candidate. */
    double violation(Candidate candidate) {
        return violation(Task.places(candidate), task.listed().indexOf(candidate.actuator()));
    }

    /** The checks that are no limit of the search and fail there; none where there is no analysis. */
    List<Finding> otherFailures(List<Vec2> at, int actuator) {
        try {
            return BoundingChecks.otherFailures(engine.analyse(moved(at, actuator), loads));
        } catch (CannotComputeException impossible) {
            return List.of();
        }
    }
}
