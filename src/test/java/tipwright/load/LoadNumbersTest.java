// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.Examples;
import tipwright.design.Design;
import tipwright.geometry.Vec3;

/**
 * Loads of a trough 1.2 m long, 0.8 m high and 0.5 m wide, packed with solids, and of a drum. Source: plane geometry of wedges, and
 * sums of circular segments along the drum, written here.
 */
class LoadNumbersTest {
    private static final double LENGTH = 1.2;
    private static final double HEIGHT = 0.8;
    private static final double WIDTH = 0.5;
    private static final double REPOSE = Math.toRadians(40);
    private static final String END =
            "{name: end, rim: rectangle, width: 500 mm, height: 800 mm, " + "centre: [600 mm, 1 m, 0 m], normal: x}";

    private static final String TROUGH = swap(
            Examples.BOX,
            "size: [1 m, 1 m, 1 m]",
            "size: [1.2 m, 800 mm, 500 mm]",
            "{name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m], normal: y}",
            END,
            "density: 1400 kg/m3, repose: 30 deg",
            "solids-by-volume: 60 %, repose: 40 deg");

    private static LoadTable table(String yaml) {
        Design design = Examples.read(yaml);
        return LoadTable.of(design, design.tilt().tilts());
    }

    private static List<LoadState> of(LoadTable table, String name) {
        return table.cases().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow()
                .states();
    }

    /** Volume of the trough filled to a depth, less the wedge that slides out over a rim at a height. */
    private static double beside(double depth, double rim, double slope) {
        double tan = Math.tan(slope);
        double over = Math.max(0, depth - rim);
        double foot = over / tan;
        double wedge = foot <= LENGTH ? over * foot / 2 : over * LENGTH - LENGTH * LENGTH * tan / 2;
        return WIDTH * (LENGTH * depth - wedge);
    }

    @Test
    void aSlopeThatReachesTheFarEndEatsIntoTheBed() {
        LoadTable table = table(TROUGH);
        for (int tilt = 0; tilt < 40; tilt++) {
            assertThat(of(table, "heaped").get(tilt).volume())
                    .isCloseTo(beside(HEIGHT, 0, REPOSE - Math.toRadians(tilt)), within(1e-6));
        }
        for (int tilt = 41; tilt <= 80; tilt++) {
            assertThat(of(table, "heaped").get(tilt).volume()).isCloseTo(0, within(1e-9));
        }
    }

    /** A slope leaves 2 % when L^2 tan(s) / 2 is 2 % of L H, short of the angle of repose. */
    @ParameterizedTest
    @ValueSource(strings = {"tilt: {to: 80 deg}", "tilt: {to: 25 deg}"})
    void solidsNeedTheTiltThatLeavesTheAllowedShare(String range) {
        LoadTable table = table(swap(TROUGH, "tilt: {to: 80 deg}", range));
        double slope = Math.atan(0.02 * 2 * HEIGHT / LENGTH);
        Emptying.Residue cake = table.emptying().cake();
        assertThat(cake.tiltNeeded()).isCloseTo(REPOSE - slope, within(2e-5));
        int last = table.tilts().length - 1;
        assertThat(cake.volume()).isEqualTo(of(table, "heaped").get(last).volume());
        assertThat(cake.share()).isCloseTo(cake.volume() / (LENGTH * HEIGHT * WIDTH), within(1e-12));
        assertThat(table.emptying().liquid().tiltNeeded()).isLessThan(Math.toRadians(3));
    }

    /** Over a rim on top, solids leave like a liquid that leans by the angle of repose less: cot(a) H^2 / 2 is 2 % of L H. */
    @ParameterizedTest
    @ValueSource(strings = {"tilt: {to: 80 deg}", "tilt: {to: 150 deg}"})
    void solidsOverTheTopNeedTheAngleOfReposeMore(String range) {
        LoadTable table = table(swap(
                TROUGH,
                END,
                "{name: top, rim: rectangle, width: 500 mm, height: 1.2 m, centre: [0 m, 1.4 m, 0 m], normal: y}",
                "tilt: {to: 80 deg}",
                range));
        double lean = Math.atan(HEIGHT / (2 * 0.02 * LENGTH));
        assertThat(table.emptying().liquid().tiltNeeded()).isCloseTo(lean, within(2e-5));
        assertThat(table.emptying().cake().tiltNeeded()).isCloseTo(REPOSE + lean, within(2e-5));
    }

    @Test
    void whatIsShutNeverEmpties() {
        LoadTable table = table(swap(TROUGH, END, swap(END, "normal: x", "normal: x, opens-at: 190 deg")));
        assertThat(table.emptying().liquid().tiltNeeded()).isNull();
        assertThat(table.emptying().cake().tiltNeeded()).isNull();
        assertThat(table.emptying().liquid().share()).isCloseTo(1, within(1e-12));
        assertThat(table.emptying().cake().share()).isCloseTo(1, within(1e-9));
    }

    @Test
    void aDoorThatOpensOnTheWayLetsTheSlopeGoFromThere() {
        LoadTable table = table(swap(TROUGH, END, swap(END, "normal: x", "normal: x, opens-at: 20 deg")));
        double all = LENGTH * HEIGHT * WIDTH;
        assertThat(of(table, "heaped").get(19).volume()).isCloseTo(all, within(1e-9));
        assertThat(of(table, "draining").get(19).volume()).isCloseTo(all, within(1e-9));
        assertThat(of(table, "heaped").get(20).volume())
                .isCloseTo(beside(HEIGHT, 0, REPOSE - Math.toRadians(20)), within(1e-6));
        assertThat(of(table, "draining").get(20).volume()).isCloseTo(0, within(1e-9));
        // A door that would let it all out only opens at 60 degrees, past what the solids need.
        LoadTable late = table(swap(TROUGH, END, swap(END, "normal: x", "normal: x, opens-at: 60 deg")));
        assertThat(late.emptying().cake().tiltNeeded()).isCloseTo(Math.toRadians(60), within(2e-5));
        assertThat(late.emptying().liquid().tiltNeeded()).isCloseTo(Math.toRadians(60), within(2e-5));
    }

    /** Two holes in the end, rims at 0.7 m and 0.3 m above the bottom: the lower one counts, whichever is named first. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void theLowerOfTwoRimsCounts(boolean swapped) {
        String high =
                "{name: high, rim: rectangle, width: 500 mm, height: 100 mm, centre: [600 mm, 1350 mm, 0 m], normal: x}";
        String low =
                "{name: low, rim: rectangle, width: 500 mm, height: 100 mm, centre: [600 mm, 950 mm, 0 m], normal: x}";
        LoadTable table = table(swap(TROUGH, END, swapped ? high + "\n    - " + low : low + "\n    - " + high));
        assertThat(of(table, "draining").get(0).volume()).isCloseTo(LENGTH * 0.3 * WIDTH, within(1e-9));
        for (int tilt : new int[] {0, 5, 10}) {
            assertThat(of(table, "heaped").get(tilt).volume())
                    .isCloseTo(beside(HEIGHT, 0.3, REPOSE - Math.toRadians(tilt)), within(1e-6));
        }
    }

    /** Down a grade the whole heap leans by the grade more. */
    @Test
    void aGradeLeansTheHeapTowardsTheDumpSide() {
        LoadTable table = table(swap(
                TROUGH,
                "tank:",
                "site: {grade: 5 deg}\ntank:",
                END,
                "{name: top, rim: rectangle, width: 500 mm, height: 1.2 m, centre: [0 m, 1.4 m, 0 m], normal: y}"));
        for (int tilt : new int[] {45, 60, 80}) {
            double tan = Math.tan(Math.toRadians(tilt + 5) - REPOSE);
            double kept =
                    LENGTH * tan <= HEIGHT ? LENGTH * HEIGHT - LENGTH * LENGTH * tan / 2 : HEIGHT * HEIGHT / tan / 2;
            assertThat(of(table, "heaped").get(tilt).volume()).isCloseTo(kept * WIDTH, within(1e-9));
        }
    }

    /** Wall, door hole and two fittings added up by hand: 4 mm of steel over 2 (LH + LW + HW) less 0.1 m2 off the middle. */
    @Test
    void massAndCentreOfTheEmptyTank() {
        Design design = Examples.read(swap(
                TROUGH,
                END,
                "{name: hatch, rim: rectangle, width: 200 mm, height: 500 mm, centre: [100 mm, 1.4 m, 50 mm], normal: y}",
                "  wall:",
                "  attached: [{name: cyclone, mass: 12 kg, centre: [300 mm, 1.6 m, 100 mm]}, "
                        + "{name: hose, mass: 8 kg, centre: [-500 mm, 1.2 m, -200 mm]}]\n  wall:"));
        EmptyTank empty = EmptyTank.of(design, design.tank().interior().solid());
        double perArea = 0.004 * 7850;
        double plate = perArea * 2 * (LENGTH * HEIGHT + LENGTH * WIDTH + HEIGHT * WIDTH);
        double hole = perArea * 0.1;
        double mass = plate - hole + 20;
        assertThat(empty.mass()).isCloseTo(mass, within(1e-9));
        Vec3 first = new Vec3(
                -0.1 * hole + 0.3 * 12 - 0.5 * 8,
                plate - 1.4 * hole + 1.6 * 12 + 1.2 * 8,
                -0.05 * hole + 0.1 * 12 - 0.2 * 8);
        assertThat(empty.centroid().minus(first.times(1 / mass)).norm()).isLessThan(1e-9);
    }

    @Test
    void aLoadOfTheDesignsOwnIsAddedToTheEmptyTank() {
        LoadTable table = table(
                TROUGH
                        + """
                cases:
                  add: [{name: block, mass: 90 kg, centre: [-500 mm, 1.5 m, 100 mm]}]
                """);
        LoadState empty = of(table, "empty").get(0);
        List<LoadState> block = of(table, "block");
        assertThat(block).hasSize(81).allMatch(s -> s.equals(block.get(0)));
        assertThat(block.get(80).mass()).isCloseTo(empty.mass() + 90, within(1e-9));
        Vec3 first = empty.centroid().times(empty.mass()).plus(new Vec3(-0.5, 1.5, 0.1).times(90));
        assertThat(block.get(0)
                        .centroid()
                        .minus(first.times(1 / block.get(0).mass()))
                        .norm())
                .isLessThan(1e-12);
        assertThat(table.notes()).isEmpty();
    }

    @Test
    void saysThatATankIsHollowAndThatNothingSettles() {
        String hollow = "{shape: prism, width: 500 mm, outline: [[-60 cm, 60 cm], [0 cm, 90 cm], [60 cm, 60 cm], "
                + "[60 cm, 140 cm], [-60 cm, 140 cm]]}";
        assertThat(table(swap(TROUGH, "{shape: box, size: [1.2 m, 800 mm, 500 mm], centre: [0 m, 1 m, 0 m]}", hollow))
                        .notes())
                .hasSize(1)
                .allMatch(n -> n.contains("not convex"));
        LoadTable water = table(swap(TROUGH, "solids-by-volume: 60 %", "density: 1000 kg/m3"));
        assertThat(water.emptying().cake()).isNull();
        assertThat(water.cases().stream().map(LoadCase::name)).containsExactly("held", "draining", "empty");
        assertThat(water.notes()).hasSize(1).allMatch(n -> n.contains("no solids"));
    }

    /**
     * A drum along x, open at its end, 40 % full of packed solids: segments along the axis under the slope, summed. Wanted: 0.05 % of the
     * drum's volume, 0.1 % of its diameter.
     */
    @Test
    void theSlopeBesideTheOpenEndOfADrum() {
        LoadTable table = table(swap(
                TROUGH,
                "{shape: box, size: [1.2 m, 800 mm, 500 mm], centre: [0 m, 1 m, 0 m]}",
                "{shape: cylinder, axis: x, diameter: 800 mm, length: 1.2 m, centre: [0 m, 1 m, 0 m]}",
                "rim: rectangle, width: 500 mm, height: 800 mm",
                "rim: circle, diameter: 800 mm",
                "fill: 100 %",
                "fill: 40 %"));
        double drum = LENGTH * Math.PI * 0.16;
        double depth = depthOf(0.4 * drum / LENGTH);
        for (int tilt : new int[] {0, 10, 20}) {
            double rise = Math.tan(REPOSE - Math.toRadians(tilt));
            int steps = 20_000;
            double volume = 0;
            double first = 0;
            for (int i = 0; i < steps; i++) {
                double out = (i + 0.5) * LENGTH / steps;
                double slice = segment(Math.min(depth, out * rise)) * LENGTH / steps;
                volume += slice;
                first += slice * (LENGTH / 2 - out);
            }
            LoadState empty = of(table, "empty").get(0);
            LoadState heap = of(table, "heaped").get(tilt);
            assertThat(heap.volume()).isCloseTo(volume, within(5e-4 * drum));
            double solids = heap.mass() - empty.mass();
            double along = (heap.mass() * heap.centroid().x()
                            - empty.mass() * empty.centroid().x())
                    / solids;
            assertThat(along).isCloseTo(first / volume, within(1e-3 * 0.8));
        }
    }

    /** Area of a segment of the drum's end up to a depth. */
    private static double segment(double depth) {
        double h = depth - 0.4;
        return 0.16 * (Math.PI / 2 + Math.asin(h / 0.4)) + h * Math.sqrt(0.16 - h * h);
    }

    private static double depthOf(double area) {
        double[] bracket = {0, 0.8};
        IntStream.range(0, 60).forEach(i -> {
            double middle = (bracket[0] + bracket[1]) / 2;
            bracket[segment(middle) < area ? 0 : 1] = middle;
        });
        return bracket[0];
    }
}
