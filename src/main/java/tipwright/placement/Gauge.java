// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Row;
import tipwright.analysis.StrokeTime;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.drive.TiltRange;
import tipwright.geometry.Vec2;
import tipwright.linkage.Linkage;
import tipwright.linkage.LinkageException;
import tipwright.linkage.Posture;
import tipwright.load.LoadTable;
import tipwright.load.TiltGrid;

/**
 * Evaluates candidates of any mechanism with the general analysis and the checks, at the design's tilts or at fewer. The loads do not
 * depend on the mechanism and are worked out once. Immutable: several threads may use it.
 */
final class Gauge {
    private static final double SAME = 1e-9;

    private final AnyTask task;
    private final Design design;
    private final double[] tilts;
    private final LoadTable loads;
    private final List<@Nullable Buckling> buckling = new ArrayList<>();
    private final Map<String, Double> drawn;

    /**
     * A gauge.
     *
     * @param most tilts are left out until there are about so many
     */
    Gauge(AnyTask task, int most) {
        this.task = task;
        TiltRange given = task.design().tilt();
        double step = Math.max(given.step(), (given.to() - given.from()) / most);
        design = task.design().withTilt(new TiltRange(given.from(), given.to(), step));
        tilts = TiltGrid.of(design);
        loads = LoadTable.of(design, tilts);
        task.listed().forEach(a -> buckling.add(Buckling.of(a.actuator())));
        drawn = failures(design);
    }

    private Map<String, Double> failures(Design as) {
        try {
            return LimitChecks.otherFailures(Analyser.analyse(as, loads)).stream()
                    .collect(Collectors.toMap(Finding::id, Finding::utilisation, Math::max));
        } catch (CannotComputeException impossible) {
            return Map.of();
        }
    }

    /**
     * What the mechanism's motion alone tells.
     *
     * @param share of the tilt range that it reaches, 0 to 1
     * @param shortest length of the actuator, m
     * @param longest m
     */
    record Reach(double share, double shortest, double longest) {
        private static final Reach NONE = new Reach(0, 0, 0);

        /** By how much an actuator is too long when closed and too short drawn out, m; 0: it fits. */
        double misfit(Actuator actuator, double margin) {
            return Math.max(0, actuator.closed() + margin - shortest)
                    + Math.max(0, longest + margin - actuator.closed() - actuator.stroke());
        }
    }

    /**
     * What the analysis of a candidate tells.
     *
     * @param utilisations [limit]
     * @param force largest of one actuator, N
     * @param time to raise against the worst load at each tilt, s; infinite when not known
     */
    @SuppressWarnings("ArrayRecordComponent")
    record Tried(double[] utilisations, double force, double time) {
        double utilisation() {
            return utilisations[Judge.governing(utilisations)];
        }

        Limit governing() {
            return Limit.at(Judge.governing(utilisations));
        }
    }

    /** The stroke's margin with which the utilisation is what is allowed, m. */
    double margin() {
        return task.design().limits().strokeMargin() / task.wants().utilisation();
    }

    /** How far the mechanism moves with its places put there, m. */
    Reach reach(List<Vec2> at) {
        Design moved = moved(at, 0);
        List<Posture> postures;
        try {
            postures = Linkage.of(moved.drive().skeleton(moved.pivot().at()))
                    .sweep(tilts)
                    .postures();
        } catch (LinkageException none) {
            return Reach.NONE;
        }
        double shortest = Double.POSITIVE_INFINITY;
        double longest = 0;
        for (Posture p : postures) {
            shortest = Math.min(shortest, p.length());
            longest = Math.max(longest, p.length());
        }
        return new Reach((double) postures.size() / tilts.length, shortest, longest);
    }

    private Design moved(List<Vec2> at, int actuator) {
        return Seat.moved(design, task.seats(at), task.listed().get(actuator).actuator());
    }

    /** A candidate with one of the actuators, by number. */
    Tried tried(List<Vec2> at, int actuator) {
        Analysis analysis;
        try {
            analysis = Analyser.analyse(moved(at, actuator), loads);
        } catch (CannotComputeException impossible) {
            double[] none = new double[Judge.LIMITS];
            none[Limit.REACH.index()] = LimitChecks.PASSED;
            return new Tried(none, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        }
        double[] all = LimitChecks.utilisations(analysis, Limit.BUCKLING);
        int sharing = design.drive().actuators().size();
        double most = force(analysis, actuator, sharing, all);
        StrokeTime stroke = StrokeTime.of(analysis);
        double time = stroke == null ? Double.POSITIVE_INFINITY : stroke.raise();
        Double wanted = task.wants().time();
        if (wanted != null) {
            all[Limit.TIME.index()] = time > wanted ? time / wanted : 0;
        }
        return new Tried(all, most, time);
    }

    /** The largest force of one actuator, N; buckling goes into the utilisations. */
    private double force(Analysis analysis, int actuator, int sharing, double[] all) {
        Buckling column = buckling.get(actuator);
        double most = 0;
        for (CaseResult result : analysis.cases()) {
            for (Row row : result.rows()) {
                double push = 0;
                for (Balance b : List.of(row.rest(), row.raise(), row.lower())) {
                    push = Math.max(push, b.force() / sharing);
                    most = Math.max(most, Math.abs(b.force()) / sharing);
                }
                if (column != null) {
                    double used = push
                            * design.factors().buckling()
                            / column.at(row.pose().length());
                    all[Limit.BUCKLING.index()] = Math.max(all[Limit.BUCKLING.index()], used);
                }
            }
        }
        return most;
    }

    /**
     * How far the checks that are no limit of the search are from passing, gaps among them; what fails as drawn in the very same
     * way does not count. 0: all pass.
     */
    double amiss(List<Vec2> at, int actuator) {
        Analysis analysis;
        try {
            analysis = Analyser.analyse(moved(at, actuator), loads);
        } catch (CannotComputeException impossible) {
            return LimitChecks.PASSED;
        }
        double sum = 0;
        for (Finding f : LimitChecks.otherFailures(analysis)) {
            double before = drawn.getOrDefault(f.id(), Double.NaN);
            if (!(Math.abs(before - f.utilisation()) <= SAME * (1 + before))) {
                sum += 0.5 + (f.utilisation() > 1 ? Math.min(1, f.utilisation() - 1) : 1);
            }
        }
        return sum;
    }
}
