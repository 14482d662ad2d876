// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import tipwright.analysis.Examples;
import tipwright.design.Design;
import tipwright.design.tank.Cases;
import tipwright.geometry.Vec3;

/** What comes about only if something goes wrong, in hoppers, against plane geometry by JTS. */
class UpsetsTest {
    private static final double[] TILTS = {0, 0.2, 0.5, 0.8, 1.1};
    private static final String SLURRY = "{fill: 70 %, density: 1400 kg/m3, repose: 30 deg}";

    private static Vec3 contents(LoadState state, EmptyTank empty) {
        return state.centroid().times(state.mass()).minus(empty.centroid().times(empty.mass()));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void frozenIsTheStowedSlurryAtEveryTilt(long seed) {
        FlatTank tank = FlatTank.hopper(new Random(seed));
        Design design = Find.tank(tank.yaml(), SLURRY);
        EmptyTank empty = Vessel.of(design).empty(design);
        Geometry block = FlatTank.lowest(tank.room(), 0, 0.7 * tank.room().getArea());
        for (LoadState state : Find.of(LoadTable.upsets(design, TILTS, Vessel.of(design)), "frozen")
                .states()) {
            assertThat(contents(state, empty)
                            .minus(FlatTank.moment(block, 1400))
                            .norm())
                    .isLessThan(1e-6);
        }
    }

    /** An end door leaves the whole tank to be filled; an opening in a shoulder 1 m up leaves what is below its rim. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void brimIsFilledUpWithWater(boolean open) {
        FlatTank tank = new FlatTank(-0.5, 0.5, 0.5, 0.5, 0.5, 1, 0, 1, 0, 1.5, -0.5, 1.5);
        String place = open ? "centre: [0.25 m, 1 m, 0 m], normal: y" : "centre: [0.5 m, 0.75 m, 0 m], normal: x";
        Design design = Find.tank(
                tank.yaml(),
                "{name: gate, rim: rectangle, width: 0.8 m, height: 0.3 m, " + place + "}",
                "{fill: 40 %, density: 1400 kg/m3}");
        double all = tank.room().getArea();
        double area = open ? FlatTank.both(tank.room(), FlatTank.below(0, 1)).getArea() : all;
        double mass = 0.4 * all * 1400 + (area - 0.4 * all) * 1000;
        EmptyTank empty = Vessel.of(design).empty(design);
        LoadCase brim = Find.of(LoadTable.upsets(design, TILTS, Vessel.of(design)), "brim");
        for (int i = 0; i < TILTS.length; i++) {
            Geometry wet = FlatTank.lowest(tank.room(), -TILTS[i], area);
            LoadState state = brim.states().get(i);
            assertThat(state.mass() - empty.mass()).isCloseTo(mass, within(1e-6));
            assertThat(contents(state, empty)
                            .minus(FlatTank.moment(wet, mass / area))
                            .norm())
                    .isLessThan(1e-5);
        }
    }

    /** Every fill between what has stayed in and all of it, 400 of them: none weighs more to the dump side about the pivot. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void bridgedIsTheWorstOfAllThatMayBeLeft(long seed) {
        FlatTank tank = FlatTank.hopper(new Random(seed));
        Design design = Find.tank(tank.yaml(), SLURRY.replace("70 %", "95 %"));
        EmptyTank empty = Vessel.of(design).empty(design);
        LoadTable table = LoadTable.of(design, TILTS);
        LoadCase bridged = Find.of(LoadTable.upsets(design, TILTS, Vessel.of(design)), "bridged");
        double all = 0.95 * tank.room().getArea();
        for (int i = 0; i < TILTS.length; i++) {
            double least = Find.of(table, "draining").states().get(i).volume();
            double worst = Double.NEGATIVE_INFINITY;
            int parts = 400;
            for (int k = 0; k <= parts; k++) {
                double area = least + (all - least) * k / parts;
                Geometry wet = FlatTank.lowest(tank.room(), -TILTS[i], area);
                Vec3 first = FlatTank.moment(wet, 1400).plus(empty.centroid().times(empty.mass()));
                worst = Math.max(worst, about(first, empty.mass() + 1400 * area, TILTS[i]));
            }
            LoadState state = bridged.states().get(i);
            double ours = about(state.centroid().times(state.mass()), state.mass(), TILTS[i]);
            assertThat(ours).isGreaterThan(worst - 1e-4).isLessThan(worst + 0.02);
            assertThat(state.volume()).isBetween(least - 1e-9, all + 1e-9);
        }
    }

    private static double about(Vec3 first, double mass, double tilt) {
        double x = first.x() - 0.4 * mass;
        double y = first.y() - 0.4 * mass;
        return x * Math.cos(tilt) + y * Math.sin(tilt);
    }

    /** A prism 1 m wide: each half lies a quarter of a metre off the middle, weighs half, and lies where the cake did. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void halfOfTheCakeStaysAtOneSide(long seed) {
        FlatTank tank = FlatTank.hopper(new Random(seed));
        Design design = Find.tank(tank.yaml(), "{fill: 80 %, solids-by-volume: 30 %, repose: 30 deg, release: 40 deg}");
        EmptyTank empty = Vessel.of(design).empty(design);
        double area = 0.8 * tank.room().getArea() * 0.5;
        Geometry cake = FlatTank.lowest(tank.room(), 0, area);
        Vec3 whole = FlatTank.moment(cake, 1990);
        for (int side : new int[] {1, -1}) {
            List<LoadState> states = Find.of(
                            LoadTable.upsets(design, TILTS, Vessel.of(design)),
                            side > 0 ? "stuck-plus-z" : "stuck-minus-z")
                    .states();
            for (int i = 0; i < TILTS.length; i++) {
                boolean half = TILTS[i] > Math.toRadians(30);
                Vec3 wanted = half ? new Vec3(whole.x() / 2, whole.y() / 2, side * 0.25 * 0.5 * area * 1990) : whole;
                assertThat(contents(states.get(i), empty).minus(wanted).norm()).isLessThan(1e-5);
            }
        }
    }

    @Test
    void eachAppearsOnlyWhereItCanAriseAndCanBeLeftOut() {
        FlatTank tank = FlatTank.hopper(new Random(7));
        assertThat(names(Find.tank(tank.yaml(), SLURRY)))
                .containsExactly("stuck-plus-z", "stuck-minus-z", "frozen", "brim", "bridged");
        assertThat(names(Find.tank(tank.yaml(), "{fill: 70 %, density: 1000 kg/m3}")))
                .containsExactly("frozen", "brim", "bridged");
        assertThat(names(Find.tank(tank.yaml(), "{fill: 0 %, density: 1000 kg/m3}")))
                .containsExactly("brim");
        assertThat(names(Find.tank(tank.yaml(), "{fill: 100 %, density: 1000 kg/m3}")))
                .containsExactly("frozen", "bridged");
        Cases without = new Cases(List.of("frozen", "bridged", "stuck-plus-z"), List.of());
        assertThat(names(Find.tank(tank.yaml(), SLURRY).withCases(without))).containsExactly("stuck-minus-z", "brim");
    }

    private static List<String> names(Design design) {
        return LoadTable.upsets(design, TILTS, Vessel.of(design)).stream()
                .map(LoadCase::name)
                .toList();
    }

    /** Shut up to the tilt at which the outlet opens is the normal dump; shut beyond it is not. */
    @Test
    void eachSaysWhatItBelongsTo() {
        Design design = Examples.read(Examples.BOX
                .replace("normal: y}", "normal: y, opens-at: 20 deg}")
                .replace("density: 1400 kg/m3", "density: 1300 kg/m3"));
        LoadTable table = LoadTable.of(design, TILTS);
        for (String shut : List.of("held", "settled", "slid")) {
            assertThat(Find.of(table, shut).normalAt(Math.toRadians(20))).isTrue();
            assertThat(Find.of(table, shut).normalAt(Math.toRadians(20.001))).isFalse();
            assertThat(Find.of(table, shut).upset()).isFalse();
        }
        for (String normal : List.of("draining", "heaped", "caked", "empty", "heel")) {
            assertThat(Find.of(table, normal).normalAt(Math.PI)).isTrue();
        }
        assertThat(LoadTable.upsets(design, TILTS, Vessel.of(design)))
                .allMatch(LoadCase::upset)
                .noneMatch(c -> c.normalAt(0));
    }
}
