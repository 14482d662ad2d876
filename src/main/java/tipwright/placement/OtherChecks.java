// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import tipwright.check.Checks;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;

/**
 * What the checks that do not judge every try say with the pins off: those of the parts that bear the actuators' force, carry the tank,
 * or bound the mounts in another way. They take too long for every try, so only the worst ones are looked at.
 *
 * @param tried in how many ways the pins were off
 * @param all one for each of their findings, the worst first
 */
public record OtherChecks(int tried, List<Other> all) {
    /** Copies the list. */
    public OtherChecks {
        all = List.copyOf(all);
    }

    /**
     * One finding over all the ways.
     *
     * @param drawn as in the file
     * @param used the most that is used in any of the ways; NaN when it cannot tell
     * @param fails in how many of them it fails
     */
    public record Other(Finding drawn, double used, int fails) {
        /** Whether it passes as in the file, and does not with the pins off. */
        public boolean spoilt() {
            return fails > 0 && drawn.verdict() != Verdict.FAIL;
        }
    }

    /** Those that the pins spoil. */
    public List<Other> spoilt() {
        return all.stream().filter(Other::spoilt).toList();
    }

    /** What they look at, in few words each: 'lug', 'welds'. */
    public Stream<String> parts() {
        return all.stream()
                .filter(o -> !Double.isNaN(o.used))
                .flatMap(o -> Checks.of(o.drawn).map(c -> c.shortly(o.drawn)).stream())
                .map(words -> words.contains(" at ") ? words.substring(0, words.indexOf(" at ")) : words)
                .distinct()
                .sorted();
    }

    /**
     * The other checks of a design in some ways.
     *
     * @param checked what the full check says of it as drawn, part fills and all
     * @param ways by how much each coordinate is off in each, m
     */
    static OtherChecks of(Trial trial, List<Finding> checked, List<double[]> ways) {
        Map<String, Finding> whole = byId(checked);
        Map<String, Finding> stated =
                byId(trial.others(new double[trial.places().size()]));
        Map<String, Double> most = new LinkedHashMap<>();
        Map<String, Integer> fails = new LinkedHashMap<>();
        for (double[] way : ways) {
            for (Finding f : byId(trial.others(way)).values()) {
                Finding drawn = whole.get(f.id());
                Finding alone = stated.get(f.id());
                double more = drawn == null || alone == null ? 0 : drawn.utilisation() - alone.utilisation();
                double used = f.utilisation() + (more > 0 ? more : 0);
                most.merge(f.id(), used, Math::max);
                fails.merge(f.id(), used > 1 || f.verdict() == Verdict.FAIL ? 1 : 0, Integer::sum);
            }
        }
        List<Other> all = new ArrayList<>();
        most.forEach((id, used) -> {
            Finding drawn = whole.get(id);
            if (drawn != null) {
                all.add(new Other(drawn, used, fails.getOrDefault(id, 0)));
            }
        });
        all.sort(Comparator.comparingInt((Other o) -> -o.fails)
                .thenComparingDouble(o -> Double.isNaN(o.used) ? 0 : -o.used));
        return new OtherChecks(ways.size(), all);
    }

    private static Map<String, Finding> byId(List<Finding> findings) {
        Map<String, Finding> all = new LinkedHashMap<>();
        findings.forEach(f -> all.merge(f.id(), f, (a, b) -> b.worseThan(a) ? b : a));
        return all;
    }
}
