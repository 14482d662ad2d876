// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import org.jspecify.annotations.Nullable;

/** Moves the places of a good candidate to the best near it, on whole marks of the tape or on holes. Immutable: several threads may use it. */
final class Refiner {
    /** Parts of the way to what few tilts call the best; where every tilt turns it down, less is tried. */
    private static final double[] PARTS = {1, 0.995, 0.98, 0.95, 0.9, 0.75, 0.5};

    /** Coordinates whose next marks are tried too. */
    private static final int CORNERS = 4;

    private final Task task;
    private final CandidateCost coarse;
    private final CandidateCost fine;
    private final long seed;
    private final double step;
    private final int generations;
    private final boolean others;

    /**
     * A refiner.
     *
     * @param coarse looks for the way
     * @param fine tells what came of it, at every tilt
     * @param step how far to look around a candidate at first, m
     * @param generations at most
     * @param others whether to keep clear of the checks that are no limit of the search on the way, which cost most
     */
    Refiner(
            Task task,
            CandidateCost coarse,
            CandidateCost fine,
            long seed,
            double step,
            int generations,
            boolean others) {
        this.task = task;
        this.coarse = coarse;
        this.fine = fine;
        this.seed = seed;
        this.step = step;
        this.generations = generations;
        this.others = others;
    }

    /** A place at least as good for the aim; the pins are on whole marks, or on holes. */
    Candidate refine(Candidate start, Aim aim) {
        double[] from = CandidateCost.coordinates(Task.places(start));
        Candidate first = at(from, start);
        Candidate best = first == null ? start : first;
        double scale = Math.max(1e-9, start.cost(aim));
        int actuator = actuator(start);
        double[] found = Double.isFinite(scale)
                ? coarse.least(coarse.over(actuator, aim, scale, others), Task.places(best), step, seed, generations)
                : null;
        for (int i = 0; found != null && i < PARTS.length; i++) {
            Candidate end = at(between(from, found, PARTS[i]), start);
            if (end != null) {
                return end.betterThan(best, aim) ? end : best;
            }
        }
        return best;
    }

    private static double[] between(double[] from, double[] to, double part) {
        double[] point = new double[from.length];
        for (int i = 0; i < point.length; i++) {
            point[i] = from[i] + part * (to[i] - from[i]);
        }
        return point;
    }

    /** The same on whole marks, or as it is when none near it is allowed. */
    Candidate rounded(Candidate candidate) {
        Candidate rounded = at(CandidateCost.coordinates(Task.places(candidate)), candidate);
        return rounded == null ? candidate : rounded;
    }

    /** On the nearest marks; where that is not allowed, the best on marks around it. */
    private @Nullable Candidate at(double[] p, Candidate like) {
        Candidate nearest = fine.candidate(fine.places(p, true), actuator(like));
        if (nearest != null) {
            return nearest;
        }
        Candidate best = null;
        for (int way = 1; way < 1 << Math.min(p.length, CORNERS); way++) {
            double[] near = p.clone();
            for (int i = 0; i < Math.min(p.length, CORNERS); i++) {
                if ((way >> i & 1) == 1) {
                    double mark = Math.rint(p[i] / task.mark()) * task.mark();
                    near[i] = mark + (p[i] < mark ? -task.mark() : task.mark());
                }
            }
            Candidate found = fine.candidate(fine.places(near, true), actuator(like));
            if (found != null && (best == null || found.utilisation() < best.utilisation())) {
                best = found;
            }
        }
        return best;
    }

    private int actuator(Candidate candidate) {
        return task.listed().indexOf(candidate.actuator());
    }
}
