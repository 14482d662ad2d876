// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import java.util.Comparator;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Extreme;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/**
 * What one check found: demand against capacity where it is worst.
 *
 * @param id of the check, with the part after a slash where there are several ('bearing-static/1')
 * @param title in the trade's words
 * @param demand SI; NaN when not checked
 * @param capacity SI, before the factor; NaN when not checked
 * @param factor on the capacity
 * @param kind of demand and capacity
 * @param sense whether the demand may be at most or must be at least the capacity
 * @param utilisation demand / (capacity / factor), or as the rule has it
 * @param worst where it is worst
 * @param verdict what follows
 * @param source of the rule
 * @param note one sentence for the builder: what happens, or why it cannot be told
 * @param then what it stands for, where it is about the worst of many once something has gone wrong; else null
 * @param missing whether it cannot be told since the design does not give a value
 */
public record Finding(
        String id,
        String title,
        double demand,
        double capacity,
        double factor,
        Kind kind,
        Sense sense,
        double utilisation,
        Extreme worst,
        Verdict verdict,
        String source,
        Text note,
        @Nullable Then then,
        boolean missing) {
    /** The least used first. Not by a key: what makes such a comparator is spun when it is first asked for, in every check anew. */
    public static final Comparator<Finding> BY_USE = (a, b) -> Double.compare(a.utilisation, b.utilisation);

    /** Two figures nearer than this, as a share, are one. */
    private static final double ROUNDING = 1e-6;

    /** The most decimals of an angle. */
    private static final int MOST_DECIMALS = 6;

    /** One that stands for itself; of what cannot be told, a value is missing. */
    public Finding(
            String id,
            String title,
            double demand,
            double capacity,
            double factor,
            Kind kind,
            Sense sense,
            double utilisation,
            Extreme worst,
            Verdict verdict,
            String source,
            Text note) {
        this(
                id,
                title,
                demand,
                capacity,
                factor,
                kind,
                sense,
                utilisation,
                worst,
                verdict,
                source,
                note,
                null,
                verdict == Verdict.NOT_CHECKED);
    }

    /** Its title; of one about the worst of many, with what is worst then: 'Wheel sinks: Actuator: push'. */
    public String named() {
        return then == null ? title : Titles.part(title) + ": " + then.worst().title();
    }

    /** The check's own part of the id: 'bearing-static'. */
    public String checkId() {
        return id.split("/", 2)[0];
    }

    /** The part after the slash of the id, as the id has it: 'frame-pin-tear-out'; empty when there is none. */
    public String partId() {
        return partOf(id);
    }

    /** The part after the slash of an id of a finding. */
    public static String partOf(String id) {
        int slash = id.indexOf('/');
        return slash < 0 ? "" : id.substring(slash + 1);
    }

    /** Whether it is one of a check's, by the check's id. */
    public boolean isOf(String check) {
        return id.startsWith(check) && (id.length() == check.length() || id.charAt(check.length()) == '/');
    }

    /** What the job asks for, SI; NaN when not checked. */
    public double needs() {
        return sense == Sense.AT_LEAST ? capacity * factor : demand;
    }

    /** What is there, after the safety factor, SI; NaN when not checked. */
    public double has() {
        return sense == Sense.AT_LEAST ? demand : capacity / factor;
    }

    /**
     * Whether the utilisation alone tells the verdict. What passes or fails by another rule, or may happen without harm, has words in
     * place of it.
     */
    public boolean toldByShare(double close) {
        return switch (verdict) {
            case PASS -> utilisation <= 1;
            case CLOSE -> utilisation > close && utilisation <= 1 && !harmless();
            case FAIL -> utilisation > 1;
            case NOT_CHECKED -> false;
        };
    }

    /** Whether it may happen, though there is less than it asks for: words tell why, not the two figures. */
    private boolean harmless() {
        return verdict == Verdict.CLOSE && needs() > has() * (1 + ROUNDING);
    }

    /** 'needs 20 mm, has 25 mm'; the note where there are no such numbers. */
    public Text byWords() {
        return !Double.isFinite(needs()) || !Double.isFinite(has()) || harmless()
                ? note
                : Text.of("needs {}, has {}", needed(), there());
    }

    /** What the job asks for, as it is shown. */
    public Text needed() {
        return figure(needs());
    }

    /** What is there, as it is shown. */
    public Text there() {
        return figure(has());
    }

    /** One of its figures; a length or an angle with the digits that tell it from the one beside it. */
    public Text figure(double si) {
        double beside = si == needs() ? has() : needs();
        return switch (kind) {
            case LENGTH -> Text.length(si, beside);
            case ANGLE -> Text.degrees(si, apart(Math.toDegrees(si), Math.toDegrees(beside)));
            default -> show(si);
        };
    }

    /** How many decimals tell one number from another, from two on; fewer where it needs none. */
    private static int apart(double number, double beside) {
        int most = 2;
        while (most < MOST_DECIMALS
                && Math.abs(number - beside) > 1e-9 * Math.abs(number)
                && Text.number(number, most)
                        .metric()
                        .equals(Text.number(beside, most).metric())) {
            most++;
        }
        return decimals(number, most);
    }

    /** A length, an angle or the like that may be so much at most: 'it sinks at 80 mm/s, 100 mm/s allowed'. */
    public Text allowed(String words) {
        return Double.isFinite(needs()) && Double.isFinite(has())
                ? Text.of(words + " {}, {} allowed", needed(), there())
                : note;
    }

    /** How far it is from failing, or by how much it fails, in its own quantity; nothing where another rule decides. */
    public Text nearness() {
        double left = has() - needs();
        if (!Double.isFinite(left) || !(needs() > 0) || (!byRatio() && sense != Sense.AT_LEAST)) {
            return Text.NONE;
        }
        if (harmless()) {
            return Text.NONE;
        }
        if (left < 0) {
            return Text.words("fails by ").plus(show(-left));
        }
        return sense == Sense.AT_LEAST
                ? Text.of("{} left, {} wanted", there(), needed())
                : show(left).plus(" to spare");
    }

    /** A quantity of this finding's kind. */
    private Text show(double si) {
        return switch (kind) {
            case RATIO -> Text.amount(si, kind, "%", decimals(100 * si, 1));
            case ANGLE -> Text.degrees(si, decimals(Math.toDegrees(si), 2));
            default -> Text.amount(si, kind);
        };
    }

    /** How many decimals a number needs, up to so many: none for 12.003 with two. */
    private static int decimals(double number, int most) {
        double steps = Math.pow(10, most);
        double shown = Math.rint(number * steps) / steps;
        int needed = 0;
        while (needed < most
                && Math.abs(shown - Math.rint(shown * Math.pow(10, needed)) / Math.pow(10, needed)) > 1e-9) {
            needed++;
        }
        return needed;
    }

    /** Tilt at which it is worst, rad; NaN when no tilt governs. */
    public double tilt() {
        return worst.tilt();
    }

    /** Load case that governs; null when none does. */
    public @Nullable String loadCase() {
        return worst.loadCase();
    }

    /**
     * The same as found under a condition: its load case tells it, so that no one takes it for one of the design as stated.
     *
     * @param condition in few words: '40 % full'
     */
    public Finding under(String condition) {
        String load = worst.loadCase() == null ? condition : worst.loadCase() + ", " + condition;
        Extreme there = new Extreme(worst.value(), worst.tilt(), load, worst.direction());
        return changed(title, there, verdict);
    }

    /** The same with another verdict. */
    public Finding judged(Verdict other) {
        return changed(title, worst, other);
    }

    /** The same under another title. */
    public Finding titled(String other) {
        return changed(other, worst, verdict);
    }

    private Finding changed(String title, Extreme worst, Verdict verdict) {
        return new Finding(
                id,
                title,
                demand,
                capacity,
                factor,
                kind,
                sense,
                utilisation,
                worst,
                verdict,
                source,
                note,
                then,
                missing);
    }

    /** Whether the utilisation is demand over allowed capacity; some rules go another way. */
    public boolean byRatio() {
        double ratio = demand / (capacity / factor);
        return Math.abs(ratio - utilisation) <= ROUNDING * Math.max(1, Math.abs(ratio));
    }

    /**
     * Whether this is worse than another: by the verdict, then by the utilisation, and of one check that has nothing, by what it
     * needs; what was not checked is worse than nothing.
     */
    public boolean worseThan(Finding other) {
        if (verdict == Verdict.NOT_CHECKED) {
            return false;
        }
        int verdicts = verdict.compareTo(other.verdict);
        return other.verdict == Verdict.NOT_CHECKED
                || verdicts > 0
                || (verdicts == 0 && (utilisation > other.utilisation || needsMore(other)));
    }

    private boolean needsMore(Finding other) {
        return utilisation == Double.POSITIVE_INFINITY
                && other.utilisation == Double.POSITIVE_INFINITY
                && id.equals(other.id)
                && needs() > other.needs();
    }

    /** The same by more than rounding; of what is used up alike, by what it asks for. */
    public boolean clearlyWorseThan(Finding other) {
        if (verdict != other.verdict || verdict == Verdict.NOT_CHECKED) {
            return worseThan(other);
        }
        return utilisation == other.utilisation
                ? demand - other.demand > ROUNDING * Math.abs(other.demand)
                : utilisation > other.utilisation * (1 + ROUNDING);
    }
}
