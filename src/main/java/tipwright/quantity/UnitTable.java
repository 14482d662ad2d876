// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * All units that are read, with their factors to SI. A library would give them too, at a fifteenth of the time of a whole check; the
 * tests hold every factor against one. Source: NIST SP 811 for the defining figures of the inch-pound units (inch, pound, gravity),
 * from memory; all others follow from these.
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
        private static final double IN = 0.0254;
        private static final double FT = 0.3048;
        private static final double LB = 0.45359237;
        private static final double KGF = 9.80665;
        private static final double LBF = KGF * LB;
        private static final double PSI = LBF / (IN * IN);
        private static final double LITRE = 1e-3;
        private static final double GAL = 231 * IN * IN * IN;
        private static final double MIN = 60;
        private static final double DEG = Math.PI / 180;
        private final List<UnitLabel> all = new ArrayList<>();

        List<UnitLabel> build() {
            put(Kind.LENGTH, "mm", 1e-3);
            put(Kind.LENGTH, "cm", 1e-2);
            put(Kind.LENGTH, "m", 1);
            put(Kind.LENGTH, "in", IN, "\"", "''", "inch", "inches");
            put(Kind.LENGTH, "ft", FT, "'", "foot", "feet");
            put(Kind.LENGTH, "yd", FT * 3, "yard", "yards");
            put(Kind.AREA, "m2", 1, "m^2");
            put(Kind.AREA, "cm2", 1e-4, "cm^2");
            put(Kind.AREA, "mm2", 1e-6, "mm^2");
            put(Kind.AREA, "in2", IN * IN, "in^2");
            put(Kind.AREA, "ft2", FT * FT, "ft^2");
            put(Kind.VOLUME, "L", LITRE, "l", "litre", "litres", "liter", "liters");
            put(Kind.VOLUME, "mL", LITRE / 1000, "ml");
            put(Kind.VOLUME, "m3", 1, "m^3");
            put(Kind.VOLUME, "gal", GAL, "gal (US)", "US gal", "gallon", "gallons");
            put(Kind.VOLUME, "ft3", FT * FT * FT, "ft^3", "cu ft");
            put(Kind.VOLUME, "in3", IN * IN * IN, "in^3", "cu in");
            put(Kind.VOLUME, "yd3", FT * FT * FT * 27, "yd^3", "cu yd");
            put(Kind.VOLUME, "gal (imp)", LITRE * 4.54609, "imp gal");
            put(Kind.MASS, "kg", 1);
            put(Kind.MASS, "g", 1e-3);
            put(Kind.MASS, "t", 1000);
            put(Kind.MASS, "lb", LB, "lbs");
            put(Kind.MASS, "ton (US)", LB * 2000, "US ton", "short ton");
            put(Kind.DENSITY, "kg/m3", 1, "kg/m^3");
            put(Kind.DENSITY, "kg/L", 1000, "kg/l");
            put(Kind.DENSITY, "t/m3", 1000, "t/m^3");
            put(Kind.DENSITY, "g/cm3", 1000, "g/cm^3", "g/cc", "g/mL", "g/ml");
            put(Kind.DENSITY, "lb/yd3", LB / (FT * FT * FT * 27), "lb/yd^3");
            put(Kind.DENSITY, "lb/ft3", LB / (FT * FT * FT), "lb/ft^3");
            put(Kind.DENSITY, "lb/gal", LB / GAL, "ppg");
            put(Kind.FORCE, "N", 1);
            put(Kind.FORCE, "kN", 1000);
            put(Kind.FORCE, "kgf", KGF);
            put(Kind.FORCE, "lbf", LBF);
            put(Kind.MOMENT, "N m", 1, "Nm", "N*m");
            put(Kind.MOMENT, "kN m", 1000, "kNm", "kN*m");
            put(Kind.MOMENT, "lbf ft", LBF * FT, "ft lbf", "lbf*ft");
            put(Kind.MOMENT, "lbf in", LBF * IN, "in lbf", "lbf*in");
            put(Kind.PRESSURE, "bar", 1e5);
            put(Kind.PRESSURE, "Pa", 1);
            put(Kind.PRESSURE, "kPa", 1e3);
            put(Kind.PRESSURE, "MPa", 1e6, "N/mm2", "N/mm^2");
            put(Kind.PRESSURE, "GPa", 1e9);
            put(Kind.PRESSURE, "mbar", 100);
            put(Kind.PRESSURE, "psi", PSI);
            put(Kind.PRESSURE, "ksi", PSI * 1000);
            put(Kind.ANGLE, "deg", DEG, "degree", "degrees");
            put(Kind.ANGLE, "rad", 1);
            put(Kind.SPEED, "mm/s", 1e-3);
            put(Kind.SPEED, "cm/s", 1e-2);
            put(Kind.SPEED, "m/s", 1);
            put(Kind.SPEED, "in/s", IN);
            put(Kind.SPEED, "in/min", IN / MIN);
            put(Kind.SPEED, "m/min", 1.0 / MIN);
            put(Kind.SPEED, "ft/s", FT);
            put(Kind.SPEED, "ft/min", FT / MIN);
            put(Kind.FLOW, "L/min", LITRE / MIN, "l/min");
            put(Kind.FLOW, "L/s", LITRE, "l/s");
            put(Kind.FLOW, "gpm", GAL / MIN, "gal/min");
            put(Kind.TIME, "s", 1);
            put(Kind.TIME, "min", MIN);
            put(Kind.TIME, "h", 3600);
            put(Kind.VOLTAGE, "V", 1);
            put(Kind.CURRENT, "A", 1);
            put(Kind.POWER, "W", 1);
            put(Kind.POWER, "kW", 1000);
            put(Kind.POWER, "hp", LBF * FT * 550);
            put(Kind.ENERGY, "Wh", 3600);
            put(Kind.ENERGY, "kWh", 3.6e6);
            put(Kind.ENERGY, "J", 1);
            put(Kind.ENERGY, "kJ", 1000);
            put(Kind.CHARGE, "Ah", 3600);
            put(Kind.RESISTANCE, "ohm", 1);
            put(Kind.RESISTANCE, "mohm", 1e-3);
            shifted("degC", 1, 273.15);
            shifted("degF", 5.0 / 9, 459.67 * 5 / 9);
            put(Kind.TEMPERATURE, "K", 1);
            put(Kind.STIFFNESS, "N/mm", 1000);
            put(Kind.STIFFNESS, "lbf/in", LBF / IN);
            put(Kind.ANGULAR_STIFFNESS, "N m/deg", 1 / DEG, "Nm/deg");
            put(Kind.ANGULAR_STIFFNESS, "N m/rad", 1, "Nm/rad");
            put(Kind.ANGULAR_STIFFNESS, "lbf ft/deg", LBF * FT / DEG);
            put(Kind.VISCOSITY, "mm2/s", 1e-6, "mm^2/s", "cSt");
            put(Kind.VISCOSITY, "m2/s", 1, "m^2/s");
            put(Kind.PRESSURE_VELOCITY, "MPa m/s", 1e6);
            put(Kind.PRESSURE_VELOCITY, "Pa m/s", 1);
            put(Kind.PRESSURE_VELOCITY, "psi ft/min", PSI * FT / MIN);
            put(Kind.RATIO, "%", 1e-2);
            return List.copyOf(all);
        }

        private void put(Kind kind, String name, double factor, String... aliases) {
            all.add(new UnitLabel(name, List.of(aliases), kind, factor, 0));
        }

        /** A scale of temperature: a degree, K, and where its zero is, K. */
        private void shifted(String name, double degree, double zero) {
            all.add(new UnitLabel(name, List.of(), Kind.TEMPERATURE, degree, zero));
        }
    }
}
