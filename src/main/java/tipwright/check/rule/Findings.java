// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import org.jspecify.annotations.Nullable;
import tipwright.design.Limits;
import tipwright.quantity.Kind;

/** Makes findings for one check. */
public final class Findings {
    private final Check check;
    private final Limits limits;

    public Findings(Check check, Limits limits) {
        this.check = check;
        this.limits = limits;
    }

    /**
     * A demand against a capacity; fails over a utilisation of 1, is close over the design's limit.
     *
     * @param part after the slash of the id; empty: none
     */
    public Finding compare(
            String part, double demand, double capacity, double factor, Kind kind, Worst worst, String note) {
        double utilisation = capacity > 0 ? demand / (capacity / factor) : Double.POSITIVE_INFINITY;
        return given(part, demand, capacity, factor, kind, utilisation, worst, verdict(utilisation), note);
    }

    /** A finding whose verdict follows another rule. */
    public Finding given(
            String part,
            double demand,
            double capacity,
            double factor,
            Kind kind,
            double utilisation,
            Worst worst,
            Verdict verdict,
            String note) {
        return new Finding(
                id(part),
                title(part),
                demand,
                capacity,
                factor,
                kind,
                utilisation,
                worst.tilt(),
                worst.loadCase(),
                verdict,
                check.source(),
                note);
    }

    /** What cannot be checked, and the key that is missing. */
    public Finding missing(String part, String what) {
        return new Finding(
                id(part),
                title(part),
                Double.NaN,
                Double.NaN,
                Double.NaN,
                Kind.RATIO,
                Double.NaN,
                Double.NaN,
                null,
                Verdict.NOT_CHECKED,
                check.source(),
                "not checked: " + what);
    }

    /** Number of the part that a finding is about, from its id: 'bearing-static/bearing-2' is 1; 0 when it has none. */
    public static int number(Finding finding) {
        String id = finding.id();
        char last = id.charAt(id.length() - 1);
        return Character.isDigit(last) ? last - '1' : 0;
    }

    /** What a utilisation means; one that is no number is no pass. */
    public Verdict verdict(double utilisation) {
        return !(utilisation <= 1) ? Verdict.FAIL : utilisation > limits.close() ? Verdict.CLOSE : Verdict.PASS;
    }

    private String id(String part) {
        return part.isEmpty() ? check.id() : check.id() + "/" + part.replace(' ', '-');
    }

    private String title(String part) {
        return part.isEmpty() ? check.title() : check.title() + ", " + part;
    }

    /**
     * Where something is largest.
     *
     * @param tilt rad; NaN: none governs
     */
    public record Worst(double value, double tilt, @Nullable String loadCase) {
        public static final Worst NOWHERE = new Worst(Double.NaN, Double.NaN, null);
    }
}
