// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said about drives that are no mechanism and springs that sit on nothing, word for word. */
class MechanismRulesTest {
    private static final String HEAD =
            """
            tipwright: 1
            name: Box
            tank:
              interior: {shape: box, size: [1 m, 1 m, 1 m], centre: [0 m, 1 m, 0 m]}
              wall: {thickness: 4 mm}
            slurry: {fill: 50 %, density: 1400 kg/m3}
            pivot:
              at: [400 mm, 400 mm]
              bearings:
                - {z: -500 mm, bearing: yard-40}
                - {z: 500 mm, bearing: yard-40}
            tilt: {to: 40 deg}
            """;

    private static final String FREE =
            """
            drive:
              free:
                bodies: [crank, link]
                pins:
                  - {name: pivot, between: [frame, tank]}
                  - {name: foot, between: [frame, crank], at: [-300 mm, -200 mm]}
                  - {name: knee, between: [crank, link], at: [0 mm, -250 mm]}
                  - {name: top, between: [link, tank], at: [-100 mm, 300 mm]}
                from: {body: frame, at: [-1200 mm, -500 mm]}
                to: {body: crank, at: [-300 mm, -500 mm]}
                actuators:
                  - {z: 0 mm, actuator: mid-12}
            """;

    private static List<String> problems(String yaml) {
        Reading reading = DesignFile.read("box.yaml", yaml, NamedFiles.folder(Path.of("geometry")));
        return reading instanceof Reading.Bad bad
                ? bad.problems().stream().map(Problem::text).toList()
                : List.of();
    }

    private static List<String> changed(String text, String by) {
        String whole = HEAD + FREE;
        assertThat(whole).containsOnlyOnce(text);
        return problems(whole.replace(text, by));
    }

    @Test
    void aSoundFreeMechanismIsRead() {
        assertThat(problems(HEAD + FREE)).isEmpty();
    }

    @Test
    void tooManyAndTooFewJoints() {
        assertThat(changed("      - {name: knee, between: [crank, link], at: [0 mm, -250 mm]}\n", ""))
                .containsExactly(
                        "box.yaml:15:5: drive.free: 3 moving bodies have 9 freedoms and 3 joints take 6 of them;"
                                + " add a joint or leave a body out: each joint takes 2, and one freedom must be left for the tilt");
        assertThat(changed("    from:", "      - {name: extra, between: [frame, link], at: [0 mm, 0 mm]}\n    from:"))
                .containsExactly(
                        "box.yaml:15:5: drive.free: 3 moving bodies have 9 freedoms and 5 joints take 10 of them;"
                                + " leave a joint out or add a body: each body brings 3, and one freedom must be left for"
                                + " the tilt");
    }

    @Test
    void namesThatAreNotThere() {
        assertThat(changed("between: [link, tank]", "between: [lnk, tank]"))
                .containsExactly("box.yaml:20:31: drive.free.pins[4].between[1]: no body 'lnk'; did you mean 'link'?");
        assertThat(changed("to: {body: crank", "to: {body: ram"))
                .containsExactly("box.yaml:22:16: drive.free.to.body: no body 'ram'; did you mean 'frame'?");
        assertThat(changed("name: pivot", "name: hub"))
                .contains(
                        "box.yaml:17:7: drive.free.pins: no pin is named 'pivot'; give this name to the one in the two"
                                + " bearings");
        assertThat(changed("name: top", "name: knee"))
                .containsExactly("box.yaml:20:16: drive.free.pins[4].name: another joint is called 'knee', at"
                        + " drive.free.pins[3]; rename one");
        assertThat(changed("bodies: [crank, link]", "bodies: [crank, link, frame]"))
                .contains("box.yaml:15:27: drive.free.bodies[3]: another body is called 'frame' ('frame' and 'tank' are"
                        + " there already); rename it");
    }

    @Test
    void linksWithoutLengthAndActuatorsThatMoveNothing() {
        assertThat(changed("at: [-100 mm, 300 mm]", "at: [0 mm, -250 mm]"))
                .containsExactly("box.yaml:15:5: drive.free: both pins of 'link' are in one place; move them apart");
        assertThat(changed("to: {body: crank", "to: {body: frame"))
                .containsExactly(
                        "box.yaml:22:16: drive.free.to.body: both ends of the actuator are on 'frame'; it moves"
                                + " nothing");
    }

    @Test
    void pinsOfANamedMechanism() {
        String knuckle =
                """
                drive:
                  knuckle:
                    frame-pin: [-1200 mm, -450 mm]
                    knee: [-390 mm, 30 mm]
                    foot-pin: [300 mm, -200 mm]
                    tank-pin: [-190 mm, 240 mm]
                    actuators: [{z: 0 mm, actuator: mid-12}]
                    pins: [{pin: nee, joint: {diameter: 30 mm, lug: 25 mm, cheek: 12 mm}}]
                """;
        assertThat(problems(HEAD + knuckle))
                .containsExactly("box.yaml:20:18: drive.knuckle.pins[1].pin: no pin 'nee'; did you mean 'knee'?");
    }

    @Test
    void springsAndWeights() {
        String assists =
                """
                assists:
                  - {kind: gas-spring, name: a, from: {body: frame, at: [0 mm, 0 mm]}, to: {body: frame, at: [0 mm, 9 mm]},
                     extended: 500 mm, stroke: 600 mm, force: 500 N, compressed-force: 400 N}
                  - {kind: torsion-spring, name: b, pin: hip, moment: 3 N m, rate: 0 N m/deg}
                  - {kind: counterweight, name: c, body: frame, mass: 3 kg, centre: [0 mm, 0 mm, 0 mm]}
                """;
        assertThat(problems(HEAD + FREE + assists))
                .containsExactly(
                        "box.yaml:26:83: assists[1].to.body: both ends are on 'frame'; it does nothing",
                        "box.yaml:27:32: assists[1].stroke: must be less than the extended length (500 mm)",
                        "box.yaml:27:72: assists[1].compressed-force: less than the force when fully out (500 N); a gas"
                                + " spring pushes harder when pressed in",
                        "box.yaml:28:42: assists[2].pin: no pin 'hip'; allowed: pivot, foot, knee or top",
                        "box.yaml:29:42: assists[3].body: a weight on the frame moves nothing; name the tank or a link");
    }

    @Test
    void sectionsOfLinks() {
        String sections =
                """
                link-sections:
                  - {body: lnk, section: {shape: round, diameter: 30 mm, bore: 30 mm}}
                  - {body: crank, section: {shape: flat-bar, width: 30 mm, thickness: 8 mm}, hole: 30 mm}
                  - {body: link, section: {shape: rectangular-tube, height: 40 mm, width: 30 mm, wall: 15 mm}}
                  - {body: link, section: {shape: rectangular-tube, height: 40 mm, width: 30 mm, wall: 5 mm}, hole: 30 mm}
                """;
        assertThat(problems(HEAD + FREE + sections))
                .containsExactly(
                        "box.yaml:26:12: link-sections[1].body: no link 'lnk'; did you mean 'link'?",
                        "box.yaml:26:64: link-sections[1].section.bore: must be less than the diameter (30 mm)",
                        "box.yaml:27:12: link-sections[2].body: 'crank' is no link between two pins; allowed: link",
                        "box.yaml:27:84: link-sections[2].hole: a hole of 30 mm leaves too little of this section; make it"
                                + " less than 30 mm",
                        "box.yaml:28:88: link-sections[3].section.wall: a wall of 15 mm leaves nothing hollow in 30 mm",
                        "box.yaml:29:12: link-sections[4].body: 'link' is given twice; keep one",
                        "box.yaml:29:101: link-sections[4].hole: a hole of 30 mm leaves too little of this section; make it"
                                + " less than 30 mm");
    }

    @Test
    void stagesFromTheWidest() {
        String straight =
                """
                drive:
                  straight:
                    frame-pin: [-600 mm, -500 mm]
                    tank-pin: [-450 mm, 400 mm]
                    actuators:
                      - z: 0 mm
                        actuator: {kind: telescopic, closed: 500 mm, relief-pressure: 100 bar,
                          stages: [{diameter: 50 mm, stroke: 300 mm}, {diameter: 60 mm, stroke: 300 mm}]}
                """;
        assertThat(problems(HEAD + straight))
                .containsExactly(
                        "box.yaml:20:66: drive.straight.actuators[1].actuator.stages[2].diameter: must be less than"
                                + " that of the stage before (50 mm); list the widest stage first");
    }

    @Test
    void stagesGoIntoEachOther() {
        String straight =
                """
                drive:
                  straight:
                    frame-pin: [-600 mm, -500 mm]
                    tank-pin: [-450 mm, 400 mm]
                    actuators:
                      - z: 0 mm
                        actuator: {kind: telescopic, closed: 500 mm, relief-pressure: 100 bar,
                          stages: [{diameter: 60 mm, stroke: 300 mm, bore: 48 mm}, {diameter: 50 mm, stroke: 300 mm, bore: 50 mm}],
                          tube: {outside: 70 mm, inside: 58 mm, length: 400 mm}}
                """;
        assertThat(problems(HEAD + straight))
                .containsExactly(
                        "box.yaml:20:31: drive.straight.actuators[1].actuator.stages[1].diameter: does not go into what is"
                                + " around it (58 mm inside)",
                        "box.yaml:20:79: drive.straight.actuators[1].actuator.stages[2].diameter: does not go into what is"
                                + " around it (48 mm inside)",
                        "box.yaml:20:108: drive.straight.actuators[1].actuator.stages[2].bore: must be less than the stage's"
                                + " diameter (50 mm)");
    }
}
