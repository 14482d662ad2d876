// SPDX-License-Identifier: Apache-2.0
package tipwright.design.supply;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.ExactlyOne;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.design.key.Sold;
import tipwright.quantity.Kind;

/**
 * A cable with two cores, out and back.
 *
 * @param awg American wire gauge; 0 is 1/0, -1 is 2/0
 * @param section copper or aluminium in one core, m2
 * @param length one way, m
 * @param temperature of the conductor, K
 * @param stranding resistance over that of a solid wire of the same section
 * @param rating current that it may carry all the time, A
 */
@ExactlyOne({"section", "awg"})
public record Cable(
        @Note("Wire gauge: 6, AWG 6, 2/0; as a number 0 is 1/0 and -1 is 2/0")
                @Measured(value = Kind.RATIO, atLeast = "-3", atMost = "40", wire = true)
                @Sold(value = "gauge", usual = "6")
                @Nullable
                Double awg,
        @Note("Section of one core")
                @Measured(value = Kind.AREA, above = "0 mm2")
                @Sold(value = "cable", usual = "16 mm2")
                @Nullable
                Double section,
        @Note("One way; the way back is added by the program") @Measured(value = Kind.LENGTH, atLeast = "0 m")
                double length,
        @Note("Of the conductor when it is warm")
                @Measured(value = Kind.TEMPERATURE, preset = "40 degC", atLeast = "-60 degC", atMost = "200 degC")
                double temperature,
        @Note("Of the cores") @Preset("copper") Metal material,
        @Note("Resistance over that of a solid wire; fine strands are longer than the cable")
                @Measured(value = Kind.RATIO, preset = "103 %", atLeast = "100 %", atMost = "130 %")
                double stranding,
        @Note("Current that it may carry all the time, from the cable's maker or the local code")
                @Measured(value = Kind.CURRENT, above = "0 A")
                @Nullable
                Double rating) {

    /** What the cores are made of. Source: IACS copper 1.7241e-8 ohm m at 20 C and 0.00393/K; aluminium (from memory). */
    public enum Metal {
        COPPER(1.7241e-8, 0.00393),
        ALUMINIUM(2.8264e-8, 0.00403);

        private final double resistivity;
        private final double perKelvin;

        Metal(double resistivity, double perKelvin) {
            this.resistivity = resistivity;
            this.perKelvin = perKelvin;
        }
    }

    private static final double ROOM = 293.15;

    /**
     * Metal in one core, m2.
     *
     * <p>Gauge n: d = 0.005 in x 92^((36 - n)/39). Source: ASTM B258.
     */
    public double area() {
        if (section != null) {
            return section;
        }
        double n = awg == null ? 36 : awg;
        double d = 0.005 * 0.0254 * Math.pow(92, (36 - n) / 39);
        return Math.PI * d * d / 4;
    }

    /** Resistance out and back, ohm: 2 L rho (1 + alpha (t - 20 C)) / A. Source: Ohm's law; figures of {@link Metal}. */
    public double resistance() {
        double warm = 1 + material.perKelvin * (temperature - ROOM);
        return 2 * length * material.resistivity * warm * stranding / area();
    }
}
