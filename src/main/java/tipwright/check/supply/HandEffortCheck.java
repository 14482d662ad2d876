// SPDX-License-Identifier: Apache-2.0
package tipwright.check.supply;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.TimedCheck;
import tipwright.design.Design;
import tipwright.design.Limits;
import tipwright.design.supply.HandPump;
import tipwright.design.supply.HandWinch;
import tipwright.design.supply.Supply;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.time.Moment;
import tipwright.time.Timing;

/** What a crank or pump handle asks of the hand. */
public final class HandEffortCheck implements TimedCheck {
    @Override
    public String id() {
        return "hand";
    }

    @Override
    public String title() {
        return "Work by hand";
    }

    @Override
    public String rule() {
        return "The hand on the crank or handle need not push harder than a worker can all day, and the worker need not give"
                + " more power than can be kept up, at the pace that the file states.";
    }

    @Override
    public String formula() {
        return "winch: F_hand = F travel / (2 pi crank efficiency), P = F v / efficiency; pump: F_hand = p V / (way of the hand"
                + " x efficiency), P = p Q / efficiency";
    }

    @Override
    public String source() {
        return "work of the hand is work of the load over the efficiency; the limits: common practice, no source";
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words(
                finding.id().endsWith("power")
                        ? "fewer turns or strokes a minute: it then takes longer"
                        : "a longer crank or handle, or less travel for each turn or stroke");
    }

    @Override
    public List<Finding> run(Analysis analysis, Timing timing) {
        Design design = analysis.design();
        Supply supply = design.supply();
        Findings make = new Findings(this, design);
        if (!(supply instanceof HandWinch || supply instanceof HandPump)) {
            return List.of();
        }
        if (timing.missing() != null) {
            return List.of(make.untimed("", timing));
        }
        if (supply instanceof HandWinch winch) {
            return winch(make, design.limits(), winch, analysis, timing);
        }
        return pump(make, design.limits(), (HandPump) supply, timing);
    }

    private static List<Finding> winch(
            Findings make, Limits limits, HandWinch winch, Analysis analysis, Timing timing) {
        Double efficiency = winch.efficiency();
        if (efficiency == null) {
            return List.of(make.missing("", "supply.efficiency missing"));
        }
        double work = winch.travelPerTurn() / efficiency;
        int way = analysis.poses().get(0).arm() > 0 ? 1 : -1;
        Extreme load = timing.largest(m -> against(m, way));
        Double crank = winch.crank();
        Finding force = force(
                make,
                limits,
                crank == null ? null : load.value() * work / (2 * Math.PI * crank),
                load,
                "supply.crank missing");
        double each = work * winch.turnsPerMinute() / 60;
        return List.of(force, power(make, limits, load.value() * each, load));
    }

    /** Force against the crank on the way up, or back where the load does not come by itself, N. */
    private static double against(Moment m, int way) {
        return switch (m.phase()) {
            case RAISE -> way * m.force();
            case LOWER -> -way * m.force();
            case HOLD -> 0;
        };
    }

    private static List<Finding> pump(Findings make, Limits limits, HandPump pump, Timing timing) {
        Extreme load = timing.largest(m -> m.draw().flow() > 0 ? m.draw().pressure() : 0);
        double work = pump.perStroke() / pump.efficiency();
        Double way = pump.handTravel();
        // The handle is pushed one way and pulled the other, with oil for both: the mean force is the work over the
        // whole way.
        Finding force =
                force(make, limits, way == null ? null : load.value() * work / way, load, "supply.hand-travel missing");
        return List.of(force, power(make, limits, load.value() * work * pump.strokesPerMinute() / 60, load));
    }

    private static Finding force(Findings make, Limits limits, @Nullable Double force, Extreme load, String missing) {
        return force == null
                ? make.missing("force", missing)
                : make.compare(
                        "force",
                        force,
                        limits.handForce(),
                        1,
                        Kind.FORCE,
                        load,
                        "on the crank or handle, at the heaviest");
    }

    private static Finding power(Findings make, Limits limits, double power, Extreme load) {
        return make.compare(
                "power",
                power,
                limits.handPower(),
                1,
                Kind.POWER,
                load,
                Text.words("what the worker has to give there to keep the pace"));
    }
}
