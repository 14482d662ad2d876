// SPDX-License-Identifier: Apache-2.0
package tipwright.check.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.geometry.Vec2;

/**
 * Where doors get to that are let go late, on a slope and on the way back, by turning the corners of their plate by hand: the plate
 * lies 16 to 28 mm out of the opening of 1 m and laps it by 15 mm.
 */
class SwingingDoorsTest {
    private static final double WIDE = Math.toRadians(105);
    private static final double AJAR = Math.toRadians(14);
    private static final double SIZE = 0.1;

    /** A box with a door all over its end wall. */
    private static String doored(double pivot, double hinge, int opensAt, int to) {
        return swap(
                Examples.BOX,
                "at: [400 mm, 400 mm]",
                String.format(Locale.ROOT, "at: [400 mm, %.0f mm]", 1000 * pivot),
                "- {name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m], normal: y}",
                String.format(
                        Locale.ROOT,
                        "- {name: rear, rim: rectangle, width: 1 m, height: 1 m, centre: [500 mm, 1 m, 0 mm], normal: x,"
                                + " opens-at: %d deg, door: {hinge: [500 mm, %.0f mm, 0 mm], latch: [500 mm, %.0f mm, 0 mm]}}",
                        opensAt,
                        1000 * hinge,
                        1000 * (2 - hinge)),
                "to: 80 deg",
                "to: " + to + " deg");
    }

    private static double gap(String yaml, Vec2 post) throws CannotComputeException {
        String outline = String.format(
                Locale.ROOT,
                "[[%1$f m, %2$f m], [%3$f m, %2$f m], [%3$f m, %4$f m], [%1$f m, %4$f m]]",
                post.x(),
                post.y(),
                post.x() + SIZE,
                post.y() + SIZE);
        return ClearanceTest.gap(
                        ClearanceTest.gaps(yaml + "obstacles: [{name: post, outline: " + outline + "}]\n"),
                        "rear door",
                        "post")
                .gap();
    }

    /** Turned about a place, clockwise. */
    private static Vec2 about(Vec2 p, Vec2 pole, double turn) {
        return p.minus(pole).tilted(turn).plus(pole);
    }

    /** From the plate to a post, m; opened by an angle, with the tank tilted. */
    private static double to(Vec2 post, double pivot, double hinge, double opened, double tilt) {
        double least = Double.POSITIVE_INFINITY;
        double clockwise = hinge > 1 ? -opened : opened;
        Vec2 axis = new Vec2(0.5, hinge);
        Vec2[] plate = new Vec2[4];
        for (int k = 0; k < 4; k++) {
            Vec2 shut = new Vec2(0.5 + (k == 0 || k == 3 ? 0.016 : 0.028), k < 2 ? 0.485 : 1.515);
            plate[k] = about(about(shut, axis, clockwise), new Vec2(0.4, pivot), tilt);
        }
        List<Vec2> square = List.of(
                post, post.plus(new Vec2(SIZE, 0)), post.plus(new Vec2(SIZE, SIZE)), post.plus(new Vec2(0, SIZE)));
        for (int k = 0; k < 4; k++) {
            for (int n = 0; n < 4; n++) {
                least = Math.min(least, ClearanceTest.toSide(square.get(n), plate[k], plate[(k + 1) % 4]));
                least = Math.min(least, ClearanceTest.toSide(plate[k], square.get(n), square.get((n + 1) % 4)));
            }
        }
        return least;
    }

    /**
     * A gate that hinges below is opened at 40 deg and stays open while the tank comes back down, as its load does; the hinge lies
     * below the pivot and so moves outwards on the way down. A post that it misses on the way up is nearest when it is down.
     */
    @Test
    void aGateStaysOpenOnTheWayBack() throws CannotComputeException {
        Vec2 post = new Vec2(1.55, 0.2);
        double up = Double.POSITIVE_INFINITY;
        double back = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 600; i++) {
            double tilt = Math.toRadians(0.1 * i);
            back = Math.min(back, to(post, 1.4, 0.5, WIDE, tilt));
            up = tilt < Math.toRadians(40) ? up : Math.min(up, to(post, 1.4, 0.5, WIDE, tilt));
            up = Math.min(up, to(post, 1.4, 0.5, WIDE * i / 600, Math.toRadians(40)));
        }
        assertThat(up).isGreaterThan(0.5);
        assertThat(back).isBetween(0.02, 0.2);
        assertThat(gap(doored(1.4, 0.5, 40, 60), post)).isCloseTo(back, within(1e-3));
    }

    /**
     * A door that hinges above and is let go at 40 deg swings from there through plumb and as far beyond, as a pendulum does without
     * friction (energy, from memory); only then it hangs, up to 14 deg out of plumb.
     */
    @Test
    void aDoorThatIsLetGoSwingsThrough() throws CannotComputeException {
        Vec2 post = new Vec2(2.15, 1.0);
        double hung = Double.POSITIVE_INFINITY;
        double through = Double.POSITIVE_INFINITY;
        double opens = Math.toRadians(40);
        for (int i = 0; i <= 500; i++) {
            double tilt = Math.toRadians(40 + 0.01 * i);
            hung = Math.min(hung, to(post, 0.4, 1.5, tilt + AJAR, tilt));
            hung = Math.min(hung, to(post, 0.4, 1.5, (opens + AJAR) * i / 500, opens));
            through = Math.min(through, to(post, 0.4, 1.5, 2 * opens * i / 500, opens));
        }
        assertThat(hung).isGreaterThan(through + 0.05);
        assertThat(through).isGreaterThan(0.02);
        assertThat(gap(doored(0.4, 1.5, 40, 45), post)).isCloseTo(through, within(1e-3));
    }

    /** On ground that falls by 9 deg to the dump side plumb is 9 deg further out, whether that is stated or may come about. */
    @Test
    void aSlopeMovesPlumb() throws CannotComputeException {
        Vec2 post = new Vec2(1.7, 0.6);
        double level = to(post, 0.4, 1.5, Math.toRadians(20) + AJAR, Math.toRadians(20));
        double slope = to(post, 0.4, 1.5, Math.toRadians(29) + AJAR, Math.toRadians(20));
        assertThat(level).isGreaterThan(slope + 0.05);
        assertThat(slope).isGreaterThan(0.02);
        String door = doored(0.4, 1.5, 2, 20);
        assertThat(gap(door, post)).isCloseTo(level, within(1e-3));
        assertThat(gap(door + "site: {grade: 9 deg}\n", post)).isCloseTo(slope, within(1e-3));
        assertThat(gap(door + "site: {any-way: 9 deg}\n", post)).isCloseTo(slope, within(1e-3));
    }
}
