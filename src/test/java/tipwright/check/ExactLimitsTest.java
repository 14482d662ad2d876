// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Examples;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;

/** Checks without a factor of their own: with what is just enough they do not fail, with a billionth less they do. */
class ExactLimitsTest {
    private static final double ENOUGH = 1 + 1e-9;
    private static final double SHORT = 1 - 1e-9;

    private static String demo(String... swaps) throws IOException {
        return swap(
                swap(Files.readString(Path.of("geometry/silt-trailer.yaml")), "step: 1 deg", "step: 10 deg"), swaps);
    }

    /** A text with %s in it for what there is. */
    private static void limit(String text, double there, String id) throws Exception {
        Finding enough = One.of(text.replace("%s", Double.toString(there * ENOUGH)), id);
        Finding less = One.of(text.replace("%s", Double.toString(there * SHORT)), id);
        assertThat(enough.utilisation()).isCloseTo(1, within(1e-8));
        assertThat(enough.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(less.verdict()).isEqualTo(Verdict.FAIL);
    }

    /** What its maker lets the bearing hold along the shaft. */
    @Test
    void grip() throws Exception {
        String bearing = "{z: -450 mm, bearing: yard-40}";
        String own = "{z: -450 mm, bearing: {kind: ball-insert, bore: 40 mm, c0: 19 kN, axial: %s N}}";
        double most = One.of(demo(), "grip/bearing-1").demand();
        assertThat(most).isGreaterThan(0);
        limit(demo(bearing, own), most, "grip/bearing-1");
    }

    /** A wall of steel that yields at just that. */
    @Test
    void flatWall() throws Exception {
        double stress = One.of(Examples.BOX, "flat-wall/bottom-1").demand();
        limit(
                swap(Examples.BOX, "yield: 700 MPa", "yield: %s Pa") + "factors: {wall: 1}\n",
                stress,
                "flat-wall/bottom-1");
    }

    /** The pin so high over its plate that the actuator's body just comes round: asin(height / half its width). */
    @Test
    void swing() throws Exception {
        Finding f = One.of(demo(), "swing/frame-pin");
        double half = 0.0325;
        limit(demo("height: 50 mm", "height: %s m"), half * Math.sin(f.demand()), "swing/frame-pin");
    }

    /** A battery that holds just enough on the coldest day. */
    @Test
    void cold() throws Exception {
        Finding charge = One.of(demo(), "cold/battery");
        limit(demo("capacity: 80 Ah", "capacity: %s Ah"), 80 * charge.utilisation(), "cold/battery");
    }

    /** The oil is as thick as the pump may have it. */
    @Test
    void coldOil() throws Exception {
        String hopper = Files.readString(Path.of("geometry/grit-hopper.yaml")).replaceFirst("(?m)^cold:.*\n", "");
        String oil = "cold: {lowest: -10 degC, oil: 46, thickest: %s m2/s}\n";
        double thick = One.of(hopper + oil.replace("%s", "0.001"), "cold/oil").demand();
        limit(hopper + oil, thick, "cold/oil");
    }

    /** Flat walls and lid of a closed box that is filled by suction, as if it were empty; the lid as a square plate. */
    @Test
    void flatWallsUnderVacuum() throws Exception {
        String box = swap(
                Examples.BOX,
                "yield: 700 MPa}",
                "yield: %s Pa}\n  suction: 3 kPa\n  vent: {diameter: 50 mm}",
                "80 deg",
                "10 deg, step: 5 deg");
        String any = box.replace("%s", "7e8");
        Finding lid = One.of(any, "vacuum/lid-3");
        // Source: S. Timoshenko and S. Woinowsky-Krieger, tables 8 and 35 (from memory): 6 x 0.0513 held, up to a
        // quarter more.
        double held = 6 * 0.0513 * 3000 / (0.004 * 0.004);
        assertThat(lid.demand()).isBetween(held * 0.999, 1.26 * held);
        assertThat(One.all(any, "vacuum").stream().map(Finding::id))
                .contains("vacuum/bottom-1", "vacuum/wall-2", "vacuum/wall-4", "vacuum/sides");
        limit(box + "factors: {wall: 1}\n", lid.demand(), "vacuum/lid-3");
    }

    /** Where the force turns round, the tank drops through the play; by hand over the lever arm there. */
    @Test
    void dropWhereTheForceTurns() throws Exception {
        String over = swap(Examples.BOX, "80 deg", "60 deg, step: 5 deg");
        Finding drop = One.of(over, "play/drop");
        Finding rattle = One.of(over, "play");
        assertThat(drop.demand()).isLessThanOrEqualTo(rattle.demand());
        assertThat(drop.tilt()).isGreaterThan(0);
        limit(over + "wear: {rattle: %s m}\n", drop.demand(), "play/drop");
        assertThat(One.all(swap(over, "60 deg", "10 deg"), "play")).hasSize(1);
    }
}
