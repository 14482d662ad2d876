// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.actuator.HydraulicActuator;
import tipwright.design.supply.HandPump;
import tipwright.design.supply.Orifice;
import tipwright.design.supply.Pump;

/**
 * Cylinders side by side on one pump.
 *
 * <p>v = Q / A with A the bore side going out and the annulus going back; p = F / (A efficiency). The relief valve takes the flow
 * away over the last {@value #FADE} of its setting and all of it at the setting. Lowering by gravity: oil leaves the loaded side
 * through an orifice and a hose, q = Cd a sqrt(2 p / rho) less what the hose takes; with power: the pump's flow into the other side; over a counterbalance valve the
 * pump makes the pilot pressure (setting - load pressure) / ratio besides. Source: v = Q/A, p = F/A, orifice equation; density of
 * mineral oil 870 kg/m3 from memory; width of the relief's fade: common practice, no source.
 */
final class HydraulicMachine implements Machine {
    static final double FADE = 0.02;

    private final double bore;
    private final double annulus;
    private final double efficiency;
    private final boolean pulls;
    private final double flow;
    private final double relief;
    private final double pumpEfficiency;
    private final double motorEfficiency;
    private final Pump.Lowering lowering;
    private final @Nullable ReturnFlow back;
    private final double counterbalance;
    private final double pilotRatio;
    private final double duty;

    private HydraulicMachine(List<HydraulicActuator> all, Pump pump, double kelvin) throws Machines.MissingException {
        double bores = 0;
        double rings = 0;
        double worst = 1;
        boolean allPull = true;
        double weakest = Double.POSITIVE_INFINITY;
        double least = Double.POSITIVE_INFINITY;
        for (HydraulicActuator h : all) {
            bores += h.boreArea();
            rings += h.annulusArea();
            worst = Math.min(worst, h.efficiency());
            allPull &= h.acting() == HydraulicActuator.Acting.DOUBLE;
            weakest = Math.min(weakest, h.reliefPressure());
            Double share = h.duty();
            least = Math.min(least, share == null ? Double.POSITIVE_INFINITY : share);
        }
        bore = bores;
        annulus = rings;
        efficiency = worst;
        pulls = allPull;
        duty = least;
        flow = pump.flow();
        Double setting = pump.relief();
        relief = setting == null ? weakest : Math.min(weakest, setting);
        pumpEfficiency = pump.efficiency();
        motorEfficiency = pump.motorEfficiency();
        Pump.Lowering way = pump.lowering();
        lowering = way != null ? way : pulls ? Pump.Lowering.POWER_DOWN : Pump.Lowering.GRAVITY;
        Orifice orifice = pump.orifice();
        back = orifice == null ? null : new ReturnFlow(orifice, pump.returnLine(), kelvin);
        Double valve = pump.counterbalance();
        counterbalance = valve == null ? 0 : valve;
        pilotRatio = pump.pilotRatio();
        if (lowering == Pump.Lowering.GRAVITY && orifice == null) {
            throw new Machines.MissingException("supply.orifice missing (the valve through which it comes down)");
        }
        if (lowering == Pump.Lowering.COUNTERBALANCE && valve == null) {
            throw new Machines.MissingException("supply.counterbalance missing");
        }
    }

    static HydraulicMachine of(List<HydraulicActuator> all, @Nullable Pump pump, double kelvin)
            throws Machines.MissingException {
        if (pump != null) {
            return new HydraulicMachine(all, pump, kelvin);
        }
        double flow = 0;
        for (HydraulicActuator h : all) {
            Double own = h.flow();
            if (own == null) {
                throw new Machines.MissingException("supply.flow or actuator.flow missing");
            }
            flow += own;
        }
        return new HydraulicMachine(all, new Pump(flow, null, null, 0.8, 0.8, null, null, null, 3, null, null), kelvin);
    }

    static HydraulicMachine byHand(List<HydraulicActuator> all, HandPump hand, double kelvin)
            throws Machines.MissingException {
        double flow = hand.perStroke() * hand.strokesPerMinute() / 60;
        return new HydraulicMachine(
                all,
                new Pump(
                        flow,
                        hand.relief(),
                        null,
                        1,
                        1,
                        hand.orifice() == null ? null : Pump.Lowering.GRAVITY,
                        hand.orifice(),
                        null,
                        3,
                        null,
                        hand.returnLine()),
                kelvin);
    }

    @Override
    public DriveState draw(double against, boolean out, boolean raising) {
        double driven = out ? bore : annulus;
        double other = out ? annulus : bore;
        if (!raising && lowering == Pump.Lowering.GRAVITY) {
            return fall(-against, other);
        }
        if (!out && !pulls) {
            return DriveState.moving(0, 0);
        }
        double pressure = Math.max(0, against) / (driven * efficiency);
        if (!raising && lowering == Pump.Lowering.COUNTERBALANCE) {
            double loaded = Math.max(0, -against) / other;
            pressure += Math.max(0, counterbalance - loaded) / pilotRatio;
        }
        double given = flow * Math.min(1, Math.max(0, (relief - pressure) / (FADE * relief)));
        double oil = Math.min(pressure, relief);
        double shaft = oil * flow / pumpEfficiency;
        double speed = given / driven;
        return new DriveState(speed, 0, shaft / motorEfficiency, oil, given, speed * other, shaft);
    }

    private DriveState fall(double helping, double loaded) {
        if (helping <= 0 || back == null) {
            return DriveState.moving(0, 0);
        }
        double pressure = helping * efficiency / loaded;
        double out = back.flow(pressure);
        return new DriveState(out / loaded, 0, 0, pressure, 0, out, 0);
    }

    @Override
    public double freeSpeed() {
        return flow / bore;
    }

    @Override
    public double duty() {
        return duty;
    }

    @Override
    public double heating(DriveState draw) {
        return runs(draw) ? 1 : 0;
    }

    @Override
    public boolean runs(DriveState draw) {
        return draw.power() > 0 || draw.flow() > 0;
    }

    @Override
    public boolean powerKnown() {
        return true;
    }
}
