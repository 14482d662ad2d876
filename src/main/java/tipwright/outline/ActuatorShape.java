// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.HydraulicActuator;
import tipwright.design.actuator.Rod;
import tipwright.design.actuator.Rope;
import tipwright.design.actuator.TelescopicCylinder;
import tipwright.design.actuator.Tube;

/** How long and thick an actuator's body, stages and rod are: as given, or as such parts commonly are. Common practice, no source. */
public final class ActuatorShape {
    private static final double USUAL_BODY = 0.88;
    private static final double USUAL_ROD = 0.012;
    private static final double LEAST_BODY = 0.022;
    private static final double WALL = 0.006;
    private static final double STAGE_WALL = 0.008;

    private ActuatorShape() {}

    /**
     * A piece along the actuator's line.
     *
     * @param from distance from the fixed pin, m
     * @param to the same of its end, m
     */
    public record Piece(double from, double to, double radius) {}

    /** Length of the tube from the pin, m. */
    public static double tubeLength(Actuator actuator) {
        Tube tube = actuator.tube();
        if (actuator instanceof Rope) {
            return 0;
        }
        return tube != null ? Math.min(tube.length(), actuator.closed()) : USUAL_BODY * actuator.closed();
    }

    /** Outside radius of the tube, m. */
    public static double tubeRadius(Actuator actuator) {
        Tube tube = actuator.tube();
        if (tube != null) {
            return tube.outside() / 2;
        }
        if (actuator instanceof TelescopicCylinder t) {
            return t.stages().get(0).diameter() / 2 + STAGE_WALL;
        }
        if (actuator instanceof Rope rope) {
            return rope.diameter() / 2;
        }
        if (actuator instanceof HydraulicActuator h) {
            return h.bore() / 2 + WALL;
        }
        return Math.max(LEAST_BODY, 1.6 * rodRadius(actuator));
    }

    /** Radius of the rod, of a telescopic cylinder that of its narrowest stage, m. */
    public static double rodRadius(Actuator actuator) {
        if (actuator instanceof TelescopicCylinder t) {
            return t.stages().get(t.stages().size() - 1).diameter() / 2;
        }
        if (actuator instanceof Rope rope) {
            return rope.diameter() / 2;
        }
        Rod rod = actuator.rod();
        return rod != null ? rod.diameter() / 2 : USUAL_ROD;
    }

    /** How far it reaches at a distance from pin to pin, m: no farther than fully out. */
    public static double reach(Actuator actuator, double length) {
        return Math.min(length, actuator.closed() + actuator.stroke());
    }

    /** What has come out of the tube, widest first; the last piece is the rod. */
    public static List<Piece> out(Actuator actuator, double length) {
        List<Piece> pieces = new ArrayList<>();
        double reach = reach(actuator, length);
        double start = tubeLength(actuator);
        double out = reach - actuator.closed();
        if (actuator instanceof TelescopicCylinder t) {
            for (TelescopicCylinder.Stage s : t.stages().subList(0, t.stages().size() - 1)) {
                double end = start + Math.max(0, Math.min(s.stroke(), out));
                if (end > start) {
                    pieces.add(new Piece(start, end, s.diameter() / 2));
                }
                start = end;
                out -= s.stroke();
            }
        }
        if (reach > start) {
            pieces.add(new Piece(start, reach, rodRadius(actuator)));
        }
        return pieces;
    }
}
