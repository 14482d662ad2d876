// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tipwright.design.Design;
import tipwright.design.tank.CylinderInterior;
import tipwright.load.EmptyTank;

/** What a builder measures is turned into what the program needs. */
class MeasuredTankTest {
    private static final double INCH = 0.0254;

    private static Reading read(String... changes) throws IOException {
        String text = ErrorTextTest.resource("silt.yaml");
        for (int i = 0; i < changes.length; i += 2) {
            assertThat(text).contains(changes[i]);
            text = text.replace(changes[i], changes[i + 1]);
        }
        return DesignFile.read("silt.yaml", text, NamedFiles.shipped());
    }

    private static Design design(String... changes) throws IOException {
        Reading reading = read(changes);
        assertThat(reading).as(reading.toString()).isInstanceOf(Reading.Good.class);
        return ((Reading.Good) reading).design();
    }

    @Test
    void outsideSizesLoseTheWall() throws IOException {
        Design d = design("  wall: {thickness: 5 mm}", "  sizes: outside\n  wall: {thickness: 5 mm}");
        CylinderInterior inside = (CylinderInterior) d.tank().interior();
        assertThat(inside.diameter()).isCloseTo(0.750, within(1e-12));
        assertThat(inside.length()).isCloseTo(1.290, within(1e-12));
        assertThat(((CylinderInterior) d.withSlurry(d.slurry()).tank().interior()).diameter())
                .isCloseTo(0.750, within(1e-12));
    }

    @Test
    void circumferenceAndLengthOverHeads() throws IOException {
        Design d = design(
                "diameter: 760 mm, length: 1300 mm", "around: 94 1/4 in, over-heads: 60 in, heads: semi-ellipsoidal");
        CylinderInterior inside = (CylinderInterior) d.tank().interior();
        double bore = 94.25 * INCH / Math.PI - 0.010;
        assertThat(inside.diameter()).isCloseTo(bore, within(1e-12));
        assertThat(inside.length()).isCloseTo(60 * INCH - 0.010 - bore / 2, within(1e-9));
    }

    @Test
    void depthOfADishGivesItsKnuckle() throws IOException {
        Design plain = design("length: 1300 mm", "length: 1300 mm, heads: torispherical, knuckle: 10 %");
        double r = 0.1 * 0.76;
        double depth = 0.76 - Math.sqrt((0.76 - r) * (0.76 - r) - (0.38 - r) * (0.38 - r));
        Design dished =
                design("length: 1300 mm", "length: 1300 mm, heads: torispherical, dish-depth: " + 1000 * depth + " mm");
        assertThat(((CylinderInterior) dished.tank().interior()).knuckle()).isCloseTo(0.1, within(1e-9));
        assertThat(dished.tank().interior().solid().whole().volume())
                .isCloseTo(plain.tank().interior().solid().whole().volume(), within(1e-9));
    }

    @Test
    void bucketJarAndUsualKind() throws IOException {
        Design bucket = design("density: 1400 kg/m3", "bucket: {volume: 5 gal, full: 68 lb, empty: 2 lb}");
        assertThat(bucket.slurry().mixtureDensity()).isCloseTo(66 * 0.45359237 / (5 * 3.785411784e-3), within(1e-6));
        Design jar = design("density: 1400 kg/m3", "jar: {grit: 50 mm, all: 150 mm}");
        assertThat(jar.slurry().mixtureDensity()).isCloseTo(0.2 * 2650 + 0.8 * 1000, within(1e-9));
        Reading usual = read("density: 1400 kg/m3", "usual: hydro-excavation");
        assertThat(usual).isInstanceOf(Reading.Good.class);
        Reading.Good good = (Reading.Good) usual;
        assertThat(good.design().slurry().mixtureDensity()).isEqualTo(1496);
        assertThat(good.uncertain()).singleElement().satisfies(u -> assertThat(u.doubt())
                .isEqualTo(82));
        assertThat(((Reading.Good) good.again().with(java.util.Map.of("slurry.usual", 1600.0)))
                        .design()
                        .slurry()
                        .mixtureDensity())
                .isEqualTo(1600);
    }

    /** One pull moves the centre along; two tilts give it as it is. */
    @Test
    void hookScaleGivesTheCentre() throws IOException {
        Design plain = design();
        EmptyTank drawn = EmptyTank.of(plain, plain.tank().interior().solid());
        double weight = drawn.mass() * 9.80665;
        double dx = drawn.centroid().x() - 0.52 + 0.03;
        double dy = drawn.centroid().y() - 0.19 - 0.05;
        double arm = -0.65 - 0.52;
        double level = weight * dx / arm;
        double up = Math.toRadians(30);
        double armUp = arm * Math.cos(up) + (0.64 - 0.19) * Math.sin(up);
        double raised = weight * (dx * Math.cos(up) + dy * Math.sin(up)) / armUp;
        String one = "{at: [-650 mm, 640 mm], pull: " + level + " N}";
        String two = "{at: [-650 mm, 640 mm], pull: " + raised + " N, tilt: 30 deg}";
        Design single = design("  openings:", "  weighed: [" + one + "]\n  openings:");
        EmptyTank moved = EmptyTank.of(single, single.tank().interior().solid());
        assertThat(moved.centroid().x()).isCloseTo(drawn.centroid().x() + 0.03, within(1e-9));
        assertThat(moved.centroid().y()).isCloseTo(drawn.centroid().y(), within(1e-9));
        Design pair = design("  openings:", "  weighed: [" + one + ", " + two + "]\n  openings:");
        EmptyTank found = EmptyTank.of(pair, pair.tank().interior().solid());
        assertThat(found.centroid().x()).isCloseTo(drawn.centroid().x() + 0.03, within(1e-9));
        assertThat(found.centroid().y()).isCloseTo(drawn.centroid().y() - 0.05, within(1e-9));
        assertThat(EmptyTank.movedByHook(pair).x()).isCloseTo(0.03, within(1e-9));
        assertThat(EmptyTank.movedByHook(pair).y()).isCloseTo(-0.05, within(1e-9));
        assertThat(EmptyTank.movedByHook(plain).norm()).isZero();
    }

    /** Carried by links, the tank turns about where their lines meet, 0.1 m beside the pivot and more, and so does the pull. */
    @Test
    void aPullTellsNothingWhereLinksCarryTheTank() throws IOException {
        String swing = swap(
                Files.readString(Path.of("geometry/kerb-swing.yaml")),
                "  openings:",
                "  weighed: [{at: [-650 mm, 640 mm], pull: 854 N}]\n  openings:");
        Reading reading = DesignFile.read("swing.yaml", swing, NamedFiles.folder(Path.of("geometry")));
        assertThat(((Reading.Bad) reading).problems())
                .anySatisfy(p -> assertThat(p.text()).contains("it does not turn about the pivot"));
    }

    /** A mesh has no wall that could be taken off it. */
    @Test
    void aMeshIsNoOutside() throws IOException {
        Reading reading = read(
                "  interior: {shape: cylinder, axis: x, diameter: 760 mm, length: 1300 mm, centre: [0 mm, 640 mm, 0 mm]}",
                "  sizes: outside\n  interior: {shape: mesh, file: wash-tub.stl, unit: mm, at: [0 mm, 450 mm, 0 mm]}");
        assertThat(((Reading.Bad) reading).problems()).anySatisfy(p -> assertThat(p.text())
                .isEqualTo(
                        "silt.yaml:5:10: tank.sizes: a mesh is taken as it is; leave 'sizes' out, or draw the inside"));
    }

    @Test
    void namesAndOffsetsStandForPoints() throws IOException {
        Design d = design(
                "tipwright: 1",
                "tipwright: 1\npoints:\n  rail: [400 mm, 100 mm]\n  pivot: {above: {rail: 90 mm}, towards-dump: {rail:"
                        + " 120 mm}}\n  half: {between: [rail, pivot]}",
                "at: [520 mm, 190 mm]",
                "at: pivot",
                "centre: [0 mm, 1 m, 0 mm]",
                "centre: {above: {half: 400 mm}, z: 20 mm}");
        assertThat(d.pivot().at().x()).isCloseTo(0.52, within(1e-12));
        assertThat(d.pivot().at().y()).isCloseTo(0.19, within(1e-12));
        assertThat(d.tank().attached().get(1).centre().x()).isCloseTo(0.46, within(1e-12));
        assertThat(d.tank().attached().get(1).centre().y()).isCloseTo(0.545, within(1e-12));
        assertThat(d.tank().attached().get(1).centre().z()).isEqualTo(0.02);
    }

    /** Each piece of a cradle keeps its own outline and its own stretch across. */
    @Test
    void aCradleOfSeveralPieces() throws IOException {
        String rail = "{tube: {height: 60 mm, wall: 3 mm, from: [-400 mm, 240 mm, %1$s], to: [400 mm, 240 mm, %1$s]}}";
        Design d = design(
                "{name: hose, mass: 6 kg, centre: [0 mm, 1 m, 0 mm]}",
                "{name: rails, steel: [" + String.format(rail, "-200 mm") + ", " + String.format(rail, "200 mm")
                        + "]}");
        var sides = d.tank().attached().get(1).sides();
        assertThat(sides).hasSize(2);
        assertThat(sides.get(0).z()).containsExactly(-0.23, -0.17);
        assertThat(sides.get(1).z()).containsExactly(0.17, 0.23);
        assertThat(sides.get(0).outline()).isEqualTo(sides.get(1).outline());
    }

    /** A lid of 3/16 plate gives mass, centre and outline. */
    @Test
    void aLidOfPlate() throws IOException {
        Reading reading = read(
                "{name: hose, mass: 6 kg, centre: [0 mm, 1 m, 0 mm]}",
                "{name: lid, steel: {plate: {size: [24 in, 30 in], thickness: 3/16 plate, centre: [0 mm, 1 m, 0 mm],"
                        + " faces: y}}}");
        assertThat(reading).as(reading.toString()).isInstanceOf(Reading.Good.class);
        Reading.Good good = (Reading.Good) reading;
        var lid = good.design().tank().attached().get(1);
        assertThat(lid.mass()).isCloseTo(7850 * 24 * 30 * 3.0 / 16 * INCH * INCH * INCH, within(1e-9));
        assertThat(lid.centre().y()).isEqualTo(1);
        assertThat(lid.sides()).singleElement().satisfies(s -> assertThat(s.outline())
                .hasSize(4));
        assertThat(good.assumptions()).anySatisfy(a -> assertThat(a.path()).isEqualTo("tank.attached[2].mass"));
    }
}
