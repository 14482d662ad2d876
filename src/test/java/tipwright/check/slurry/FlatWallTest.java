// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.tank.Wall;
import tipwright.geometry.Vec3;
import tipwright.quantity.Text;
import tipwright.strength.PlateUnderPressure;
import tipwright.strength.PlateUnderPressure.Edge;
import tipwright.strength.StiffenedWall;

/** Which flat walls a tank has, how they are held, and what presses on them. */
class FlatWallTest {
    private static final double G = 9.80665;
    private static final String SIZE = "interior: {shape: box, size: [1 m, 1 m, 1 m], centre: [0 m, 1 m, 0 m]}";
    private static final String WALL = "wall: {thickness: 4 mm, density: 7850 kg/m3, yield: 700 MPa}";
    private static final String BOX = swap(Examples.BOX, "80 deg", "10 deg");
    private static final Wall PLAIN = new Wall(0.004, 7850, 700e6, null, null);

    private static List<FlatWall> of(String yaml) {
        return FlatWall.of(Examples.read(yaml).tank());
    }

    private static FlatWall named(List<FlatWall> all, String name) {
        return all.stream().filter(w -> w.name().equals(name)).findFirst().orElseThrow();
    }

    private static Vec3 at(double x, double y, double z) {
        return new Vec3(x, y, z);
    }

    /** 1.5 m long, 0.5 m high, 1 m wide, its middle off the origin. */
    @Test
    void theWallsOfABox() {
        String yaml = swap(
                BOX,
                SIZE,
                "interior: {shape: box, size: [1500 mm, 500 mm, 1000 mm], centre: [250 mm, 1 m, 125 mm]}",
                "- {name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m], normal: y}",
                "- {name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [250 mm, 1250 mm, 125 mm], normal: y}");
        assertThat(of(yaml))
                .containsExactly(
                        new FlatWall(
                                "bottom 1",
                                List.of(at(-0.5, 0.75, -0.375), at(-0.5, 0.75, 0.625)),
                                List.of(at(1, 0.75, -0.375), at(1, 0.75, 0.625)),
                                false),
                        new FlatWall(
                                "wall 2",
                                List.of(at(1, 0.75, -0.375), at(1, 0.75, 0.625)),
                                List.of(at(1, 1.25, -0.375), at(1, 1.25, 0.625)),
                                true),
                        new FlatWall(
                                "wall 4",
                                List.of(at(-0.5, 0.75, -0.375), at(-0.5, 0.75, 0.625)),
                                List.of(at(-0.5, 1.25, -0.375), at(-0.5, 1.25, 0.625)),
                                true),
                        new FlatWall(
                                "sides",
                                List.of(
                                        at(-0.5, 0.75, -0.375),
                                        at(1, 0.75, -0.375),
                                        at(-0.5, 0.75, 0.625),
                                        at(1, 0.75, 0.625)),
                                List.of(
                                        at(-0.5, 1.25, -0.375),
                                        at(1, 1.25, -0.375),
                                        at(-0.5, 1.25, 0.625),
                                        at(1, 1.25, 0.625)),
                                true));
        List<FlatWall> closed = FlatWall.closed(Examples.read(yaml).tank());
        assertThat(closed).extracting(FlatWall::name).containsExactly("bottom 1", "wall 2", "lid 3", "wall 4", "sides");
        assertThat(closed).noneMatch(FlatWall::free);
        String vented = swap(yaml, "openings:", "vent: {diameter: 50 mm}\n  openings:");
        assertThat(of(vented)).extracting(FlatWall::name).containsExactly("bottom 1", "wall 2", "wall 4", "sides");
        assertThat(of(vented)).noneMatch(FlatWall::free);
    }

    /** Told clockwise or the other way round; only what reaches the upper edge is free there, and no steep roof is a wall. */
    @Test
    void theWallsOfAHopperWhicheverWayItIsDrawn() {
        String corners = "[-500 mm, 500 mm], [300 mm, 500 mm], [500 mm, 900 mm], [500 mm, 1500 mm], [-500 mm, 1500 mm]";
        String back = "[-500 mm, 1500 mm], [500 mm, 1500 mm], [500 mm, 900 mm], [300 mm, 500 mm], [-500 mm, 500 mm]";
        String prism = "interior: {shape: prism, outline: [%s], width: 1 m, z: 250 mm}";
        String shifted = swap(BOX, "centre: [0 m, 1.5 m, 0 m]", "centre: [0 m, 1.5 m, 250 mm]");
        List<FlatWall> one = of(swap(shifted, SIZE, prism.formatted(corners)));
        List<FlatWall> other = of(swap(shifted, SIZE, prism.formatted(back)));
        assertThat(one)
                .extracting(FlatWall::name)
                .containsExactly("bottom 1", "wall 2", "wall 3", "wall 5", "sides")
                .doesNotContain("lid 4");
        assertThat(one).extracting(FlatWall::free).containsExactly(false, false, true, true, true);
        assertThat(other).extracting(FlatWall::name).containsExactly("wall 2", "wall 3", "bottom 4", "wall 5", "sides");
        assertThat(other).extracting(FlatWall::free).containsExactly(true, false, false, true, true);
        FlatWall end = named(one, "wall 3");
        assertThat(end.bottom()).containsExactly(at(0.5, 0.9, -0.25), at(0.5, 0.9, 0.75));
        assertThat(end.top()).containsExactly(at(0.5, 1.5, -0.25), at(0.5, 1.5, 0.75));
        assertThat(named(other, "wall 2").bottom()).isEqualTo(end.bottom());
        assertThat(named(other, "sides")).isEqualTo(named(one, "sides"));
    }

    /** Steeper than some 45 degrees it is a wall; a step half way up is not free. */
    @Test
    void aStepIsHeldByWhatStandsOnIt() {
        String stepped = "interior: {shape: prism, outline: [[-500 mm, 500 mm], [200 mm, 500 mm], [200 mm, 1 m],"
                + " [500 mm, 1 m], [500 mm, 1500 mm], [-500 mm, 1500 mm]], width: 1 m}";
        List<FlatWall> all = of(swap(BOX, SIZE, stepped));
        assertThat(all)
                .extracting(FlatWall::name)
                .containsExactly("bottom 1", "wall 2", "bottom 3", "wall 4", "wall 6", "sides");
        assertThat(all).extracting(FlatWall::free).containsExactly(false, false, false, true, true, true);
    }

    @Test
    void aRoundTankHasNone() throws CannotComputeException {
        String round = swap(
                BOX, SIZE, "interior: {shape: cylinder, axis: x, diameter: 1 m, length: 1 m, centre: [0 m, 1 m, 0 m]}");
        assertThat(of(round)).isEmpty();
        assertThat(new FlatWallCheck().run(Analyser.analyse(Examples.read(round))))
                .isEmpty();
    }

    private static PlateUnderPressure steel(double width, Edge held, Edge top) {
        return PlateUnderPressure.steel(width, 1, 0.004, held, held, top);
    }

    /** A rim of tube 60 by 40 mm, 3 mm thick, lying so that 40 mm stand square to the wall. */
    @Test
    void theWallIsTakenFreeToTurnAndHeld() {
        FlatWall end = named(of(BOX), "wall 2");
        assertThat(end.plates(PLAIN))
                .containsExactly(steel(1, Edge.SUPPORTED, Edge.FREE), steel(1, Edge.CLAMPED, Edge.FREE));
        Wall.Rim rim = new Wall.Rim(0.06, 0.04, 0.003);
        Wall rimmed = new Wall(0.004, 7850, 700e6, null, rim);
        double inertia = (0.06 * Math.pow(0.04, 3) - 0.054 * Math.pow(0.034, 3)) / 12;
        List<PlateUnderPressure> held = end.plates(rimmed);
        assertThat(held).extracting(PlateUnderPressure::top).containsExactly(Edge.FREE, Edge.FREE);
        for (PlateUnderPressure plate : held) {
            assertThat(plate.rim()).isCloseTo(200e9 * inertia, within(1e-6));
        }
        // the bottom has no upper edge for it
        assertThat(named(of(BOX), "bottom 1").plates(rimmed))
                .containsExactly(steel(1, Edge.SUPPORTED, Edge.SUPPORTED), steel(1, Edge.CLAMPED, Edge.CLAMPED));
        Wall stiff = new Wall(0.004, 7850, 700e6, new Wall.Stiffeners(0.25, 0.006, 0.05), null);
        assertThat(end.plates(stiff).get(0)).isEqualTo(steel(0.25, Edge.SUPPORTED, Edge.FREE));
        Wall wide = new Wall(0.004, 7850, 700e6, new Wall.Stiffeners(2, 0.006, 0.05), null);
        assertThat(end.plates(wide).get(0)).isEqualTo(steel(1, Edge.SUPPORTED, Edge.FREE));
    }

    /** An open edge without a rim holds no stiffener: it stands out from the bottom, as half of a beam twice as long. */
    @Test
    void stiffenersReachFromTheBottomToWhatHoldsThem() {
        FlatWall end = named(of(BOX), "wall 2");
        Wall.Stiffeners bars = new Wall.Stiffeners(0.25, 0.006, 0.05);
        Wall.Rim rim = new Wall.Rim(0.06, 0.04, 0.003);
        StiffenedWall free = Objects.requireNonNull(end.stiffened(new Wall(0.004, 7850, 700e6, bars, null)));
        assertThat(free.span()).isEqualTo(2);
        assertThat(free.spacing()).isEqualTo(0.25);
        assertThat(free.wall()).isEqualTo(0.004);
        assertThat(free.bar().area()).isCloseTo(0.0003, within(1e-15));
        assertThat(Objects.requireNonNull(end.stiffened(new Wall(0.004, 7850, 700e6, bars, rim)))
                        .span())
                .isEqualTo(1);
        FlatWall bottom = named(of(BOX), "bottom 1");
        assertThat(Objects.requireNonNull(bottom.stiffened(new Wall(0.004, 7850, 700e6, bars, null)))
                        .span())
                .isEqualTo(1);
        assertThat(end.stiffened(PLAIN)).isNull();
        Wall.Stiffeners one = new Wall.Stiffeners(1, 0.006, 0.05);
        assertThat(end.stiffened(new Wall(0.004, 7850, 700e6, one, null))).isNull();
    }

    private static Analysis stowed(String yaml, String load) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        return analysis.with(analysis.cases().stream()
                .filter(c -> c.name().equals(load))
                .map(c -> new CaseResult(c.load(), c.rows().subList(0, 1)))
                .toList());
    }

    /** The deeper of the corners: even what stands over the upper edge, rising what is more at the lower. */
    @Test
    void whatPressesOnAWall() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(swap(BOX, "fill: 100 %", "fill: 60 %")));
        CaseResult held = analysis.cases().stream()
                .filter(c -> c.name().equals("held"))
                .findFirst()
                .orElseThrow();
        Row upright = held.rows().get(0);
        List<FlatWall> walls = of(BOX);
        assertThat(named(walls, "wall 2").pressures(upright, 1000)[0]).isZero();
        assertThat(named(walls, "wall 2").pressures(upright, 1000)[1]).isCloseTo(600, within(1e-6));
        assertThat(named(walls, "bottom 1").pressures(upright, 1000)[0]).isCloseTo(600, within(1e-6));
        assertThat(named(walls, "bottom 1").pressures(upright, 1000)[1]).isCloseTo(0, within(1e-6));
        // tilted by a, 0.6 m in the middle: cos a (0.6 + tan a / 2) at the dump end, minus at the other
        Row tilted = held.rows().get(10);
        double a = tilted.tilt();
        double front = 1000 * Math.cos(a) * (0.6 + Math.tan(a) / 2);
        double back = 1000 * Math.cos(a) * (0.6 - Math.tan(a) / 2);
        assertThat(named(walls, "bottom 1").pressures(tilted, 1000)[0]).isCloseTo(back, within(1e-6));
        assertThat(named(walls, "bottom 1").pressures(tilted, 1000)[1]).isCloseTo(front - back, within(1e-6));
        Row empty = stowed(BOX, "empty").cases().get(0).rows().get(0);
        assertThat(named(walls, "bottom 1").pressures(empty, 1000)).containsExactly(0, 0);
    }

    private static Finding find(List<Finding> all, String id) {
        return all.stream()
                .filter(f -> f.id().equals("flat-wall/" + id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(all.toString()));
    }

    private static double most(double low, double high, PlateUnderPressure... plates) {
        double most = 0;
        for (PlateUnderPressure plate : plates) {
            most = Math.max(most, FlatWallCheck.governing(plate.under(low, high)));
        }
        return most;
    }

    /** Full and stowed, 1400 kg/m3 press with rho g h: all over the bottom, falling to nothing up the walls. */
    @Test
    void theWorseOfFreeAndHeldCounts() throws CannotComputeException {
        List<Finding> all = new FlatWallCheck().run(stowed(BOX, "draining"));
        assertThat(all)
                .extracting(Finding::id)
                .containsExactly("flat-wall/bottom-1", "flat-wall/wall-2", "flat-wall/wall-4", "flat-wall/sides");
        double p = 1400 * G;
        double end = most(p, 0, steel(1, Edge.SUPPORTED, Edge.FREE), steel(1, Edge.CLAMPED, Edge.FREE));
        double bottom = most(p, p, steel(1, Edge.SUPPORTED, Edge.SUPPORTED), steel(1, Edge.CLAMPED, Edge.CLAMPED));
        assertThat(find(all, "wall-2").demand()).isCloseTo(end, within(1e-6 * end));
        assertThat(find(all, "bottom-1").demand()).isCloseTo(bottom, within(1e-6 * bottom));
        assertThat(find(all, "bottom-1").capacity()).isEqualTo(700e6);
        assertThat(find(all, "bottom-1").title()).isEqualTo("Flat walls, bottom 1: bending");
        double moved = steel(1, Edge.SUPPORTED, Edge.SUPPORTED).under(p, p).moved();
        assertThat(find(all, "bottom-1").note().metric())
                .isEqualTo(FlatWallCheck.bends(moved, PLAIN).metric());
        double out = steel(1, Edge.SUPPORTED, Edge.FREE).under(p, 0).moved();
        assertThat(find(all, "wall-2").note().metric())
                .isEqualTo(FlatWallCheck.bends(out, PLAIN).metric());
    }

    /** A triangle of pressure on a beam that stands out 1 m: as on half of one 2 m long. */
    @Test
    void stiffenersBendUnderTheSlurry() throws CannotComputeException {
        String stiff = swap(
                BOX, "yield: 700 MPa", "yield: 700 MPa, stiffeners: {spacing: 250 mm, thickness: 6 mm, height: 50 mm}");
        List<Finding> all = new FlatWallCheck().run(stowed(stiff, "draining"));
        Wall wall = Objects.requireNonNull(Examples.read(stiff).tank().wall());
        StiffenedWall bottom =
                Objects.requireNonNull(named(of(stiff), "bottom 1").stiffened(wall));
        // all over alike: w l^2 / 8
        double moment = 1400 * G * 0.25 / 8;
        assertThat(find(all, "bottom-1-stiffener").demand())
                .isCloseTo(moment / bottom.modulusOfSection(), within(1e-6 * moment / bottom.modulusOfSection()));
        // falling to nothing over the 2 m that are taken: w l^2 / (9 sqrt 3)
        double most = 1400 * G * 0.25 * 4 / (9 * Math.sqrt(3));
        assertThat(find(all, "wall-2-stiffener").demand())
                .isCloseTo(most / bottom.modulusOfSection(), within(1e-6 * most / bottom.modulusOfSection()));
        assertThat(find(all, "wall-2-stiffener").note())
                .isEqualTo(Text.words("bending of a stiffener with the wall beside it"));
        assertThat(all).hasSize(8);
    }

    @Test
    void whatTheWallIsMadeOfMayBeMissing() throws CannotComputeException {
        String weighed = swap(BOX, WALL, "mass: {empty: 200 kg, centre: [0 mm, 900 mm, 0 mm]}");
        List<Finding> all = new FlatWallCheck().run(stowed(weighed, "draining"));
        assertThat(all).hasSize(1);
        assertThat(all.get(0).missing()).isTrue();
        assertThat(all.get(0).note()).isEqualTo(Text.words("tank.wall missing"));
    }

    @Test
    void aLongWallIsOutOfTheRule() throws CannotComputeException {
        String narrow = swap(BOX, "size: [1 m, 1 m, 1 m]", "size: [1 m, 1 m, 0.12 m]", "width: 1 m", "width: 100 mm");
        List<Finding> all = new FlatWallCheck().run(stowed(narrow, "draining"));
        Finding end = find(all, "wall-2");
        assertThat(end.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(end.missing()).isFalse();
        assertThat(end.note().metric()).startsWith("out of the rule's range: height over width of the wall");
        assertThat(find(all, "sides").verdict()).isNotEqualTo(Verdict.NOT_CHECKED);
    }

    /** More than half its thickness is told. */
    @Test
    void howFarAWallGivesWay() {
        Wall wall = new Wall(0.0625, 7850, 235e6, null, null);
        assertThat(FlatWallCheck.bends(0.03125, wall).metric()).isEqualTo("bends by 31.3 mm");
        assertThat(FlatWallCheck.bends(0.0313, wall).metric())
                .isEqualTo(
                        "bends by 31.3 mm, more than half its thickness: it then also carries by stretching, so it is"
                                + " stronger than shown here");
    }
}
