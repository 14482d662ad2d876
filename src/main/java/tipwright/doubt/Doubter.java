// SPDX-License-Identifier: Apache-2.0
package tipwright.doubt;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.file.Reading;
import tipwright.design.file.Uncertain;

/**
 * Asks how sure a verdict is: a seeded Latin hypercube tells how often the design passes, and which value decides; where it has few
 * samples for so many values, small steps of each tell that. Two values that come from one measurement go together, since it is the
 * measurement that is changed and the design read anew. Source: JCGM 100 (GUM) 5.1.2 for the first order, JCGM 101 for the sampling.
 */
public final class Doubter {
    private static final int SAMPLES = 100;
    private static final long SEED = 20_260_401;

    /** So many samples for each value, and the changes are read off them. */
    private static final int ENOUGH = 3;

    /** Standard deviations of margin with which 98 of 100 pass. */
    private static final double SAFE = 2;

    private final Reading.Good file;
    private final List<Uncertain> values;

    private Doubter(Reading.Good file) {
        this.file = file;
        Map<String, Uncertain> once = new LinkedHashMap<>();
        file.uncertain().forEach(u -> once.putIfAbsent(u.path(), u));
        values = List.copyOf(once.values());
    }

    /**
     * How sure the findings of a design are; null when no value of its file may be off, which costs nothing.
     *
     * @param findings with every value as written
     */
    public static @Nullable Sureness ask(Reading.Good file, List<Finding> findings) {
        return ask(file, findings, SAMPLES);
    }

    /** The same with another number of samples. */
    static @Nullable Sureness ask(Reading.Good file, List<Finding> findings, int samples) {
        return file.uncertain().isEmpty() ? null : new Doubter(file).asked(findings, samples);
    }

    private Sureness asked(List<Finding> findings, int samples) {
        Sampling sampling = new Sampling(values, samples, SEED);
        List<Tried> tried = IntStream.range(0, samples)
                .parallel()
                .mapToObj(i -> tried(sampling.sample(i)))
                .toList();
        int passes = (int) tried.stream().filter(Tried::passes).count();
        // how much more of a rating a finding uses when a value is off
        Function<Finding, double[]> changes = samples >= ENOUGH * (values.size() + 1)
                ? new SampledChanges(sampling, tried.stream().map(Tried::used).toList())::of
                : new SteppedChanges(shifted(1), shifted(-1))::of;
        Finding governing = null;
        double least = Double.POSITIVE_INFINITY;
        for (Finding f : findings) {
            double spread = spread(changes.apply(f));
            double margins = (1 - f.utilisation()) / spread;
            if (spread > 0 && Math.abs(margins) < least) {
                least = Math.abs(margins);
                governing = f;
            }
        }
        if (governing == null) {
            return new Sureness(passes, samples, null, Double.NaN, 0, List.of(), Double.NaN);
        }
        List<Sureness.Influence> influences = new ArrayList<>();
        double[] change = changes.apply(governing);
        for (int i = 0; i < values.size(); i++) {
            influences.add(new Sureness.Influence(values.get(i), change[i]));
        }
        influences.sort(Comparator.comparingDouble((Sureness.Influence i) -> -Math.abs(i.change())));
        double spread = spread(change);
        return new Sureness(
                passes,
                samples,
                governing.title(),
                governing.utilisation(),
                spread,
                influences,
                wanted(1 - governing.utilisation(), spread, influences.get(0)));
    }

    /** Utilisations by finding with each value moved by one standard doubt. */
    private List<Map<String, Double>> shifted(int sign) {
        return values.stream()
                .parallel()
                .map(v -> tried(Map.of(v.path(), v.value() + sign * v.doubt())).used())
                .toList();
    }

    private static double spread(double[] changes) {
        double sum = 0;
        for (double change : changes) {
            sum += change * change;
        }
        return Math.sqrt(sum);
    }

    private static double wanted(double margin, double spread, Sureness.Influence first) {
        double others = spread * spread - first.change() * first.change();
        double room = margin * margin / (SAFE * SAFE) - others;
        return margin > 0 && room > 0 && first.change() != 0
                ? first.value().doubt() * Math.sqrt(room) / Math.abs(first.change())
                : Double.NaN;
    }

    /**
     * A machine with other values.
     *
     * @param passes whether it can be built and no check fails
     * @param used utilisations by finding, where they are finite
     */
    private record Tried(boolean passes, Map<String, Double> used) {}

    private Tried tried(Map<String, Double> changed) {
        List<Finding> found = findings(changed);
        if (found == null) {
            return new Tried(false, Map.of());
        }
        Map<String, Double> used = new HashMap<>();
        for (Finding f : found) {
            if (Double.isFinite(f.utilisation())) {
                used.putIfAbsent(f.id(), f.utilisation());
            }
        }
        return new Tried(found.stream().noneMatch(f -> f.verdict() == Verdict.FAIL), used);
    }

    /** What the checks find with other values; null when such a machine cannot be built. */
    private @Nullable List<Finding> findings(Map<String, Double> changed) {
        if (!(file.again().with(changed) instanceof Reading.Good other)) {
            return null;
        }
        try {
            return Checker.findings(other.design());
        } catch (CannotComputeException jammed) {
            return null;
        }
    }
}
