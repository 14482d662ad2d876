// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import tipwright.design.file.PointNet.Taped;
import tipwright.design.file.PointSpec.Mark;
import tipwright.design.tape.Adjusted;
import tipwright.quantity.UnitSystem;

/** What there is to say about how well the tape's readings fit each other. */
final class TapeNotes {
    /** One honest reading in a thousand is off by more. Source: W. Baarda 1968. */
    private static final double SUSPECT = 3.29;

    /** Nobody reads a tape so badly by chance. Common practice, no source. */
    private static final double IMPOSSIBLE = 8;

    private static final double WEAK = 4;
    private static final double ALIKE = 0.98;

    private final PointNet net;
    private final Adjusted adjusted;
    private final UnitSystem units;

    TapeNotes(PointNet net, Adjusted adjusted, UnitSystem units) {
        this.net = net;
        this.adjusted = adjusted;
        this.units = units;
    }

    void tell(Reader reader, Problems warnings) {
        List<Taped> all = net.taped();
        if (adjusted.spare() > 0) {
            int worst = largest(i -> Math.abs(adjusted.misfit(i)));
            Taped off = all.get(worst);
            double size = Math.abs(adjusted.misfit(worst));
            reader.assume(new Assumption(
                    "points",
                    "best fit of the tape's readings",
                    "the tape closes within " + say(size) + "; worst: " + name(off) + ", " + say(size) + " off",
                    true));
            int suspect = largest(i -> Math.abs(adjusted.suspicion(i)));
            double suspicion = Math.abs(adjusted.suspicion(suspect));
            if (suspicion > SUSPECT) {
                spoiled(suspicion > IMPOSSIBLE ? reader.problems() : warnings, suspect);
            }
        }
        weak(warnings);
    }

    private int largest(IntToDoubleFunction size) {
        List<Taped> all = net.taped();
        int best = -1;
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).mark() != null
                    && !Double.isNaN(size.applyAsDouble(i))
                    && (best < 0 || size.applyAsDouble(i) > size.applyAsDouble(best))) {
                best = i;
            }
        }
        return Math.max(0, best);
    }

    private void spoiled(Problems to, int suspect) {
        List<Taped> all = net.taped();
        double limit = ALIKE * Math.abs(adjusted.suspicion(suspect));
        List<Taped> alike = IntStream.range(0, all.size())
                .filter(i -> all.get(i).mark() != null && Math.abs(adjusted.suspicion(i)) >= limit)
                .mapToObj(all::get)
                .toList();
        Taped first = all.get(suspect);
        Mark mark = first.mark();
        if (mark == null) {
            return;
        }
        if (alike.size() > 1) {
            List<String> names = alike.stream().map(TapeNotes::name).toList();
            to.add(
                    mark.place(),
                    mark.path(),
                    "one of these readings is off, and nothing tells which: " + ErrorText.and(names)
                            + "; measure them again, or one distance more");
            return;
        }
        double error = adjusted.misfit(suspect) / adjusted.redundancy(suspect);
        Adjusted without = net.without(first);
        String then = without == null ? "" : "; without it the tape closes within " + say(closing(without, first));
        to.add(
                mark.place(),
                mark.path(),
                "this reading spoils the rest: '" + mark.said() + "'; by the others, " + name(first) + " is "
                        + say(mark.length() + error) + then + "; measure it again, or take it out");
    }

    /** Largest misfit of the readings but one, m. */
    private double closing(Adjusted without, Taped left) {
        List<Taped> others = new ArrayList<>(net.taped());
        others.remove(left);
        return IntStream.range(0, others.size())
                .filter(i -> others.get(i).mark() != null)
                .mapToDouble(i -> Math.abs(without.misfit(i)))
                .max()
                .orElse(0);
    }

    private void weak(Problems warnings) {
        List<PointSpec> specs = net.taped().stream().map(Taped::spec).distinct().toList();
        for (PointSpec spec : specs) {
            double read = spec.marks().stream().mapToDouble(Mark::doubt).max().orElse(0);
            int number = net.number(spec.name());
            double doubt = adjusted.largestDoubt(number);
            if (spec.has(PointSpec.How.DISTANCE) && doubt > WEAK * read) {
                boolean upright = adjusted.doubt(number, 1) > adjusted.doubt(number, 0);
                warnings.add(
                        spec.place(),
                        spec.path(),
                        "weakly placed " + (upright ? "up and down" : "along") + ", off by up to " + say(2 * doubt)
                                + ": " + PointStart.inLine(spec, upright));
            }
        }
    }

    private static String name(Taped taped) {
        @Nullable Mark mark = taped.mark();
        return mark == null
                ? taped.spec().name()
                : mark.to().get(0) + " to " + taped.spec().name();
    }

    private String say(double length) {
        return PointReader.say(length, units);
    }
}
