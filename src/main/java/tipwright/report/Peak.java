// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.geometry.Vec3;

/**
 * The largest of something, and where.
 *
 * @param value SI
 * @param loadCase name of the case
 * @param tilt rad
 * @param motion at which it happens: 'raising', 'lowering', 'at rest'
 */
public record Peak(double value, String loadCase, double tilt, String motion) {
    private static final double SAME = 1e-6;

    private static Peak of(Extreme e) {
        return new Peak(
                e.value(),
                Objects.requireNonNull(e.loadCase()),
                e.tilt(),
                Objects.requireNonNull(e.direction()).word());
    }

    /** Force of the actuators that is furthest to one side, friction included; null when none goes to that side. */
    public static @Nullable Peak force(List<CaseResult> cases, Tilts tilts, boolean push) {
        Extreme most = Extreme.largest(tilts.of(cases), (row, b) -> push ? b.force() : -b.force());
        return most.value() > 0 ? of(most) : null;
    }

    /** The same with every fill up to the stated one and in every condition that was checked. */
    public static @Nullable Peak force(Result result, boolean push) {
        return force(result.analysis(), result.findings(), push);
    }

    static @Nullable Peak force(Analysis analysis, List<Finding> findings, boolean push) {
        Peak own = force(analysis.cases(), Tilts.ALL, push);
        String id = push ? "push" : "pull";
        for (Finding f : findings) {
            String load = f.loadCase();
            MotionDirection direction = f.worst().direction();
            if (f.id().equals(id)
                    && load != null
                    && direction != null
                    && f.demand() > (own == null ? 0 : own.value() * (1 + SAME))) {
                return new Peak(f.demand(), load, f.tilt(), direction.word());
            }
        }
        return own;
    }

    /** A bearing's largest load; null when there are no rows. */
    public static @Nullable OnBearing bearing(List<CaseResult> cases, Tilts tilts, int from, int to) {
        OnBearing best = null;
        for (int i = from; i < to; i++) {
            int bearing = i;
            Extreme most = Extreme.largest(
                    tilts.of(cases), (row, b) -> b.bearings().get(bearing).norm());
            Balance there = most.balance(cases);
            if (there != null && (best == null || most.value() > best.peak.value)) {
                best = new OnBearing(bearing, there.bearings().get(bearing), of(most));
            }
        }
        return best;
    }

    /** Which tilts to look at, by number: from, up to but without to. */
    public record Tilts(int from, int to) {
        public static final Tilts ALL = new Tilts(0, Integer.MAX_VALUE);

        /** One tilt. */
        public static Tilts only(int i) {
            return new Tilts(i, i + 1);
        }

        private List<CaseResult> of(List<CaseResult> cases) {
            return cases.stream()
                    .map(c -> new CaseResult(
                            c.load(),
                            c.rows()
                                    .subList(
                                            Math.min(from, c.rows().size()),
                                            Math.min(to, c.rows().size()))))
                    .toList();
        }
    }

    /**
     * Where a bearing's load is largest.
     *
     * @param bearing its number, from 0
     * @param load of the tank on the bearing, N
     */
    public record OnBearing(int bearing, Vec3 load, Peak peak) {}
}
