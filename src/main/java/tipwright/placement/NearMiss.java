// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ListedActuator;

/**
 * A change that would open what does not fit.
 *
 * @param size smaller is easier
 */
record NearMiss(double size, String words) {
    private static final int MOST = 5;

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
     */
    static NearMiss stroke(ListedActuator listed, double shortest, double longest, double margin) {
        String name = listed.name();
        Actuator a = listed.actuator();
        double shorter = a.closed() + margin - shortest;
        double longer = longest + margin - a.closed() - a.stroke();
        String words;
        double size = Math.max(shorter, longer);
        if (shorter <= 0) {
            words = millimetres(longer) + " mm more stroke than " + name + " has";
        } else if (longer <= 0) {
            words = name + " " + millimetres(shorter) + " mm shorter when closed";
        } else {
            words = name + " " + millimetres(shorter) + " mm shorter when closed and " + millimetres(longer)
                    + " mm longer when fully out";
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

    /** Whole millimetres, rounded up. */
    static String millimetres(double m) {
        return String.format(Locale.ROOT, "%.0f", Math.ceil(1000 * m));
    }
}
