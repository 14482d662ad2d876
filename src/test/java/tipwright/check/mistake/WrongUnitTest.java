// SPDX-License-Identifier: Apache-2.0
package tipwright.check.mistake;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Examples;
import tipwright.quantity.Text;

/** Sizes and forces in the wrong unit, told word for word, and where they begin and end to be told. */
class WrongUnitTest {
    private static final String FACTORS =
            "times; feet for inches make 12, inches for millimetres 25.4. Is a unit wrong?";

    /** Rated 6 mm/s and 32 A at 12 V: 384 W. */
    private static final String TIMED = "push: %s, pull: 12 kN, %sspeed: {no-load: 9 mm/s, rated: 6 mm/s},"
            + " current: {no-load: 5 A, rated: 32 A}";

    private static List<String> told(String yaml) {
        return WrongUnit.find(Examples.read(yaml)).stream().map(Text::metric).toList();
    }

    private static List<String> box(String... pairs) {
        return told(swap(Examples.BOX, pairs));
    }

    private static List<String> powered(String push, String voltage) {
        return box("push: 12 kN, pull: 12 kN", TIMED.formatted(push, voltage));
    }

    /** Stowed its pins are sqrt(150^2 + 900^2) = 912.4 mm apart. */
    @Test
    void anActuatorOfAnotherSizeIsTold() {
        assertThat(told(Examples.BOX)).isEmpty();
        assertThat(box("closed: 800 mm, stroke: 900 mm", "closed: 40 mm, stroke: 30 mm"))
                .containsExactly(
                        "Stowed, the actuator's pins are 912 mm apart, but it is 40 mm to 70 mm pin to pin: 13 "
                                + FACTORS);
        assertThat(box("closed: 800 mm, stroke: 900 mm", "closed: 20000 mm, stroke: 20000 mm"))
                .containsExactly(
                        "Stowed, the actuator's pins are 912 mm apart, but it is 20000 mm to 40000 mm pin to pin: 22 "
                                + FACTORS);
        // too short or too long, but by no unit
        assertThat(box("closed: 800 mm, stroke: 900 mm", "closed: 60 mm, stroke: 60 mm"))
                .isEmpty();
        assertThat(box("closed: 800 mm, stroke: 900 mm", "closed: 7 m, stroke: 7 m"))
                .isEmpty();
        assertThat(box("closed: 800 mm, stroke: 900 mm", "closed: 40 m, stroke: 40 m"))
                .isEmpty();
    }

    /** Over eight times (a foot's twelve, half as much again off), and under 38.1 (an inch's 25.4), either way. */
    @ParameterizedTest
    @CsvSource({
        "125 mm, 125 mm, 0",
        "124 mm, 124 mm, 8",
        "40 mm, 40 mm, 25",
        "26.3 mm, 26 mm, 38",
        "26.2 mm, 26 mm, 0",
        "8 m, 8000 mm, 0",
        "8.1 m, 8100 mm, 8",
        "38 m, 38000 mm, 38",
        "38.2 m, 38200 mm, 0"
    })
    void bearingsNeitherFarWiderNorNarrowerThanTheTank(String wide, String shown, int times) {
        List<String> told =
                box("size: [1 m, 1 m, 1 m]", "size: [1 m, 1 m, " + wide + "]", "width: 1 m", "width: 20 mm");
        assertThat(told).hasSize(times == 0 ? 0 : 1);
        for (String one : told) {
            assertThat(one)
                    .isEqualTo("The bearings are 1000 mm apart along the pivot, and the tank is " + shown + " wide: "
                            + times + " " + FACTORS);
        }
    }

    /** Thicker than a twelfth of the shorter of length and height: 62.5 mm of 750 mm. */
    @Test
    void aWallAsThickAsTheTankIsTold() {
        for (String size : List.of("[750 mm, 1500 mm, 1 m]", "[1500 mm, 750 mm, 1 m]")) {
            String[] at = {"size: [1 m, 1 m, 1 m]", "size: " + size, "thickness: 4 mm", "thickness: 62.5 mm"};
            assertThat(box(at)).isEmpty();
            at[3] = "thickness: 63 mm";
            assertThat(box(at))
                    .containsExactly(
                            "The wall is 63 mm thick, and the tank 750 mm long or high: is the wall's unit right?");
        }
    }

    /** Thicker than half of the closed length: 400 mm. */
    @Test
    void aPinAsThickAsTheActuatorIsTold() {
        String pins =
                "tank-pin: [-450 mm, 400 mm]\n    frame-pin-joint: {diameter: %s, lug: 20 mm, cheek: 10 mm}\n    tank-pin-joint: {diameter: %s, lug: 20 mm, cheek: 10 mm}";
        String from = "tank-pin: [-450 mm, 400 mm]";
        assertThat(box(from, pins.formatted("400 mm", "400 mm"))).isEmpty();
        assertThat(box(from, pins.formatted("401 mm", "400 mm")))
                .containsExactly(
                        "The frame pin is 401 mm thick, and the actuator 800 mm long: is the pin's unit right?");
        assertThat(box(from, pins.formatted("25 mm", "1 m")))
                .containsExactly(
                        "The tank pin is 1000 mm thick, and the actuator 800 mm long: is the pin's unit right?");
    }

    /** F v against U I = 384 W: more than that up to 4.448 times as pounds give it, up to 9.807 times as kilograms do. */
    @Test
    void anActuatorThatGivesMoreThanItDrawsIsTold() {
        assertThat(powered("64 kN", "voltage: 12 V, ")).isEmpty();
        assertThat(powered("100 kN", "voltage: 12 V, "))
                .containsExactly(
                        "The actuator's rated push of 100 kN at its rated speed takes 1.6 times the power that it"
                                + " draws: is the unit of the push right? It would be 4.45 times less, had it been in pounds.");
        assertThat(powered("284 kN", "voltage: 12 V, "))
                .singleElement()
                .asString()
                .contains("4.4 times", "in pounds");
        assertThat(powered("285 kN", "voltage: 12 V, "))
                .containsExactly(
                        "The actuator's rated push of 285 kN at its rated speed takes 4.5 times the power that it"
                                + " draws: is the unit of the push right? It would be 9.81 times less, had it been in kilograms.");
        assertThat(powered("627 kN", "voltage: 12 V, "))
                .singleElement()
                .asString()
                .contains("in kilograms");
        assertThat(powered("628 kN", "voltage: 12 V, ")).isEmpty();
    }

    /** Its own voltage, else the battery's; without one, or without speed or current, nothing can be told. */
    @Test
    void thePowerNeedsVoltageSpeedAndCurrent() {
        assertThat(powered("100 kN", "")).isEmpty();
        String battery = swap(Examples.BOX, "push: 12 kN, pull: 12 kN", TIMED.formatted("100 kN", ""))
                + "supply: {kind: battery, voltage: VOLTS}\n";
        assertThat(told(swap(battery, "VOLTS", "12 V")))
                .singleElement()
                .asString()
                .contains("1.6 times");
        assertThat(told(swap(battery, "VOLTS", "24 V"))).isEmpty();
        assertThat(told(swap(battery, "VOLTS", "24 V", "pull: 12 kN, ", "pull: 12 kN, voltage: 12 V, ")))
                .singleElement()
                .asString()
                .contains("1.6 times");
        assertThat(box(
                        "push: 12 kN, pull: 12 kN",
                        "push: 100 kN, pull: 12 kN, voltage: 12 V, current: {no-load: 5 A," + " rated: 32 A}"))
                .isEmpty();
        assertThat(box(
                        "push: 12 kN, pull: 12 kN",
                        "push: 100 kN, pull: 12 kN, voltage: 12 V, speed: {no-load: 9 mm/s," + " rated: 6 mm/s}"))
                .isEmpty();
    }

    /** Of two alike one is told. */
    @Test
    void twoAlikeAreToldOnce() {
        String actuator = "{z: 0 mm, actuator: {kind: electric, closed: 800 mm, stroke: 900 mm, "
                + TIMED.formatted("100 kN", "voltage: 12 V, ") + "}}";
        String both = Examples.BOX.replaceFirst(
                "- \\{z: 0 mm, actuator.*\\}\\}",
                "- " + actuator.replace("z: 0 mm", "z: -100 mm") + "\n      - "
                        + actuator.replace("z: 0 mm", "z: 100 mm"));
        assertThat(both).contains("z: -100 mm", "z: 100 mm");
        assertThat(told(both)).hasSize(1);
    }
}
