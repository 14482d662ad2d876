// SPDX-License-Identifier: Apache-2.0
package tipwright.check.actuator;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Fix;
import tipwright.check.rule.TimedCheck;
import tipwright.check.rule.Verdict;
import tipwright.design.Alike;
import tipwright.design.Limits;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.key.NameId;
import tipwright.design.tank.CaseName;
import tipwright.outline.PartKind;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.time.Cycle;
import tipwright.time.CycleTimer;
import tipwright.time.Moment;
import tipwright.time.Timing;

/** Whether the drive gets the tank up, and back. */
public final class StallCheck implements TimedCheck {
    private static final String SHARE = "share of each";

    @Override
    public String id() {
        return "stall";
    }

    @Override
    public String title() {
        return "Actuator: stalling";
    }

    @Override
    public String title(String part) {
        return part.equals(SHARE) ? "Actuators side by side: share of each" : title();
    }

    @Override
    public String shortly(Finding finding) {
        return ofShare(finding) ? "what each of two unlike actuators bears" : "whether the actuator stalls";
    }

    @Override
    public String rule() {
        return "With the supply as stated the drive does not stall on its way up or back, with any load that it may meet:"
                + " under 1 % of its no-load speed it counts as stalled. An electric actuator is taken to follow the straight"
                + " line through its two known points on past the rated load until it stands still, and to stall over twice"
                + " the rated load in any case; a load that helps does not make it faster than free. Where electric actuators"
                + " side by side do not run equally fast with the same load, the share of each cannot be told.";
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
    public Set<PartKind> looksAt() {
        return Set.of(PartKind.TUBE, PartKind.ROD);
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        if (ofShare(finding)) {
            return Text.words("actuators of one kind side by side");
        }
        return Text.words(
                "a stronger actuator, or more voltage or pressure at it, or " + Fix.ARM + ", or less in the tank");
    }

    @Override
    public Text says(Finding finding) {
        return finding.verdict() == Verdict.NOT_CHECKED || finding.verdict() == Verdict.PASS
                ? TimedCheck.super.says(finding)
                : Text.words((finding.worst().direction() == MotionDirection.RAISING
                                ? "the actuator stalls"
                                : "the tank does not come back down")
                        + (finding.verdict() == Verdict.CLOSE ? ", and goes on when enough has run out" : ""));
    }

    @Override
    public List<Finding> run(Analysis analysis, Timing timing) {
        Findings make = new Findings(this, analysis.design());
        if (timing.missing() != null) {
            return List.of(make.untimed("", timing));
        }
        List<Finding> share = equallyFast(analysis.design().drive().actuators())
                ? List.of()
                : List.of(make.cannot(
                        SHARE,
                        "with the same load one of them is faster; it then bears more than its share and pushes the slower one along,"
                                + " which is not worked out"));
        List<Finding> stalled = new ArrayList<>();
        for (Cycle cycle : timing.cycles()) {
            if (!Double.isNaN(cycle.stalledAt()) || !Double.isNaN(cycle.stuckAt())) {
                stalled.add(stalled(make, analysis, cycle));
            }
        }
        if (!stalled.isEmpty()) {
            stalled.addAll(share);
            return stalled;
        }
        Extreme slowest = timing.smallest(m -> m.phase() == Moment.Phase.HOLD ? Double.POSITIVE_INFINITY : m.pace());
        Text note = Text.of(
                "at its slowest it still makes {} of its free speed", Text.amount(slowest.value(), Kind.RATIO, "%", 0));
        List<Finding> all = new ArrayList<>(share);
        all.add(0, make.compare("", CycleTimer.STALL, slowest.value(), 1, Kind.RATIO, slowest, note));
        return all;
    }

    private static boolean ofShare(Finding finding) {
        return finding.partId().equals(NameId.of(SHARE));
    }

    /** Whether all electric actuators have one line of speed over load, pushing and pulling, so that the same share is on each. */
    private static boolean equallyFast(List<PlacedActuator> all) {
        List<List<Double>> lines = new ArrayList<>();
        for (PlacedActuator p : all) {
            if (p.actuator() instanceof ElectricActuator e) {
                ElectricActuator.Speed speed = e.speed();
                Double voltage = e.voltage();
                if (speed != null) {
                    double slower = speed.noLoad() - speed.rated();
                    double free = speed.noLoad() / (voltage == null ? 1 : voltage);
                    lines.add(List.of(free, slower / e.ratedPush(), slower / e.ratedPull()));
                }
            }
        }
        return Alike.all(lines);
    }

    private static Finding stalled(Findings make, Analysis analysis, Cycle cycle) {
        boolean up = !Double.isNaN(cycle.stalledAt());
        boolean back = !Double.isNaN(cycle.stuckAt());
        double tilt = up ? cycle.stalledAt() : cycle.stuckAt();
        boolean goesOn = up && Double.isFinite(cycle.raise()) && !back;
        Text note = Text.of(
                (up
                                ? "the actuator stalls at {} with the load '"
                                : "the tank does not come back: it stops at {} with the load '")
                        + CaseName.shown(cycle.load(), analysis.design().tank()) + "'"
                        + (goesOn ? "; goes on when enough has run out" : ""),
                Text.degrees(tilt, 1));
        Extreme worst = new Extreme(0, tilt, cycle.load(), up ? MotionDirection.RAISING : MotionDirection.LOWERING);
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
}
