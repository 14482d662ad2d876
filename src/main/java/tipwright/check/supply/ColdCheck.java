// SPDX-License-Identifier: Apache-2.0
package tipwright.check.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.TimedCheck;
import tipwright.design.Design;
import tipwright.design.Limits;
import tipwright.design.around.Cold;
import tipwright.design.supply.Battery;
import tipwright.design.supply.HandPump;
import tipwright.design.supply.Pump;
import tipwright.design.supply.Supply;
import tipwright.fluid.OilViscosity;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.time.ColdBattery;
import tipwright.time.Cycle;
import tipwright.time.Timing;

/** What the coldest day does to battery and oil. */
public final class ColdCheck implements TimedCheck {
    private static final double SAG = 0.20;

    @Override
    public String id() {
        return "cold";
    }

    @Override
    public String title() {
        return "On the coldest day: battery and oil";
    }

    @Override
    public String title(String part) {
        return part.isEmpty() ? title() : "On the coldest day: " + part;
    }

    @Override
    public String shortly(Finding finding) {
        return "the coldest day";
    }

    @Override
    public String rule() {
        return "On the coldest day a lead battery gives less charge and has more resistance: one dump must still be in it, and battery and cable together must not take more than a fifth of the voltage. Oil gets thick: no thicker than the pump may start with.";
    }

    @Override
    public String formula() {
        return "charge <= capacity x usable share x share left by cold; i (k Rbattery + Rcable) <= 0.2 U; log log (nu + 0.7) = A - B log T";
    }

    @Override
    public String source() {
        return "IEEE 485 sizing factors (from memory) and two public pages on batteries (read); ASTM D341 with viscosity index 100; a fifth of the voltage: common practice, no source";
    }

    @Override
    public Text fix(Finding finding, Limits limits) {
        return Text.words("a larger or warmer battery, a thicker cable, or an oil of a lower grade");
    }

    @Override
    public List<Finding> run(Analysis analysis, Timing timing) {
        Design design = analysis.design();
        Findings make = new Findings(this, design);
        Cold cold = design.cold();
        Supply supply = design.supply();
        boolean oil = supply instanceof Pump || supply instanceof HandPump;
        if (!oil && !(supply instanceof Battery)) {
            return List.of();
        }
        if (cold == null) {
            return List.of(make.missing("", "cold missing (the coldest day that it has to work on)"));
        }
        if (oil) {
            return List.of(oil(make, cold));
        }
        Battery battery = (Battery) Objects.requireNonNull(supply);
        if (cold.lowest() < ColdBattery.COLDEST) {
            return List.of(make.cannot("", "no figures for a battery below -20 C"));
        }
        if (timing.missing() != null) {
            return List.of(make.untimed("", timing));
        }
        List<Finding> all = new ArrayList<>();
        Double capacity = battery.capacity();
        if (capacity == null) {
            all.add(make.missing("battery", "supply.capacity missing"));
        } else {
            all.add(charge(make, battery, capacity, cold, timing));
        }
        all.add(sag(make, battery, cold, timing));
        return all;
    }

    private static Finding charge(Findings make, Battery battery, double capacity, Cold cold, Timing timing) {
        double charge = 0;
        for (Cycle cycle : timing.cycles()) {
            charge = Math.max(charge, cycle.spent().energy() / battery.voltage());
        }
        double left = ColdBattery.capacity(cold.lowest());
        return make.compare(
                "battery",
                charge,
                capacity * battery.usable() * left,
                1,
                Kind.CHARGE,
                Extreme.NOWHERE,
                Text.of(
                        "for the dump that takes most; at {} it has {} % of its charge",
                        Text.amount(cold.lowest(), Kind.TEMPERATURE), Text.number(100 * left, 0)));
    }

    private static Finding sag(Findings make, Battery battery, Cold cold, Timing timing) {
        if (battery.resistance() <= 0) {
            return make.missing("voltage", "supply.resistance missing");
        }
        Extreme peak = timing.largest(m -> m.draw().current());
        double more = ColdBattery.resistance(cold.lowest());
        double loop = battery.loop() + (more - 1) * battery.resistance();
        return make.compare(
                "voltage",
                peak.value() * loop,
                SAG * battery.voltage(),
                1,
                Kind.VOLTAGE,
                peak,
                "lost in the cold battery and its cable at the largest current");
    }

    private static Finding oil(Findings make, Cold cold) {
        Double grade = cold.oil();
        if (grade == null) {
            return make.missing("oil", "cold.oil missing (grade of the oil)");
        }
        return make.compare(
                "oil",
                viscosity(grade, cold.lowest()),
                cold.thickest(),
                1,
                Kind.VISCOSITY,
                Extreme.NOWHERE,
                Text.of(
                        "VG {} at {}, viscosity index 100",
                        Text.number(grade, 0),
                        Text.amount(cold.lowest(), Kind.TEMPERATURE)));
    }

    /** Of a grade at a temperature in K, m2/s. */
    static double viscosity(double grade, double kelvin) {
        return OilViscosity.ofGrade(grade * 1e-6, 100).at(kelvin);
    }
}
