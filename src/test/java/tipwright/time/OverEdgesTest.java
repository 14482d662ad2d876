// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Examples;
import tipwright.design.tank.Opening;
import tipwright.geometry.Vec3;

/**
 * What runs over the edges of an opening that looks up: each short piece of the edge is a weir, 2/3 Cd sqrt(2 g) z^1.5 for each metre of
 * it as seen from above. Source: the weir's law, texts on hydraulics (from memory).
 */
class OverEdgesTest {
    private static final double LAW = 2.0 / 3 * 0.62 * Math.sqrt(2 * 9.80665);
    private static final int PIECES = 20_000;
    /** 1.2 m across, 0.8 m along, at a height of 1 m. */
    private static final String TOP =
            "{name: top, rim: rectangle, width: 1.2 m, height: 0.8 m, centre: [0 m, 1.5 m, 0 m], normal: y}";

    private static Opening opening(String written) {
        return Examples.read(Examples.BOX.replaceAll("\\{name: top.*", written))
                .tank()
                .openings()
                .get(0);
    }

    /** Against gravity, in the axes of a tank that has tipped by so much, rad. */
    private static Vec3 up(double tilt) {
        return new Vec3(Math.sin(tilt), Math.cos(tilt), 0);
    }

    private static double lip(Opening opening, Vec3 up) {
        return opening.rimPoints().stream().mapToDouble(up::dot).min().orElseThrow();
    }

    private static double overPieces(Opening opening, Vec3 up, double level) {
        List<Vec3> rim = opening.rimPoints();
        double sum = 0;
        for (int i = 0; i < rim.size(); i++) {
            Vec3 from = rim.get(i);
            Vec3 along = rim.get((i + 1) % rim.size()).minus(from).times(1.0 / PIECES);
            double seen = along.minus(up.times(along.dot(up))).norm();
            for (int k = 0; k < PIECES; k++) {
                double depth = level - up.dot(from.plus(along.times(k + 0.5)));
                sum += depth > 0 ? seen * Math.pow(depth, 1.5) : 0;
            }
        }
        return LAW * sum;
    }

    /** A level brim spills all round: Q = 2/3 Cd sqrt(2 g) P h^1.5 with the perimeter P = 4 m. */
    @Test
    void aLevelBrimSpillsAllRound() {
        Rim rim = new Rim(opening(TOP));
        assertThat(rim.flow(up(0), 1.51)).isCloseTo(LAW * 4 * Math.pow(0.01, 1.5), within(1e-12));
    }

    /** From a brim that hardly slopes to one that stands nearly upright; over the lip alone and over its ends too. */
    @ParameterizedTest
    @CsvSource({"0.5, 1", "0.5, 5", "5, 10", "15, 30", "40, 30", "75, 60"})
    void aSlopingBrimSpillsOverWhatIsUnderTheSurface(double degrees, double millimetres) {
        Opening top = opening(TOP);
        Vec3 up = up(Math.toRadians(degrees));
        double level = lip(top, up) + millimetres / 1000;
        double expected = overPieces(top, up, level);
        assertThat(new Rim(top).flow(up, level)).isCloseTo(expected, within(1e-5 * expected));
        // more than over the lip alone, which is 1.2 m long
        assertThat(expected).isGreaterThan(LAW * 1.2 * Math.pow(millimetres / 1000, 1.5));
    }

    /** Upright it is the weir of its width as before, drowned an orifice, and looking down its whole area counts. */
    @Test
    void nothingElseChanges() {
        Opening top = opening(TOP);
        Rim rim = new Rim(top);
        Vec3 upright = up(Math.PI / 2);
        double level = lip(top, upright) + 0.05;
        double weir = LAW * 1.2 * Math.pow(0.05, 1.5);
        assertThat(rim.flow(upright, level)).isCloseTo(weir, within(1e-9 * weir));
        Vec3 nearly = up(Math.PI / 2 - 1e-5);
        assertThat(rim.flow(nearly, lip(top, nearly) + 0.05)).isCloseTo(weir, within(1e-5 * weir));
        double drowned = LAW * 1.2 * (Math.pow(0.9, 1.5) - Math.pow(0.1, 1.5));
        assertThat(rim.flow(upright, lip(top, upright) + 0.9)).isCloseTo(drowned, within(1e-9 * drowned));
        Vec3 tippedOver = up(Math.toRadians(120));
        double slanted = weir / Math.sin(Math.toRadians(120));
        assertThat(rim.flow(tippedOver, lip(top, tippedOver) + 0.05)).isCloseTo(slanted, within(1e-9 * slanted));
    }

    /** A hatch that looks up under a deep surface is an orifice, 0.96 m2 of it. */
    @Test
    void deepUnderTheSurfaceItIsAnOrifice() {
        double expected = 0.62 * 0.96 * Math.sqrt(2 * 9.80665 * 2);
        assertThat(new Rim(opening(TOP)).flow(up(0), 3.5)).isCloseTo(expected, within(1e-12 * expected));
    }
}
