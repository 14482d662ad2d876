// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.quantity.Kind;

/**
 * A machine made k times as large in all lengths, of stuff of the same density, k times as strong and as stiff, with ratings k^3 times
 * as high, is used just as much. Source: similarity of statics under gravity: weights grow by k^3, stresses by k (any text on dimensional
 * analysis).
 */
class SimilarityTest {
    private static final String MACHINE =
            """
            tipwright: 1
            name: Any size
            site: {grade: 2 deg, cross-slope: 3 deg, wind-pressure: 300 Pa}
            tank:
              interior: {shape: cylinder, axis: x, diameter: 760 mm, length: 1300 mm, heads: [semi-ellipsoidal, flat], centre: [0 mm, 640 mm, 0 mm]}
              wall: {thickness: 5 mm, density: 7850 kg/m3, yield: 235 MPa}
              attached:
                - {name: hook, mass: 24 kg, centre: [-700 mm, 640 mm, 90 mm], outline: [[-900 mm, 600 mm], [-840 mm, 600 mm], [-840 mm, 700 mm]], z: [-40 mm, 40 mm]}
              openings:
                - {name: end, rim: circle, diameter: 740 mm, centre: [650 mm, 640 mm, 0 mm], normal: x, opens-at: 5 deg,
                   door: {hinge: [660 mm, 1040 mm, 0 mm], latch: [660 mm, 250 mm, 0 mm], latches: 2, latch-rating: 6 kN, hinge-rating: 8 kN}}
            slurry: {fill: 80 %, density: 1400 kg/m3, repose: 25 deg, release: 30 deg}
            pivot:
              at: [520 mm, 190 mm]
              bearings:
                - {z: -350 mm, bearing: {kind: ball-insert, bore: 40 mm, c0: 19 kN, housing: [{angle: 0 deg, load: 40 kN}, {angle: 180 deg, load: 16 kN}]}}
                - {z: 380 mm, locating: yes, bearing: {kind: bush, bore: 40 mm, length: 50 mm, pressure: 9 MPa}}
              shaft: {diameter: 40 mm, overhang: 45 mm, yield: 235 MPa}
            drive:
              straight:
                frame-pin: [-100 mm, -350 mm]
                tank-pin: [-120 mm, 230 mm]
                actuators:
                  - {z: -200 mm, actuator: {kind: electric, closed: 570 mm, stroke: 500 mm, push: 6 kN, pull: 5 kN, hold: 9 kN, rod: {diameter: 25 mm, yield: 355 MPa, modulus: 205 GPa}, tube: {outside: 60 mm, inside: 50 mm, length: 400 mm}}}
                  - {z: 250 mm, actuator: {kind: electric, closed: 570 mm, stroke: 500 mm, push: 7 kN, pull: 5 kN, hold: 9 kN, rod: {diameter: 20 mm, yield: 355 MPa, modulus: 205 GPa}}}
                frame-pin-joint: {diameter: 20 mm, lug: 20 mm, cheek: 10 mm, gap: 1 mm, yield: 235 MPa}
                tank-pin-joint: {diameter: 25 mm, shear: single, lug: 20 mm, cheek: 10 mm, gap: 1 mm, yield: 235 MPa}
            wear: {play: 1 mm, rattle: 20 mm}
            dump: {cake: one-slide}
            tilt: {to: 45 deg, step: 5 deg}
            assists:
              - {kind: gas-spring, name: strut, from: {body: frame, at: [-60 mm, -350 mm]}, to: {body: tank, at: [-80 mm, 230 mm]}, extended: 1000 mm, stroke: 500 mm, force: 500 N, compressed-force: 700 N, friction: 40 N, z: 100 mm}
              - {kind: counterweight, name: lump, body: tank, mass: 12 kg, centre: [760 mm, 300 mm, 60 mm]}
            frame:
              mass: 380 kg
              centre: [-250 mm, -200 mm, 30 mm]
              lifting-eye: [-55 mm, 1350 mm, 0 mm]
              members:
                - {name: sill, outline: [[-1300 mm, -120 mm], [620 mm, -120 mm], [620 mm, 0 mm], [-1300 mm, 0 mm]], z: [400 mm, 450 mm]}
                - {name: stop, outline: [[900 mm, -100 mm], [1000 mm, -100 mm], [950 mm, 0 mm]]}
                - {name: saddle, outline: [[-560 mm, 0 mm], [-480 mm, 0 mm], [-480 mm, 250 mm], [-560 mm, 250 mm]], z: [-200 mm, 200 mm], rest: yes}
              cross-member: {at: [-100 mm, -450 mm], height: 100 mm, width: 90 mm, wall: 5 mm, z: [-455 mm, 455 mm], yield: 235 MPa, modulus: 205 GPa}
            ground: {y: -700 mm}
            receiver: {name: pit, near: [520 mm, -700 mm], far: [2700 mm, -700 mm]}
            supports: {outline: [[-1300 mm, -600 mm], [620 mm, -700 mm], [620 mm, 700 mm], [-1300 mm, 600 mm], [0 mm, 800 mm]], slope: 5 deg, rating: 6 kN, vehicle: {mass: 200 kg, centre: [-400 mm, -300 mm, 20 mm]}}
            fastenings:
              - joint: frame-pin
                weld: {at: [-100 mm, -400 mm, -200 mm], leg: 6 mm, electrode: 480 MPa, rectangle: {u: 90 mm, v: 47 mm}}
                lug: {width: 70 mm, thickness: 10 mm, hole: 25 mm, end: 35 mm, plates: 2, yield: 235 MPa}
              - joint: tank-pin
                weld: {at: [-120 mm, 290 mm, -200 mm], normal: z, leg: 5 mm, electrode: 480 MPa, lines: {length: 100 mm, apart: 60 mm, along: v}}
              - joint: bearing-1
                bolts: {at: [520 mm, 140 mm, -350 mm], positions: [[-68 mm, -18 mm], [68 mm, -18 mm], [-68 mm, 18 mm]], diameter: 12 mm, stress-area: 84 mm2, ultimate: 2000 MPa}
            limits: {stroke-margin: 5 mm, clearance: 20 mm, pin-zone: 80 mm, landing: 100 mm}
            what-if: {track: 1500 mm, wheelbase: 2000 mm, wheel-drop: 50 mm, torsion: 900 N m/deg, runs-ahead: 5 mm}
            """;

    /** How each unit grows with the size. */
    private static final Map<String, Integer> POWERS =
            Map.of("mm", 1, "mm2", 2, "kN", 3, "N", 3, "kg", 3, "Pa", 1, "MPa", 1, "GPa", 1, "kg/m3", 0, "N m/deg", 4);

    private static final Map<Kind, Integer> GROWS = Map.of(
            Kind.LENGTH,
            1,
            Kind.FORCE,
            3,
            Kind.PRESSURE,
            1,
            Kind.MOMENT,
            4,
            Kind.ANGLE,
            0,
            Kind.RATIO,
            0,
            Kind.STIFFNESS,
            2);

    private static String grown(double k) {
        Matcher number = Pattern.compile("(-?[0-9.]+) (N m/deg|kg/m3|mm2|mm|kN|N|kg|MPa|GPa|Pa)\\b")
                .matcher(MACHINE);
        return number.replaceAll(m -> String.format(
                Locale.ROOT,
                "%.9f %s",
                Double.parseDouble(m.group(1)) * Math.pow(k, POWERS.get(m.group(2))),
                m.group(2)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 2, 3})
    void aLikeMachineIsUsedAlike(double k) throws CannotComputeException {
        List<Finding> small = Checker.findings(Examples.read(grown(1)));
        List<Finding> large = Checker.findings(Examples.read(grown(k)));
        assertThat(large).hasSameSizeAs(small);
        assertThat(small).hasSizeGreaterThan(50);
        for (int i = 0; i < small.size(); i++) {
            Finding a = small.get(i);
            Finding b = large.get(i);
            assertThat(b.id()).isEqualTo(a.id());
            assertThat(b.verdict()).as(a.id()).isEqualTo(a.verdict());
            // how thick a door is, and how far it stands off, no design gives: it is the same on each
            if (a.verdict() == Verdict.NOT_CHECKED || a.id().endsWith("-door")) {
                continue;
            }
            double grows = Math.pow(k, GROWS.get(a.kind()));
            assertThat(b.demand())
                    .as("%s %s %s", a.id(), a.note().metric(), b.note().metric())
                    .isCloseTo(grows * a.demand(), within(1e-4 * Math.abs(grows * a.demand()) + 1e-7));
            if (Double.isFinite(a.utilisation())) {
                assertThat(b.utilisation())
                        .as(a.id())
                        .isCloseTo(a.utilisation(), within(1e-4 * a.utilisation() + 1e-7));
            }
        }
    }
}
