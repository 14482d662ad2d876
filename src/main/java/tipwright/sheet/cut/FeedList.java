// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.cut;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.supply.Battery;
import tipwright.design.supply.Cable;
import tipwright.design.supply.HandPump;
import tipwright.design.supply.HandWinch;
import tipwright.design.supply.Pump;
import tipwright.design.supply.Supply;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** What feeds the actuators: battery, cable, fuse, switch; pump or winch. */
public final class FeedList {
    private FeedList() {}

    /** All of a design; never empty. */
    public static List<BoughtPart> of(Design design) {
        Supply supply = design.supply();
        List<BoughtPart> all = new ArrayList<>();
        if (supply instanceof Battery b) {
            battery(b, all);
        } else if (supply instanceof Pump p) {
            all.add(new BoughtPart(
                    "pump",
                    1,
                    Text.of("{}; relief valve ", Text.amount(p.flow(), Kind.FLOW))
                            .plus(or(p.relief(), Kind.PRESSURE, "as the cylinder says"))
                            .plus("; motor ")
                            .plus(or(p.motorPower(), Kind.POWER, "not given"))));
        } else if (supply instanceof HandPump h) {
            all.add(new BoughtPart(
                    "hand pump",
                    1,
                    Text.of("{} a stroke; up to ", Text.amount(h.perStroke(), Kind.VOLUME))
                            .plus(or(h.relief(), Kind.PRESSURE, "what the cylinder says"))));
        } else if (supply instanceof HandWinch w) {
            all.add(new BoughtPart("hand winch", 1, Text.of("{} for each turn", Text.size(w.travelPerTurn()))));
        } else {
            boolean electric =
                    design.drive().actuators().stream().anyMatch(a -> a.actuator() instanceof ElectricActuator);
            all.add(new BoughtPart(
                    electric ? "battery, cable, fuse and switch" : "pump, valve and hoses",
                    1,
                    Text.words("not in the design: give its supply, so that they can be checked")));
        }
        return all;
    }

    private static Text or(@Nullable Double value, Kind kind, String otherwise) {
        return value == null ? Text.words(otherwise) : Text.amount(value, kind);
    }

    private static void battery(Battery b, List<BoughtPart> all) {
        all.add(new BoughtPart(
                "battery",
                1,
                Text.amount(b.voltage(), Kind.VOLTAGE).plus("; ").plus(or(b.capacity(), Kind.CHARGE, "not given"))));
        Cable cable = b.cable();
        if (cable == null) {
            all.add(new BoughtPart("cable", 1, Text.words("not in the design")));
        } else {
            Double awg = cable.awg();
            Text core = awg == null ? Text.amount(cable.area(), Kind.AREA, "mm2", 1) : gauge(awg);
            all.add(new BoughtPart(
                    "cable, two cores",
                    1,
                    core.plus(Text.of(" each, {} one way; may carry ", Text.size(cable.length())))
                            .plus(or(cable.rating(), Kind.CURRENT, "not given"))));
        }
        Double fuse = b.fuse();
        all.add(new BoughtPart(
                "fuse",
                1,
                fuse == null
                        ? Text.words("not in the design")
                        : Text.amount(fuse, Kind.CURRENT)
                                .plus(", in the positive cable, as near to the battery as can be")));
        Text least = fuse == null ? Text.words("the largest current") : Text.amount(fuse, Kind.CURRENT);
        all.add(new BoughtPart(
                "switch, up - off - down, springs back to off",
                1,
                Text.of(
                        "reverses both poles; breaks at least {} at {} direct current",
                        least,
                        Text.amount(b.voltage(), Kind.VOLTAGE))));
        all.add(new BoughtPart("main switch that can be locked off", 1, Text.of("carries at least {}", least)));
    }

    /** 6 as 'AWG 6', -1 as 'AWG 2/0'. */
    private static Text gauge(double awg) {
        long n = Math.round(awg);
        return Text.words("AWG " + (n > 0 ? Long.toString(n) : (1 - n) + "/0"));
    }
}
