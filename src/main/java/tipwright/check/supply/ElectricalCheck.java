// SPDX-License-Identifier: Apache-2.0
package tipwright.check.supply;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Fix;
import tipwright.check.rule.TimedCheck;
import tipwright.check.rule.Verdict;
import tipwright.design.Alike;
import tipwright.design.Design;
import tipwright.design.Limits;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.supply.Battery;
import tipwright.design.supply.Cable;
import tipwright.design.supply.Supply;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.time.Cycle;
import tipwright.time.Timing;

/** Current, voltage drop, fuse, cable and battery of electric actuators. */
public final class ElectricalCheck implements TimedCheck {
    private static final double DROP = 0.10;
    private static final String ONE = "current of actuator ";

    @Override
    public String id() {
        return "electrical";
    }

    @Override
    public String title() {
        return "Electrics: current";
    }

    @Override
    public String title(String part) {
        return part.isEmpty()
                ? title()
                : switch (part) {
                    case "current" -> "Actuator: current";
                    case "fuse" -> "Fuse: blowing";
                    case "cable" -> "Cable: heat";
                    case "voltage drop" -> "Cable: voltage drop";
                    case "battery" -> "Battery: charge";
                    default -> part.startsWith(ONE)
                            ? Text.capital(part.substring("current of ".length())) + ": current"
                            : "Electrics: " + part;
                };
    }

    @Override
    public String shortly(Finding finding) {
        return "battery, cable and fuse";
    }

    @Override
    public String rule() {
        return "The largest current is within the actuators' rated current, of unlike ones each within its own, and the fuse; the cable loses no more than 10 % of"
                + " the voltage; the fuse, or the current where there is none, is within what the cable may carry; the"
                + " battery has the charge for at least one dump.";
    }

    @Override
    public String formula() {
        return "i = i0 + (ir - i0) F/Fr for each actuator; drop = 2 L rho (1 + 0.00393 (t - 20 C)) i / A";
    }

    @Override
    public String source() {
        return "Ohm's law; ASTM B258 (wire gauge); maker's ratings; 10 % drop: common practice, no source";
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return switch (finding.partId()) {
            case "current" -> Text.words("a stronger actuator, or " + Fix.ARM + ", or less in the tank");
            case "fuse" -> Fix.of("a larger fuse{}, if the cable and the actuator are rated for it", finding, limits);
            case "cable" -> Fix.of("a thicker cable{}, or a smaller fuse", finding, limits);
            case "voltage-drop" -> Text.words("a thicker or shorter cable");
            case "battery" -> Text.words("a bigger battery, or charge it more often");
            default -> finding.partId().startsWith("current-of-")
                    ? Text.words("a stronger actuator there, " + Fix.ARM + ", or less in the tank")
                    : Text.words("a thicker or shorter cable, the right fuse, or a larger supply");
        };
    }

    @Override
    public List<Finding> run(Analysis analysis, Timing timing) {
        Design design = analysis.design();
        List<ElectricActuator> actuators = new ArrayList<>();
        for (PlacedActuator p : design.drive().actuators()) {
            if (p.actuator() instanceof ElectricActuator e) {
                actuators.add(e);
            }
        }
        Supply supply = design.supply();
        if (actuators.isEmpty() || (supply != null && !(supply instanceof Battery))) {
            return List.of();
        }
        Findings make = new Findings(this, design);
        double rated = 0;
        for (ElectricActuator e : actuators) {
            ElectricActuator.Current current = e.current();
            if (current == null) {
                return List.of(make.missing("", "actuator.current missing"));
            }
            rated += current.rated();
        }
        if (timing.missing() != null) {
            return List.of(make.untimed("", timing));
        }
        Extreme peak = timing.largest(m -> m.draw().current());
        List<Finding> all = new ArrayList<>(figures(make, actuators, supply));
        all.add(make.compare("current", peak.value(), rated, 1, Kind.CURRENT, peak, "all actuators added up"));
        all.addAll(each(make, actuators, timing));
        if (supply instanceof Battery battery) {
            supply(make, battery, peak, timing, all);
        } else {
            all.add(make.missing("supply", "supply missing (battery, cable, fuse)"));
        }
        return all;
    }

    /** The current of each of unlike actuators against its own rating. */
    private static List<Finding> each(Findings make, List<ElectricActuator> actuators, Timing timing) {
        List<Finding> all = new ArrayList<>();
        for (int i = 0; i < actuators.size(); i++) {
            int one = i;
            ElectricActuator.Current current = actuators.get(i).current();
            if (current != null && !Alike.all(actuators)) {
                Extreme peak = timing.largest(m -> m.draw().current(one));
                all.add(make.compare(
                        ONE + (i + 1), peak.value(), current.rated(), 1, Kind.CURRENT, peak, "its own current"));
            }
        }
        return all;
    }

    private static void supply(Findings make, Battery battery, Extreme peak, Timing timing, List<Finding> all) {
        Double fuse = battery.fuse();
        all.add(
                fuse == null
                        ? make.missing("fuse", "supply.fuse missing")
                        : make.compare(
                                "fuse",
                                peak.value(),
                                fuse,
                                1,
                                Kind.CURRENT,
                                peak,
                                "the fuse blows if the current stays above its rating"));
        Cable cable = battery.cable();
        if (cable == null) {
            all.add(make.missing("cable", "supply.cable missing"));
        } else {
            double drop = cable.resistance() * peak.value();
            Text note = Text.of(
                    "{} of {} are lost in the cable at {}",
                    Text.amount(drop, Kind.VOLTAGE, "V", 2),
                    Text.amount(battery.voltage(), Kind.VOLTAGE, "V", 1),
                    Text.amount(peak.value(), Kind.CURRENT, "A", 1));
            all.add(make.compare("voltage drop", drop, DROP * battery.voltage(), 1, Kind.VOLTAGE, peak, note));
            all.add(cable(make, cable, fuse, peak));
        }
        all.add(battery(make, battery, timing));
    }

    private static Finding cable(Findings make, Cable cable, @Nullable Double fuse, Extreme peak) {
        Double rating = cable.rating();
        if (rating == null) {
            return make.missing("cable", "supply.cable.rating missing");
        }
        return fuse == null
                ? make.compare(
                        "cable", peak.value(), rating, 1, Kind.CURRENT, peak, "largest current; there is no fuse")
                : make.compare(
                        "cable",
                        fuse,
                        rating,
                        1,
                        Kind.CURRENT,
                        Extreme.NOWHERE,
                        "the fuse must blow before the cable gets hot");
    }

    private static Finding battery(Findings make, Battery battery, Timing timing) {
        Double capacity = battery.capacity();
        if (capacity == null) {
            return make.missing("battery", "supply.capacity missing");
        }
        double charge = 0;
        for (Cycle cycle : timing.cycles()) {
            charge = Math.max(charge, cycle.spent().energy() / battery.voltage());
        }
        double usable = capacity * battery.usable();
        Text note = Text.of(
                "{} for the dump that takes most: about {} dumps on a charge",
                Text.amount(charge, Kind.CHARGE, "Ah", 2),
                Text.number(Math.floor(usable / charge), 0));
        return make.compare("battery", charge, usable, 1, Kind.CHARGE, Extreme.NOWHERE, note);
    }

    /** Says so when a maker's figures give more power at the rod than goes in. */
    private static List<Finding> figures(Findings make, List<ElectricActuator> actuators, @Nullable Supply supply) {
        for (ElectricActuator e : actuators) {
            ElectricActuator.Speed speed = e.speed();
            ElectricActuator.Current current = e.current();
            Double own = e.voltage();
            double voltage = own != null ? own : supply instanceof Battery b ? b.voltage() : Double.NaN;
            if (speed != null && current != null && speed.rated() * e.ratedPush() > voltage * current.rated()) {
                return List.of(make.given(
                        "figures",
                        speed.rated() * e.ratedPush(),
                        voltage * current.rated(),
                        1,
                        Kind.POWER,
                        speed.rated() * e.ratedPush() / (voltage * current.rated()),
                        Extreme.NOWHERE,
                        Verdict.FAIL,
                        "rated push times rated speed is more than voltage times rated current: one of the actuator's"
                                + " figures is wrong"));
            }
        }
        return List.of();
    }
}
