// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.List;
import java.util.function.ToDoubleFunction;
import tipwright.analysis.Extreme;

/**
 * The largest of each during a dump.
 *
 * @param current A, all actuators together
 * @param pressure Pa
 * @param flow from the pump, m3/s
 * @param returned flow back from the cylinders, m3/s
 * @param shaft power at the pump's shaft, W
 * @param discharge m3/s
 * @param vacuum Pa
 * @param duty share of the heat that the rated duty allows in one stretch
 */
public record Peaks(
        double current,
        double pressure,
        double flow,
        double returned,
        double shaft,
        double discharge,
        double vacuum,
        double duty) {
    static Peaks of(List<Moment> moments) {
        return new Peaks(
                most(moments, m -> m.draw().current()),
                most(moments, m -> m.draw().pressure()),
                most(moments, m -> m.draw().flow()),
                most(moments, m -> m.draw().returned()),
                most(moments, m -> m.draw().shaft()),
                most(moments, Moment::discharge),
                most(moments, Moment::vacuum),
                most(moments, Moment::duty));
    }

    private static double most(List<Moment> moments, ToDoubleFunction<Moment> value) {
        Extreme.Search search = Extreme.Search.above(0);
        moments.forEach(m -> search.offer(value.applyAsDouble(m), m.tilt(), null, null));
        return search.found().value();
    }
}
