// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.Examples;
import tipwright.design.Design;
import tipwright.geometry.Vec3;

/**
 * Settled solids under water in a lying cylinder with 2:1 heads on a cross slope, against a cloud of some 190,000 points on a grid: the
 * lowest points are the cake, the lowest of the rest the water. Accuracy wanted of a centroid: 0.1 % of the diameter.
 */
class LayersCloudTest {
    private static final double R = 0.4;
    private static final double HALF = 0.6;
    private static final double SIDE = 0.0175;
    private static final double FILL = 0.8;
    private static final double SOLIDS = 0.25;
    private static final double CROSS = Math.toRadians(6);
    private static final Vec3 UP = new Vec3(0, 1, -Math.tan(CROSS)).unit();
    private static final double[] TILTS = {0, 0.15, 0.4, 0.7, 1.0};
    private static final List<Vec3> CLOUD = cloud();

    private static Design design;
    private static LoadTable table;
    private static List<LoadCase> upsets;
    private static EmptyTank empty;

    private static List<Vec3> cloud() {
        List<Vec3> all = new ArrayList<>();
        int n = (int) (1.0 / SIDE);
        for (int i = -n; i < n; i++) {
            for (int j = -n; j < n; j++) {
                for (int k = -n; k < n; k++) {
                    Vec3 p = new Vec3((i + 0.5) * SIDE, (j + 0.5) * SIDE, (k + 0.5) * SIDE);
                    double s = Math.max(0, Math.abs(p.x()) - HALF) / (R / 2);
                    if (s * s + (p.y() * p.y() + p.z() * p.z()) / (R * R) < 1) {
                        all.add(p.plus(new Vec3(0, 1, 0)));
                    }
                }
            }
        }
        return all;
    }

    @BeforeAll
    static void compute() {
        design = Examples.read(Examples.BOX
                .replace("tank:", "site: {cross-slope: 6 deg}\ntank:")
                .replace(
                        "{shape: box, size: [1 m, 1 m, 1 m], centre: [0 m, 1 m, 0 m]}",
                        "{shape: cylinder, axis: x, diameter: 800 mm, length: 1200 mm, heads: semi-ellipsoidal, centre: [0 m, 1 m, 0 m]}")
                .replace(
                        "{name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m], normal: y}",
                        "{name: end, rim: circle, diameter: 400 mm, centre: [773.205 mm, 1 m, 0 m], normal: x}")
                .replace(
                        "{fill: 100 %, density: 1400 kg/m3, repose: 30 deg}",
                        "{fill: 80 %, solids-by-volume: 25 %, repose: 12 deg}"));
        table = LoadTable.of(design, TILTS);
        upsets = LoadTable.upsets(design, TILTS, Vessel.of(design));
        empty = Vessel.of(design).empty(design);
    }

    private static Vec3 tilted(Vec3 v, double tilt) {
        return new Vec3(
                Math.cos(tilt) * v.x() - Math.sin(tilt) * v.y(),
                Math.sin(tilt) * v.x() + Math.cos(tilt) * v.y(),
                v.z());
    }

    private static Vec3 layers(Vec3 bed, Vec3 up) {
        List<Vec3> points = new ArrayList<>(CLOUD);
        points.sort(Comparator.comparingDouble(bed::dot));
        int solids = (int) Math.round(points.size() * FILL * SOLIDS / 0.6);
        List<Vec3> over = new ArrayList<>(points.subList(solids, points.size()));
        over.sort(Comparator.comparingDouble(up::dot));
        int water = (int) Math.round(points.size() * FILL) - solids;
        Vec3 cake = sum(points.subList(0, solids)).times(0.6 * 2650 + 0.4 * 1000);
        Vec3 wet = sum(over.subList(0, water)).times(1000);
        return cake.plus(wet).times(1 / (solids * (0.6 * 2650 + 0.4 * 1000) + water * 1000));
    }

    private static Vec3 sum(List<Vec3> points) {
        Vec3 sum = Vec3.ZERO;
        for (Vec3 p : points) {
            sum = sum.plus(p);
        }
        return sum;
    }

    private static Vec3 centroid(LoadState state) {
        return state.centroid()
                .times(state.mass())
                .minus(empty.centroid().times(empty.mass()))
                .times(1 / (state.mass() - empty.mass()));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void waterOverAStuckCake(int i) {
        Vec3 wanted = layers(UP, tilted(UP, TILTS[i]));
        assertThat(centroid(Find.of(table, "settled").states().get(i))
                        .minus(wanted)
                        .norm())
                .isLessThan(0.001 * 2 * R);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void waterOverACakeThatHasRun(int i) {
        double slope = Math.min(TILTS[i], Math.toRadians(12));
        Vec3 dump = new Vec3(UP.y(), -UP.x(), 0).unit();
        Vec3 bed = UP.times(Math.cos(slope)).plus(dump.times(Math.sin(slope)));
        Vec3 wanted = layers(tilted(bed, TILTS[i]), tilted(UP, TILTS[i]));
        assertThat(centroid(Find.of(table, "slid").states().get(i))
                        .minus(wanted)
                        .norm())
                .isLessThan(0.001 * 2 * R);
    }

    @Test
    void halfACakeOnEitherSide() {
        List<Vec3> points = new ArrayList<>(CLOUD);
        points.sort(Comparator.comparingDouble(UP::dot));
        List<Vec3> cake = points.subList(0, (int) Math.round(points.size() * FILL * SOLIDS / 0.6));
        double middle = sum(cake).times(1.0 / cake.size()).z();
        for (int side : new int[] {1, -1}) {
            double count = 0;
            Vec3 first = Vec3.ZERO;
            for (Vec3 p : cake) {
                // a cell that the middle cuts counts by its part
                double part = Math.max(0, Math.min(1, 0.5 + side * (p.z() - middle) / SIDE));
                count += part;
                first = first.plus(p.times(part));
            }
            LoadState state = Find.of(upsets, side > 0 ? "stuck-plus-z" : "stuck-minus-z")
                    .states()
                    .get(4);
            assertThat(centroid(state).minus(first.times(1 / count)).norm()).isLessThan(0.002 * 2 * R);
            double mass = count * SIDE * SIDE * SIDE * 1990;
            assertThat((state.mass() - empty.mass()) / mass).isBetween(0.99, 1.01);
        }
    }

    /** Ten ways round on a slope of 12 degrees, from the state on the design's own ground. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9})
    void gravityAnyWayRound(int way) {
        double turn = 2 * Math.PI * way / 10;
        double lean = Math.tan(Math.toRadians(12));
        Vec3 up = new Vec3(lean * Math.cos(turn), 1, lean * Math.sin(turn)).unit();
        Leaning leaning = new Leaning(design, Vessel.of(design));
        int i = 2;
        LoadCase settled = Find.of(table, "settled");
        LoadState own = settled.states().get(i);
        Vec3 wanted = layers(UP, tilted(up, TILTS[i]));
        LoadState turned = leaning.at(settled, own, TILTS[i], up);
        assertThat(centroid(turned).minus(wanted).norm()).isLessThan(0.001 * 2 * R);
        assertThat(turned.mass()).isCloseTo(own.mass(), within(1e-9 * own.mass()));
        LoadCase held = Find.of(table, "held");
        List<Vec3> points = new ArrayList<>(CLOUD);
        Vec3 inTank = tilted(up, TILTS[i]);
        points.sort(Comparator.comparingDouble(inTank::dot));
        List<Vec3> wet = points.subList(0, (int) Math.round(points.size() * FILL));
        LoadState level = leaning.at(held, held.states().get(i), TILTS[i], up);
        assertThat(centroid(level).minus(sum(wet).times(1.0 / wet.size())).norm())
                .isLessThan(0.001 * 2 * R);
    }
}
