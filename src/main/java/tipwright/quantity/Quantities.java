// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import java.util.List;

/** Quantities at the edge: text to SI values and back. */
public final class Quantities {
    private static final int REWRITE_DIGITS = 7;

    private Quantities() {}

    /**
     * The SI value of a quantity as written: '480 mm', '12 3/8 in', '3 ft 4 1/2 in', '3\' 4-1/2"', '25 %'.
     *
     * @param kind what is needed; only a share or factor may be a bare number
     * @throws QuantityException when it is not understood, of another kind, or too large; the message tells how to mend it
     */
    public static double parse(String text, Kind kind) throws QuantityException {
        return QuantityReader.read(text, kind).si();
    }

    /**
     * A quantity that may carry its doubt: '24 in +- 1/8', '1400 kg/m3 +- 5 %', 'about 130 lb' (10 % either way).
     *
     * @param likely the unit that a bare number is most likely meant in, for the message; empty: the usual one
     * @throws QuantityException as {@link #parse}
     */
    public static Estimate estimate(String text, Kind kind, String likely) throws QuantityException {
        return QuantityReader.estimate(text, kind, likely, false);
    }

    /** The thickness of a sheet or plate, which may also be '16 ga' or '3/16 plate'; as {@link #estimate}. */
    public static Estimate thickness(String text, String likely) throws QuantityException {
        return QuantityReader.estimate(text, Kind.LENGTH, likely, true);
    }

    /** A gauge of wire: '6', 'AWG 6' or '2/0', which is -1; as {@link #estimate}. */
    public static Estimate wireGauge(String text) throws QuantityException {
        return QuantityReader.estimate(WireGauge.asNumber(text), Kind.RATIO, "", false);
    }

    /** An SI value in the unit that suits its kind and size, four significant digits: '1.25 kN'. Shares are plain numbers. */
    public static String show(double si, Kind kind, UnitSystem system) {
        return QuantityWriter.show(si, kind, system);
    }

    /** A size to be told rather than built to, in the usual unit: '0.5 L', '20.5 L', '705 L'. */
    public static String rough(double si, Kind kind, UnitSystem system) {
        return QuantityWriter.rough(si, kind, system);
    }

    /** An SI value in a given unit, four significant digits: '160 bar', '85 %'. */
    public static String show(double si, UnitLabel unit) {
        return QuantityWriter.show(si, unit);
    }

    /** A plain number with four significant digits and no exponent. */
    public static String number(double value) {
        return QuantityWriter.number(value);
    }

    /** The usual unit of a kind, for the heads of tables; '%' for shares. */
    public static UnitLabel unit(Kind kind, UnitSystem system) {
        return QuantityWriter.main(kind, system);
    }

    /**
     * The unit of a kind with this label.
     *
     * @throws IllegalArgumentException when there is none
     */
    public static UnitLabel unit(Kind kind, String label) {
        UnitLabel unit = UnitTable.find(label, kind);
        if (unit == null) {
            throw new IllegalArgumentException("no unit '" + label + "' for a " + kind.word());
        }
        return unit;
    }

    /** All units that are read for a kind; the first is what a bare number most likely means. */
    public static List<UnitLabel> units(Kind kind) {
        return UnitTable.of(kind);
    }

    /**
     * A new value written in the unit of an old one, seven significant digits: '12 3/8 in' becomes '12.5 in'.
     *
     * @param old as written; feet and inches give inches
     * @throws QuantityException when the old one is not understood
     */
    public static String rewrite(String old, double si, Kind kind) throws QuantityException {
        Doubt text = Doubt.in(kind == Kind.RATIO && WireGauge.isNamed(old) ? WireGauge.asNumber(old) : old);
        UnitLabel unit =
                QuantityReader.read(SheetThickness.asLength(text.base()), kind).unit();
        double number = unit == null ? si : unit.fromSi(si);
        return text.around(QuantityWriter.number(number, REWRITE_DIGITS) + (unit == null ? "" : " " + unit.name()));
    }
}
