// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Alike;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.supply.Battery;

/**
 * Electric actuators side by side on one battery and one cable; each carries an equal share, the slowest sets the speed.
 *
 * <p>For one actuator under load F at motor voltage U, with the two known points no-load (v0, i0) and rated (vr, ir at Fr), both
 * at the rated voltage U0: current i = i0 + (ir - i0) F/Fr whatever the voltage; speed v = v0 U/U0 - (v0 - vr) F/Fr. Beyond the
 * rated load both lines go on until the speed is zero: stalled there, and stalled over {@value #OVERLOAD} times the rated load in
 * any case (clutch or cut-out; common practice, no source). A load that helps runs at the no-load speed and current: the screw
 * does not give power back. Motor voltage: U = battery - i R of battery and cable out and back. Source: linear lines of a brushed
 * motor with permanent magnets; Ohm's law.
 */
final class ElectricMachine implements Machine {
    static final double OVERLOAD = ElectricActuator.OVERLOAD;

    private final List<ElectricActuator> actuators;
    private final @Nullable Battery battery;
    private final boolean currentKnown;
    private final boolean alike;
    private final double duty;

    private ElectricMachine(List<ElectricActuator> actuators, @Nullable Battery battery) {
        this.actuators = actuators;
        this.battery = battery;
        boolean known = true;
        double least = Double.POSITIVE_INFINITY;
        for (ElectricActuator a : actuators) {
            known &= a.current() != null && (battery != null || a.voltage() != null);
            Double share = a.duty();
            least = Math.min(least, share == null ? Double.POSITIVE_INFINITY : share);
        }
        currentKnown = known;
        alike = Alike.all(actuators);
        duty = least;
    }

    static ElectricMachine of(List<ElectricActuator> actuators, @Nullable Battery battery)
            throws Machines.MissingException {
        for (ElectricActuator a : actuators) {
            if (a.speed() == null) {
                throw new Machines.MissingException("actuator.speed missing");
            }
        }
        return new ElectricMachine(actuators, battery);
    }

    @Override
    public DriveState draw(double against, boolean out, boolean raising) {
        double share = against / actuators.size();
        double current = 0;
        List<Double> each = alike ? List.of() : new ArrayList<>(actuators.size());
        for (ElectricActuator a : actuators) {
            double own = current(a, share, out);
            current += own;
            if (!alike) {
                each.add(own);
            }
        }
        double sag = battery == null ? 0 : current * battery.loop();
        double speed = Double.POSITIVE_INFINITY;
        double source = 0;
        for (ElectricActuator a : actuators) {
            Double rated = a.voltage();
            double at = battery != null ? battery.voltage() : rated == null ? 0 : rated;
            double nominal = rated == null ? at : rated;
            speed = Math.min(speed, speed(a, share, out, nominal > 0 ? (at - sag) / nominal : 1));
            source = Math.max(source, at);
        }
        return new DriveState(speed, current, source * current, 0, 0, 0, 0, each);
    }

    private static double rated(ElectricActuator a, boolean out) {
        return out ? a.ratedPush() : a.ratedPull();
    }

    private static double load(ElectricActuator a, double share, boolean out) {
        double rated = rated(a, out);
        double load = Math.max(0, share);
        if (load == 0) {
            return 0;
        }
        return rated > 0 ? load / rated : Double.POSITIVE_INFINITY;
    }

    private static double current(ElectricActuator a, double share, boolean out) {
        ElectricActuator.Current c = a.current();
        if (c == null) {
            return 0;
        }
        return c.noLoad() + (c.rated() - c.noLoad()) * Math.min(OVERLOAD, load(a, share, out));
    }

    private static double speed(ElectricActuator a, double share, boolean out, double voltage) {
        ElectricActuator.Speed s = a.speed();
        double load = load(a, share, out);
        if (s == null || load > OVERLOAD) {
            return 0;
        }
        return Math.max(0, s.noLoad() * voltage - (s.noLoad() - s.rated()) * load);
    }

    @Override
    public double freeSpeed() {
        return draw(0, true, true).speed();
    }

    @Override
    public double duty() {
        return duty;
    }

    /** Of unlike ones that which uses up its own duty fastest; a current that passes from one to another counts in full. */
    @Override
    public double heating(DriveState draw) {
        if (!alike && currentKnown) {
            double most = 0;
            for (int i = 0; i < actuators.size(); i++) {
                ElectricActuator a = actuators.get(i);
                ElectricActuator.Current c = a.current();
                Double own = a.duty();
                if (c != null && own != null && c.rated() > 0) {
                    double share = draw.current(i) / c.rated();
                    most = Math.max(most, share * share * duty / own);
                }
            }
            return most;
        }
        double rated = 0;
        for (ElectricActuator a : actuators) {
            ElectricActuator.Current c = a.current();
            rated += c == null ? 0 : c.rated();
        }
        double share = currentKnown && rated > 0 ? draw.current() / rated : 1;
        return share * share;
    }

    @Override
    public boolean runs(DriveState draw) {
        return true;
    }

    @Override
    public boolean powerKnown() {
        return currentKnown;
    }
}
