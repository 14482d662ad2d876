// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.check.Parts;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.file.Reading;
import tipwright.design.key.NameId;
import tipwright.design.supply.Battery;
import tipwright.quantity.Text;

/** Finds the sizes that a design file asks for: each the smallest that is sold and passes. What is tried is counted. */
public final class OpenSizes {
    /** The answers depend on each other; after this many rounds they are what they are. */
    private static final int ROUNDS = 2;

    /** Sizes checked in full for one question and round. */
    private static final int FULL = 12;

    private final Reading.Open open;
    private final Map<String, String> answers = new HashMap<>();
    private final Map<String, Reading> read = new HashMap<>();

    private OpenSizes(Reading.Open open) {
        this.open = open;
    }

    /**
     * A file with its questions answered.
     *
     * @param reading with the answers in their places; bad when there is a place into which nothing goes that is sold
     */
    public record Answered(Reading reading, List<SizeAnswer> answers) {
        /** Copies the list. */
        public Answered {
            answers = List.copyOf(answers);
        }
    }

    /** Answers all questions of a file. */
    public static Answered of(Reading.Open open, Shop shop) {
        OpenSizes sizes = new OpenSizes(open);
        List<OpenSize> all = OpenSize.all(open, shop);
        for (OpenSize size : all) {
            Reading wrong = sizes.begin(size, all);
            if (wrong != null) {
                return new Answered(wrong, List.of());
            }
        }
        List<SizeAnswer> found = new ArrayList<>();
        all.forEach(size -> found.add(sizes.answer(size)));
        for (int round = 1; round < ROUNDS && all.size() > 1; round++) {
            sizes.again(all, found);
        }
        return new Answered(sizes.with(Map.of()), found);
    }

    /** Answers those again that do not pass any more, since other parts have become smaller. */
    private void again(List<OpenSize> all, List<SizeAnswer> found) {
        for (int i = 0; i < all.size(); i++) {
            SizeAnswer a = found.get(i);
            OpenSize.Candidate taken = new OpenSize.Candidate(a.taken(), a.written());
            SizeTrial now = new SizeTrial(taken, with(Map.of()), a.series());
            SizeChecks checks = new SizeChecks(a.series(), a.checks());
            if (a.normal() != null && now.design() != null && !SizeChecks.pass(checks.normal(now.look()))) {
                found.set(i, answer(all.get(i)));
            }
        }
    }

    private Reading with(Map<String, String> more) {
        Map<String, String> all = new HashMap<>(answers);
        all.putAll(more);
        return read.computeIfAbsent(all.toString(), k -> open.with().apply(all));
    }

    /** Puts in the largest that goes there, to begin with; what is wrong when none does, null when one does. */
    private @Nullable Reading begin(OpenSize size, List<OpenSize> all) {
        Map<String, String> rest = new HashMap<>();
        for (OpenSize other : all) {
            if (!other.equals(size) && !answers.keySet().containsAll(other.paths())) {
                OpenSize.Candidate last =
                        other.candidates().get(other.candidates().size() - 1);
                rest.putAll(last.answers());
            }
        }
        Reading last = null;
        for (int i = size.candidates().size() - 1; i >= 0; i--) {
            OpenSize.Candidate candidate = size.candidates().get(i);
            Map<String, String> put = new HashMap<>(rest);
            put.putAll(candidate.answers());
            last = with(put);
            if (!(last instanceof Reading.Bad bad)
                    || bad.problems().stream()
                            .noneMatch(p -> size.paths().stream().anyMatch(p.path()::startsWith))) {
                answers.putAll(candidate.answers());
                return null;
            }
        }
        return last == null ? open.with().apply(Map.of()) : last;
    }

    private SizeAnswer answer(OpenSize size) {
        List<SizeTrial> all = size.candidates().stream()
                .map(c -> new SizeTrial(c, with(c.answers()), size.series()))
                .filter(t -> t.design() != null)
                .toList();
        if (all.isEmpty()) {
            Text none = Text.words("none that is sold goes there");
            return new SizeAnswer(
                    size.series(),
                    "",
                    null,
                    null,
                    answers.getOrDefault(size.paths().get(0), "?"),
                    written(size),
                    none,
                    List.of(),
                    Set.of());
        }
        SizeChecks checks = SizeChecks.of(
                size.series(),
                all.get(0).look().normal().findings(),
                all.get(all.size() - 1).look().normal().findings());
        List<SizeTrial> fit = all.stream().filter(t -> fits(checks, t)).toList();
        List<SizeTrial> trials = fit.isEmpty() ? all : fit;
        Found found = found(trials, checks);
        SizeTrial taken = found.taken() == null ? nearest(trials, checks) : found.taken();
        answers.putAll(taken.candidate().answers());
        Text because = found.always() != null && found.always().equals(found.normal())
                ? Text.NONE
                : because(
                        found.normal() == null
                                ? checks.normal(taken.full())
                                : checks.fault(found.normal().full()));
        List<String> cannot = checks.normal(taken.full()).stream()
                .filter(f -> f.verdict() == Verdict.NOT_CHECKED)
                .map(Finding::title)
                .toList();
        return new SizeAnswer(
                size.series(),
                checks.part(),
                label(found.normal()),
                label(found.always()),
                taken.candidate().label(),
                taken.candidate().answers(),
                because,
                cannot,
                checks.parts());
    }

    private record Found(@Nullable SizeTrial normal, @Nullable SizeTrial always) {
        @Nullable
        SizeTrial taken() {
            return always != null ? always : normal;
        }
    }

    /** The smallest that passes in the normal dump, and the smallest that also passes if something goes wrong. */
    private static Found found(List<SizeTrial> trials, SizeChecks checks) {
        long unknown = trials.stream()
                .filter(t -> !t.look().normal().findings().isEmpty())
                .mapToLong(t -> SizeChecks.unknown(checks.normal(t.look())))
                .min()
                .orElse(0);
        SizeTrial normal = null;
        int tried = 0;
        for (SizeTrial t : trials) {
            Parts look = t.look();
            boolean hopeless = look.normal().findings().isEmpty()
                    || SizeChecks.unknown(checks.normal(look)) > unknown
                    || !SizeChecks.pass(checks.normal(look))
                    || (normal != null && !SizeChecks.pass(checks.fault(look)));
            if (hopeless) {
                continue;
            }
            if (++tried > FULL) {
                break;
            }
            List<Finding> usual = checks.normal(t.full());
            if (SizeChecks.made(usual) && SizeChecks.pass(usual)) {
                normal = normal == null ? t : normal;
                if (SizeChecks.pass(checks.fault(t.full()))) {
                    return new Found(normal, t);
                }
            }
        }
        return new Found(normal, null);
    }

    private static @Nullable String label(@Nullable SizeTrial t) {
        return t == null ? null : t.candidate().label();
    }

    /**
     * Whether a size goes with what it is put into: a fuse is no larger than what cable and actuators bear, where that is known; a pin
     * fills its hole to 10 % or 1.5 mm. Source: common practice, no source.
     */
    private static boolean fits(SizeChecks checks, SizeTrial t) {
        Design design = t.design();
        if (design == null) {
            return false;
        }
        if (checks.series().equals("fuse") && design.supply() instanceof Battery battery) {
            double bears = SupplySizes.bears(design, battery.cable());
            Double fuse = battery.fuse();
            return Double.isNaN(bears) || fuse == null || fuse <= bears;
        }
        return !checks.series().equals("pin") || Joints.slack(design, NameId.of(checks.part())) <= 1;
    }

    /** Of those that all fail, the one that fails least. */
    private static SizeTrial nearest(List<SizeTrial> trials, SizeChecks checks) {
        return trials.stream()
                .filter(t -> !t.look().normal().findings().isEmpty())
                .min(Comparator.comparingDouble(t -> checks.normal(t.look()).stream()
                        .mapToDouble(Finding::utilisation)
                        .filter(u -> !Double.isNaN(u))
                        .max()
                        .orElse(Double.POSITIVE_INFINITY)))
                .orElse(trials.get(trials.size() - 1));
    }

    private static Text because(List<Finding> mine) {
        Finding worst = null;
        for (Finding f : mine) {
            if (f.verdict() == Verdict.FAIL && (worst == null || f.worseThan(worst))) {
                worst = f;
            }
        }
        return worst == null
                ? Text.words("its checks cannot tell")
                : Text.words(worst.title()).plus(": ").plus(worst.byWords());
    }

    private Map<String, String> written(OpenSize size) {
        Map<String, String> all = new HashMap<>();
        size.paths().forEach(path -> all.put(path, answers.getOrDefault(path, "?")));
        return all;
    }
}
