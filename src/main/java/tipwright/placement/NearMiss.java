// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ListedActuator;
import tipwright.quantity.Marks;
import tipwright.quantity.UnitSystem;

/**
 * A change that would open what does not fit.
 *
 * @param size smaller is easier
 */
record NearMiss(double size, String words) {
    private static final int MOST = 5;
    private static final double ROUNDING = 1e-9;

    /**
     * What would open it when one limit is passed, but the stroke; null: no change of a part does.
     *
     * @param over utilisation over what is allowed
     * @param name of the actuator
     */
    static @Nullable NearMiss past(Limit limit, double over, String name) {
        String words = limit.opener(over, name);
        return words.isEmpty() ? null : new NearMiss(over - 1, words);
    }

    /**
     * What would open it when only the stroke does not fit.
     *
     * @param shortest length wanted, m
     * @param longest length wanted, m
     * @param margin at each end, m
     * @param mark of the tape, m
     */
    static NearMiss stroke(ListedActuator listed, double shortest, double longest, double margin, double mark) {
        String name = listed.name();
        Actuator a = listed.actuator();
        double shorter = a.closed() + margin - shortest;
        double longer = longest + margin - a.closed() - a.stroke();
        String words;
        double size = Math.max(shorter, longer);
        if (shorter <= 0) {
            words = length(longer, mark) + " more stroke than " + name + " has";
        } else if (longer <= 0) {
            words = name + " " + length(shorter, mark) + " shorter when closed";
        } else {
            words = name + " " + length(shorter, mark) + " shorter when closed and " + length(longer, mark)
                    + " longer when fully out";
            size = shorter + longer;
        }
        return new NearMiss(size / a.stroke(), words);
    }

    /** The words of the easiest few, easiest first. */
    static List<String> words(List<NearMiss> all) {
        List<NearMiss> sorted = new ArrayList<>(all);
        sorted.sort(Comparator.comparingDouble(NearMiss::size));
        List<String> words = new ArrayList<>();
        for (NearMiss miss : sorted) {
            if (!words.contains(miss.words()) && words.size() < MOST) {
                words.add(miss.words());
            }
        }
        return words;
    }

    /**
     * On the next mark of the tape, with its unit.
     *
     * @param m rounded up
     * @param mark from one to the next, m; what is no tape's is taken for a metric one
     */
    static String length(double m, double mark) {
        UnitSystem units = mark == Marks.step(UnitSystem.US) ? UnitSystem.US : UnitSystem.METRIC;
        double step = Marks.step(units);
        return Marks.show(Math.ceil(m / step - ROUNDING) * step, units);
    }
}
