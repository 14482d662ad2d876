// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Geometry;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.check.MirrorTest;
import tipwright.check.RegressionTest;
import tipwright.check.clearance.Clearance;
import tipwright.design.Design;
import tipwright.design.tank.Wall;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Fill;
import tipwright.outline.MachineOutline.Seen;

/** The one picture of the machine against closed forms, against the tank's volume, and against its mirror image. */
class MachineOutlineTest {
    private static final String HOPPER = "{shape: prism, width: 900 mm, outline: [[-500 mm, 1.2 m], [-300 mm, 600 mm],"
            + " [200 mm, 600 mm], [500 mm, 900 mm], [500 mm, 1.2 m]]}";

    static List<String> designs() throws IOException {
        return RegressionTest.designs();
    }

    private static Design read(String file) throws IOException {
        return RegressionTest.coarse(Examples.read(Files.readString(Path.of(file))));
    }

    private static double area(List<Vec2> ring) {
        double sum = 0;
        for (int i = 0; i < ring.size(); i++) {
            sum += ring.get(i).cross(ring.get((i + 1) % ring.size()));
        }
        return Math.abs(sum) / 2;
    }

    private static double around(List<Vec2> ring) {
        double sum = 0;
        for (int i = 0; i < ring.size(); i++) {
            sum += ring.get((i + 1) % ring.size()).minus(ring.get(i)).norm();
        }
        return sum;
    }

    private static double reach(List<Vec2> corners, double x, double y) {
        return corners.stream().mapToDouble(p -> p.x() * x + p.y() * y).max().orElseThrow();
    }

    private static Seen one(List<Seen> all, PartKind kind) {
        return all.stream().filter(s -> s.kind() == kind).findFirst().orElseThrow();
    }

    /** In every direction as wide as the solid itself and its wall, at every tilt: the width does not come from the mesh. */
    @ParameterizedTest
    @MethodSource("designs")
    void tankIsAsWideAsItsSolidInEveryDirection(String file) throws IOException, CannotComputeException {
        Design design = read(file);
        if (!design.tank().outline().isEmpty()) {
            return;
        }
        Analysis analysis = Analyser.analyse(design);
        MachineOutline machine = new MachineOutline(analysis);
        Solid solid = design.tank().interior().solid();
        Wall wall = design.tank().wall();
        double thick = wall == null ? 0 : wall.thickness();
        double sag = solid.extent(new Vec3(0, 1, 0)).span() / 2000 + 2e-2 * thick + 1e-9;
        for (Pose pose : List.of(
                analysis.poses().get(0), analysis.poses().get(analysis.poses().size() - 1))) {
            var placed = pose.bodies().get(pose.tank());
            for (View view : View.values()) {
                List<Vec2> corners = one(machine.at(MachinePose.of(pose), view), PartKind.TANK)
                        .corners();
                for (int k = 0; k < 24; k++) {
                    double x = Math.cos(Math.toRadians(15 * k));
                    double y = Math.sin(Math.toRadians(15 * k));
                    Vec3 d =
                            switch (view) {
                                case SIDE -> new Vec3(x, y, 0);
                                case PLAN -> new Vec3(x, 0, y);
                                case END -> new Vec3(0, y, x);
                            };
                    Vec2 own = d.xy().tilted(-placed.turn());
                    double expected =
                            solid.extent(new Vec3(own.x(), own.y(), d.z())).high()
                                    + d.xy().dot(placed.origin())
                                    + thick;
                    assertThat(reach(corners, x, y)).as("%s %d", view, 15 * k).isCloseTo(expected, within(sag));
                }
            }
        }
    }

    /** Area times width is the volume; a wall of thickness t adds its strip and round corners (Steiner's formula for convex areas). */
    @Test
    void sideOfAPrismTimesItsWidthIsItsVolume() throws CannotComputeException {
        for (String wall : List.of("mass: {empty: 90 kg, centre: [0 m, 900 mm, 0 m]}", "wall: {thickness: 8 mm}")) {
            String yaml = swap(
                            swap(Examples.BOX, "wall: {thickness: 4 mm, density: 7850 kg/m3, yield: 700 MPa}", wall),
                            "{shape: box, size: [1 m, 1 m, 1 m], centre: [0 m, 1 m, 0 m]}",
                            HOPPER)
                    .replaceFirst(
                            "- \\{name: top.*\\}",
                            "- {name: top, rim: rectangle, width: 900 mm, height: 1 m,"
                                    + " centre: [0 m, 1.2 m, 0 m], normal: y}");
            Analysis analysis = Analyser.analyse(Examples.read(yaml));
            MachineOutline machine = new MachineOutline(analysis);
            Solid solid = analysis.design().tank().interior().solid();
            double inner = solid.whole().volume() / 0.9;
            double t = wall.startsWith("wall") ? 0.008 : 0;
            List<Vec2> ring =
                    machine.tank(MachinePose.of(analysis.poses().get(0))).get(0);
            // The strip's length is that of the inside, which is shorter than the outside by 2 pi t.
            double strip = around(ring) - 2 * Math.PI * t;
            assertThat(area(ring)).isCloseTo(inner + strip * t + Math.PI * t * t, within(1e-5));
            for (Row row : analysis.cases().get(0).rows()) {
                Fill fill = row.load().fill();
                if (fill != null && fill.slope() == null && row.load().volume() > 1e-3) {
                    List<Seen> all = machine.at(MachinePose.of(row), View.SIDE);
                    double wet = one(all, PartKind.CONTENTS).lines().stream()
                            .mapToDouble(line -> area(line.corners()))
                            .sum();
                    assertThat(0.9 * wet).isCloseTo(row.load().volume(), within(1e-6));
                }
            }
        }
    }

    /** A box's three views: the volume over each of its lengths. */
    @Test
    void threeViewsOfABox() throws CannotComputeException {
        String yaml = swap(Examples.BOX, "size: [1 m, 1 m, 1 m]", "size: [1 m, 1 m, 800 mm]")
                .replaceFirst("width: 1 m", "width: 800 mm");
        yaml = swap(
                yaml,
                "wall: {thickness: 4 mm, density: 7850 kg/m3, yield: 700 MPa}",
                "mass: {empty: 90 kg, centre: [0 m, 1 m, 0 m]}");
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        MachineOutline machine = new MachineOutline(analysis);
        MachinePose stowed = MachinePose.of(analysis.poses().get(0));
        double[] expected = {1, 0.8, 0.8};
        for (View view : View.values()) {
            List<Vec2> ring =
                    one(machine.at(stowed, view), PartKind.TANK).lines().get(0).corners();
            assertThat(area(ring)).isCloseTo(expected[view.ordinal()], within(1e-9));
        }
        Pose tipped = analysis.poses().get(analysis.poses().size() - 1);
        List<Vec2> plan = one(machine.at(MachinePose.of(tipped), View.PLAN), PartKind.TANK)
                .lines()
                .get(0)
                .corners();
        double shadow = Math.cos(tipped.tilt()) + Math.sin(tipped.tilt());
        assertThat(area(plan)).isCloseTo(0.8 * shadow, within(1e-9));
    }

    /** What the picture shows of a part that the clearance check looks at is the area that it looks at. */
    @ParameterizedTest
    @MethodSource("designs")
    void picturesShowWhatTheClearanceCheckLooksAt(String file) throws IOException, CannotComputeException {
        Analysis analysis = Analyser.analyse(read(file));
        MachineOutline machine = new MachineOutline(analysis);
        Pose pose = analysis.poses().get(analysis.poses().size() / 2);
        List<Seen> all = machine.at(MachinePose.of(pose), View.SIDE);
        for (MachinePart part : MachineParts.of(analysis)) {
            if (!part.solid() || part.basis() == MachinePart.Basis.LEAST) {
                continue;
            }
            Geometry looked = part.form().within(ZRange.ALL);
            boolean found = all.stream()
                    .filter(s -> s.kind() == part.kind() && s.name().equals(part.name()) && !s.sketched())
                    .anyMatch(
                            s -> Math.abs(area(s.lines().get(0)) - looked.getArea()) < 1e-9 + 1e-6 * looked.getArea());
            assertThat(found
                            || looked.getNumGeometries() > 1
                            || !looked.getEnvelope().isValid())
                    .as(part.name())
                    .isTrue();
        }
        Set<String> shown = Set.copyOf(all.stream().map(Seen::name).toList());
        for (Clearance.Gap gap : Clearance.of(analysis)) {
            assertThat(shown).contains(gap.moving(), gap.other());
        }
    }

    private static double area(Contour line) {
        return line instanceof Contour.Circle c
                ? OutlineGeometry.disc(c.centre(), c.radius()).getArea()
                : area(line.corners());
    }

    /** Of two wheels the first is at the other side then. */
    private static Seen twin(List<Seen> all, Seen of) {
        String name = of.name().equals("wheel 1") ? "wheel 2" : of.name().equals("wheel 2") ? "wheel 1" : of.name();
        return all.stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
    }

    /** Left and right exchanged: the same from the side, the other way round from above. */
    @ParameterizedTest
    @MethodSource("designs")
    void mirrorImageIsTheMirrorImage(String file)
            throws IOException, CannotComputeException, ReflectiveOperationException {
        Design design = read(file);
        Analysis here = Analyser.analyse(design);
        Analysis there = Analyser.analyse(MirrorTest.mirrored(design));
        int last = here.poses().size() - 1;
        for (View view : View.values()) {
            List<Seen> a =
                    new MachineOutline(here).at(MachinePose.of(here.poses().get(last)), view);
            List<Seen> b =
                    new MachineOutline(there).at(MachinePose.of(there.poses().get(last)), view);
            assertThat(b.stream().map(Seen::name))
                    .isEqualTo(a.stream().map(Seen::name).toList());
            Vec2 sense = new Vec2(view == View.END ? -1 : 1, view == View.PLAN ? -1 : 1);
            for (int i = 0; i < a.size(); i++) {
                boolean madeUp = a.get(i).sketched() || a.get(i).kind() == PartKind.GROUND;
                for (Vec2 d : List.of(new Vec2(1, 0), new Vec2(0, 1), new Vec2(-1, 0), new Vec2(0, -1))) {
                    double first = reach(a.get(i).corners(), d.x(), d.y());
                    Seen other = a.get(i).kind() == PartKind.WHEEL ? twin(b, a.get(i)) : b.get(i);
                    double second = reach(other.corners(), sense.x() * d.x(), sense.y() * d.y());
                    assertThat(second)
                            .as(view + " " + a.get(i).name())
                            .isCloseTo(first, within(madeUp ? 0.25 * Math.abs(first) + 0.2 : 1e-6));
                }
            }
        }
    }

    /** A tube that the design gives is as long as it says and starts at its pin; the pin of the rod is its end. */
    @Test
    void actuatorIsWhereItsPinsAre() throws CannotComputeException {
        String yaml = swap(
                Examples.BOX,
                "push: 12 kN, pull: 12 kN",
                "push: 12 kN, pull: 12 kN, rod: {diameter: 40 mm},"
                        + " tube: {outside: 80 mm, inside: 70 mm, length: 700 mm}");
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        MachineOutline machine = new MachineOutline(analysis);
        for (Pose pose : analysis.poses()) {
            List<Seen> all = machine.at(MachinePose.of(pose), View.SIDE);
            Vec2 u = pose.tankPin().minus(pose.framePin()).unit();
            List<Vec2> tube = one(all, PartKind.TUBE).corners();
            assertThat(reach(tube, u.x(), u.y()) - u.dot(pose.framePin())).isCloseTo(0.7, within(1e-9));
            assertThat(area(tube)).isCloseTo(0.7 * 0.08, within(1e-9));
            List<Vec2> rod = one(all, PartKind.ROD).corners();
            assertThat(reach(rod, u.x(), u.y())).isCloseTo(u.dot(pose.tankPin()), within(1e-9));
            assertThat(reach(rod, -u.x(), -u.y()) + u.dot(pose.framePin()))
                    .as("never beyond the tube's pin")
                    .isLessThan(1e-9);
        }
    }

    /** A stand is made up where no frame is given, and only there; whatever is made up says so. */
    @Test
    void whatIsMadeUpIsMarked() throws CannotComputeException {
        MachineOutline bare = new MachineOutline(Analyser.analyse(Examples.read(Examples.BOX)));
        assertThat(bare.parts().stream().filter(p -> p.kind() == PartKind.STAND))
                .hasSize(1)
                .allMatch(p -> p.basis() == MachinePart.Basis.SKETCHED && !p.solid());
        MachineOutline framed = new MachineOutline(Analyser.analyse(Examples.read(Examples.BOX
                + "frame: {members: [{name: rail, outline: [[-1 m, -1 m], [1 m, -1 m], [1 m, -900 mm]]}]}\n")));
        assertThat(framed.parts().stream().map(MachinePart::kind))
                .contains(PartKind.FRAME)
                .doesNotContain(PartKind.STAND);
        assertThat(Stream.concat(bare.parts().stream(), framed.parts().stream())
                        .filter(p -> p.kind() == PartKind.CRADLE || p.kind() == PartKind.BEARING))
                .hasSize(6)
                .allMatch(p -> p.basis() == MachinePart.Basis.SKETCHED);
    }

    /** A door with its hinge above hangs straight down from it, 14 degrees ajar, once its opening is open. */
    @Test
    void doorHangsFromItsHinge() throws CannotComputeException {
        String door = ", opens-at: 20 deg, door: {hinge: [500 mm, 1.5 m, 0 m], latch: [500 mm, 500 mm, 0 m]}}";
        String yaml = Examples.BOX.replaceFirst(
                "- \\{name: top.*\\}",
                "- {name: rear, rim: rectangle, width: 1 m, height: 1 m, centre: [500 mm, 1 m, 0 m], normal: x" + door);
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        MachineOutline machine = new MachineOutline(analysis);
        for (Pose pose : analysis.poses()) {
            List<Vec2> plate = one(machine.at(MachinePose.of(pose), View.SIDE), PartKind.DOOR)
                    .corners();
            double turn = Math.toDegrees(pose.tilt());
            // How far the plate leans from upright: along its longest side.
            double leans = leaning(plate);
            boolean open = turn > 20 - 1e-9;
            assertThat(leans).as("at %s deg", turn).isCloseTo(open ? -14 : turn, within(0.01));
            List<Vec2> shut = one(machine.at(MachinePose.of(pose).doorsShut(), View.SIDE), PartKind.DOOR)
                    .corners();
            assertThat(leaning(shut)).isCloseTo(turn, within(0.01));
        }
    }

    /** Degrees clockwise from upright of the longest side. */
    private static double leaning(List<Vec2> ring) {
        Vec2 longest = Vec2.ZERO;
        for (int i = 0; i < ring.size(); i++) {
            Vec2 side = ring.get((i + 1) % ring.size()).minus(ring.get(i));
            longest = side.norm() > longest.norm() ? side : longest;
        }
        Vec2 up = longest.y() < 0 ? longest.times(-1) : longest;
        return Math.toDegrees(Math.atan2(up.x(), up.y()));
    }
}
