// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

/** What a quantity measures. Each kind is held in its SI unit inside the program. */
public enum Kind {
    LENGTH("length", "m", "480 mm"),
    AREA("area", "m2", "12 cm2"),
    VOLUME("volume", "m3", "400 L"),
    MASS("mass", "kg", "24 kg"),
    DENSITY("density", "kg/m3", "1400 kg/m3"),
    FORCE("force", "N", "9 kN"),
    MOMENT("moment", "N m", "250 N m"),
    PRESSURE("pressure or stress", "Pa", "160 bar"),
    ANGLE("angle", "rad", "70 deg"),
    SPEED("speed", "m/s", "9 mm/s"),
    FLOW("flow", "m3/s", "10 L/min"),
    TIME("time", "s", "90 s"),
    VOLTAGE("voltage", "V", "12 V"),
    CURRENT("current", "A", "32 A"),
    POWER("power", "W", "1.5 kW"),
    ENERGY("energy", "J", "20 Wh"),
    CHARGE("charge", "C", "60 Ah"),
    RESISTANCE("resistance", "ohm", "20 mohm"),
    TEMPERATURE("temperature", "K", "40 degC"),
    STIFFNESS("stiffness", "N/m", "12 N/mm"),
    ANGULAR_STIFFNESS("angular stiffness", "N m/rad", "4 N m/deg"),
    VISCOSITY("viscosity", "m2/s", "46 mm2/s"),
    PRESSURE_VELOCITY("pressure times speed", "Pa m/s", "1.75 MPa m/s"),
    RATIO("share or factor", "1", "25 %");

    private final String word;
    private final String si;
    private final String example;

    Kind(String word, String si, String example) {
        this.word = word;
        this.si = si;
        this.example = example;
    }

    /** The kind in plain words, for messages: 'length'. */
    public String word() {
        return word;
    }

    /** The SI unit it is held in, for documentation: 'm'. */
    public String si() {
        return si;
    }

    /** A well-written example, for messages: '480 mm'. */
    public String example() {
        return example;
    }
}
