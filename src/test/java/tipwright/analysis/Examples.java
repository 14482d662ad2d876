// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import static tipwright.Swap.swap;

import java.nio.file.Path;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;

/** Small designs written as a builder would write them, for tests. */
public final class Examples {
    /** A box 1 m each way, open on top, filled to the brim; pivot in the middle below. Lines can be replaced by tests. */
    public static final String BOX =
            """
            tipwright: 1
            name: Box
            tank:
              interior: {shape: box, size: [1 m, 1 m, 1 m], centre: [0 m, 1 m, 0 m]}
              wall: {thickness: 4 mm, density: 7850 kg/m3, yield: 700 MPa}
              openings:
                - {name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m], normal: y}
            slurry: {fill: 100 %, density: 1400 kg/m3, repose: 30 deg}
            pivot:
              at: [400 mm, 400 mm]
              bearings:
                - {z: -500 mm, bearing: {kind: ball-insert, bore: 40 mm, c0: 19 kN}}
                - {z: 500 mm, bearing: {kind: ball-insert, bore: 40 mm, c0: 19 kN}}
            drive:
              straight:
                frame-pin: [-600 mm, -500 mm]
                tank-pin: [-450 mm, 400 mm]
                actuators:
                  - {z: 0 mm, actuator: {kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}}
            tilt: {to: 80 deg}
            """;

    /** The same with a door in its dump end, hinged on top, that weighs 150 kg; by a NAME other than 'end' the weight is fixed. */
    public static final String DOOR_BOX = swap(
            BOX,
            "{name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m], normal: y}",
            "{name: end, rim: rectangle, width: 1 m, height: 1 m, centre: [500 mm, 1 m, 0 mm], normal: x, opens-at: 20 deg,"
                    + " door: {hinge: [500 mm, 1500 mm, 0 mm], latch: [510 mm, 500 mm, 0 mm]}}",
            "openings:",
            "attached: [{name: NAME, mass: 150 kg, centre: [500 mm, 1 m, 0 mm]}]\n  openings:",
            "repose: 30 deg",
            "repose: 30 deg, release: 60 deg");

    /** A sump 250 mm deep at the far end, its edge 300 mm before the middle. */
    public static final String SUMP = swap(
            BOX,
            "{shape: box, size: [1 m, 1 m, 1 m], centre: [0 m, 1 m, 0 m]}",
            "{shape: prism, outline: [[-500 mm, 300 mm], [-300 mm, 300 mm], [-300 mm, 550 mm], [500 mm, 550 mm], [500 mm, 1100 mm],"
                    + " [-500 mm, 1100 mm]], width: 800 mm}",
            "{name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m], normal: y}",
            "{name: end, rim: rectangle, width: 800 mm, height: 550 mm, centre: [500 mm, 825 mm, 0 mm], normal: x, opens-at: 5 deg}",
            "{fill: 100 %, density: 1400 kg/m3, repose: 30 deg}",
            "{fill: 60 %, solids-by-volume: 21.2 %, repose: 25 deg}",
            "tilt: {to: 80 deg}",
            "tilt: {to: 55 deg}");

    private Examples() {}

    /** The design of a text; fails the test with the problems when it is none. */
    public static Design read(String yaml) {
        Reading reading = DesignFile.read("test.yaml", yaml, NamedFiles.folder(Path.of("geometry")));
        if (reading instanceof Reading.Good good) {
            return good.design();
        }
        throw new AssertionError(reading.toString());
    }
}
