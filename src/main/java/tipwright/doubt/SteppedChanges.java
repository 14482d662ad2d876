// SPDX-License-Identifier: Apache-2.0
package tipwright.doubt;

import java.util.List;
import java.util.Map;
import tipwright.check.rule.Finding;

/**
 * By a step of one standard doubt either way.
 *
 * @param up utilisations by finding with each value larger
 * @param down the same with each smaller
 */
record SteppedChanges(List<Map<String, Double>> up, List<Map<String, Double>> down) {
    /** Copies the lists. */
    SteppedChanges {
        up = List.copyOf(up);
        down = List.copyOf(down);
    }

    /** Change of a finding's utilisation by one standard doubt of each value, in their order; 0 where it does not say. */
    double[] of(Finding finding) {
        double[] changes = new double[up.size()];
        for (int i = 0; i < changes.length; i++) {
            changes[i] = change(finding, up.get(i), down.get(i));
        }
        return changes;
    }

    private static double change(Finding f, Map<String, Double> up, Map<String, Double> down) {
        Double high = up.get(f.id());
        Double low = down.get(f.id());
        double own = f.utilisation();
        if (!Double.isFinite(own)) {
            return 0;
        }
        if (high != null && low != null) {
            return (high - low) / 2;
        }
        return high != null ? high - own : low != null ? own - low : 0;
    }
}
