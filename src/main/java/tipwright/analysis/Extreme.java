// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * The worst of something over loads, tilts and directions of motion, and where it is. This is the only place that chooses: the
 * first of those that are equal but for rounding governs, and a value that is no number governs over all others, so that no check can pass it.
 *
 * @param value that is worst
 * @param tilt rad; NaN: none governs
 * @param loadCase name of the load case; null: none governs
 * @param direction of motion; null: none governs
 */
public record Extreme(double value, double tilt, @Nullable String loadCase, @Nullable MotionDirection direction) {
    /** No load, tilt or direction governs. */
    public static final Extreme NOWHERE = new Extreme(Double.NaN, Double.NaN, null, null);

    /** A value of one load at one tilt in one direction of motion. */
    public interface OfBalance {
        double of(Row row, Balance balance);
    }

    /** Where a value was found that depends on the tilt alone, rad. */
    public static Extreme at(double value, double tilt) {
        return new Extreme(value, tilt, null, null);
    }

    /** Largest over loads, tilts and directions. */
    public static Extreme largest(List<CaseResult> cases, OfBalance value) {
        Search search = Search.largest();
        for (CaseResult load : cases) {
            for (Row row : load.rows()) {
                for (MotionDirection direction : MotionDirection.ALL) {
                    search.offer(value.of(row, row.balance(direction)), row.tilt(), load.name(), direction);
                }
            }
        }
        return search.found();
    }

    /**
     * The same of a value that takes long: it is asked for only where a figure that it never exceeds is above the largest so far.
     *
     * @param atMost what the value does not exceed, quickly worked out
     */
    public static Extreme largest(List<CaseResult> cases, OfBalance atMost, OfBalance value) {
        Search search = Search.largest();
        for (CaseResult load : cases) {
            for (Row row : load.rows()) {
                for (MotionDirection direction : MotionDirection.ALL) {
                    Balance balance = row.balance(direction);
                    if (!(atMost.of(row, balance) <= search.found().value())) {
                        search.offer(value.of(row, balance), row.tilt(), load.name(), direction);
                    }
                }
            }
        }
        return search.found();
    }

    /** Largest over loads and tilts of what does not depend on the direction, or looks at one of them alone. */
    public static Extreme largest(
            List<CaseResult> cases, @Nullable MotionDirection direction, ToDoubleFunction<Row> value) {
        Search search = Search.largest();
        for (CaseResult load : cases) {
            for (Row row : load.rows()) {
                search.offer(value.applyAsDouble(row), row.tilt(), load.name(), direction);
            }
        }
        return search.found();
    }

    /** Largest over the tilts. */
    public static Extreme largest(Analysis analysis, ToDoubleFunction<Pose> value) {
        return over(Search.largest(), analysis, value);
    }

    /** Smallest over the tilts; what differs by no more than this is alike, and the first of it governs. */
    public static Extreme smallest(Analysis analysis, double alike, ToDoubleFunction<Pose> value) {
        return over(Search.smallest(alike), analysis, value);
    }

    private static Extreme over(Search search, Analysis analysis, ToDoubleFunction<Pose> value) {
        analysis.poses().forEach(p -> search.offer(value.applyAsDouble(p), p.tilt(), null, null));
        return search.found();
    }

    /** The linkage where this is; as stowed when no tilt governs. */
    public Pose pose(Analysis analysis) {
        return analysis.poses().stream()
                .filter(p -> p.tilt() == tilt)
                .findFirst()
                .orElse(analysis.poses().get(0));
    }

    /** The row where this is; null when no load or tilt governs. */
    public @Nullable Row row(List<CaseResult> cases) {
        return cases.stream()
                .filter(c -> c.name().equals(loadCase))
                .flatMap(c -> c.rows().stream())
                .filter(r -> r.tilt() == tilt)
                .findFirst()
                .orElse(null);
    }

    /** The balance where this is; null when no load, tilt or direction governs. */
    public @Nullable Balance balance(List<CaseResult> cases) {
        Row row = row(cases);
        return row == null || direction == null ? null : row.balance(direction);
    }

    /** Takes values one after another and keeps the worst. Belongs to one loop. */
    public static final class Search {
        /** Share by which rounding alone may make two differ: friction is found by repetition to a hundredth of a billionth. */
        private static final double ROUNDING = 1e-10;

        private final double sign;
        private final double alike;
        private Extreme found;

        private Search(double sign, double start, double alike) {
            this.sign = sign;
            this.alike = alike;
            found = at(start, Double.NaN);
        }

        public static Search largest() {
            return new Search(1, Double.NEGATIVE_INFINITY, 0);
        }

        /** Only what is larger than this counts. */
        public static Search above(double floor) {
            return new Search(1, floor, 0);
        }

        /** Only what is smaller than this counts. */
        public static Search below(double ceiling) {
            return new Search(-1, ceiling, 0);
        }

        public static Search smallest() {
            return smallest(0);
        }

        /** Values that differ by no more than this are alike. */
        public static Search smallest(double alike) {
            return new Search(-1, Double.POSITIVE_INFINITY, alike);
        }

        /** Whether this value is the worst so far. */
        public boolean offer(
                double value, double tilt, @Nullable String loadCase, @Nullable MotionDirection direction) {
            double slack = Double.isFinite(found.value()) ? alike + ROUNDING * Math.abs(found.value()) : 0;
            boolean worse =
                    Double.isNaN(value) ? !Double.isNaN(found.value()) : sign * value > sign * found.value() + slack;
            if (worse) {
                found = new Extreme(value, tilt, loadCase, direction);
            }
            return worse;
        }

        /** The worst so far; nowhere when nothing was. */
        public Extreme found() {
            return found;
        }
    }
}
