// SPDX-License-Identifier: Apache-2.0
package tipwright.interview;

/** The design file that the answers give: the readings as they were typed, with a remark where the program worked something out. */
final class DesignText {
    private static final String HEAD =
            """
            # Written from your answers; every reading stands here as you gave it. Change one, and check the file again.
            # All with the TANK STOWED, seen from the side. 'mark' is your mark on the frame:
            #   towards-dump  along the machine, towards the end where it dumps
            #   above         straight up
            #   z             across the machine, along the pivot shaft; 0 is its middle
            """;

    private final Answers a;
    private final StringBuilder text = new StringBuilder(HEAD);

    private DesignText(Answers answers) {
        a = answers;
    }

    static String of(Answers answers) {
        DesignText file = new DesignText(answers);
        file.all();
        return file.text.toString();
    }

    /** A value as YAML takes it. */
    static String quoted(String value) {
        boolean plain = value.matches("[A-Za-z0-9][A-Za-z0-9 ./%+-]*");
        return plain ? value : "'" + value.replace("'", "''") + "'";
    }

    private void line(String written) {
        text.append(written).append('\n');
    }

    private String value(String id) {
        return quoted(a.text(id));
    }

    private String value(String id, int part) {
        return quoted(a.part(id, part));
    }

    private String half(String id) {
        return a.length(a.metres(a.text(id)) / 2);
    }

    private boolean is(String shape) {
        return a.is("shape", shape);
    }

    private void all() {
        line("tipwright: 1");
        line("name: '" + a.text("name").replace("'", "''") + "'");
        line("tape: {accuracy: ii}");
        points();
        tank();
        slurry();
        line("");
        line("pivot:");
        line("  at: pivot");
        line("  # Half of " + a.text("bearings") + " to either side of the middle.");
        String bearing =
                "bearing: {kind: ball-insert, bore: " + value("bearing", 0) + ", c0: " + value("bearing", 1) + "}";
        line("  bearings:");
        line("    - {z: -" + half("bearings") + ", " + bearing + "}");
        line("    - {z: " + half("bearings") + ", " + bearing + "}");
        line("  # overhang: from the middle of a bearing to where the tank grips the shaft; measure yours.");
        line("  shaft: {diameter: " + value("bearing", 0) + ", overhang: "
                + (a.unit().equals("in") ? "1 3/4 in" : "45 mm") + "}");
        drive();
        line("");
        line("tilt: {to: " + value("tilt") + "}");
        if (a.is("lock-valve", "yes")) {
            line("what-if: {lock-valve: true}");
        }
    }

    private void points() {
        line("points:");
        line("  " + Answers.MARK + ": [0 " + a.unit() + ", 0 " + a.unit() + "]");
        for (String place : Answers.PLACES) {
            if (a.has(place)) {
                line("  " + place + ": " + TapePlace.kept(a.text(place), a).lines());
            }
        }
        if (!is("tub")) {
            line("  tank-middle: {between: [tank-low, tank-high]}");
        }
        line(
                "  # Where the rest that turns with the tank is taken to be: halfway from pivot to tank pin. Move it if yours is elsewhere.");
        line("  carried: {between: [pivot, tank-pin]}");
    }

    private void tank() {
        line("");
        line("tank:");
        line("  sizes: outside");
        String around = "around: " + value("around");
        String middle = "centre: {above: {tank-middle: 0 mm}, z: 0 mm}";
        if (is("round")) {
            String heads =
                    a.is("dish", "flat") ? "heads: flat" : "heads: [torispherical, flat], dish-depth: " + value("dish");
            line("  interior: {shape: cylinder, axis: x, " + around + ", length: " + value("length") + ", " + heads
                    + ", " + middle + "}");
        } else if (is("drum")) {
            line("  interior: {shape: cylinder, axis: y, " + around + ", length: " + value("height") + ", heads: flat, "
                    + middle + "}");
        } else {
            line("  interior: {shape: prism, outline: [bottom-front, bottom-dump, top-dump, top-front], width: "
                    + value("width") + "}");
        }
        line("  wall: {thickness: " + value("wall") + "}");
        line("  attached:");
        if (is("round")) {
            line("    - {name: door, mass: " + value("door", 1) + ", centre: " + dumpEnd() + "}");
        }
        line("    - {name: cradle and the rest, mass: " + value("carried")
                + ", centre: {above: {carried: 0 mm}, z: 0 mm}}");
        if (is("round")) {
            line("  openings:");
            line("    # opens-at: the tilt at which you open the door.");
            line("    # The hinge line and the latch are taken to be on the edge of the opening; measure yours.");
            line("    - {name: door, rim: circle, diameter: " + value("door", 0) + ", centre: " + dumpEnd()
                    + ", normal: x, opens-at: 0 deg,");
            line("       door: " + hinged() + "}");
        } else {
            line("  # No wall there; the load leaves over its rim.");
            line("  open: top");
        }
    }

    private static String dumpEnd() {
        return dumpEnd("0 mm", "0 mm");
    }

    private static String dumpEnd(String above, String z) {
        return "{above: {tank-middle: " + above + "}, towards-dump: {tank-high: 0 mm}, z: " + z + "}";
    }

    /** The door: its latch is opposite its hinge, across the opening. */
    private String hinged() {
        String half = a.length(a.metres(a.part("door", 0)) / 2);
        if (a.part("door", 2).equals("side")) {
            return "{hinge: " + dumpEnd("0 mm", half) + ", hinge-axis: y, latch: " + dumpEnd("0 mm", "-" + half) + "}";
        }
        String top = dumpEnd(half, "0 mm");
        String bottom = dumpEnd("-" + half, "0 mm");
        boolean below = a.part("door", 2).equals("below");
        return "{hinge: " + (below ? bottom : top) + ", latch: " + (below ? top : bottom) + "}";
    }

    private void slurry() {
        line("");
        line(
                "# repose: the slope at which the settled grit stays put. release: the tilt at which a stuck cake lets go, or never.");
        String what = a.text("slurry");
        String density = what.contains(",")
                ? "bucket: {volume: " + value("slurry", 0) + ", full: " + value("slurry", 1) + ", empty: "
                        + value("slurry", 2) + "}"
                : what.chars().anyMatch(Character::isDigit) ? "density: " + quoted(what) : "usual: " + what;
        String much = (a.text("volume").contains("%") ? "fill: " : "volume: ") + value("volume");
        line("slurry: {" + much + ", " + density + ", repose: 30 deg, release: 45 deg}");
    }

    private void drive() {
        line("");
        line("drive:");
        line("  straight:");
        line("    frame-pin: frame-pin");
        line("    tank-pin: tank-pin");
        line("    actuators:");
        String lengths = "closed: " + value("lengths", 0) + ", stroke: " + value("lengths", 1);
        if (a.is("drive", "hydraulic")) {
            String cylinder = "actuator: {kind: hydraulic, bore: " + value("bore", 0) + ", rod: {diameter: "
                    + value("bore", 1) + "}, " + lengths + ", relief-pressure: " + value("pressure") + "}}";
            if (a.is("side-by-side", "one")) {
                line("      - {z: 0 mm, " + cylinder);
            } else {
                line("      # Half of " + a.text("side-by-side") + " to either side of the middle.");
                line("      - {z: -" + half("side-by-side") + ", " + cylinder);
                line("      - {z: " + half("side-by-side") + ", " + cylinder);
            }
            return;
        }
        String force = value("rating");
        if (a.is("drive", "winch")) {
            line("      # What the winch holds at rest is taken as what it pulls; look at its plate.");
            line("      - {z: 0 mm, actuator: {kind: rope, " + lengths + ", pull: " + force + ", hold: " + force
                    + "}}");
            line("");
            line("supply: {kind: hand-winch, travel-per-turn: " + value("turn") + "}");
        } else {
            line("      # Its pull and what it holds at rest are taken as its push; look at its plate.");
            line("      - {z: 0 mm, actuator: {kind: electric, " + lengths + ", push: " + force + ", pull: " + force
                    + ", hold: " + force + "}}");
        }
    }
}
