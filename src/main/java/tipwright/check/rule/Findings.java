// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import java.util.Objects;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.Extreme;
import tipwright.analysis.Row;
import tipwright.design.Design;
import tipwright.design.Limits;
import tipwright.design.joint.Pivot;
import tipwright.design.key.NameId;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.time.Timing;

/** Makes findings for one check. */
public final class Findings {
    private static final Pattern BEARING = Pattern.compile("\\bbearing[ -]([12])\\b");

    private final Check check;
    private final Limits limits;
    private final Pivot pivot;

    public Findings(Check check, Design design) {
        this.check = check;
        this.limits = design.limits();
        this.pivot = design.pivot();
    }

    /**
     * A demand against a capacity; fails over a utilisation of 1, is close over the design's limit.
     *
     * @param part after the slash of the id; empty: none
     */
    public Finding compare(
            String part, double demand, double capacity, double factor, Kind kind, Extreme worst, Text note) {
        double utilisation = new Usage(demand, capacity, factor, kind).utilisation();
        return given(part, demand, capacity, factor, kind, utilisation, worst, verdict(utilisation), note);
    }

    /** As the other; the note has no quantity in it. */
    public Finding compare(
            String part, double demand, double capacity, double factor, Kind kind, Extreme worst, String note) {
        return compare(part, demand, capacity, factor, kind, worst, Text.words(note));
    }

    /** As the other, by what a rule gave. */
    public Finding compare(String part, Usage usage, Extreme worst, Text note) {
        return compare(part, usage.demand(), usage.capacity(), usage.factor(), usage.kind(), worst, note);
    }

    /** A rule of the load in one balance. */
    public interface Rule {
        Usage of(Row row, Balance balance);
    }

    /** A rule where it is worst over loads, tilts and directions of motion. */
    public Finding worst(String part, Analysis analysis, Rule rule, Text note) {
        Extreme worst = Usage.worst(
                figure -> Extreme.largest(analysis.cases(), (row, b) -> figure.applyAsDouble(rule.of(row, b))));
        return compare(part, at(analysis, worst, rule), worst, note);
    }

    /**
     * A rule that takes long where it is worst.
     *
     * @param atMost a figure that its utilisation never exceeds, quickly worked out
     */
    public Finding worst(String part, Analysis analysis, Extreme.OfBalance atMost, Rule rule, Text note) {
        Extreme worst = Extreme.largest(
                analysis.cases(), atMost, (row, b) -> rule.of(row, b).utilisation());
        return compare(part, at(analysis, worst, rule), worst, note);
    }

    /**
     * A rule of a single figure of the load that asks for the more the larger that is, where it is largest over loads, tilts and
     * directions of motion.
     *
     * @param load never below 0
     */
    public Finding atLargest(
            String part, Analysis analysis, Extreme.OfBalance load, DoubleFunction<Usage> rule, Text note) {
        Extreme largest = Extreme.largest(analysis.cases(), load);
        return compare(part, rule.apply(largest.value()), largest, note);
    }

    /** What a rule gives where something is worst. */
    public static Usage at(Analysis analysis, Extreme worst, Rule rule) {
        return rule.of(
                Objects.requireNonNull(worst.row(analysis.cases()), "a load case"),
                Objects.requireNonNull(worst.balance(analysis.cases()), "a direction of motion"));
    }

    /** A finding whose verdict follows another rule. */
    public Finding given(
            String part,
            double demand,
            double capacity,
            double factor,
            Kind kind,
            double utilisation,
            Extreme worst,
            Verdict verdict,
            Text note) {
        return new Finding(
                id(part),
                title(part),
                demand,
                capacity,
                factor,
                kind,
                Sense.AT_MOST,
                utilisation,
                worst,
                verdict,
                check.source(),
                note);
    }

    /** As the other; the note has no quantity in it. */
    public Finding given(
            String part,
            double demand,
            double capacity,
            double factor,
            Kind kind,
            double utilisation,
            Extreme worst,
            Verdict verdict,
            String note) {
        return given(part, demand, capacity, factor, kind, utilisation, worst, verdict, Text.words(note));
    }

    /** A finding of what must be at least so much. */
    public Finding atLeast(
            String part,
            double there,
            double wanted,
            Kind kind,
            double utilisation,
            Extreme worst,
            Verdict verdict,
            Text note) {
        return new Finding(
                id(part),
                title(part),
                there,
                wanted,
                1,
                kind,
                Sense.AT_LEAST,
                utilisation,
                worst,
                verdict,
                check.source(),
                note);
    }

    /** What another check found, as this one's, under a title of its own. */
    public Finding of(String part, String title, Finding other) {
        return new Finding(
                id(part),
                title,
                other.demand(),
                other.capacity(),
                other.factor(),
                other.kind(),
                other.sense(),
                other.utilisation(),
                other.worst(),
                other.verdict(),
                other.source(),
                other.note());
    }

    /** What another check finds once something has gone wrong, as this one's. */
    public Finding of(String part, Then then, Extreme where) {
        Finding worst = then.worst();
        return new Finding(
                id(part),
                title(part),
                worst.demand(),
                worst.capacity(),
                worst.factor(),
                worst.kind(),
                worst.sense(),
                worst.utilisation(),
                where,
                worst.verdict(),
                check.source(),
                then.note(),
                then,
                false);
    }

    /** What cannot be checked since the design does not give it. */
    public Finding missing(String part, Text what) {
        return untold(part, what, true);
    }

    /** What cannot be checked, though nothing is missing: the rule does not reach so far, or there is nothing to check. */
    public Finding cannot(String part, Text why) {
        return untold(part, why, false);
    }

    /** As the other; why is told without a quantity. */
    public Finding cannot(String part, String why) {
        return cannot(part, Text.words(why));
    }

    /** What cannot be checked since the dump in time is not known. */
    public Finding untimed(String part, Timing timing) {
        return untold(part, Text.words(String.valueOf(timing.missing())), !timing.lost());
    }

    /** What was found of a part, without the verdict and the figures that do not tell all of it. */
    public Finding cannot(Finding found, Text why) {
        return untold(found.id(), found.title(), why, false);
    }

    /**
     * What cannot be checked.
     *
     * @param missing whether a value that the design does not give would let it be checked
     */
    public Finding untold(String part, Text why, boolean missing) {
        return untold(id(part), title(part), why, missing);
    }

    private Finding untold(String id, String title, Text why, boolean missing) {
        return new Finding(
                id,
                title,
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Kind.RATIO,
                Sense.AT_MOST,
                Double.NaN,
                Extreme.NOWHERE,
                Verdict.NOT_CHECKED,
                check.source(),
                why,
                null,
                missing);
    }

    /** As the other; what is missing is told without a quantity. */
    public Finding missing(String part, String what) {
        return missing(part, Text.words(what));
    }

    /** Number of the part that a finding is about, from its id: 'bearing-static/bearing-2' is 1; 0 when it has none. */
    public static int number(Finding finding) {
        String id = finding.id();
        char last = id.charAt(id.length() - 1);
        return Character.isDigit(last) ? last - '1' : 0;
    }

    /** Which of the pivot's bearings a finding is about, by its id; -1: none. */
    public static int bearing(Finding finding) {
        Matcher matcher = BEARING.matcher(finding.id());
        return matcher.find() ? matcher.group(1).charAt(0) - '1' : -1;
    }

    /** What a utilisation means; one that is no number is no pass. */
    public Verdict verdict(double utilisation) {
        return !(utilisation <= 1) ? Verdict.FAIL : utilisation > limits.close() ? Verdict.CLOSE : Verdict.PASS;
    }

    private String id(String part) {
        return part.isEmpty() ? check.id() : check.id() + "/" + NameId.of(part);
    }

    private String title(String part) {
        return check.title(
                BEARING.matcher(part).replaceAll(m -> pivot.name(m.group(1).charAt(0) - '1')));
    }
}
