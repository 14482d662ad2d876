// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tipwright.analysis.Examples;
import tipwright.design.Design;
import tipwright.design.drive.TiltRange;
import tipwright.design.tank.Slurry;
import tipwright.geometry.Range;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec3;

/** What holds for every tank, fill and tilt, and part fills against the same fill on its own. */
class FillsTest {
    private static final String SITE = "site: {grade: 4 deg, cross-slope: -3 deg}\ntank:";

    static Stream<Design> tanks() {
        return Stream.of(
                        "{shape: cylinder, axis: x, diameter: 900 mm, length: 1200 mm, heads: semi-ellipsoidal, centre: [0 m, 1 m, 0 m]}",
                        "{shape: cylinder, axis: y, diameter: 900 mm, length: 700 mm, heads: hemispherical, centre: [0 m, 1 m, 0 m]}",
                        "{shape: cylinder, axis: z, diameter: 900 mm, length: 700 mm, heads: flat, centre: [0 m, 1 m, 0 m]}",
                        "{shape: box, size: [1 m, 0.8 m, 0.9 m], centre: [0 m, 1 m, 0.1 m]}",
                        "{shape: prism, width: 800 mm, outline: [[-60 cm, 60 cm], [0 cm, 50 cm], [20 cm, 50 cm], [60 cm, 90 cm], [50 cm, 130 cm], [-70 cm, 130 cm]]}")
                .map(interior -> Examples.read(Examples.BOX
                        .replace("tank:", SITE)
                        .replace(
                                "{name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m], normal: y}",
                                opening(interior))
                        .replace("{shape: box, size: [1 m, 1 m, 1 m], centre: [0 m, 1 m, 0 m]}", interior)
                        .replace(
                                "{fill: 100 %, density: 1400 kg/m3, repose: 30 deg}",
                                "{fill: 90 %, density: 1400 kg/m3, repose: 30 deg, release: 42 deg}")))
                .map(d -> d.withTilt(new TiltRange(0, Math.toRadians(80), Math.toRadians(8))));
    }

    /** On the wall of each: in the end or the top. */
    private static String opening(String interior) {
        String place = interior.contains("axis: x")
                ? "diameter: 450 mm, centre: [794.856 mm, 1 m, 0 m], normal: x"
                : interior.contains("axis: y")
                        ? "diameter: 450 mm, centre: [0 m, 1739.711 mm, 0 m], normal: y"
                        : interior.contains("axis: z")
                                ? "diameter: 300 mm, centre: [0 m, 1 m, 350 mm], normal: z"
                                : interior.contains("box")
                                        ? "diameter: 500 mm, centre: [0 m, 1.4 m, 0.1 m], normal: y"
                                        : "diameter: 500 mm, centre: [0 m, 1.3 m, 0 m], normal: y";
        return "{name: way out, rim: circle, " + place + "}";
    }

    @ParameterizedTest
    @MethodSource("tanks")
    void aPartFillIsTheSameAsThatFillOnItsOwn(Design design) {
        double[] tilts = TiltGrid.of(design);
        FillTables fills =
                new FillTables(design, tilts, LoadTable.of(design, tilts).emptying(), Vessel.of(design));
        assertThat(new Contents(design).fill()).isCloseTo(0.9, within(1e-9));
        for (int k = 0; k < 5; k++) {
            Design part = design.withSlurry(design.slurry().withFill(0.9 * (k + 1) / 5));
            LoadTable alone = LoadTable.of(part, tilts);
            for (LoadCase own : alone.cases()) {
                LoadCase ours = Find.of(fills.of(part.slurry()), own.name());
                for (int i = 0; i < tilts.length; i++) {
                    LoadState a = ours.states().get(i);
                    LoadState b = own.states().get(i);
                    assertThat(a.mass()).isCloseTo(b.mass(), within(1e-6));
                    assertThat(a.centroid().minus(b.centroid()).norm()).isLessThan(1e-8);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("tanks")
    void nothingIsLostWhileTheOutletIsShut(Design design) {
        double[] tilts = TiltGrid.of(design);
        Solid solid = design.tank().interior().solid();
        Vessel vessel = Vessel.of(design);
        FillTables fills =
                new FillTables(design, tilts, LoadTable.of(design, tilts).emptying(), Vessel.of(design));
        for (int k = 1; k <= 4; k++) {
            Slurry slurry = design.slurry().withFill(0.9 * k / 4);
            LoadTable table = fills.of(slurry);
            double volume = slurry.volumeIn(solid.whole().volume());
            double mass = volume * design.slurry().mixtureDensity();
            for (String shut : List.of("held", "settled", "slid")) {
                for (LoadState state : Find.of(table, shut).states()) {
                    assertThat(state.volume()).isCloseTo(volume, within(1e-9 * volume));
                    assertThat(state.mass() - vessel.empty(design).mass()).isCloseTo(mass, within(1e-9 * mass));
                }
            }
            for (LoadCase load : table.cases()) {
                for (int i = 0; i < tilts.length; i++) {
                    inside(solid, vessel.empty(design), load.states().get(i));
                    level(design, load, load.states().get(i), tilts[i]);
                }
            }
        }
    }

    /** Along 26 directions the centroid of the contents is between the ends of the tank. */
    private static void inside(Solid solid, EmptyTank empty, LoadState state) {
        if (state.volume() < 1e-9) {
            return;
        }
        Vec3 centroid = state.centroid()
                .times(state.mass())
                .minus(empty.centroid().times(empty.mass()))
                .times(1 / (state.mass() - empty.mass()));
        for (int k = 0; k < 27; k++) {
            Vec3 direction = new Vec3(k % 3 - 1, k / 3 % 3 - 1, k / 9 - 1);
            if (direction.norm() > 0) {
                Range range = solid.extent(direction.unit());
                assertThat(direction.unit().dot(centroid)).isBetween(range.low(), range.high());
            }
        }
    }

    /** The surface of a liquid is square to gravity: the ground falls 4 degrees to the dump side and rises 3 to +z. */
    private static void level(Design design, LoadCase load, LoadState state, double tilt) {
        Fill fill = state.fill();
        if (fill != null && fill.stuff() == Fill.Stuff.LIQUID) {
            Vec3 up = new Vec3(-Math.tan(Math.toRadians(4)), 1, Math.tan(Math.toRadians(3))).unit();
            double x = Math.cos(tilt) * up.x() - Math.sin(tilt) * up.y();
            double y = Math.sin(tilt) * up.x() + Math.cos(tilt) * up.y();
            Vec3 normal = fill.surface().normal();
            assertThat(normal.minus(new Vec3(x, y, up.z())).norm())
                    .as("%s %s", design.name(), load.name())
                    .isLessThan(1e-12);
        }
    }
}
