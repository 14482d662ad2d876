// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import org.jspecify.annotations.Nullable;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/**
 * All units that are read: our labels over units of JSR-385, which also give the factors. Source: NIST SP 811 for the defining
 * figures of the inch-pound units (inch, pound, gravity), from memory; all others follow from these.
 */
final class UnitTable {
    /** All units, grouped by kind; the first of a kind is what a bare number most likely means. */
    static final List<UnitLabel> ALL = new Builder().build();

    private static final Map<String, List<UnitLabel>> BY_LABEL = byLabel();
    private static final Map<Kind, List<UnitLabel>> BY_KIND = byKind();

    private UnitTable() {}

    /** The unit of this kind with this label; null when there is none. */
    static @Nullable UnitLabel find(String label, Kind kind) {
        for (UnitLabel unit : named(label)) {
            if (unit.kind() == kind) {
                return unit;
            }
        }
        return null;
    }

    /** All units with this label, of any kind. */
    static List<UnitLabel> named(String label) {
        return BY_LABEL.getOrDefault(label, List.of());
    }

    static List<UnitLabel> of(Kind kind) {
        return BY_KIND.getOrDefault(kind, List.of());
    }

    private static Map<String, List<UnitLabel>> byLabel() {
        Map<String, List<UnitLabel>> map = new HashMap<>();
        for (UnitLabel unit : ALL) {
            map.computeIfAbsent(unit.name(), k -> new ArrayList<>(1)).add(unit);
            for (String alias : unit.aliases()) {
                map.computeIfAbsent(alias, k -> new ArrayList<>(1)).add(unit);
            }
        }
        return Collections.unmodifiableMap(map);
    }

    private static Map<Kind, List<UnitLabel>> byKind() {
        Map<Kind, List<UnitLabel>> map = new EnumMap<>(Kind.class);
        for (UnitLabel unit : ALL) {
            map.computeIfAbsent(unit.kind(), k -> new ArrayList<>()).add(unit);
        }
        map.replaceAll((k, list) -> List.copyOf(list));
        return Collections.unmodifiableMap(map);
    }

    /** Lists the units; used once. */
    private static final class Builder {
        private final List<UnitLabel> all = new ArrayList<>();

        List<UnitLabel> build() {
            Unit<?> m = Units.METRE;
            Unit<?> in = m.multiply(0.0254);
            Unit<?> ft = m.multiply(0.3048);
            Unit<?> kg = Units.KILOGRAM;
            Unit<?> lb = kg.multiply(0.45359237);
            Unit<?> s = Units.SECOND;
            Unit<?> min = s.multiply(60);
            Unit<?> newton = Units.NEWTON;
            Unit<?> kgf = newton.multiply(9.80665);
            Unit<?> lbf = kgf.multiply(0.45359237);
            Unit<?> pa = Units.PASCAL;
            Unit<?> psi = lbf.divide(in).divide(in);
            Unit<?> m3 = m.pow(3);
            Unit<?> litre = m3.divide(1000);
            Unit<?> gal = in.pow(3).multiply(231);
            Unit<?> rad = Units.RADIAN;
            Unit<?> deg = rad.multiply(Math.PI / 180);
            Unit<?> watt = Units.WATT;
            Unit<?> ohm = Units.OHM;
            put(Kind.LENGTH, m, "mm", m.divide(1000));
            put(Kind.LENGTH, m, "cm", m.divide(100));
            put(Kind.LENGTH, m, "m", m);
            put(Kind.LENGTH, m, "in", in, "\"", "''", "inch", "inches");
            put(Kind.LENGTH, m, "ft", ft, "'", "foot", "feet");
            put(Kind.LENGTH, m, "yd", ft.multiply(3), "yard", "yards");
            put(Kind.AREA, m.pow(2), "m2", m.pow(2), "m^2");
            put(Kind.AREA, m.pow(2), "cm2", m.pow(2).divide(1e4), "cm^2");
            put(Kind.AREA, m.pow(2), "mm2", m.pow(2).divide(1e6), "mm^2");
            put(Kind.AREA, m.pow(2), "in2", in.pow(2), "in^2");
            put(Kind.AREA, m.pow(2), "ft2", ft.pow(2), "ft^2");
            put(Kind.VOLUME, m3, "L", litre, "l", "litre", "litres", "liter", "liters");
            put(Kind.VOLUME, m3, "mL", litre.divide(1000), "ml");
            put(Kind.VOLUME, m3, "m3", m3, "m^3");
            put(Kind.VOLUME, m3, "gal", gal, "gal (US)", "US gal", "gallon", "gallons");
            put(Kind.VOLUME, m3, "ft3", ft.pow(3), "ft^3", "cu ft");
            put(Kind.VOLUME, m3, "in3", in.pow(3), "in^3", "cu in");
            put(Kind.VOLUME, m3, "yd3", ft.pow(3).multiply(27), "yd^3", "cu yd");
            put(Kind.VOLUME, m3, "gal (imp)", litre.multiply(4.54609), "imp gal");
            put(Kind.MASS, kg, "kg", kg);
            put(Kind.MASS, kg, "g", kg.divide(1000));
            put(Kind.MASS, kg, "t", kg.multiply(1000));
            put(Kind.MASS, kg, "lb", lb, "lbs");
            put(Kind.MASS, kg, "ton (US)", lb.multiply(2000), "US ton", "short ton");
            put(Kind.DENSITY, kg.divide(m3), "kg/m3", kg.divide(m3), "kg/m^3");
            put(Kind.DENSITY, kg.divide(m3), "kg/L", kg.divide(litre), "kg/l");
            put(Kind.DENSITY, kg.divide(m3), "t/m3", kg.multiply(1000).divide(m3), "t/m^3");
            put(Kind.DENSITY, kg.divide(m3), "g/cm3", kg.divide(litre), "g/cm^3", "g/cc", "g/mL", "g/ml");
            put(Kind.DENSITY, kg.divide(m3), "lb/yd3", lb.divide(ft.pow(3).multiply(27)), "lb/yd^3");
            put(Kind.DENSITY, kg.divide(m3), "lb/ft3", lb.divide(ft.pow(3)), "lb/ft^3");
            put(Kind.DENSITY, kg.divide(m3), "lb/gal", lb.divide(gal), "ppg");
            put(Kind.FORCE, newton, "N", newton);
            put(Kind.FORCE, newton, "kN", newton.multiply(1000));
            put(Kind.FORCE, newton, "kgf", kgf);
            put(Kind.FORCE, newton, "lbf", lbf);
            put(Kind.MOMENT, newton.multiply(m), "N m", newton.multiply(m), "Nm", "N*m");
            put(Kind.MOMENT, newton.multiply(m), "kN m", newton.multiply(m).multiply(1000), "kNm", "kN*m");
            put(Kind.MOMENT, newton.multiply(m), "lbf ft", lbf.multiply(ft), "ft lbf", "lbf*ft");
            put(Kind.MOMENT, newton.multiply(m), "lbf in", lbf.multiply(in), "in lbf", "lbf*in");
            put(Kind.PRESSURE, pa, "bar", pa.multiply(1e5));
            put(Kind.PRESSURE, pa, "Pa", pa);
            put(Kind.PRESSURE, pa, "kPa", pa.multiply(1e3));
            put(Kind.PRESSURE, pa, "MPa", pa.multiply(1e6), "N/mm2", "N/mm^2");
            put(Kind.PRESSURE, pa, "GPa", pa.multiply(1e9));
            put(Kind.PRESSURE, pa, "mbar", pa.multiply(100));
            put(Kind.PRESSURE, pa, "psi", psi);
            put(Kind.PRESSURE, pa, "ksi", psi.multiply(1000));
            put(Kind.ANGLE, rad, "deg", deg, "degree", "degrees");
            put(Kind.ANGLE, rad, "rad", rad);
            put(Kind.SPEED, m.divide(s), "mm/s", m.divide(1000).divide(s));
            put(Kind.SPEED, m.divide(s), "cm/s", m.divide(100).divide(s));
            put(Kind.SPEED, m.divide(s), "m/s", m.divide(s));
            put(Kind.SPEED, m.divide(s), "in/s", in.divide(s));
            put(Kind.SPEED, m.divide(s), "in/min", in.divide(min));
            put(Kind.SPEED, m.divide(s), "m/min", m.divide(min));
            put(Kind.SPEED, m.divide(s), "ft/s", ft.divide(s));
            put(Kind.SPEED, m.divide(s), "ft/min", ft.divide(min));
            put(Kind.FLOW, m3.divide(s), "L/min", litre.divide(min), "l/min");
            put(Kind.FLOW, m3.divide(s), "L/s", litre.divide(s), "l/s");
            put(Kind.FLOW, m3.divide(s), "gpm", gal.divide(min), "gal/min");
            put(Kind.TIME, s, "s", s);
            put(Kind.TIME, s, "min", min);
            put(Kind.TIME, s, "h", s.multiply(3600));
            put(Kind.VOLTAGE, Units.VOLT, "V", Units.VOLT);
            put(Kind.CURRENT, Units.AMPERE, "A", Units.AMPERE);
            put(Kind.POWER, watt, "W", watt);
            put(Kind.POWER, watt, "kW", watt.multiply(1000));
            put(Kind.POWER, watt, "hp", lbf.multiply(ft).divide(s).multiply(550));
            put(Kind.ENERGY, Units.JOULE, "Wh", watt.multiply(s).multiply(3600));
            put(Kind.ENERGY, Units.JOULE, "kWh", watt.multiply(s).multiply(3.6e6));
            put(Kind.ENERGY, Units.JOULE, "J", Units.JOULE);
            put(Kind.ENERGY, Units.JOULE, "kJ", Units.JOULE.multiply(1000));
            put(Kind.CHARGE, Units.COULOMB, "Ah", Units.AMPERE.multiply(s).multiply(3600));
            put(Kind.RESISTANCE, ohm, "ohm", ohm);
            put(Kind.RESISTANCE, ohm, "mohm", ohm.divide(1000));
            put(Kind.TEMPERATURE, Units.KELVIN, "degC", Units.CELSIUS);
            put(
                    Kind.TEMPERATURE,
                    Units.KELVIN,
                    "degF",
                    Units.KELVIN.multiply(5).divide(9).shift(459.67));
            put(Kind.TEMPERATURE, Units.KELVIN, "K", Units.KELVIN);
            put(Kind.STIFFNESS, newton.divide(m), "N/mm", newton.divide(m).multiply(1000));
            put(Kind.STIFFNESS, newton.divide(m), "lbf/in", lbf.divide(in));
            Unit<?> turning = newton.multiply(m).divide(rad);
            put(Kind.ANGULAR_STIFFNESS, turning, "N m/deg", newton.multiply(m).divide(deg), "Nm/deg");
            put(Kind.ANGULAR_STIFFNESS, turning, "N m/rad", turning, "Nm/rad");
            put(Kind.ANGULAR_STIFFNESS, turning, "lbf ft/deg", lbf.multiply(ft).divide(deg));
            Unit<?> spreading = m.pow(2).divide(s);
            put(Kind.VISCOSITY, spreading, "mm2/s", spreading.divide(1e6), "mm^2/s", "cSt");
            put(Kind.VISCOSITY, spreading, "m2/s", spreading, "m^2/s");
            Unit<?> sliding = pa.multiply(m).divide(s);
            put(Kind.PRESSURE_VELOCITY, sliding, "MPa m/s", sliding.multiply(1e6));
            put(Kind.PRESSURE_VELOCITY, sliding, "Pa m/s", sliding);
            put(Kind.PRESSURE_VELOCITY, sliding, "psi ft/min", psi.multiply(ft).divide(min));
            put(Kind.RATIO, AbstractUnit.ONE, "%", Units.PERCENT);
            return List.copyOf(all);
        }

        private void put(Kind kind, Unit<?> si, String name, Unit<?> unit, String... aliases) {
            UnitConverter converter = converter(unit, si);
            double zero = converter.convert(0.0);
            all.add(new UnitLabel(name, List.of(aliases), kind, converter.convert(1.0) - zero, zero));
        }

        private static UnitConverter converter(Unit<?> from, Unit<?> to) {
            try {
                return from.getConverterToAny(to);
            } catch (javax.measure.IncommensurableException wrongTable) {
                throw new IllegalStateException(wrongTable);
            }
        }
    }
}
