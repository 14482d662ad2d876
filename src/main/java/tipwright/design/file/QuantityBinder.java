// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Measured;
import tipwright.quantity.Estimate;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;

/** Reads one number with its unit and holds it against its limits. */
final class QuantityBinder {
    private static final double LONGEST = 1000;
    private static final double SHORTEST = 1e-6;

    /** Exact where nothing else is said. */
    static final Usual NONE = (si, unit) -> 0;

    private final Reader reader;
    private final Problems problems;

    QuantityBinder(Reader reader) {
        this.reader = reader;
        problems = reader.problems();
    }

    /** The SI value; null with a problem noted. */
    @Nullable
    Double read(Measured measured, Node node, String path) {
        return read(measured, node, path, path, NONE);
    }

    /** The doubt of a value where none is written with it. */
    interface Usual {
        /** Standard doubt, SI, of a value in SI that is written in this unit; 0: none. */
        double of(double si, String unit);
    }

    /**
     * The SI value; null with a problem noted.
     *
     * @param own path of this value alone, such as 'pivot.at.x'
     */
    @Nullable
    Double read(Measured measured, Node node, String path, String own, Usual usual) {
        if (!(node instanceof Node.Scalar scalar)) {
            problems.add(
                    node.place(),
                    path,
                    "a single " + measured.value().word() + " is needed here, such as '"
                            + measured.value().example() + "'; found " + node.words());
            return null;
        }
        String text = scalar.isNothing() ? "" : scalar.text();
        if (!measured.orWord().isEmpty() && text.equals(measured.orWord())) {
            return Double.POSITIVE_INFINITY;
        }
        try {
            Estimate read = estimate(measured, text);
            double value = read.si();
            String wrong = limits(measured, text, value);
            if (wrong == null) {
                double doubt = read.doubt() > 0 ? read.doubt() : usual.of(value, read.unit());
                return doubt > 0 ? reader.doubtful(new Uncertain(own, text, measured.value(), value, doubt)) : value;
            }
            problems.add(node.place(), path, ErrorText.quoted(text) + " is " + wrong);
        } catch (QuantityException wrong) {
            String or = measured.orWord().isEmpty() ? "" : "; or '" + measured.orWord() + "'";
            String message = wrong.getMessage() + or;
            problems.addAlike(node.place(), path, message, message.startsWith("no unit in ") ? "no unit" : "");
        }
        return null;
    }

    /** What is written; the unit that a bare number is most likely meant in is only looked for where one is missing. */
    private Estimate estimate(Measured measured, String text) throws QuantityException {
        try {
            return estimate(measured, text, "");
        } catch (QuantityException wrong) {
            String likely = text.isEmpty() ? "" : reader.likely(text, measured.value());
            if (likely.isEmpty()) {
                throw wrong;
            }
            return estimate(measured, text, likely);
        }
    }

    private static Estimate estimate(Measured measured, String text, String likely) throws QuantityException {
        if (measured.wire()) {
            return Quantities.wireGauge(text);
        }
        return measured.sheet()
                ? Quantities.thickness(text, likely)
                : Quantities.estimate(text, measured.value(), likely);
    }

    private static @Nullable String limits(Measured measured, String text, double value) throws QuantityException {
        Kind kind = measured.value();
        if (!measured.above().isEmpty() && !(value > Quantities.parse(measured.above(), kind))) {
            return "not more than " + measured.above() + "; " + allowed(measured);
        }
        if (!measured.atLeast().isEmpty() && value < Quantities.parse(measured.atLeast(), kind) - slack(value)) {
            return "less than " + measured.atLeast() + "; " + allowed(measured);
        }
        if (!measured.atMost().isEmpty() && value > Quantities.parse(measured.atMost(), kind) + slack(value)) {
            boolean bare = kind == Kind.RATIO && text.matches("[0-9.]+") && value <= 100;
            return "more than " + measured.atMost() + "; " + allowed(measured)
                    + (bare ? "; did you mean '" + text + " %'?" : "");
        }
        if (kind == Kind.LENGTH && Math.abs(value) > LONGEST) {
            return "more than 1000 m; is the unit right?";
        }
        if (kind == Kind.LENGTH && value != 0 && Math.abs(value) < SHORTEST) {
            return "less than 0.001 mm; is the unit right?";
        }
        return null;
    }

    /** Lets '180 deg' meet a limit of 180 deg whichever way it was rounded. */
    private static double slack(double value) {
        return Math.abs(value) * 1e-12;
    }

    /** The limits in words; empty when there are none. */
    static String allowed(Measured measured) {
        String from = measured.above().isEmpty() ? measured.atLeast() : "more than " + measured.above();
        if (from.isEmpty() && measured.atMost().isEmpty()) {
            return "";
        }
        if (measured.atMost().isEmpty()) {
            return "allowed: " + from + (measured.above().isEmpty() ? " or more" : "");
        }
        return "allowed: " + (from.isEmpty() ? "up to " : from + " to ") + measured.atMost();
    }
}
