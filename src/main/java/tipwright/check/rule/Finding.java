// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

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
 * @param note one sentence for the builder: what happens, or what is missing
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
        Text note) {
    /** Two figures nearer than this, as a share, are one. */
    private static final double ROUNDING = 1e-6;

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
                : Text.of("needs {}, has {}", show(needs()), show(has()));
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
            return show(-left).plus(" short");
        }
        return sense == Sense.AT_LEAST
                ? Text.of("{} left, {} wanted", show(has()), show(needs()))
                : show(left).plus(" to spare");
    }

    /** A quantity of this finding's kind. */
    private Text show(double si) {
        return kind == Kind.RATIO ? Text.amount(si, kind, "%", 1) : Text.amount(si, kind);
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
        return new Finding(id, title, demand, capacity, factor, kind, sense, utilisation, there, verdict, source, note);
    }

    /** Whether the utilisation is demand over allowed capacity; some rules go another way. */
    public boolean byRatio() {
        double ratio = demand / (capacity / factor);
        return Math.abs(ratio - utilisation) <= ROUNDING * Math.max(1, Math.abs(ratio));
    }

    /** Whether this is worse than another: by the verdict, then by the utilisation; what was not checked is worse than nothing. */
    public boolean worseThan(Finding other) {
        if (verdict == Verdict.NOT_CHECKED) {
            return false;
        }
        int verdicts = verdict.compareTo(other.verdict);
        return other.verdict == Verdict.NOT_CHECKED
                || verdicts > 0
                || (verdicts == 0 && utilisation > other.utilisation);
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
