// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.IncommensurableException;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import org.junit.jupiter.api.Test;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/** Every unit's factor and zero against the reference implementation of JSR-385 (indriya), which carries rational numbers. */
class UnitTableTest {
    private static final double ROUNDING = 4 * Math.ulp(1.0);

    private final List<String> held = new ArrayList<>();

    @Test
    void factors_are_those_of_the_reference_implementation() {
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
        same(Kind.LENGTH, m, "mm", m.divide(1000));
        same(Kind.LENGTH, m, "cm", m.divide(100));
        same(Kind.LENGTH, m, "m", m);
        same(Kind.LENGTH, m, "in", in);
        same(Kind.LENGTH, m, "ft", ft);
        same(Kind.LENGTH, m, "yd", ft.multiply(3));
        same(Kind.AREA, m.pow(2), "m2", m.pow(2));
        same(Kind.AREA, m.pow(2), "cm2", m.pow(2).divide(1e4));
        same(Kind.AREA, m.pow(2), "mm2", m.pow(2).divide(1e6));
        same(Kind.AREA, m.pow(2), "in2", in.pow(2));
        same(Kind.AREA, m.pow(2), "ft2", ft.pow(2));
        same(Kind.VOLUME, m3, "L", litre);
        same(Kind.VOLUME, m3, "mL", litre.divide(1000));
        same(Kind.VOLUME, m3, "m3", m3);
        same(Kind.VOLUME, m3, "gal", gal);
        same(Kind.VOLUME, m3, "ft3", ft.pow(3));
        same(Kind.VOLUME, m3, "in3", in.pow(3));
        same(Kind.VOLUME, m3, "yd3", ft.pow(3).multiply(27));
        same(Kind.VOLUME, m3, "gal (imp)", litre.multiply(4.54609));
        same(Kind.MASS, kg, "kg", kg);
        same(Kind.MASS, kg, "g", kg.divide(1000));
        same(Kind.MASS, kg, "t", kg.multiply(1000));
        same(Kind.MASS, kg, "lb", lb);
        same(Kind.MASS, kg, "ton (US)", lb.multiply(2000));
        same(Kind.DENSITY, kg.divide(m3), "kg/m3", kg.divide(m3));
        same(Kind.DENSITY, kg.divide(m3), "kg/L", kg.divide(litre));
        same(Kind.DENSITY, kg.divide(m3), "t/m3", kg.multiply(1000).divide(m3));
        same(Kind.DENSITY, kg.divide(m3), "g/cm3", kg.divide(litre));
        same(Kind.DENSITY, kg.divide(m3), "lb/yd3", lb.divide(ft.pow(3).multiply(27)));
        same(Kind.DENSITY, kg.divide(m3), "lb/ft3", lb.divide(ft.pow(3)));
        same(Kind.DENSITY, kg.divide(m3), "lb/gal", lb.divide(gal));
        same(Kind.FORCE, newton, "N", newton);
        same(Kind.FORCE, newton, "kN", newton.multiply(1000));
        same(Kind.FORCE, newton, "kgf", kgf);
        same(Kind.FORCE, newton, "lbf", lbf);
        same(Kind.MOMENT, newton.multiply(m), "N m", newton.multiply(m));
        same(Kind.MOMENT, newton.multiply(m), "kN m", newton.multiply(m).multiply(1000));
        same(Kind.MOMENT, newton.multiply(m), "lbf ft", lbf.multiply(ft));
        same(Kind.MOMENT, newton.multiply(m), "lbf in", lbf.multiply(in));
        same(Kind.PRESSURE, pa, "bar", pa.multiply(1e5));
        same(Kind.PRESSURE, pa, "Pa", pa);
        same(Kind.PRESSURE, pa, "kPa", pa.multiply(1e3));
        same(Kind.PRESSURE, pa, "MPa", pa.multiply(1e6));
        same(Kind.PRESSURE, pa, "GPa", pa.multiply(1e9));
        same(Kind.PRESSURE, pa, "mbar", pa.multiply(100));
        same(Kind.PRESSURE, pa, "psi", psi);
        same(Kind.PRESSURE, pa, "ksi", psi.multiply(1000));
        same(Kind.ANGLE, rad, "deg", deg);
        same(Kind.ANGLE, rad, "rad", rad);
        same(Kind.SPEED, m.divide(s), "mm/s", m.divide(1000).divide(s));
        same(Kind.SPEED, m.divide(s), "cm/s", m.divide(100).divide(s));
        same(Kind.SPEED, m.divide(s), "m/s", m.divide(s));
        same(Kind.SPEED, m.divide(s), "in/s", in.divide(s));
        same(Kind.SPEED, m.divide(s), "in/min", in.divide(min));
        same(Kind.SPEED, m.divide(s), "m/min", m.divide(min));
        same(Kind.SPEED, m.divide(s), "ft/s", ft.divide(s));
        same(Kind.SPEED, m.divide(s), "ft/min", ft.divide(min));
        same(Kind.FLOW, m3.divide(s), "L/min", litre.divide(min));
        same(Kind.FLOW, m3.divide(s), "L/s", litre.divide(s));
        same(Kind.FLOW, m3.divide(s), "gpm", gal.divide(min));
        same(Kind.TIME, s, "s", s);
        same(Kind.TIME, s, "min", min);
        same(Kind.TIME, s, "h", s.multiply(3600));
        same(Kind.VOLTAGE, Units.VOLT, "V", Units.VOLT);
        same(Kind.CURRENT, Units.AMPERE, "A", Units.AMPERE);
        same(Kind.POWER, watt, "W", watt);
        same(Kind.POWER, watt, "kW", watt.multiply(1000));
        same(Kind.POWER, watt, "hp", lbf.multiply(ft).divide(s).multiply(550));
        same(Kind.ENERGY, Units.JOULE, "Wh", watt.multiply(s).multiply(3600));
        same(Kind.ENERGY, Units.JOULE, "kWh", watt.multiply(s).multiply(3.6e6));
        same(Kind.ENERGY, Units.JOULE, "J", Units.JOULE);
        same(Kind.ENERGY, Units.JOULE, "kJ", Units.JOULE.multiply(1000));
        same(Kind.CHARGE, Units.COULOMB, "Ah", Units.AMPERE.multiply(s).multiply(3600));
        same(Kind.RESISTANCE, ohm, "ohm", ohm);
        same(Kind.RESISTANCE, ohm, "mohm", ohm.divide(1000));
        same(Kind.TEMPERATURE, Units.KELVIN, "degC", Units.CELSIUS);
        same(
                Kind.TEMPERATURE,
                Units.KELVIN,
                "degF",
                Units.KELVIN.multiply(5).divide(9).shift(459.67));
        same(Kind.TEMPERATURE, Units.KELVIN, "K", Units.KELVIN);
        same(Kind.STIFFNESS, newton.divide(m), "N/mm", newton.divide(m).multiply(1000));
        same(Kind.STIFFNESS, newton.divide(m), "lbf/in", lbf.divide(in));
        Unit<?> turning = newton.multiply(m).divide(rad);
        same(Kind.ANGULAR_STIFFNESS, turning, "N m/deg", newton.multiply(m).divide(deg));
        same(Kind.ANGULAR_STIFFNESS, turning, "N m/rad", turning);
        same(Kind.ANGULAR_STIFFNESS, turning, "lbf ft/deg", lbf.multiply(ft).divide(deg));
        Unit<?> spreading = m.pow(2).divide(s);
        same(Kind.VISCOSITY, spreading, "mm2/s", spreading.divide(1e6));
        same(Kind.VISCOSITY, spreading, "m2/s", spreading);
        Unit<?> sliding = pa.multiply(m).divide(s);
        same(Kind.PRESSURE_VELOCITY, sliding, "MPa m/s", sliding.multiply(1e6));
        same(Kind.PRESSURE_VELOCITY, sliding, "Pa m/s", sliding);
        same(Kind.PRESSURE_VELOCITY, sliding, "psi ft/min", psi.multiply(ft).divide(min));
        same(Kind.RATIO, AbstractUnit.ONE, "%", Units.PERCENT);
        assertThat(held)
                .as("every unit is held against it")
                .hasSameSizeAs(UnitTable.ALL)
                .doesNotHaveDuplicates();
    }

    private void same(Kind kind, Unit<?> si, String name, Unit<?> unit) {
        UnitLabel own = Objects.requireNonNull(UnitTable.find(name, kind), name);
        UnitConverter converter = converter(unit, si);
        double zero = converter.convert(0.0);
        double factor = converter.convert(1.0) - zero;
        // one less the other loses digits where the zero is far off
        double lost = 2 * Math.ulp(Math.abs(zero) + 1);
        assertThat(own.factor()).as(name).isCloseTo(factor, within(zero == 0 ? ROUNDING * factor : lost));
        assertThat(own.offset()).as("zero of " + name).isCloseTo(zero, within(zero == 0 ? 0 : lost));
        held.add(kind + " " + name);
    }

    private static UnitConverter converter(Unit<?> from, Unit<?> to) {
        try {
            return from.getConverterToAny(to);
        } catch (IncommensurableException wrong) {
            throw new AssertionError(from + " and " + to, wrong);
        }
    }
}
