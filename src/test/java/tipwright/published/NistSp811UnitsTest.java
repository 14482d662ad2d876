// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;

/**
 * Conversion factors. Source: NIST Special Publication 811, appendix B (from memory; each recomputed from the defining figures of
 * inch, pound and standard gravity). Figures marked exact there are held to a relative 1e-14, rounded ones to their printed digits.
 */
class NistSp811UnitsTest {
    @ParameterizedTest(name = "1 {0} = {2}")
    @CsvSource({
        "in, LENGTH, 0.0254, 1e-14",
        "ft, LENGTH, 0.3048, 1e-14",
        "in2, AREA, 6.4516e-4, 1e-14",
        "ft2, AREA, 9.290304e-2, 1e-14",
        "in3, VOLUME, 1.6387064e-5, 1e-14",
        "ft3, VOLUME, 2.8316846592e-2, 1e-14",
        "gal, VOLUME, 3.785411784e-3, 1e-14",
        "L, VOLUME, 1e-3, 1e-14",
        "lb, MASS, 0.45359237, 1e-14",
        "t, MASS, 1000, 1e-14",
        "lb/ft3, DENSITY, 16.018463373960, 1e-13",
        "lb/gal, DENSITY, 119.826427316897, 1e-14",
        "lbf, FORCE, 4.4482216152605, 1e-14",
        "kgf, FORCE, 9.80665, 1e-14",
        "lbf ft, MOMENT, 1.3558179483314004, 1e-14",
        "lbf in, MOMENT, 0.1129848290276167, 1e-14",
        "psi, PRESSURE, 6894.757293168361, 1e-14",
        "ksi, PRESSURE, 6894757.293168361, 1e-14",
        "bar, PRESSURE, 1e5, 1e-14",
        "deg, ANGLE, 1.745329251994330e-2, 1e-14",
        "in/s, SPEED, 0.0254, 1e-14",
        "in/min, SPEED, 4.233333e-4, 1e-6",
        "gpm, FLOW, 6.309020e-5, 1e-6",
        "L/min, FLOW, 1.666667e-5, 1e-6",
        "min, TIME, 60, 1e-14",
        "h, TIME, 3600, 1e-14",
        "hp, POWER, 745.6998715822702, 1e-14",
        "kW, POWER, 1000, 1e-14",
        "Wh, ENERGY, 3600, 1e-14",
        "kWh, ENERGY, 3.6e6, 1e-14",
        "Ah, CHARGE, 3600, 1e-14",
        "mohm, RESISTANCE, 1e-3, 1e-14",
        "lbf/in, STIFFNESS, 175.1268, 1e-6",
        "N/mm, STIFFNESS, 1000, 1e-14",
        "N m/deg, ANGULAR_STIFFNESS, 57.29577951308232, 1e-14",
        "psi ft/min, PRESSURE_VELOCITY, 35.02537, 1e-6",
        "MPa m/s, PRESSURE_VELOCITY, 1e6, 1e-14",
        "%, RATIO, 0.01, 1e-14",
    })
    void oneOfIt(String unit, Kind kind, double si, double relative) throws QuantityException {
        assertThat(Quantities.parse("1 " + unit, kind)).isCloseTo(si, offset(si * relative));
    }

    /** The steam and ice points and absolute zero. */
    @ParameterizedTest
    @CsvSource({
        "32 degF, 273.15",
        "212 degF, 373.15",
        "0 degC, 273.15",
        "-40 degF, 233.15",
        "-40 degC, 233.15",
        "0 K, 0"
    })
    void temperature(String written, double kelvin) throws QuantityException {
        assertThat(Quantities.parse(written, Kind.TEMPERATURE)).isCloseTo(kelvin, offset(1e-10));
    }
}
