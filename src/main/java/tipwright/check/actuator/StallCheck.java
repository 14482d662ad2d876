// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.TimedCheck;
import tipwright.check.rule.Verdict;
import tipwright.quantity.Kind;
import tipwright.time.Cycle;
import tipwright.time.CycleTimer;
import tipwright.time.Moment;
import tipwright.time.Timing;

/** Whether the drive gets the tank up, and back. */
public final class StallCheck implements TimedCheck {
    @Override
    public String id() {
        return "stall";
    }

    @Override
    public String title() {
        return "Drive keeps moving";
    }

    @Override
    public String rule() {
        return "With the supply as stated the drive does not stall on its way up or back, with any load that it may meet:"
                + " under 1 % of its free speed it counts as stalled. An electric actuator is taken to follow the straight"
                + " line through its two known points on past the rated load until it stands still, and to stall over twice"
                + " the rated load in any case; a load that helps does not make it faster than free.";
    }

    @Override
    public String formula() {
        return "v(F, U) / v(0) over the whole dump; electric: v = v0 U/U0 - (v0 - vr) F/Fr; hydraulic: v = Q/A below relief";
    }

    @Override
    public String source() {
        return "linear load lines of a brushed motor; v = Q/A; the 1 %: common practice, no source";
    }

    @Override
    public List<Finding> run(Analysis analysis, Timing timing) {
        Findings make = new Findings(this, analysis.design().limits());
        if (timing.missing() != null) {
            return List.of(make.missing("", timing.missing()));
        }
        List<Finding> stalled = new ArrayList<>();
        Findings.Worst slowest = new Findings.Worst(Double.POSITIVE_INFINITY, Double.NaN, null);
        for (Cycle cycle : timing.cycles()) {
            if (!Double.isNaN(cycle.stalledAt()) || !Double.isNaN(cycle.stuckAt())) {
                stalled.add(stalled(make, cycle));
            }
            Findings.Worst here = slowest(cycle);
            slowest = here.value() < slowest.value() ? here : slowest;
        }
        if (!stalled.isEmpty()) {
            return stalled;
        }
        String note = String.format(
                Locale.ROOT, "at its slowest it still makes %.0f %% of its free speed", 100 * slowest.value());
        return List.of(make.compare("", CycleTimer.STALL, slowest.value(), 1, Kind.RATIO, slowest, note));
    }

    private static Finding stalled(Findings make, Cycle cycle) {
        boolean up = !Double.isNaN(cycle.stalledAt());
        boolean back = !Double.isNaN(cycle.stuckAt());
        double tilt = up ? cycle.stalledAt() : cycle.stuckAt();
        boolean goesOn = up && Double.isFinite(cycle.raise()) && !back;
        String note = String.format(
                Locale.ROOT,
                up
                        ? "stalls at %.1f deg with the %s load%s"
                        : "does not come back: stops at %.1f deg with the %s load%s",
                Math.toDegrees(tilt),
                cycle.load(),
                goesOn ? "; goes on when enough has run out" : "");
        Findings.Worst worst = new Findings.Worst(0, tilt, cycle.load());
        return make.given(
                cycle.load() + " load",
                CycleTimer.STALL,
                0,
                1,
                Kind.RATIO,
                Double.POSITIVE_INFINITY,
                worst,
                goesOn ? Verdict.CLOSE : Verdict.FAIL,
                note);
    }

    private static Findings.Worst slowest(Cycle cycle) {
        Findings.Worst least = new Findings.Worst(Double.POSITIVE_INFINITY, Double.NaN, null);
        for (Moment m : cycle.moments()) {
            if (m.phase() != Moment.Phase.HOLD && m.pace() < least.value()) {
                least = new Findings.Worst(m.pace(), m.tilt(), cycle.load());
            }
        }
        return least;
    }
}
