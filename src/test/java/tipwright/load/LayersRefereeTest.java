// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Geometry;
import tipwright.design.Design;
import tipwright.design.tank.Cases;
import tipwright.geometry.Vec3;

/**
 * Settled solids with the water on top in hoppers, held against plane geometry by JTS: the cake is the lowest part of the outline, the
 * water the lowest part of what the cake leaves. Densities by hand: solids 2650, liquid 1000, packing 60 % by volume.
 */
class LayersRefereeTest {
    private static final double CAKE = 0.6 * 2650 + 0.4 * 1000;
    private static final double WATER = 1000;
    private static final double[] TILTS = {0, 0.1, 0.3, Math.toRadians(25), 0.7, 0.9, 1.2};

    static LongStream seeds() {
        return LongStream.range(0, 40);
    }

    /** A tank, its fill and its solids, and the same areas for the referee. */
    private record Case(FlatTank tank, Design design, double cake, double water, double repose) {
        static Case of(long seed) {
            Random random = new Random(seed);
            FlatTank tank = FlatTank.hopper(random);
            double fill = 0.2 + 0.75 * random.nextDouble();
            double solids = 0.05 + 0.4 * random.nextDouble();
            double repose = 10 + 35 * random.nextDouble();
            String slurry = "{fill: " + 100 * fill + " %, solids-by-volume: " + 100 * solids + " %, repose: " + repose
                    + " deg, release: 25 deg}";
            double area = fill * tank.room().getArea();
            double cake = area * solids / 0.6;
            return new Case(tank, Find.tank(tank.yaml(), slurry), cake, area - cake, Math.toRadians(repose));
        }

        /** First moment of the contents, kg m, with the surface of the cake at a slope against the level. */
        Vec3 moment(double tilt, double slope) {
            return moment(tilt, FlatTank.lowest(tank.room(), slope - tilt, cake));
        }

        Vec3 moment(double tilt, Geometry solids) {
            Geometry over = FlatTank.without(tank.room(), solids);
            Geometry level = FlatTank.lowest(over, -tilt, water);
            return FlatTank.moment(solids, CAKE).plus(FlatTank.moment(level, WATER));
        }

        double mass() {
            return cake * CAKE + water * WATER;
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aStuckCakeKeepsItsPlaceAndTheWaterFindsItsLevel(long seed) {
        Case c = Case.of(seed);
        LoadTable table = LoadTable.of(c.design(), TILTS);
        EmptyTank empty = Vessel.of(c.design()).empty(c.design());
        Geometry bed = FlatTank.lowest(c.tank().room(), 0, c.cake());
        for (int i = 0; i < TILTS.length; i++) {
            Vec3 wanted = i < 3 ? c.moment(TILTS[i], bed) : c.moment(TILTS[i], Math.min(TILTS[i], c.repose()));
            same(Find.of(table, "settled").states().get(i), empty, wanted, c.mass());
        }
    }

    /** As flat as it can: the steeper it stands, the less it weighs to the dump side, and least where it has not run. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aCakeThatHasRunStandsAsFlatAsItCan(long seed) {
        Case c = Case.of(seed);
        LoadTable table = LoadTable.of(c.design(), TILTS);
        EmptyTank empty = Vessel.of(c.design()).empty(c.design());
        Geometry bed = FlatTank.lowest(c.tank().room(), 0, c.cake());
        for (int i = 0; i < TILTS.length; i++) {
            double tilt = TILTS[i];
            double wet = Math.min(Math.toRadians(15), c.repose());
            Vec3 flat = c.moment(tilt, Math.min(tilt, wet));
            same(Find.of(table, "slid").states().get(i), empty, flat, c.mass());
            double steep = about(c.moment(tilt, Math.min(tilt, c.repose())), c.mass(), tilt);
            assertThat(steep).isLessThanOrEqualTo(about(flat, c.mass(), tilt) + 1e-6);
            assertThat(steep).isGreaterThanOrEqualTo(about(c.moment(tilt, bed), c.mass(), tilt) - 1e-6);
        }
    }

    /** Where the design leaves the steeper one out as a case: the one of the two that weighs more about the pivot, at (0.4, 0.4). */
    @ParameterizedTest
    @MethodSource("seeds")
    void aCakeThatHasRunStandsAtTheWorseOfTwoSlopesWhereOneCaseIsLeftOut(long seed) {
        Case c = Case.of(seed);
        LoadTable table = LoadTable.of(c.design().withCases(new Cases(List.of("settled"), List.of())), TILTS);
        EmptyTank empty = Vessel.of(c.design()).empty(c.design());
        for (int i = 0; i < TILTS.length; i++) {
            double tilt = TILTS[i];
            double wet = Math.min(Math.toRadians(15), c.repose());
            Vec3 one = c.moment(tilt, Math.min(tilt, wet));
            Vec3 two = c.moment(tilt, Math.min(tilt, c.repose()));
            Vec3 own = empty.centroid().times(empty.mass());
            double mass = empty.mass() + c.mass();
            boolean first = Math.abs(about(one.plus(own), mass, tilt)) >= Math.abs(about(two.plus(own), mass, tilt));
            same(Find.of(table, "slid").states().get(i), empty, first ? one : two, c.mass());
        }
    }

    private static double about(Vec3 first, double mass, double tilt) {
        double x = first.x() - 0.4 * mass;
        double y = first.y() - 0.4 * mass;
        return x * Math.cos(tilt) + y * Math.sin(tilt);
    }

    private static void same(LoadState state, EmptyTank empty, Vec3 wanted, double mass) {
        assertThat(state.mass() - empty.mass()).isCloseTo(mass, within(1e-9 * mass));
        Vec3 ours = state.centroid().times(state.mass()).minus(empty.centroid().times(empty.mass()));
        assertThat(ours.minus(wanted).times(1 / mass).norm()).isLessThan(1e-7);
    }

    /** Not a bit of solids: neither case arises; left out by the design: neither is there. */
    @Test
    void theyAriseWithSolidsOnlyAndCanBeLeftOut() {
        Design water = Find.tank(FlatTank.hopper(new Random(1)).yaml(), "{fill: 80 %, density: 1000 kg/m3}");
        assertThat(LoadTable.of(water, TILTS).cases().stream().map(LoadCase::name))
                .containsExactly("held", "draining", "empty");
        Design grit = Find.tank(FlatTank.hopper(new Random(1)).yaml(), "{fill: 80 %, density: 1300 kg/m3}");
        Design without = grit.withCases(new Cases(List.of("settled", "slid"), List.of()));
        assertThat(LoadTable.of(without, TILTS).cases().stream().map(LoadCase::name))
                .containsExactly("held", "draining", "heaped", "caked", "empty", "heel");
    }
}
