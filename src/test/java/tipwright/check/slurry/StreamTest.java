// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.Checker;
import tipwright.check.Result;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.tank.Opening;
import tipwright.design.tank.Outflow;
import tipwright.geometry.Vec3;
import tipwright.time.Moment;
import tipwright.time.Rim;

/** Where jets, cakes and what runs over a lip land, worked out again from the laws of falling bodies alone. */
class StreamTest {
    private static final double G = 9.80665;
    private static final Vec3 UP = new Vec3(0, 1, 0);
    private static final String TIMED =
            "pull: 12 kN, voltage: 12 V, speed: {no-load: 9 mm/s, rated: 6 mm/s}, current: {no-load: 5 A, rated: 32 A}";

    private static Finding of(Result result, String id) {
        return result.findings().stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Rim rim(List<Vec3> points) {
        return new Rim(new Opening(
                "slot", Opening.Rim.POLYGON, null, null, null, points, null, null, 0, null, new Outflow(0.62, 1)));
    }

    /** Level edge: y^3 = q^2 / g, and the momentum of a free overfall, 1.5 times the speed there (from memory). */
    @Test
    void levelEdgePassesItsCriticalDepth() {
        Rim rim = rim(List.of(new Vec3(0, 0, 0), new Vec3(0, 0, 0.4), new Vec3(0, 1, 0.4), new Vec3(0, 1, 0)));
        double q = 0.05 / 0.4;
        double depth = Math.cbrt(q * q / G);
        Rim.Overfall over = Objects.requireNonNull(rim.overfall(UP, 0.05));
        assertThat(over.depth()).isCloseTo(depth, within(2e-3 * depth));
        assertThat(over.speed()).isCloseTo(1.5 * q / depth, within(3e-3 * q / depth));
        assertThat(rim.overfall(UP, 0.4 * Math.sqrt(G) * 1.01)).isNull();
    }

    /** V-shaped edge with sides of slope m: y^5 = 2 Q^2 / (g m^2); momentum 5/3 of the speed there. */
    @Test
    void notchPassesItsCriticalDepth() {
        double m = 0.7;
        Rim rim = rim(List.of(new Vec3(0, 0, 0), new Vec3(0, 1, m), new Vec3(0, 1, -m)));
        double flow = 0.03;
        double depth = Math.pow(2 * flow * flow / (G * m * m), 0.2);
        Rim.Overfall over = Objects.requireNonNull(rim.overfall(UP, flow));
        assertThat(over.depth()).isCloseTo(depth, within(2e-3 * depth));
        double speed = flow / (m * depth * depth) * 5 / 3;
        assertThat(over.speed()).isCloseTo(speed, within(5e-3 * speed));
    }

    /** Head 0.9 m over the lip, 0.5 m of fall below it: half way down the 1.4 m, at 0.2 m over the lip, it reaches 1.4 m, the lip's 1.342 m. */
    @Test
    void jetFromHigherUpReachesFarther() throws CannotComputeException {
        String door = "- {name: top, rim: rectangle, width: 400 mm, height: 600 mm, centre: [500 mm, 900 mm, 0 mm],"
                + " normal: x}";
        String yaml = Examples.BOX.replaceFirst("- \\{name: top.*\\}", door)
                + "receiver: {near: [450 mm, 100 mm], far: [2000 mm, 100 mm]}\n"
                + "limits: {landing: 60 mm}\n";
        Finding jet = of(Checker.asFilled(Examples.read(yaml)), "landing/jet");
        double farthest = 0;
        for (int i = 0; i <= 600; i++) {
            double up = i / 1000.0;
            farthest = Math.max(farthest, Math.sqrt(2 * G * (0.9 - up)) * Math.sqrt(2 * (0.5 + up) / G));
        }
        assertThat(farthest).isCloseTo(1.4, within(1e-12));
        assertThat(jet.capacity()).isCloseTo(2 - 0.5 - farthest, within(2e-3));
        assertThat(jet.capacity()).isLessThan(2 - 0.5 - 2 * Math.sqrt(0.9 * 0.5) - 0.05);
    }

    /** A cake that lets go at 50 deg slides 1 m, v^2 = 2 g L (sin a - tan b cos a), and flies on along the floor. */
    @Test
    void cakeSlidesAndFlies() throws CannotComputeException {
        String end = "- {name: end, rim: rectangle, width: 1 m, height: 1 m, centre: [500 mm, 1 m, 0 mm], normal: x}";
        String yaml = swap(
                        Examples.BOX.replaceFirst("- \\{name: top.*\\}", end),
                        "repose: 30 deg",
                        "repose: 30 deg, release: 50 deg, wall-friction: 14 deg")
                + "receiver: {near: [300 mm, -2 m], far: [6 m, -2 m]}\n";
        Result result = Checker.asFilled(Examples.read(yaml));
        Finding cake = of(result, "landing/cake");
        double a = Math.toRadians(50);
        double v = Math.sqrt(2 * G * 1 * (Math.sin(a) - Math.tan(Math.toRadians(14)) * Math.cos(a)));
        // cake as deep as it settles from the full box
        double depth = ((1400 - 1000) / 1650.0) / 0.6;
        double near = Double.POSITIVE_INFINITY;
        double far = 0;
        for (double high : new double[] {0, depth}) {
            double x = 0.4 + 0.1 * Math.cos(a) + (0.1 + high) * Math.sin(a);
            double y = 0.4 - 0.1 * Math.sin(a) + (0.1 + high) * Math.cos(a);
            double down = v * Math.sin(a);
            double t = (-down + Math.sqrt(down * down + 2 * G * (y + 2))) / G;
            near = Math.min(near, x + v * Math.cos(a) * t);
            far = Math.max(far, x + v * Math.cos(a) * t);
        }
        assertThat(cake.capacity()).isCloseTo(Math.min(near - 0.3, 6 - far), within(2e-3));
        assertThat(cake.tilt()).isCloseTo(a, within(1e-6));
        assertThat(cake.note().metric()).contains(String.format(Locale.ROOT, "at %.1f m/s", v));
    }

    /** Every moment of the dump over an open end 1 m wide: level and square out, at 1.5 critical speeds, no faster than the head gives. */
    @Test
    void runningOutLandsWhereItsSpeedThrowsIt() throws CannotComputeException {
        String yaml =
                swap(Examples.BOX, "pull: 12 kN", TIMED) + "receiver: {near: [500 mm, -1 m], far: [1100 mm, -1 m]}\n";
        Result result = Checker.asFilled(Examples.read(yaml));
        Finding stream = of(result, "stream");
        double least = Double.POSITIVE_INFINITY;
        for (Moment m : result.timing().cycles().get(0).moments()) {
            double a = m.tilt();
            if (m.discharge() > 0 && a > 0) {
                // the front edge of the open top, and how far the surface stands above it
                double x = 0.4 + 0.1 * Math.cos(a) + 1.1 * Math.sin(a);
                double y = 0.4 - 0.1 * Math.sin(a) + 1.1 * Math.cos(a);
                double v = 1.5 * Math.cbrt(G * m.discharge());
                double lip = 1.5 * Math.cos(a) - 0.5 * Math.sin(a);
                double head = m.level() - lip;
                v = Math.min(v, Math.sqrt(2 * G * Math.max(0, head)));
                double depth = Math.min(head, Math.cbrt(m.discharge() * m.discharge() / G));
                for (double from : new double[] {y, y + depth}) {
                    double lands = x + v * Math.sqrt(2 * (from + 1) / G);
                    least = Math.min(least, Math.min(lands - 0.5, 1.1 - lands));
                }
            }
        }
        assertThat(stream.capacity()).isCloseTo(least, within(0.01));
        assertThat(stream.note().metric()).contains("m/s");
        assertThat(stream.verdict()).isEqualTo(Verdict.FAIL);
        // straight down it would land inside
        assertThat(of(result, "landing/running-over").capacity()).isGreaterThan(stream.capacity() + 0.1);
    }
}
