// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Examples;
import tipwright.check.fault.WhatIfCheck;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;

/**
 * Wind that blows across, with what goes wrong: it does nothing to the actuators, but turns the tank over its bearings and pushes it
 * along its pivot. All figures by statics of the tank as stowed, 1 m by 2 m (tall) by 1 m with 1100 kg in the middle, and wind on a side of it.
 */
class WindAcrossTroublesTest {
    private static final double G = 9.80665;
    private static final double WIND = 800 * 1 * 2;
    private static final String TWO =
            """
            tipwright: 1
            name: Tall
            tank:
              interior: {shape: box, size: [1 m, 2 m, 1 m], centre: [-500 mm, 1500 mm, 0 mm]}
              mass: {empty: 100 kg, centre: [-500 mm, 1500 mm, 0 mm]}
              openings:
                - {name: gate, rim: rectangle, width: 400 mm, height: 400 mm, centre: [0 mm, 800 mm, 0 mm], normal: x, opens-at: 8 deg}
            slurry: {fill: 50 %, density: 1000 kg/m3}
            pivot:
              at: [0 mm, 500 mm]
              bearings:
                - {z: -300 mm, bearing: {kind: ball-insert, bore: 40 mm, c0: 190 kN, axial: 2.7 kN}, locating: true}
                - {z: 300 mm, bearing: {kind: ball-insert, bore: 40 mm, c0: 190 kN, axial: 2.7 kN}}
            drive:
              straight:
                frame-pin: [-1 m, -500 mm]
                tank-pin: [-1 m, 500 mm]
                actuators:
                  - {z: -200 mm, actuator: {kind: hydraulic, bore: 80 mm, rod: {diameter: 40 mm}, closed: 900 mm, stroke: 900 mm, relief-pressure: 100 bar}}
                  - {z: 200 mm, actuator: {kind: hydraulic, bore: 80 mm, rod: {diameter: 40 mm}, closed: 900 mm, stroke: 900 mm, relief-pressure: 100 bar}}
            tilt: {to: 0.1 deg}
            friction: {pins: 0, pivot: 0}
            site: {wind-pressure: 800 Pa}
            what-if: {track: 1 m, wheel-drop: 100 mm}
            """;

    private static Finding of(List<Finding> all, String id) {
        return all.stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
    }

    /**
     * Half of the tank's weight is on the actuators, half on the bearings. With all on the one at z 200 mm the moment about x of that
     * half, which is at the middle, and of the wind, 1 m over the pivot, is borne by bearings 600 mm apart.
     */
    @Test
    void oneThatCarriesAllBearsOnItsBearingsInTheWindAcrossToo() throws Exception {
        List<Finding> all = Checker.asFilled(Examples.read(TWO)).findings();
        Finding found = of(all, "what-if/bearing-1-when-one-carries-all");
        double half = 1100 * G / 2;
        double upright = half / 2 + half * 0.2 / 0.6 + WIND * 1 / 0.6;
        double level = WIND * 0.5 / 0.6;
        double radial = Math.hypot(upright, level);
        double equivalent = Math.max(radial, 0.6 * radial + 0.5 * WIND);
        assertThat(found.demand()).isCloseTo(equivalent, within(2e-3 * equivalent));
        assertThat(found.loadCase()).contains("wind to ");
    }

    /** A wheel of an axle of 1 m that sinks by 100 mm lets the tank slide the way in which the wind pushes it. */
    @Test
    void wheelThatSinksAddsToTheWindAcross() throws Exception {
        Finding found = of(Checker.asFilled(Examples.read(TWO)).findings(), "what-if/wheel-sinks");
        double along = 1100 * G * Math.sin(Math.atan(0.1)) + WIND;
        assertThat(Objects.requireNonNull(found.then()).worst().id()).isEqualTo("grip/bearing-1");
        assertThat(found.demand()).isCloseTo(along, within(2e-3 * along));
        assertThat(found.loadCase()).contains("wind to ");
    }

    /** With less in it than stated, what goes wrong is looked at in wind from each side too, on ground as stated. */
    @Test
    void lessFullTankIsBlownOnToo() throws Exception {
        List<Check> rules =
                Checks.all().stream().filter(c -> !(c instanceof WhatIfCheck)).toList();
        String less = swap(TWO, "fill: 50 %", "fill: 30 %", "axial: 2.7 kN", "axial: 2 kN");
        Finding found = of(
                Conditions.ifSomethingGoesWrong(Analyser.analyse(Examples.read(less)), new WhatIfCheck(rules)),
                "what-if/wheel-sinks");
        double along = 700 * G * Math.sin(Math.atan(0.1)) + WIND;
        assertThat(found.demand()).isCloseTo(along, within(2e-3 * along));
    }
}
