// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.Examples;
import tipwright.design.Design;
import tipwright.geometry.Vec3;

/**
 * Load cases of a box against closed forms. Source: plane geometry of a tilted square, 1 m each way and open on top: under a
 * surface at angle a through the lip stays 1 - tan(a)/2 up to 45 degrees, cot(a)/2 beyond.
 */
class LoadCasesTest {
    private static LoadCase of(LoadTable table, String name) {
        return table.cases().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static double kept(double angle) {
        double t = Math.tan(angle);
        return angle <= 0 ? 1 : angle <= Math.PI / 4 ? 1 - t / 2 : 0.5 / t;
    }

    @Test
    void liquidRunsOutOverTheLip() {
        Design design = Examples.read(Examples.BOX);
        LoadTable table = LoadTable.of(design, design.tilt().tilts());
        for (int i = 0; i < table.tilts().length; i++) {
            LoadState state = of(table, "draining").states().get(i);
            assertThat(state.volume()).isCloseTo(kept(table.tilts()[i]), within(1e-9));
            assertThat(of(table, "held").states().get(i).volume()).isCloseTo(1, within(1e-12));
        }
    }

    @Test
    void gradeAddsToTheTiltAndCrossSlopeSpillsMore() {
        Design down = Examples.read(swap(Examples.BOX, "tank:", "site: {grade: 5 deg}\ntank:"));
        LoadTable table = LoadTable.of(down, new double[] {0, 0.3});
        assertThat(of(table, "draining").states().get(0).volume()).isCloseTo(kept(Math.toRadians(5)), within(1e-9));
        assertThat(of(table, "draining").states().get(1).volume())
                .isCloseTo(kept(0.3 + Math.toRadians(5)), within(1e-9));
        Design across = Examples.read(swap(Examples.BOX, "tank:", "site: {cross-slope: 5 deg}\ntank:"));
        assertThat(of(LoadTable.of(across, new double[] {0}), "draining")
                        .states()
                        .get(0)
                        .volume())
                .isCloseTo(kept(Math.toRadians(5)), within(1e-9));
    }

    @Test
    void heapStaysPutToItsAngleOfReposeAndThenSlides() {
        // Packed solids all through, so that the cake fills the box to the brim.
        Design design = Examples.read(
                swap(Examples.BOX, "density: 1400 kg/m3, repose: 30 deg", "solids-by-volume: 60 %, repose: 30 deg"));
        LoadTable table = LoadTable.of(design, design.tilt().tilts());
        for (int i = 0; i < table.tilts().length; i++) {
            double expected = kept(table.tilts()[i] - Math.toRadians(30));
            assertThat(of(table, "heaped").states().get(i).volume()).isCloseTo(expected, within(1e-9));
        }
        LoadState cake = of(table, "caked").states().get(60);
        assertThat(cake.volume()).isCloseTo(1, within(1e-9));
        LoadState heel = of(table, "heel").states().get(0);
        assertThat(heel.volume()).isCloseTo(kept(Math.toRadians(50)), within(1e-9));
        assertThat(of(table, "heel").states().get(40)).isEqualTo(heel);
    }

    /** Source: plane geometry: beside an open end a wedge of the flat cake slides out until its face stands at the angle of repose. */
    @Test
    void heapBesideAnOpenEndKeepsASlopeAtItsAngleOfRepose() {
        Design design = Examples.read(swap(
                Examples.BOX,
                "centre: [0 m, 1.5 m, 0 m], normal: y",
                "centre: [500 mm, 1 m, 0 mm], normal: x",
                "fill: 100 %, density: 1400 kg/m3, repose: 30 deg",
                "fill: 30 %, solids-by-volume: 60 %, repose: 40 deg"));
        LoadTable table = LoadTable.of(design, design.tilt().tilts());
        for (int tilt : new int[] {0, 10, 20}) {
            double steep = Math.toRadians(40 - tilt);
            double expected = 0.3 - 0.3 * 0.3 / Math.tan(steep) / 2;
            LoadState heap = of(table, "heaped").states().get(tilt);
            assertThat(heap.volume()).isCloseTo(expected, within(1e-6));
        }
        assertThat(of(table, "heaped").states().get(40).volume()).isCloseTo(0, within(1e-9));
    }

    /** Source: plane geometry, as above; a ridge parts the cake into two beds and only the one beside the open end slides. */
    @Test
    void heapMayLieInTwoPockets() {
        Design design = Examples.read(swap(
                Examples.BOX,
                "centre: [0 m, 1.5 m, 0 m], normal: y",
                "centre: [500 mm, 1 m, 0 mm], normal: x",
                "{shape: box, size: [1 m, 1 m, 1 m], centre: [0 m, 1 m, 0 m]}",
                "{shape: prism, width: 1 m, outline: [[-50 cm, 50 cm], [-10 cm, 50 cm], [-10 cm, 90 cm], "
                        + "[10 cm, 90 cm], [10 cm, 50 cm], [50 cm, 50 cm], [50 cm, 150 cm], [-50 cm, 150 cm]]}",
                "fill: 100 %, density: 1400 kg/m3, repose: 30 deg",
                "volume: 240 L, solids-by-volume: 60 %, repose: 40 deg"));
        LoadTable table = LoadTable.of(design, new double[] {0, Math.toRadians(2)});
        for (int i = 0; i < 2; i++) {
            double expected = 0.24 - 0.3 * 0.3 / Math.tan(Math.toRadians(40) - table.tilts()[i]) / 2;
            LoadState heap = of(table, "heaped").states().get(i);
            assertThat(heap.volume()).isCloseTo(expected, within(1e-6));
        }
    }

    @Test
    void hardlyAnySolidsAreNoFault() {
        Design design = Examples.read(swap(
                Examples.BOX,
                "centre: [0 m, 1.5 m, 0 m], normal: y",
                "centre: [500 mm, 1 m, 0 mm], normal: x",
                "density: 1400 kg/m3",
                "solids-by-volume: 0.0000002 %"));
        LoadTable table = LoadTable.of(design, design.tilt().tilts());
        assertThat(of(table, "heaped").states())
                .allSatisfy(s -> assertThat(s.volume()).isBetween(0.0, 1e-8));
    }

    @ParameterizedTest
    @ValueSource(doubles = {20, 45})
    void cakeLetsGoAtItsReleaseTilt(double release) {
        Design design =
                Examples.read(swap(Examples.BOX, "repose: 30 deg", "repose: 30 deg, release: " + release + " deg"));
        LoadTable table = LoadTable.of(design, design.tilt().tilts());
        for (int i = 0; i < table.tilts().length; i++) {
            LoadState cake = of(table, "caked").states().get(i);
            LoadState heap = of(table, "heaped").states().get(i);
            if (i < release) {
                assertThat(cake).isEqualTo(of(table, "caked").states().get(0));
            } else {
                assertThat(cake).isEqualTo(heap);
            }
        }
    }

    @Test
    void cakeOfTheMixtureSettlesFlatOnTheBottom() {
        // 1400 kg/m3 of quartz 2650 in water: 400/1650 solids by volume, over 0.6 packed.
        Design design = Examples.read(Examples.BOX);
        double depth = 400.0 / 1650 / 0.6;
        LoadState cake =
                of(LoadTable.of(design, new double[] {0}), "caked").states().get(0);
        assertThat(cake.volume()).isCloseTo(depth, within(1e-9));
        double wall = 5 * 0.004 * 7850;
        double solids = depth * 1990;
        assertThat(cake.mass()).isCloseTo(wall + solids, within(1e-6));
        double height = (wall * 0.9 + solids * (0.5 + depth / 2)) / (wall + solids);
        assertThat(cake.centroid().y()).isCloseTo(height, within(1e-9));
    }

    @Test
    void emptyTankIsItsWallWithoutTheOpening() {
        Design design = Examples.read(Examples.BOX);
        EmptyTank empty = EmptyTank.of(design, design.tank().interior().solid());
        assertThat(empty.mass()).isCloseTo(5 * 0.004 * 7850, within(1e-9));
        // Four sides at 1.0 m, the floor at 0.5 m.
        assertThat(empty.centroid().minus(new Vec3(0, 0.9, 0)).norm()).isLessThan(1e-9);
    }

    @Test
    void tiltNeededIsWhereTheResidueGetsUnderTheAllowedShare() {
        Design design = Examples.read(swap(Examples.BOX, "tilt: {to: 80 deg}", "tilt: {to: 60 deg}"));
        Emptying.Residue left =
                LoadTable.of(design, design.tilt().tilts()).emptying().liquid();
        assertThat(left.share()).isCloseTo(0.5 / Math.tan(Math.toRadians(60)), within(1e-9));
        // cot(a)/2 = 2 %.
        assertThat(left.tiltNeeded()).isCloseTo(Math.atan(25), within(1e-4));
    }

    @Test
    void doorThatOpensLaterKeepsAllUntilThen() {
        Design design = Examples.read(swap(Examples.BOX, "normal: y}", "normal: y, opens-at: 20 deg}"));
        LoadTable table = LoadTable.of(design, design.tilt().tilts());
        assertThat(of(table, "draining").states().get(19).volume()).isCloseTo(1, within(1e-12));
        assertThat(of(table, "draining").states().get(20).volume()).isCloseTo(kept(Math.toRadians(20)), within(1e-9));
    }

    @Test
    void casesCanBeLeftOutAndAdded() {
        Design design = Examples.read(
                Examples.BOX
                        + """
                cases:
                  skip: [held, heel]
                  add: [{name: a man on the rim, mass: 90 kg, centre: [-500 mm, 1.5 m, 0 mm]}]
                """);
        LoadTable table = LoadTable.of(design, new double[] {0});
        assertThat(table.cases().stream().map(LoadCase::name))
                .containsExactly("draining", "heaped", "caked", "empty", "settled", "slid", "a man on the rim");
        assertThat(of(table, "a man on the rim").states().get(0).mass()).isCloseTo(5 * 0.004 * 7850 + 90, within(1e-9));
        assertThat(table.notes()).anyMatch(n -> n.endsWith("full, load still in it, left in the tank"));
    }
}
