// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Pose;
import tipwright.check.One;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;

/** Brackets out of line along the pivot, and ground that slopes across. */
class OutOfLineTest {
    private static final String TANK_WELD =
            "weld: {at: [-70 mm, 300 mm, 0 mm], normal: z, leg: 5 mm, rectangle: {u: 100 mm, v: 60 mm}}";

    private static String demo(double off, String... swaps) throws IOException {
        String weld = "weld: {at: [-70 mm, 300 mm, " + off + " mm], leg: 5 mm, rectangle: {u: 100 mm, v: 60 mm}}";
        String text = swap(
                Files.readString(Path.of("geometry/silt-trailer.yaml")),
                "step: 1 deg",
                "step: 10 deg",
                TANK_WELD,
                weld);
        return swap(text, swaps);
    }

    private static double shortest(String yaml) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        return analysis.poses().stream().mapToDouble(Pose::length).min().orElseThrow();
    }

    /** By hand: 15 mm out of line over the shortest pin to pin, on top of the twentieth. */
    @Test
    void lugBendsMoreWhereTheActuatorLeans() throws IOException, CannotComputeException {
        String off = demo(15);
        double lean = 0.015 / Math.hypot(0.015, shortest(off));
        double force = One.of(off, "push").demand();
        double area = 2 * 0.070 * 0.010;
        double byHand = force / area + 6 * (0.05 + lean) * force * 0.050 / (area * 0.010);
        assertThat(One.of(off, "lug-side/frame-pin").demand()).isCloseTo(byHand, within(1e-6 * byHand));
        assertThat(One.all(demo(0), "clevis")).isEmpty();
    }

    /**
     * By hand: 1.2 mm of play over an eye 25 mm wide, and 1 mm of gap on each side of a lug 70 mm across: the gaps bind first, at 2/70. A
     * ball joint in place of that. Source: plane geometry.
     */
    @Test
    void theEyeBindsBetweenItsCheeks() throws IOException, CannotComputeException {
        String off = demo(
                15,
                "hole: 25 mm, end: 35 mm, plates: 2}\n  - joint: tank-pin",
                "hole: 26.2 mm, end: 35 mm, plates: 2}\n  - joint: tank-pin");
        Finding f = One.of(off, "clevis/frame-pin");
        assertThat(f.demand()).isCloseTo(Math.asin(0.015 / Math.hypot(0.015, shortest(off))), within(1e-9));
        assertThat(f.capacity()).isCloseTo(2.0 / 70, within(1e-9));
        assertThat(f.verdict()).isEqualTo(Verdict.PASS);
        double limit = shortest(off) * Math.tan(2.0 / 70) * 1000;
        String hole = "hole: 25 mm, end: 35 mm, plates: 2}\n  - joint: tank-pin";
        String wide = swap(hole, "25 mm", "26.2 mm");
        assertThat(One.of(demo(limit * (1 - 1e-9), hole, wide), f.id()).verdict())
                .isEqualTo(Verdict.CLOSE);
        assertThat(One.of(demo(limit * (1 + 1e-9), hole, wide), f.id()).verdict())
                .isEqualTo(Verdict.FAIL);
        String ball = "gap: 1 mm, leans: 9 deg}\n    tank-pin-joint";
        assertThat(One.of(demo(60, "gap: 1 mm}\n    tank-pin-joint", ball), f.id())
                        .capacity())
                .isCloseTo(Math.toRadians(9), within(1e-12));
    }

    /** A pin as thick as its hole leaves no room at all. */
    @Test
    void withoutPlayItBindsAtOnce() throws IOException, CannotComputeException {
        assertThat(One.of(demo(15), "clevis/frame-pin").verdict()).isEqualTo(Verdict.FAIL);
    }

    /** On ground that slopes across, the locating bearing's lug takes the tank's push along the pivot. Source: statics. */
    @Test
    void crossSlopePushesOnTheLocatingLug() throws IOException, CannotComputeException {
        String lug = "  - joint: bearing-1\n    on: tank\n"
                + "    lug: {width: 80 mm, thickness: 12 mm, hole: 40 mm, end: 45 mm}\n"
                + "  - joint: bearing-2\n    on: tank\n"
                + "    lug: {width: 80 mm, thickness: 12 mm, hole: 40 mm, end: 45 mm}\n";
        String level = demo(0, "cross-slope: 1 deg", "cross-slope: 0 deg") + lug;
        String slope = demo(0, "cross-slope: 1 deg", "cross-slope: 4 deg") + lug;
        double free = One.all(level, "lug-side").stream()
                .filter(f -> f.id().endsWith("bearing-1"))
                .mapToDouble(Finding::demand)
                .max()
                .orElseThrow();
        double pushed = One.all(slope, "lug-side").stream()
                .filter(f -> f.id().endsWith("bearing-1"))
                .mapToDouble(Finding::demand)
                .max()
                .orElseThrow();
        double other = One.all(slope, "lug-side").stream()
                .filter(f -> f.id().endsWith("bearing-2"))
                .mapToDouble(Finding::demand)
                .max()
                .orElseThrow();
        double weight = Analyser.analyse(Examples.read(slope))
                        .cases()
                        .get(0)
                        .rows()
                        .get(0)
                        .load()
                        .mass()
                * 9.80665;
        double more = 6 * weight * Math.sin(Math.toRadians(4)) * 0.045 / (0.080 * 0.012 * 0.012);
        assertThat(pushed - free).isCloseTo(more, within(0.1 * more));
        assertThat(other).isLessThan(pushed - 0.8 * more);
    }
}
