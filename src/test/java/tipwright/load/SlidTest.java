// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Examples;
import tipwright.design.Design;
import tipwright.geometry.Vec2;

/**
 * A box with its outlet shut, near the tilt at which it goes over by itself: only cake that has run out flat under its water does that
 * already, while the same cake at its dry angle weighs more the other way. Against a cloud of points in the side view: the lowest ones
 * along the cake's surface are cake, the lowest of the rest water.
 */
class SlidTest {
    private static final String YAML = swap(
            Examples.BOX,
            "size: [1 m, 1 m, 1 m]",
            "size: [1755 mm, 648 mm, 1 m]",
            "{name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m], normal: y}",
            "{name: end, rim: rectangle, width: 200 mm, height: 100 mm, centre: [877.5 mm, 1.2 m, 0 m], normal: x, opens-at: 60 deg}",
            "{fill: 100 %, density: 1400 kg/m3, repose: 30 deg}",
            "{fill: 85 %, solids-by-volume: 41 %, solids-density: 2650 kg/m3, packing: 60 %, repose: 40 deg, release: 46 deg}",
            "at: [400 mm, 400 mm]",
            "at: [502 mm, 585 mm]",
            "to: 80 deg",
            "to: 45 deg");
    private static final double SIDE = 4e-3;

    private static double moment(String name, Design design, double tilt) {
        LoadTable table = LoadTable.of(design, new double[] {0, tilt});
        LoadCase load = table.cases().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
        return load.states()
                .get(1)
                .moment(design.pivot().at(), design.site().up().tilted(-tilt));
    }

    /** Moment of cake that stands at a slope under its water, kg m. */
    private static double cloud(double tilt, double slope) {
        List<Vec2> points = new ArrayList<>();
        for (double x = -0.8775 + SIDE / 2; x < 0.8775; x += SIDE) {
            for (double y = 0.676 + SIDE / 2; y < 1.324; y += SIDE) {
                points.add(new Vec2(x - 0.502, y - 0.585).tilted(tilt));
            }
        }
        int all = (int) Math.round(0.85 * points.size());
        int cake = (int) Math.round(0.85 * 0.41 / 0.6 * points.size());
        // the surface falls towards the dump side
        Vec2 normal = new Vec2(Math.sin(slope), Math.cos(slope));
        points.sort(Comparator.comparingDouble(p -> p.dot(normal)));
        List<Vec2> rest = new ArrayList<>(points.subList(cake, points.size()));
        rest.sort(Comparator.comparingDouble(Vec2::y));
        double area = 1.755 * 0.648 / points.size();
        double moment = 0;
        for (Vec2 p : points.subList(0, cake)) {
            moment += p.x() * area * (0.6 * 2650 + 0.4 * 1000);
        }
        for (Vec2 p : rest.subList(0, all - cake)) {
            moment += p.x() * area * 1000;
        }
        return moment;
    }

    @Test
    void theCakeThatRanOutFlatIsToldThoughASteeperOneWeighsMoreTheOtherWay() {
        Design design = Examples.read(YAML);
        double tilt = Math.toRadians(45);
        double empty = moment("empty", design, tilt);
        double flat = empty + cloud(tilt, Math.toRadians(15));
        double steep = empty + cloud(tilt, Math.toRadians(40));
        assertThat(flat).isPositive();
        assertThat(steep).isLessThan(-flat);
        assertThat(moment("slid", design, tilt)).isCloseTo(flat, within(3.0));
        for (String other : List.of("held", "draining", "heaped", "caked", "empty", "heel", "settled")) {
            assertThat(moment(other, design, tilt)).as(other).isNegative();
        }
        // from its release on the steep one is the case settled; before it what is stuck weighs more that way
        assertThat(moment("settled", design, tilt)).isLessThan(steep);
        Design released = Examples.read(swap(YAML, "release: 46 deg", "release: 40 deg"));
        assertThat(moment("settled", released, tilt)).isCloseTo(steep, within(3.0));
        Design left = Examples.read(YAML + "cases: {skip: [settled]}\n");
        assertThat(moment("slid", left, tilt)).isCloseTo(steep, within(3.0));
    }
}
