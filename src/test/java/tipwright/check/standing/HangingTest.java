// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.JointPlan;
import tipwright.analysis.Pose;
import tipwright.check.One;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.check.standing.Footprint.Mass;
import tipwright.design.around.Vehicle;
import tipwright.design.tank.CaseName;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** How a box of 157 kg, its centre at y = 0.9 m, hangs with a frame of 400 kg, and the masses of whole units. */
class HangingTest {
    private static final double BOX = 5 * 0.004 * 7850;
    private static final String EYE = ", lifting-eye: [0 mm, 2 m, 0 mm]";

    private static String unit(String frame) {
        return swap(Examples.BOX, "to: 80 deg", "to: 20 deg, step: 10 deg") + "frame: {" + frame + "}\n";
    }

    private static String centre(double x, double z) {
        return unit("mass: 400 kg, centre: [" + x + " mm, -200 mm, " + z + " mm]" + EYE);
    }

    /** The lean towards x and z by itself: 400 kg so far off, all 557 kg under the eye. Less than a twentieth of a degree is not told. */
    @ParameterizedTest
    @CsvSource({
        "100, 0, 'the dump end hangs 2.2 deg low'",
        "-100, 0, 'the end away from the dump hangs 2.2 deg low'",
        "0, 100, 'its left side hangs 2.2 deg low'",
        "0, -100, 'its right side hangs 2.2 deg low'",
        "100, -50, 'the dump end hangs 2.2 deg low, its right side hangs 1.1 deg low'",
        "-50, 100, 'the end away from the dump hangs 1.1 deg low, its left side hangs 2.2 deg low'",
        "0, 2.29, it hangs level",
        "0, 2.31, 'its left side hangs 0.1 deg low'",
        "-2.31, 0, 'the end away from the dump hangs 0.1 deg low'",
    })
    void whichSideHangsLow(double x, double z, String words) throws CannotComputeException {
        Finding found = One.of(centre(x, z), "hang/empty");
        double kg = 400 + BOX;
        double under = 2 - (400 * -0.2 + BOX * 0.9) / kg;
        double off = 400 * Math.hypot(x, z) / 1000 / kg;
        assertThat(found.demand()).isCloseTo(Math.atan(off / under), within(1e-9));
        assertThat(found.note().metric()).isEqualTo(words);
        assertThat(found.tilt()).isZero();
    }

    /**
     * Half full, the surface of the slurry stays level as it leans, so that it flows to the low end: of a box 1 m wide, 0.5 m deep, the
     * centre goes b^2 tan / (12 h) down the slope and half of that times tan up. By repetition. Source: hydrostatics (elementary).
     */
    @ParameterizedTest
    @CsvSource({"50, 0", "-50, 0", "0, -50", "30, 40"})
    void theSlurryFlowsToTheLowEnd(double x, double z) throws CannotComputeException {
        double tanX = 0;
        double tanZ = 0;
        double kg = 400 + BOX + 700;
        for (int i = 0; i < 100; i++) {
            double rise = (tanX * tanX + tanZ * tanZ) / (24 * 0.5);
            double under = 2 - (400 * -0.2 + BOX * 0.9 + 700 * (0.75 + rise)) / kg;
            double offX = (400 * x / 1000 + 700 * tanX / (12 * 0.5)) / kg;
            double offZ = (400 * z / 1000 + 700 * tanZ / (12 * 0.5)) / kg;
            tanX = offX / under;
            tanZ = offZ / under;
        }
        Finding found = One.of(swap(centre(x, z), "fill: 100 %", "fill: 50 %"), "hang/full");
        assertThat(found.demand()).isCloseTo(Math.atan(Math.hypot(tanX, tanZ)), within(1e-6));
    }

    /** An eye half a metre under the frame's own place: the centre of mass is over it. */
    @Test
    void turnsOverWhereTheEyeIsTooLow() throws CannotComputeException {
        String low = unit("mass: 400 kg, centre: [0 mm, -200 mm, 50 mm], lifting-eye: [0 mm, -500 mm, 0 mm]");
        double kg = 400 + BOX;
        double over = (400 * -0.2 + BOX * 0.9) / kg + 0.5;
        double beside = 400 * 0.05 / kg;
        Finding empty = One.of(low, "hang/empty");
        assertThat(empty.demand()).isCloseTo(Math.PI - Math.atan(beside / over), within(1e-9));
        Finding full = One.of(low, "hang/full");
        double filled = kg + 1400;
        double higher = (400 * -0.2 + BOX * 0.9 + 1400) / filled + 0.5;
        assertThat(full.demand()).isCloseTo(Math.PI - Math.atan(400 * 0.05 / filled / higher), within(1e-6));
        for (Finding found : List.of(empty, full)) {
            assertThat(found.verdict()).isEqualTo(Verdict.FAIL);
            assertThat(found.note().metric()).isEqualTo("the centre of mass is not below the eye: it turns over");
        }
    }

    @Test
    void whatIsMissingIsNamed() throws CannotComputeException {
        for (String frame : List.of("mass: 400 kg" + EYE, "centre: [0 mm, -200 mm, 0 mm]" + EYE)) {
            Finding found = One.of(unit(frame), "hang");
            assertThat(found.missing()).isTrue();
            assertThat(found.note().metric()).isEqualTo("frame.mass or frame.centre missing");
        }
        for (String yaml : List.of(Examples.BOX, unit("mass: 400 kg, centre: [0 mm, 0 mm, 0 mm]"))) {
            assertThat(One.of(yaml, "hang").note().metric()).isEqualTo("frame.lifting-eye missing");
        }
        Finding found = One.of(centre(100, 0), "hang/empty");
        assertThat(new HangCheck().says(found).metric())
                .isEqualTo("lifted by its eye, empty, it hangs out of level by 2.18 deg, 5 deg allowed");
        assertThat(found.title()).isEqualTo("Lifting eye: hanging out of level, empty");
    }

    /** Frame, vehicle, weights on crank and link where these are, and the tank; of a design without a frame the tank alone. */
    @Test
    void theMassesOfAUnit() throws IOException, CannotComputeException {
        String yaml = swap(
                Files.readString(Path.of("geometry", "crank-cart.yaml")),
                "tilt: {to: 45 deg}",
                "tilt: {to: 45 deg, step: 9 deg}");
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        Vehicle van = new Vehicle(900, new Vec3(-1, 0.2, 0.1));
        WholeUnit unit = new WholeUnit(analysis);
        // the link's weight stowed at (-25, -25) mm, its pins at (-50, -290) and (0, 240) mm: 0.5 of the way
        for (Pose pose : analysis.poses()) {
            List<Mass> masses = unit.at(pose, 321, new Vec3(0.1, 0.7, -0.2), van);
            assertThat(masses).hasSize(5);
            assertThat(masses.get(0)).isEqualTo(new Mass(290, new Vec3(-0.3, -0.18, 0)));
            assertThat(masses.get(1)).isEqualTo(new Mass(900, new Vec3(-1, 0.2, 0.1)));
            assertThat(masses.get(2).kg()).isEqualTo(14);
            // the crank turns about its pivot at (-250, -50) mm, 200.25 mm from the weight
            assertThat(masses.get(2).at().xy().minus(new Vec2(-0.25, -0.05)).norm())
                    .isCloseTo(Math.hypot(0.01, 0.2), within(1e-9));
            Vec2 middle = pin(analysis, pose, "link-pin")
                    .plus(pin(analysis, pose, "tank-pin"))
                    .times(0.5);
            assertThat(masses.get(3).kg()).isEqualTo(6);
            assertThat(masses.get(3).at().xy().minus(middle).norm()).isLessThan(1e-9);
            assertThat(masses.get(4)).isEqualTo(new Mass(321, pose.place(new Vec3(0.1, 0.7, -0.2))));
        }
        Analysis bare = Analyser.analyse(Examples.read(Examples.BOX));
        Pose pose = bare.poses().get(0);
        assertThat(new WholeUnit(bare).at(pose, 5, Vec3.ZERO, null)).containsExactly(new Mass(5, Vec3.ZERO));
    }

    private static Vec2 pin(Analysis analysis, Pose pose, String name) {
        return analysis.mechanism().joints().stream()
                .filter(j -> j.name().equals(name))
                .map((JointPlan j) -> j.place(pose))
                .findFirst()
                .orElseThrow();
    }

    /** Each load at each tilt, and the stuck cake too; not where nothing settles, or where the design leaves its case out. */
    @Test
    void eachLoadAndWhatIsStuck() throws CannotComputeException {
        String yaml = centre(0, 0);
        assertThat(told(yaml)).isEqualTo(3);
        assertThat(told(yaml + "cases: {skip: [caked]}\n")).isZero();
        assertThat(told(swap(yaml, "density: 1400", "density: 1000"))).isZero();
    }

    /** At how many tilts the stuck cake is told; all other loads are told at each of three tilts. */
    private static int told(String yaml) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        List<String> loads = new ArrayList<>();
        new WholeUnit(analysis).each(null, (load, pose, masses) -> loads.add(load));
        int stuck = Collections.frequency(loads, CaseName.STUCK);
        assertThat(loads).hasSize(3 * analysis.cases().size() + stuck);
        return stuck;
    }
}
