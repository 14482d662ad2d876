// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;
import tipwright.design.tank.HookReading;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** What is told anew of a table is what a new table says; and a hook scale's centre by the balance of moments. */
class LoadTableTest {
    private static final double[] TILTS = {0, 0.2, 0.5, 0.9};
    private static final double CLOSE = 1e-9;
    private static final String HOOKED = "  weighed: [{at: [-650 mm, 640 mm], pull: 640 N},"
            + " {at: [-650 mm, 640 mm], pull: 420 N, tilt: 30 deg}]\n  vent:";

    private static Design trailer(String... pairs) throws IOException {
        String text = swap(Files.readString(Path.of("geometry/silt-trailer.yaml")), pairs);
        return ((Reading.Good) DesignFile.read("it.yaml", text, NamedFiles.shipped())).design();
    }

    private static Design moved(Design design) {
        return design.withPivot(design.pivot().movedTo(new Vec2(0.42, 0.51)));
    }

    private static void alike(LoadTable found, LoadTable expected) {
        assertThat(found.tilts()).containsExactly(expected.tilts());
        assertThat(found.cases()).hasSameSizeAs(expected.cases());
        for (int i = 0; i < found.cases().size(); i++) {
            LoadCase mine = found.cases().get(i);
            LoadCase other = expected.cases().get(i);
            assertThat(mine.name()).isEqualTo(other.name());
            for (int k = 0; k < mine.states().size(); k++) {
                LoadState a = mine.states().get(k);
                LoadState b = other.states().get(k);
                assertThat(a.mass()).as(mine.name()).isCloseTo(b.mass(), within(CLOSE));
                assertThat(a.volume()).as(mine.name()).isCloseTo(b.volume(), within(CLOSE));
                assertThat(a.centroid().minus(b.centroid()).norm())
                        .as(mine.name() + " at " + found.tilts()[k])
                        .isLessThan(CLOSE);
            }
        }
    }

    @Test
    void aboutAnotherPivotItIsTheTableOfThatDesign() throws IOException {
        for (Design design : List.of(trailer(), trailer("  vent:", HOOKED))) {
            LoadTable table = LoadTable.of(design, TILTS);
            assertThat(table.about(design)).isSameAs(table);
            LoadTable about = table.about(moved(design));
            assertThat(about.pivot()).isEqualTo(moved(design).pivot().at());
            alike(about, LoadTable.of(moved(design), TILTS));
            alike(about.about(design), table);
        }
    }

    /** The scale's moments hold about the pivot that it was weighed on, so another pivot is another centre. */
    @Test
    void aPivotElsewhereIsAnotherCentreForTheHookScale() throws IOException {
        Design hooked = trailer("  vent:", HOOKED);
        Vec3 here = EmptyTank.of(hooked, hooked.tank().interior().solid()).centroid();
        Vec3 there =
                EmptyTank.of(moved(hooked), hooked.tank().interior().solid()).centroid();
        assertThat(here.minus(there).norm()).isGreaterThan(0.01);
    }

    @Test
    void someOfItsTiltsHaveTheSameStates() throws IOException {
        LoadTable table = LoadTable.of(trailer(), TILTS);
        LoadTable some = table.at(new int[] {1, 3});
        assertThat(some.tilts()).containsExactly(0.2, 0.9);
        assertThat(some.emptying()).isSameAs(table.emptying());
        for (int i = 0; i < table.cases().size(); i++) {
            List<LoadState> states = table.cases().get(i).states();
            assertThat(some.cases().get(i).states()).containsExactly(states.get(1), states.get(3));
        }
    }

    @Test
    void aHeavierTankWeighsMoreWhereItIs() throws IOException {
        Design design = trailer();
        LoadTable table = LoadTable.of(design, TILTS);
        LoadTable heavier = table.withHeavierTank(design, 0.1);
        EmptyTank empty = EmptyTank.of(design, design.tank().interior().solid());
        double more = 0.1 * empty.mass();
        for (int i = 0; i < table.cases().size(); i++) {
            for (int k = 0; k < TILTS.length; k++) {
                LoadState before = table.cases().get(i).states().get(k);
                LoadState after = heavier.cases().get(i).states().get(k);
                assertThat(after.mass() - before.mass()).isCloseTo(more, within(CLOSE));
                Vec3 first = before.centroid()
                        .times(before.mass())
                        .plus(empty.centroid().times(more));
                assertThat(after.centroid().times(after.mass()).minus(first).norm())
                        .isLessThan(1e-6);
            }
        }
        alike(table.withHeavierTank(design, 0), table);
    }

    /** A tank of 100 kg with its centre at a known place, held at several tilts: the pulls follow from the moments about the pivot. */
    @Test
    void theHookScaleFindsTheCentre() {
        Vec2 pivot = new Vec2(0.5, 0.2);
        Vec2 centre = new Vec2(0.16, 0.5);
        EmptyTank drawn = new EmptyTank(100, new Vec3(0.1, 0.62, 0.07));
        EmptyTank found = HookScale.corrected(drawn, readings(pivot, centre, 0, 0.3, 0.7), pivot);
        assertThat(found.mass()).isEqualTo(100);
        assertThat(found.centroid().minus(new Vec3(0.16, 0.5, 0.07)).norm()).isLessThan(CLOSE);
        // one tilt, or two that are nearly one, tell no more than a line: the centre is moved square to it
        EmptyTank level = HookScale.corrected(drawn, readings(pivot, centre, 0), pivot);
        assertThat(level.centroid().minus(new Vec3(0.16, 0.62, 0.07)).norm()).isLessThan(CLOSE);
        EmptyTank leaning = HookScale.corrected(drawn, readings(pivot, centre, 0.6), pivot);
        Vec2 way = leaning.centroid().minus(drawn.centroid()).xy();
        Vec2 along = new Vec2(Math.cos(0.6), Math.sin(0.6));
        assertThat(way.cross(along)).isCloseTo(0, within(CLOSE));
        assertThat(way.dot(along)).isCloseTo(centre.minus(drawn.centroid().xy()).dot(along), within(CLOSE));
        EmptyTank close = HookScale.corrected(drawn, readings(pivot, centre, 0, 0.05), pivot);
        assertThat(close.centroid().minus(new Vec3(0.16, 0.62, 0.07)).norm()).isBetween(1e-6, 0.01);
        assertThat(HookScale.corrected(drawn, List.of(), pivot)).isSameAs(drawn);
        EmptyTank nothing = new EmptyTank(0, drawn.centroid());
        assertThat(HookScale.corrected(nothing, readings(pivot, centre, 0), pivot))
                .isSameAs(nothing);
    }

    private static List<HookReading> readings(Vec2 pivot, Vec2 centre, double... tilts) {
        return java.util.Arrays.stream(tilts)
                .mapToObj(tilt -> {
                    Vec2 arm = centre.minus(pivot).tilted(tilt);
                    Vec2 hook = new Vec2(-0.7, 0.6);
                    double lever = hook.minus(pivot).tilted(tilt).x();
                    return new HookReading(hook, 100 * Gravity.G * arm.x() / lever, new Vec2(0, 3), tilt);
                })
                .toList();
    }
}
