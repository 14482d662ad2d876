// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Rope;
import tipwright.design.around.Frame;
import tipwright.design.around.SidePart;
import tipwright.design.supply.Battery;
import tipwright.design.supply.Cable;
import tipwright.design.supply.HandPump;
import tipwright.design.supply.Pump;
import tipwright.design.supply.ReturnLine;
import tipwright.design.supply.Supply;
import tipwright.geometry.Extent;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * Hoses of a hydraulic actuator, cable of an electric one: as thick as the design tells, else as such parts commonly are. Their way is
 * made up: from the actuator's body to the frame's longest member and along it to the end away from the dump; without a frame to the
 * ground. Nothing of them is checked. Common practice, no source.
 */
public final class Hoses {
    /** Wall of a hose, m. */
    private static final double WALL = 0.005;

    private static final double USUAL_BORE = 0.01;

    /** What insulation and sheath add to the metal of two cores side by side. */
    private static final double SHEATH = 1.5;

    private static final double USUAL_CABLE = 0.006;

    /** How deep it hangs, over the distance between its ends. */
    private static final double SAG = 0.18;

    private static final int PIECES = 12;
    private static final double AWAY = 0.5;

    /** Ports along the tube, over its length: the one at the pin, the one at the rod. */
    private static final double[] PORTS = {0.1, 0.93};

    /**
     * A hose or a cable.
     *
     * @param points along its middle, m
     * @param radius m
     */
    public record Hose(List<Vec3> points, double radius) {
        /** Copies the list. */
        public Hose {
            points = List.copyOf(points);
        }
    }

    private final Design design;
    private final Room room;
    private final double side;
    private final boolean oil;
    private final double radius;

    private Hoses(Analysis analysis, Room room, boolean oil, double radius) {
        design = analysis.design();
        this.room = room;
        this.oil = oil;
        this.radius = radius;
        MachinePose stowed = MachinePose.of(analysis.poses().get(0));
        Vec2 along = stowed.tankPin().minus(stowed.framePin());
        // on the side of the tube that looks away from the dump end
        side = along.y() > 0 ? 1 : -1;
    }

    /** Those of a machine; null: nothing feeds its actuators that has hoses or a cable. */
    public static @Nullable Hoses of(Analysis analysis, Room room) {
        Supply supply = analysis.design().supply();
        if (supply instanceof Battery battery) {
            return new Hoses(analysis, room, false, cable(battery.cable()));
        }
        if (supply instanceof Pump pump) {
            return new Hoses(analysis, room, true, hose(pump.returnLine()));
        }
        return supply instanceof HandPump hand ? new Hoses(analysis, room, true, hose(hand.returnLine())) : null;
    }

    private static double hose(@Nullable ReturnLine line) {
        return (line == null ? USUAL_BORE : line.bore()) / 2 + WALL;
    }

    private static double cable(@Nullable Cable cable) {
        return cable == null ? USUAL_CABLE : SHEATH * Math.sqrt(2 * cable.area() / Math.PI);
    }

    /** What they are called: 'way of the hoses'. */
    public String words() {
        return oil ? "way of the hoses" : "way of the cable";
    }

    /** Where they are at a tilt. */
    public List<Hose> at(MachinePose now) {
        List<Hose> all = new ArrayList<>();
        for (PlacedActuator placed : design.drive().actuators()) {
            Actuator a = placed.actuator();
            boolean fed =
                    oil ? !(a instanceof ElectricActuator) && !(a instanceof Rope) : a instanceof ElectricActuator;
            int ports = oil && a.ratedPull() > 0 ? 2 : 1;
            for (int port = 0; fed && port < ports; port++) {
                all.add(new Hose(way(now, placed, port), radius));
            }
        }
        return all;
    }

    private List<Vec3> way(MachinePose now, PlacedActuator placed, int port) {
        Vec2 along = now.tankPin().minus(now.framePin()).unit();
        Vec2 off = new Vec2(-along.y(), along.x()).times(side);
        double from = ActuatorShape.tubeRadius(placed.actuator());
        double length = ActuatorShape.tubeLength(placed.actuator());
        double z = placed.z() + port * 3 * radius;
        List<Vec3> all = new ArrayList<>();
        for (int p = port; p >= 0; p--) {
            Vec2 at = now.framePin().plus(along.times(PORTS[p] * length));
            if (p == port) {
                all.add(at(at.plus(off.times(0.6 * from)), z));
            }
            all.add(at(at.plus(off.times(from + 1.5 * radius)), z));
        }
        SidePart rail = rail();
        Vec2 end =
                rail == null ? new Vec2(now.framePin().x() - AWAY, room.ground() + radius) : clip(rail, now.framePin());
        double beside = rail == null ? z : beside(rail, placed.z()) + port * 2.5 * radius;
        hang(all, at(end, beside));
        if (rail != null) {
            all.add(at(new Vec2(Extent.of(rail.outline()).low().x(), end.y()), beside));
        }
        return all;
    }

    /** From the last point to another, hanging, but not through the ground. */
    private void hang(List<Vec3> all, Vec3 to) {
        Vec3 from = all.get(all.size() - 1);
        Vec3 way = to.minus(from);
        double deep = SAG * way.norm();
        for (int i = 1; i <= PIECES; i++) {
            double t = (double) i / PIECES;
            Vec3 p = from.plus(way.times(t));
            double y = p.y() - 4 * deep * t * (1 - t);
            all.add(new Vec3(p.x(), Math.max(room.ground() + radius, y), p.z()));
        }
    }

    /** The longest member; null: none is given. */
    private @Nullable SidePart rail() {
        Frame frame = design.frame();
        return frame == null || frame.members().isEmpty()
                ? null
                : Collections.max(frame.members(), Comparator.comparingDouble(Hoses::span));
    }

    private static double span(SidePart part) {
        return Extent.of(part.outline()).width();
    }

    /** Where it is clipped to the member: at half of its height, a piece away from the pin. */
    private static Vec2 clip(SidePart rail, Vec2 pin) {
        Extent extent = Extent.of(rail.outline());
        double x = Math.max(extent.low().x(), Math.min(extent.high().x(), pin.x() - AWAY));
        return new Vec2(x, extent.middle().y());
    }

    /** Along the member's face that looks to the actuator. */
    private double beside(SidePart rail, double z) {
        List<Double> ends = rail.z();
        if (ends.isEmpty()) {
            return z;
        }
        double low = Math.min(ends.get(0), ends.get(1));
        double high = Math.max(ends.get(0), ends.get(1));
        return z < (low + high) / 2 ? low - radius : high + radius;
    }

    private static Vec3 at(Vec2 p, double z) {
        return new Vec3(p.x(), p.y(), z);
    }
}
