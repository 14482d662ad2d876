// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tipwright.design.file.Uncertain;
import tipwright.doubt.SampledShare;
import tipwright.doubt.Sureness;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.Text;
import tipwright.quantity.UnitLabel;
import tipwright.quantity.UnitSystem;

/** How sure the verdict is, in plain sentences. */
public final class SurenessText {
    private static final double COVERED = 2;
    private static final double SETTLED = 3;

    private SurenessText() {}

    /** The same as printed lines, ended by a line feed, after an answer that was printed without it. */
    public static String after(Sureness sure, Style style) {
        StringBuilder text = new StringBuilder("\n");
        of(sure, style.units()).forEach(said -> Prose.wrap("  ", said)
                .forEach(line -> text.append(line).append('\n')));
        return text.toString();
    }

    /** 'How sure: passes in 97 of 100 ...', and what to measure better. */
    public static List<String> of(Sureness sure, UnitSystem units) {
        List<String> all = new ArrayList<>();
        String governing = sure.governing();
        String share = "How sure: it passes in " + sure.passes() + " of " + sure.samples()
                + ", with the values off by as much as they may be ("
                + SampledShare.of(sure.passes(), sure.samples()).words() + ").";
        if (governing == null) {
            all.add(share + " No check depends on what may be off.");
            return all;
        }
        Uncertain first = sure.influences().get(0).value();
        all.add(share + " " + Text.capital(said(first.path())) + " decides most: '" + governing + "' is "
                + percent(sure.used()) + " used, give or take " + percent(COVERED * sure.spread()) + ".");
        if (Math.abs(1 - sure.used()) > SETTLED * sure.spread()) {
            return all;
        }
        String now = show(first.value(), first.kind(), units) + " +- "
                + doubt(COVERED * first.doubt(), first.kind(), units, RoundingMode.UP);
        if (Double.isNaN(sure.wanted())) {
            all.add("Measuring " + said(first.path()) + " (" + now + ") better is not enough by itself; give '"
                    + governing + "' more to spare.");
        } else if (sure.wanted() < first.doubt()) {
            all.add("Measure " + said(first.path()) + " first: now " + now + "; within +- "
                    + doubt(COVERED * sure.wanted(), first.kind(), units, RoundingMode.DOWN)
                    + " of that it would pass in 98 of 100. " + how(first));
        }
        return all;
    }

    private static final Pattern READING =
            Pattern.compile("(.+)\\.(from|above|below|towards-dump|away-from-dump)\\.([^.]+)");

    /** A value of the file as a person says it: 'the tape from axle to tank-pin'; else its key. */
    private static String said(String path) {
        Matcher reading = READING.matcher(path);
        if (!reading.matches()) {
            return path;
        }
        String place = reading.group(1).replaceFirst("^points\\.", "");
        String from = reading.group(3);
        return switch (reading.group(2)) {
            case "from" -> "the tape from " + from + " to " + place;
            case "above", "below" -> "the height of " + place + " from " + from;
            default -> "how far along " + place + " is from " + from;
        };
    }

    private static String how(Uncertain value) {
        if (value.path().startsWith("slurry")) {
            return "Weigh a bucket of it.";
        }
        if (value.kind() == Kind.MASS || value.kind() == Kind.FORCE) {
            return "Weigh it, or ask the seller.";
        }
        return value.kind() == Kind.LENGTH ? "Measure it again, with a second helper at the tape." : "";
    }

    private static String show(double si, Kind kind, UnitSystem units) {
        return Quantities.show(si, kind, units);
    }

    /** How much a value may be off, in the usual unit of its kind, with the two digits that mean something. */
    private static String doubt(double si, Kind kind, UnitSystem units, RoundingMode way) {
        UnitLabel unit = Quantities.unit(kind, units);
        BigDecimal two = new BigDecimal(si / unit.factor()).round(new MathContext(2, way));
        return two.stripTrailingZeros().toPlainString() + " " + unit.name();
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }
}
