// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.actuator.TelescopicCylinder;
import tipwright.design.supply.Orifice;
import tipwright.design.supply.Pump;

/**
 * Telescopic cylinders side by side on one pump: at each length the area of the stage that moves counts. They come back by
 * gravity, through an orifice.
 *
 * <p>v = Q / A, p = F / (A efficiency), q = Cd a sqrt(2 p / rho). Source: as for {@link HydraulicMachine}.
 */
final class StageMachine implements Machine {
    private final List<TelescopicCylinder> all;
    private final double flow;
    private final double relief;
    private final double efficiency;
    private final double pumpEfficiency;
    private final double motorEfficiency;
    private final ReturnFlow back;
    private final double duty;

    StageMachine(List<TelescopicCylinder> all, @Nullable Pump pump, double kelvin) throws Machines.MissingException {
        this.all = all;
        Double setting = pump == null ? null : pump.relief();
        double weakest = setting == null ? Double.POSITIVE_INFINITY : setting;
        double worst = 1;
        double least = Double.POSITIVE_INFINITY;
        double own = 0;
        for (TelescopicCylinder t : all) {
            weakest = Math.min(weakest, t.reliefPressure());
            worst = Math.min(worst, t.efficiency());
            Double share = t.duty();
            least = Math.min(least, share == null ? Double.POSITIVE_INFINITY : share);
            Double given = t.flow();
            own += given == null ? Double.NaN : given;
        }
        relief = weakest;
        efficiency = worst;
        duty = least;
        flow = pump == null ? own : pump.flow();
        pumpEfficiency = pump == null ? 0.8 : pump.efficiency();
        motorEfficiency = pump == null ? 0.8 : pump.motorEfficiency();
        if (!(flow > 0)) {
            throw new Machines.MissingException("supply.flow or actuator.flow missing");
        }
        Orifice way = pump == null ? null : pump.orifice();
        if (pump == null || way == null) {
            throw new Machines.MissingException("supply.orifice missing (the valve through which it comes down)");
        }
        back = new ReturnFlow(way, pump.returnLine(), kelvin);
    }

    private double area(double length) {
        double sum = 0;
        for (TelescopicCylinder t : all) {
            sum += t.oilArea(length, true);
        }
        return sum;
    }

    @Override
    public DriveState draw(double against, boolean out, boolean raising) {
        return draw(all.get(0).closed(), against, out, raising);
    }

    @Override
    public DriveState draw(double length, double against, boolean out, boolean raising) {
        double area = area(length);
        if (!out) {
            double pressure = Math.max(0, -against) * efficiency / area;
            double gone = back.flow(pressure);
            return new DriveState(gone / area, 0, 0, pressure, 0, gone, 0);
        }
        double pressure = Math.max(0, against) / (area * efficiency);
        double given = flow * Math.min(1, Math.max(0, (relief - pressure) / (HydraulicMachine.FADE * relief)));
        double oil = Math.min(pressure, relief);
        double shaft = oil * flow / pumpEfficiency;
        return new DriveState(given / area, 0, shaft / motorEfficiency, oil, given, 0, shaft);
    }

    @Override
    public double freeSpeed() {
        return flow / area(all.get(0).closed());
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
