// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.List;
import tipwright.design.Design;
import tipwright.geometry.Range;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec3;

/**
 * Wind that blows one way on the tank: its pressure times the area that the tank shows, in the middle of that area, at every tilt anew.
 * Source: pressure on an area (elementary); no coefficient of drag.
 */
public final class Wind {
    private static final double SAG_SHARE = 1.0 / 100;
    private static final double ASIDE = 1e-9;

    private final WindArea area;
    private final double pressure;
    private final Vec3 towards;
    private final String name;

    private Wind(WindArea area, double pressure, Vec3 towards, String name) {
        this.area = area;
        this.pressure = pressure;
        this.towards = towards;
        this.name = name;
    }

    /** The wind of a design's site from each side along x and along z; none where no pressure is given. */
    public static List<Wind> of(Design design) {
        double pressure = design.site().windPressure();
        if (!(pressure > 0)) {
            return List.of();
        }
        Solid solid = design.tank().interior().solid();
        Range tall = solid.extent(new Vec3(0, 1, 0));
        WindArea area = new WindArea(solid.mesh(SAG_SHARE * tall.span()));
        return List.of(
                new Wind(area, pressure, new Vec3(1, 0, 0), "wind to +x"),
                new Wind(area, pressure, new Vec3(-1, 0, 0), "wind to -x"),
                new Wind(area, pressure, new Vec3(0, 0, 1), "wind to +z"),
                new Wind(area, pressure, new Vec3(0, 0, -1), "wind to -z"));
    }

    /** Which way it blows, in few words. */
    public String words() {
        return name;
    }

    /** Whether it blows along the side view, where it does work as the tank moves. */
    public boolean alongSideView() {
        return towards.z() == 0;
    }

    /** Whether some of it blows that way, rad from +x to +z. */
    public boolean blowsTowards(double direction) {
        return towards.dot(new Vec3(Math.cos(direction), 0, Math.sin(direction))) > ASIDE;
    }

    /**
     * As a load on the tank.
     *
     * @param tank number of its body
     * @param turn of it, rad, positive clockwise
     */
    Assists.Load on(int tank, double turn) {
        WindArea.Shown shown = area.middle(towards.times(-1).tilted(-turn));
        return new Assists.Load(tank, shown.middle(), towards.times(pressure * shown.area()), 0);
    }
}
