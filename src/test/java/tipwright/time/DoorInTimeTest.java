// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;

/** The dump in time carries a door that hangs open as the forces at rest do, which are held against statics by hand elsewhere. */
class DoorInTimeTest {
    private static final String BOX = swap(
            Examples.BOX,
            "{name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m], normal: y}",
            "{name: end, rim: rectangle, width: 1 m, height: 1 m, centre: [500 mm, 1 m, 0 mm], normal: x, opens-at: 20 deg,"
                    + " door: {hinge: [510 mm, 1500 mm, 0 mm], latch: [510 mm, 500 mm, 0 mm], mass: 120 kg}}",
            "{fill: 100 %, density: 1400 kg/m3, repose: 30 deg}",
            "{fill: 40 %, solids-by-volume: 30 %, solids-density: 2650 kg/m3, packing: 60 %, repose: 35 deg}",
            "stroke: 900 mm, push: 12 kN, pull: 12 kN",
            "stroke: 1500 mm, push: 30 kN, pull: 30 kN, speed: {no-load: 20 mm/s, rated: 10 mm/s}, voltage: 24 V,"
                    + " current: {no-load: 2 A, rated: 50 A}");

    private static List<Row> rows(Analysis analysis, String name) {
        return analysis.cases().stream()
                .filter(c -> c.name().equals(name))
                .map(CaseResult::rows)
                .findFirst()
                .orElseThrow();
    }

    /** Between two rows, N. */
    private static double at(double tilt, List<Row> rows, ToDoubleFunction<Row> force) {
        for (int i = 1; i < rows.size(); i++) {
            Row a = rows.get(i - 1);
            Row b = rows.get(i);
            if (tilt >= a.tilt() - 1e-9 && tilt <= b.tilt() + 1e-9 && b.tilt() > a.tilt()) {
                double s = (tilt - a.tilt()) / (b.tilt() - a.tilt());
                return (1 - s) * force.applyAsDouble(a) + s * force.applyAsDouble(b);
            }
        }
        throw new AssertionError("no row at " + tilt);
    }

    private static double lower(List<Row> rows, double tilt) {
        return at(tilt, rows, r -> r.lower().force());
    }

    private static double raise(List<Row> rows, double tilt) {
        return at(tilt, rows, r -> r.raise().force());
    }

    private static List<Moment> moving(Analysis analysis, String load, Moment.Phase phase) {
        Cycle cycle = Objects.requireNonNull(CycleTimer.time(analysis).of(load));
        List<Moment> all =
                cycle.moments().stream().filter(m -> m.phase() == phase).toList();
        assertThat(all).hasSizeGreaterThan(10);
        return all;
    }

    /** Nothing is left, and the door hangs open all the way down, below the tilt at which it was opened as well. */
    @Test
    void comesBackWithItsDoorHanging() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(BOX));
        List<Row> empty = rows(analysis, "empty");
        for (Moment m : moving(analysis, "draining", Moment.Phase.LOWER)) {
            double force = lower(empty, m.tilt());
            assertThat(m.force()).isCloseTo(force, within(2e-3 * Math.abs(force) + 2));
        }
        for (Moment m : moving(analysis, "caked", Moment.Phase.LOWER)) {
            if (m.tilt() > Math.toRadians(20)) {
                double force = lower(rows(analysis, "caked"), m.tilt());
                assertThat(m.force()).isCloseTo(force, within(2e-3 * Math.abs(force) + 2));
            }
        }
        // a door that was fixed would be told apart
        Analysis stiff = Analyser.analyse(Examples.read(swap(BOX, ", mass: 120 kg", "")
                .replace(
                        "openings:",
                        "attached: [{name: lump, mass: 120 kg, centre: [500 mm, 1 m, 0 mm]}]\n  openings:")));
        double tilt = Math.toRadians(60);
        assertThat(Math.abs(lower(rows(stiff, "empty"), tilt) - lower(empty, tilt)))
                .isGreaterThan(20 * (2e-3 * Math.abs(lower(empty, tilt)) + 2));
    }

    /** With all of it in, the door is shut at every tilt; once the liquid has run out the door hangs. */
    @Test
    void goesUpShutOrOpen() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(BOX));
        for (String load : List.of("held", "draining")) {
            List<Moment> up = moving(analysis, load, Moment.Phase.RAISE);
            List<Row> rows = rows(analysis, load.equals("held") ? "held" : "empty");
            int seen = 0;
            for (Moment m : up) {
                if (load.equals("held") || m.volume() < 1e-6) {
                    double force = raise(rows, m.tilt());
                    assertThat(m.force()).isCloseTo(force, within(2e-3 * Math.abs(force) + 2));
                    seen++;
                }
            }
            assertThat(seen).isGreaterThan(3);
        }
    }
}
