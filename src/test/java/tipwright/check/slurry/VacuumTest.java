// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.check.Dumps;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.quantity.Text;
import tipwright.time.Timing;

/** Tanks under vacuum: what governs, what is missing, and the figures of shells, ends and walls by their formulas. E of steel 200 GPa. */
class VacuumTest {
    private static final double E = 200e9;
    private static final String INTERIOR = "interior: {shape: box, size: [1 m, 1 m, 1 m], centre: [0 m, 1 m, 0 m]}";
    private static final String WALL = "wall: {thickness: 4 mm, density: 7850 kg/m3, yield: 700 MPa}";
    private static final String TOP =
            "- {name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m]," + " normal: y}";
    private static final String DOOR =
            "- {name: end, rim: rectangle, width: 200 mm, height: 200 mm, centre: [500 mm, 1 m," + " 0 mm], normal: x}";
    private static final String BOX = swap(Examples.BOX, TOP, DOOR, "80 deg", "10 deg");
    private static final String ROUND = swap(
            BOX,
            INTERIOR,
            "interior: {shape: cylinder, axis: x, diameter: 1 m, length: 1.2 m, heads: HEADS, centre: [0 m, 1 m, 0 m]}");
    /** 1 kPa at most, at 5 degrees of tilt. */
    private static final Timing KILOPASCAL =
            Dumps.draining(Dumps.running(0, 0, 1, 0.01, 400, 1), Dumps.running(1, 0.0875, 0.9, 0.01, 1000, 1));

    private static String round(String heads) {
        return swap(ROUND, "HEADS", heads);
    }

    private static String with(String yaml, String tank) {
        return swap(yaml, "openings:", tank + "\n  openings:");
    }

    private static List<Finding> run(String yaml, Timing timing) throws CannotComputeException {
        return new VacuumCheck().run(Analyser.analyse(Examples.read(yaml)), timing);
    }

    private static Finding of(List<Finding> all, String part) {
        return all.stream()
                .filter(f -> f.id().equals("vacuum/" + part))
                .findFirst()
                .orElseThrow(() -> new AssertionError(all.toString()));
    }

    @Test
    void anOpenTankHasNone() throws CannotComputeException {
        assertThat(run(BOX, KILOPASCAL)).isEmpty();
    }

    @Test
    void aVentAloneAsksForTheTime() throws CannotComputeException {
        String vented = with(BOX, "vent: {diameter: 50 mm}");
        Finding untold = run(vented, Dumps.UNKNOWN).get(0);
        assertThat(untold.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(untold.note()).isEqualTo(Text.words("actuator.speed missing"));
        assertThat(run(vented, Dumps.UNKNOWN)).hasSize(1);
        assertThat(run(vented, KILOPASCAL)).noneMatch(f -> f.id().equals("vacuum/door"));
    }

    /** Windenburg and Trilling's short form and the long one, with the straight shell and a third of both heads' depth. */
    private static double shell(double wall, double length) {
        double outside = 1 + 2 * wall;
        double slender = wall / outside;
        double few = 2.42
                * E
                * Math.pow(slender, 2.5)
                / Math.pow(0.91, 0.75)
                / (length / outside - 0.45 * Math.sqrt(slender));
        return Math.max(few, 2 * E / 0.91 * Math.pow(slender, 3)) / 3;
    }

    /** Flat ends are no part of the length; half an ellipse is a quarter of the diameter deep. */
    @Test
    void theShellCavesInUnderTheWorstOfBoth() throws CannotComputeException {
        Finding drained = of(run(with(round("flat"), "vent: {diameter: 50 mm}"), KILOPASCAL), "shell");
        assertThat(drained.title()).isEqualTo("Tank under vacuum: shell");
        assertThat(drained.demand()).isEqualTo(1000);
        assertThat(drained.worst()).isEqualTo(new Extreme(1000, 0.0875, "draining", MotionDirection.RAISING));
        assertThat(drained.capacity()).isCloseTo(shell(0.004, 1.2), within(1e-6 * drained.capacity()));
        assertThat(drained.note()).isEqualTo(Text.words("a third of what caves it in; while it drains"));
        Finding dished = of(run(with(round("semi-ellipsoidal"), "vent: {diameter: 50 mm}"), KILOPASCAL), "shell");
        assertThat(dished.capacity()).isCloseTo(shell(0.004, 1.2 + 0.5 / 3), within(1e-6 * dished.capacity()));
    }

    /** Filled by suction: as much as that, unless it drains faster; what is as much counts as suction. */
    @ParameterizedTest
    @CsvSource({"900 Pa, 1000, drains", "1000 Pa, 1000, suction", "1100 Pa, 1100, suction"})
    void suctionOrDraining(String suction, double worst, String when) throws CannotComputeException {
        String yaml = with(round("flat"), "vent: {diameter: 50 mm}\n  suction: " + suction);
        Finding shell = of(run(yaml, KILOPASCAL), "shell");
        assertThat(shell.demand()).isCloseTo(worst, within(1e-9));
        assertThat(shell.note().metric()).contains(when);
        assertThat(Double.isNaN(shell.tilt())).isEqualTo(when.equals("suction"));
    }

    /** Without a time what it is filled by counts all the same. */
    @Test
    void suctionNeedsNoTime() throws CannotComputeException {
        List<Finding> all = run(with(round("flat"), "suction: 30 kPa"), Dumps.UNKNOWN);
        assertThat(of(all, "shell").demand()).isEqualTo(30_000);
        assertThat(all.get(0).id()).isEqualTo("vacuum/door");
    }

    @Test
    void withoutAVentSuctionHoldsTheDoorShut() throws CannotComputeException {
        for (String vent : List.of("suction: 30 kPa", "vent: {diameter: 0 mm}\n  suction: 30 kPa")) {
            Finding door = of(run(with(BOX, vent), KILOPASCAL), "door");
            assertThat(door.verdict()).isEqualTo(Verdict.FAIL);
            assertThat(door.demand()).isEqualTo(30_000);
            assertThat(door.capacity()).isZero();
            assertThat(door.utilisation()).isEqualTo(Double.POSITIVE_INFINITY);
            assertThat(door.note())
                    .isEqualTo(Text.words(
                            "filled by suction and without a vent: the vacuum holds the door shut while it tips"));
        }
        Finding open = of(run(with(BOX, "vent: {diameter: 1 mm}\n  suction: 30 kPa"), KILOPASCAL), "door");
        assertThat(open.verdict()).isEqualTo(Verdict.PASS);
        assertThat(open.capacity()).isEqualTo(30_000);
        assertThat(open.utilisation()).isZero();
        assertThat(open.note())
                .isEqualTo(Text.words("air gets in through the vent once its valve is open: open it before the door"));
    }

    /** 0.0625 E (t/R)^2 with the crown's outer radius: half the diameter, 0.9 of it, or as given. */
    @ParameterizedTest
    @CsvSource({"hemispherical, 0.404", "semi-ellipsoidal, 0.724", "torispherical, 0.804"})
    void dishedEndsByTheirCrown(String head, double crown) throws CannotComputeException {
        String slim = swap(round(head), "diameter: 1 m", "diameter: 800 mm");
        List<Finding> all = run(with(slim, "vent: {diameter: 50 mm}"), KILOPASCAL);
        Finding end = of(all, "dished-end");
        assertThat(end.capacity()).isCloseTo(0.0625 * E * Math.pow(0.004 / crown, 2), within(1e-6 * end.capacity()));
        assertThat(end.demand()).isEqualTo(1000);
        assertThat(all).hasSize(2);
    }

    /** Free to turn at its rim: sigma = 3 (3 + nu) / 8 p (r/t)^2 in the middle; a unit pressure bends it by under half its thickness. */
    @Test
    void aFlatEndBends() throws CannotComputeException {
        List<Finding> all = run(with(round("[flat, semi-ellipsoidal]"), "vent: {diameter: 50 mm}"), KILOPASCAL);
        assertThat(all).extracting(Finding::id).containsExactly("vacuum/shell", "vacuum/flat-end", "vacuum/dished-end");
        Finding end = of(all, "flat-end");
        double stress = 3 * 3.3 / 8 * 1000 * Math.pow(0.5 / 0.004, 2);
        assertThat(end.demand()).isCloseTo(stress, within(1e-6 * stress));
        assertThat(end.capacity()).isEqualTo(700e6);
        // w = (5 + nu) / (1 + nu) p r^4 / (64 D) is 3.4 mm here, more than half of 4 mm
        assertThat(end.note().metric())
                .isEqualTo(
                        "bending of the flat end; it gives way by more than half its thickness, where the figure is on"
                                + " the safe side");
        Timing gentle = Dumps.draining(Dumps.running(0, 0, 1, 0.01, 500, 1));
        assertThat(of(run(with(round("flat"), "vent: {diameter: 50 mm}"), gentle), "flat-end")
                        .note())
                .isEqualTo(Text.words("bending of the flat end, free to turn at its rim"));
    }

    @Test
    void aThickShellIsOutOfTheRule() throws CannotComputeException {
        Finding shell = of(
                run(with(swap(round("flat"), "thickness: 4 mm", "thickness: 60 mm"), "suction: 30 kPa"), KILOPASCAL),
                "shell");
        assertThat(shell.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(shell.missing()).isFalse();
        assertThat(shell.note().metric()).startsWith("out of the rule's range: wall over diameter");
    }

    @Test
    void withoutAWallItIsMissing() throws CannotComputeException {
        String weighed = swap(BOX, WALL, "mass: {empty: 200 kg, centre: [0 mm, 900 mm, 0 mm]}");
        Finding wall = of(run(with(weighed, "suction: 30 kPa"), KILOPASCAL), "wall");
        assertThat(wall.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(wall.missing()).isTrue();
        assertThat(wall.note()).isEqualTo(Text.words("tank.wall missing"));
    }

    @Test
    void wallsOfAMeshAreNotKnown() throws CannotComputeException {
        String mesh =
                swap(BOX, INTERIOR, "interior: {shape: mesh, file: wash-tub.stl, unit: mm, at: [0 mm, 450 mm, 0 mm]}");
        List<Finding> all = run(with(swap(mesh, DOOR, "[]"), "suction: 30 kPa"), KILOPASCAL);
        assertThat(all).hasSize(2);
        Finding wall = of(all, "wall");
        assertThat(wall.missing()).isFalse();
        assertThat(wall.note()).isEqualTo(Text.words("the inside is a mesh; its walls are not known one by one"));
    }

    /**
     * A square plate, 1 m: clamped M = 0.0513 p a^2 at the edge; free to turn M = 0.0479 p a^2, and a twist of 0.0325 p a^2 at its corners,
     * sqrt(3) times as much as an equivalent stress (Timoshenko's tables, from memory); the last is the most.
     */
    @Test
    void everyWallOfAClosedBoxBendsInward() throws CannotComputeException {
        List<Finding> all = run(with(BOX, "vent: {diameter: 50 mm}"), KILOPASCAL);
        assertThat(all)
                .extracting(Finding::id)
                .containsExactly("vacuum/bottom-1", "vacuum/wall-2", "vacuum/lid-3", "vacuum/wall-4", "vacuum/sides");
        double stress = Math.sqrt(3) * 6 * 0.0325 * 1000 / (0.004 * 0.004);
        for (Finding f : all) {
            assertThat(f.demand()).isCloseTo(stress, within(0.02 * stress));
            assertThat(f.capacity()).isEqualTo(700e6);
            assertThat(f.utilisation()).isCloseTo(f.demand() * f.factor() / 700e6, within(1e-12));
            // w = 0.00406 p a^4 / D = 3.5 mm
            assertThat(f.note().metric()).startsWith("pressed in by the vacuum; bends by 3.5 mm, more than half");
        }
        assertThat(of(
                                run(
                                        with(BOX, "vent: {diameter: 50 mm}"),
                                        Dumps.draining(Dumps.running(0, 0, 1, 0, 0, 1))),
                                "sides")
                        .demand())
                .isZero();
    }

    /**
     * Bars 50 by 6 mm every 250 mm carry 1 m: M = p s l^2 / 8. The wall helps with 15 t sqrt(235 / 700) on each side, 69.5 mm of 4 mm.
     */
    @Test
    void stiffenersBendWithTheWallBesideThem() throws CannotComputeException {
        String stiff = swap(
                with(BOX, "vent: {diameter: 50 mm}"),
                "yield: 700 MPa",
                "yield: 700 MPa, stiffeners: {spacing: 250 mm, thickness: 6 mm, height: 50 mm}");
        List<Finding> all = run(stiff, KILOPASCAL);
        Finding beam = of(all, "lid-3-stiffener");
        double bar = 0.05 * 0.006;
        double wide = 30 * 0.004 * Math.sqrt(235.0 / 700);
        double strip = wide * 0.004;
        // from the wall's face on the bar's side
        double y = (bar * 0.025 - strip * 0.002) / (bar + strip);
        double inertia = bar * 0.05 * 0.05 / 12
                + bar * Math.pow(0.025 - y, 2)
                + strip * 0.004 * 0.004 / 12
                + strip * Math.pow(y + 0.002, 2);
        double stress = 1000 * 0.25 / 8 * Math.max(0.05 - y, y + 0.004) / inertia;
        assertThat(beam.demand()).isCloseTo(stress, within(1e-6 * stress));
        assertThat(beam.capacity()).isEqualTo(700e6);
        assertThat(beam.note())
                .isEqualTo(Text.words("a stiffener with the wall beside it, bent inwards by the vacuum"));
        assertThat(all).hasSize(10);
        // between bars the wall is a plate of a quarter of the width
        assertThat(of(all, "lid-3").demand()).isLessThan(0.2 * 6 * 0.0563 * 1000 / (0.004 * 0.004));
    }

    /** Longer than eight times its width. */
    @Test
    void aLongWallIsOutOfTheRule() throws CannotComputeException {
        String narrow =
                swap(BOX, "size: [1 m, 1 m, 1 m]", "size: [1 m, 1 m, 0.12 m]", "width: 200 mm", "width: 100 mm");
        List<Finding> all = run(with(narrow, "vent: {diameter: 50 mm}"), KILOPASCAL);
        Finding lid = of(all, "lid-3");
        assertThat(lid.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(lid.missing()).isFalse();
        assertThat(lid.note().metric()).startsWith("out of the rule's range: height over width of the wall");
        assertThat(of(all, "sides").verdict()).isNotEqualTo(Verdict.NOT_CHECKED);
    }
}
