// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Quantities as builders write them. */
class QuantitiesTest {
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "480 mm, 0.48",
                "480mm, 0.48",
                "  480   mm , 0.48",
                "-300 mm, -0.3",
                "- 300 mm, -0.3",
                "+12 in, 0.3048",
                ".5 in, 0.0127",
                "5. in, 0.127",
                "1e3 mm, 1",
                "3/8 in, 0.009525",
                "12 3/8 in, 0.314325",
                "12-3/8 in, 0.314325",
                "-12 3/8 in, -0.314325",
                "12 3/8\", 0.314325",
                "3 ft 4 1/2 in, 1.0287",
                "3' 4-1/2\", 1.0287",
                "3'4\", 1.016",
                "3' - 4 1/2\", 1.0287",
                "-3 ft 4 1/2 in, -1.0287",
                "3.5 ft, 1.0668",
                "12\u00bd in, 0.3175",
                "\u22125 mm, -0.005",
                "3\u2032 4\u2033, 1.016",
                "40 inches, 1.016",
                "1 foot, 0.3048",
                "0 mm, 0",
            })
    void aLengthInMetres(String written, double metres) throws QuantityException {
        assertThat(Quantities.parse(written, Kind.LENGTH)).isCloseTo(metres, offset(1e-15));
    }

    @ParameterizedTest
    @CsvSource({
        "25 %, RATIO, 0.25",
        "25%, RATIO, 0.25",
        "0.85, RATIO, 0.85",
        "1/4, RATIO, 0.25",
        "1.75 MPa m/s, PRESSURE_VELOCITY, 1.75e6",
        "300 US gal, VOLUME, 1.1356235352",
        "300 gal (US), VOLUME, 1.1356235352",
        "2 m^3, VOLUME, 2",
        "2 m\u00b3, VOLUME, 2",
        "90\u00b0, ANGLE, 1.5707963267948966",
        "20 \u00b0C, TEMPERATURE, 293.15",
        "10 Nm, MOMENT, 10",
        "10 N\u00b7m, MOMENT, 10",
        "20 \u2126, RESISTANCE, 20",
    })
    void otherKinds(String written, Kind kind, double si) throws QuantityException {
        assertThat(Quantities.parse(written, kind)).isCloseTo(si, offset(1e-12 * Math.max(1, si)));
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            delimiter = '|',
            value = {
                "-300 | LENGTH | no unit in '-300'; a length is needed; did you mean '-300 mm'?",
                "12 3/8 | LENGTH | no unit in '12 3/8'; a length is needed; did you mean '12 3/8 mm'?",
                "9 kg | FORCE | '9 kg' is a mass; a force is needed; did you mean '9 kgf'?",
                "9 lbf | MASS | '9 lbf' is a force; a mass is needed; did you mean '9 lb'?",
                "70 % | ANGLE | '70 %' is a share or factor; an angle is needed, such as '70 deg'",
                "5 Mpa | PRESSURE | unit 'Mpa' in '5 Mpa' is not known; a pressure or stress is needed; did you mean '5 MPa'?",
                "40 C | TEMPERATURE | unit 'C' in '40 C' is not known; a temperature is needed, such as '40 degC'",
                "12,5 mm | LENGTH | comma in '12,5 mm'; write decimals with a point and no thousands marks, such as '12.5 mm': a ',' starts the next value",
                "1,200,000 mm | LENGTH | comma in '1,200,000 mm'; write decimals with a point and no thousands marks, such as '1200000 mm': a ',' starts the next value",
                "NaN mm | LENGTH | no number in 'NaN mm'; a length is needed, such as '480 mm'",
                "-Infinity | FORCE | no number in '-Infinity'; a force is needed, such as '9 kN'",
                "1e400 N | FORCE | '1e400 N' is too large; is the unit right?",
                "1e15 kN | FORCE | '1e15 kN' is too large; is the unit right?",
                "3/0 in | LENGTH | a fraction over 0 in '3/0 in'; a length is needed, such as '480 mm'",
                "1 2 mm | LENGTH | two numbers in '1 2 mm'; a length is needed, such as '480 mm'",
                "1.2.3 mm | LENGTH | no number in '1.2.3 mm'; a length is needed, such as '480 mm'",
                "mm | LENGTH | no number in 'mm'; a length is needed, such as '480 mm'",
                "`` | ENERGY | nothing given; an energy is needed, such as '20 Wh'",
                "0x1F mm | LENGTH | unit 'x1F mm' in '0x1F mm' is not known; a length is needed, such as '480 mm'",
                "1d mm | LENGTH | unit 'd mm' in '1d mm' is not known; a length is needed, such as '480 mm'",
                "3 ft 4 kg | LENGTH | unit 'ft 4 kg' in '3 ft 4 kg' is not known; a length is needed, such as '480 mm'",
            })
    void whatIsNotUnderstood(String written, Kind kind, String message) {
        assertThatThrownBy(() -> Quantities.parse(written, kind))
                .isInstanceOf(QuantityException.class)
                .hasMessage(message);
    }

    @Test
    void aLongTextIsNoQuantityAndIsCutInTheMessage() {
        assertThatThrownBy(() -> Quantities.parse("9".repeat(100_000), Kind.LENGTH))
                .isInstanceOf(QuantityException.class)
                .hasMessage("'" + "9".repeat(37) + "...' is no quantity; a length is needed, such as '480 mm'");
    }

    @ParameterizedTest
    @CsvSource({
        "0.48, LENGTH, METRIC, 480 mm",
        "0.3048, LENGTH, US, 12 in",
        "12.3456789, LENGTH, METRIC, 12346 mm",
        "0.0123456, LENGTH, METRIC, 12.35 mm",
        "850, FORCE, METRIC, 850 N",
        "-9000, FORCE, METRIC, -9 kN",
        "4448.2216152605, FORCE, US, 1000 lbf",
        "1.6e7, PRESSURE, METRIC, 16 MPa",
        "500, PRESSURE, METRIC, 500 Pa",
        "50000, PRESSURE, METRIC, 50 kPa",
        "2.35e8, PRESSURE, US, 34.08 ksi",
        "0.7853981633974483, ANGLE, US, 45 deg",
        "0.85, RATIO, METRIC, 0.85",
        "0, MASS, METRIC, 0 kg",
        "1e-12, LENGTH, METRIC, 0 mm",
        "293.15, TEMPERATURE, US, 68 degF",
        "NaN, FORCE, METRIC, not known N",
    })
    void shown(double si, Kind kind, UnitSystem system, String text) {
        assertThat(Quantities.show(si, kind, system)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "0.0004988, METRIC, 0.5 L",
        "0.0003923, METRIC, 0.39 L",
        "0.02047, METRIC, 20.5 L",
        "0.7047, METRIC, 705 L",
        "1.2346, METRIC, 1235 L",
        "0.003785411784, US, 1 gal"
    })
    void roughly(double si, UnitSystem system, String text) {
        assertThat(Quantities.rough(si, Kind.VOLUME, system)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "12 3/8 in, 0.3175, LENGTH, 12.5 in",
                "3' 4\", 1.0287, LENGTH, 40.5 in",
                "480 mm, 0.5123456, LENGTH, 512.3456 mm",
                "25 %, 0.305, RATIO, 30.5 %",
                "0.25, 0.305, RATIO, 0.305",
            })
    void rewrittenInItsOwnUnit(String old, double si, Kind kind, String fresh) throws QuantityException {
        assertThat(Quantities.rewrite(old, si, kind)).isEqualTo(fresh);
    }

    /** Every unit, by every spelling, comes back as it went in. */
    @ParameterizedTest
    @EnumSource(Kind.class)
    void everyUnitComesBack(Kind kind) throws QuantityException {
        Random random = new Random(7);
        assertThat(Quantities.units(kind)).isNotEmpty();
        for (UnitLabel unit : Quantities.units(kind)) {
            for (int i = 0; i < 20; i++) {
                double number = Math.round(random.nextDouble() * 1e6) / 1e3 + 0.001;
                double si = unit.toSi(number);
                assertThat(unit.fromSi(si)).isCloseTo(number, offset(1e-9 * Math.max(1, number)));
                assertThat(Quantities.parse(number + " " + unit.name(), kind)).isEqualTo(si);
                for (String alias : unit.aliases()) {
                    assertThat(Quantities.parse(number + " " + alias, kind)).isEqualTo(si);
                }
            }
        }
        assertThat(Quantities.units(kind)).extracting(UnitLabel::name).doesNotHaveDuplicates();
        assertThat(Quantities.parse(kind.example(), kind)).isPositive();
    }

    /** Whatever is typed, the answer is a finite number or a message. */
    @Test
    void anyTextGivesAFiniteNumberOrAMessage() {
        Random random = new Random(11);
        String signs = "0123456789 ./-+'\"eE%,infatmNaNkgLb\u00b0\u00bd\u2032\ud83d\udccf\t\n";
        for (int i = 0; i < 200_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int length = random.nextInt(12); length >= 0; length--) {
                text.append(signs.charAt(random.nextInt(signs.length())));
            }
            Kind kind = Kind.values()[random.nextInt(Kind.values().length)];
            try {
                assertThat(Quantities.parse(text.toString(), kind))
                        .as(text.toString())
                        .isFinite();
            } catch (QuantityException told) {
                assertThat(told.getMessage()).isNotBlank();
            }
        }
    }
}
