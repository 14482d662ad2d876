// SPDX-License-Identifier: Apache-2.0
package tipwright.check.supply;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.check.actuator.Ratings;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.TimedCheck;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.Limits;
import tipwright.design.actuator.Cylinder;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.supply.HandWinch;
import tipwright.design.supply.Pump;
import tipwright.design.supply.Supply;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.time.Moment;
import tipwright.time.Timing;

/** Pressure, motor, valve flow and lowering of hydraulic cylinders. */
public final class HydraulicCheck implements TimedCheck {
    private static final double OVER_LOAD = 1.3;

    @Override
    public String id() {
        return "hydraulic";
    }

    @Override
    public String title() {
        return "Hydraulics: pressure";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : "Hydraulics: " + part;
    }

    @Override
    public String rule() {
        return "The largest pressure stays under the relief valve's setting; the pump's motor has the power for it; valve and"
                + " hoses take the flow either way; a counterbalance valve is set to 1.3 times what the load makes; a load"
                + " that helps on its way, up or back, needs a valve or throttle to hold it.";
    }

    @Override
    public String formula() {
        return "p = F / (A efficiency); P = p Q / efficiency of the pump; flow back = v times the other side's area";
    }

    @Override
    public String source() {
        return "p = F/A, P = p Q; counterbalance 1.3 times the load: common practice, no source; ISO 4413 (from memory)";
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a larger bore, a pump and hoses that fit it, or a relief valve set as the cylinder allows");
    }

    @Override
    public List<Finding> run(Analysis analysis, Timing timing) {
        Design design = analysis.design();
        List<Cylinder> cylinders = new ArrayList<>();
        for (PlacedActuator p : design.drive().actuators()) {
            if (p.actuator() instanceof Cylinder c) {
                cylinders.add(c);
            }
        }
        Supply supply = design.supply();
        if (cylinders.isEmpty() || supply instanceof HandWinch) {
            return List.of();
        }
        Findings make = new Findings(this, design);
        if (timing.missing() != null) {
            return List.of(make.untimed("", timing));
        }
        List<Finding> all = new ArrayList<>();
        Extreme pressure = timing.largest(m -> m.draw().flow() > 0 ? m.draw().pressure() : 0);
        double relief = Ratings.relief(design);
        Text note = Text.of("relief valve at {}", Text.amount(relief, Kind.PRESSURE, "bar", 0));
        all.add(make.compare("pressure", pressure.value(), relief, 1, Kind.PRESSURE, pressure, note));
        if (supply instanceof Pump pump) {
            pump(make, pump, timing, all);
        } else if (supply == null) {
            all.add(make.missing("supply", "supply missing (pump, motor, valve)"));
            return all;
        }
        if (!GravityReturnCheck.byGravity(supply, cylinders)) {
            helped(make, Moment.Phase.LOWER, supply, analysis, timing, cylinders, all);
        }
        helped(make, Moment.Phase.RAISE, supply, analysis, timing, cylinders, all);
        return all;
    }

    private static void pump(Findings make, Pump pump, Timing timing, List<Finding> all) {
        Extreme shaft = timing.largest(m -> m.draw().shaft());
        Double motor = pump.motorPower();
        all.add(
                motor == null
                        ? make.missing("motor", "supply.motor-power missing")
                        : make.compare(
                                "motor", shaft.value(), motor, 1, Kind.POWER, shaft, "power at the pump's shaft"));
        Extreme flow = timing.largest(m -> Math.max(m.draw().flow(), m.draw().returned()));
        Double valve = pump.valveFlow();
        all.add(
                valve == null
                        ? make.missing("valve", "supply.valve-flow missing")
                        : make.compare("valve", flow.value(), valve, 1, Kind.FLOW, flow, "largest flow, out or back"));
    }

    /** What holds back a load that drives the rod on; one that the oil does not bear at all is told of elsewhere. */
    private static void helped(
            Findings make,
            Moment.Phase phase,
            Supply supply,
            Analysis analysis,
            Timing timing,
            List<Cylinder> cylinders,
            List<Finding> all) {
        boolean back = phase == Moment.Phase.LOWER;
        boolean out = back == analysis.poses().get(0).arm() > 0;
        double area = 0;
        for (Cylinder h : cylinders) {
            area += h.oilArea(analysis.poses().get(0).length(), out);
        }
        Extreme helping = timing.largest(m -> m.phase() == phase ? (out ? 1 : -1) * m.force() : 0);
        if (!(helping.value() > 0 && area > 0)) {
            return;
        }
        Double setting = back && supply instanceof Pump pump && pump.lowering() == Pump.Lowering.COUNTERBALANCE
                ? pump.counterbalance()
                : null;
        if (setting != null) {
            all.add(make.compare(
                    "counterbalance",
                    helping.value() / area,
                    setting,
                    OVER_LOAD,
                    Kind.PRESSURE,
                    helping,
                    "pressure that the load makes on its way back against the valve's setting over 1.3"));
            return;
        }
        all.add(make.given(
                back ? "lowering" : "raising",
                helping.value() / area,
                0,
                1,
                Kind.PRESSURE,
                1,
                helping,
                Verdict.CLOSE,
                "the load drives the rod " + (back ? "back" : "on")
                        + " and can run ahead of the pump: fit a counterbalance valve or a throttle"));
    }
}
