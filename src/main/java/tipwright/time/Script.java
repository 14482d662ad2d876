// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.List;
import java.util.function.DoubleFunction;

/**
 * What is to happen in one dump.
 *
 * @param load name of the load case
 * @param up what is in the tank on the way up
 * @param down what is in it on the way back, by the volume left, m3
 * @param start volume at the start, m3
 * @param target volume at which it counts as drained, m3; not below the start: nothing runs out
 * @param drained share of the start that may still have to run out when it counts as drained
 * @param opens tilts at which openings open, rad
 * @param breaks other tilts at which the contents change at once, rad
 * @param hold waiting at full tilt, s
 * @param end tilt at which raising ends, rad
 * @param endKind why it ends there
 */
record Script(
        String load,
        Load up,
        DoubleFunction<Load> down,
        double start,
        double target,
        double drained,
        List<Double> opens,
        List<Double> breaks,
        double hold,
        double end,
        DumpEvent.Kind endKind) {}
