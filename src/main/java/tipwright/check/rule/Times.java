// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import java.util.function.ToDoubleFunction;
import tipwright.time.Cycle;
import tipwright.time.Moment;
import tipwright.time.Timing;

/** Looks for the worst over the dumps. */
public final class Times {
    private Times() {}

    /** Largest of a value over every moment of every dump. */
    public static Findings.Worst worst(Timing timing, ToDoubleFunction<Moment> value) {
        Findings.Worst worst = new Findings.Worst(0, Double.NaN, null);
        for (Cycle cycle : timing.cycles()) {
            Findings.Worst here = worst(cycle, value);
            worst = here.value() > worst.value() ? here : worst;
        }
        return worst;
    }

    /** Largest of a value over every moment of one dump. */
    public static Findings.Worst worst(Cycle cycle, ToDoubleFunction<Moment> value) {
        Findings.Worst worst = new Findings.Worst(0, Double.NaN, null);
        for (Moment m : cycle.moments()) {
            double v = value.applyAsDouble(m);
            if (v > worst.value()) {
                worst = new Findings.Worst(v, m.tilt(), cycle.load());
            }
        }
        return worst;
    }
}
