// SPDX-License-Identifier: Apache-2.0
package tipwright.check.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.drive.TiltRange;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.geometry.Vec2;
import tipwright.outline.OutlineGeometry;

/** Gaps between parts that both move, against looking at every hundredth of a pose. */
class GapSearchTest {
    private static final int EACH = 100;

    /** A shipped design, every 5 deg. */
    static Analysis everyFive(String name) throws CannotComputeException {
        Design design = ((Reading.Good) DesignFile.shipped(name + ".yaml")).design();
        TiltRange t = design.tilt();
        return Analyser.analyse(design.withTilt(new TiltRange(t.from(), t.to(), Math.toRadians(5))));
    }

    private static Motions motions(String name) throws CannotComputeException {
        return new Motions(everyFive(name));
    }

    private static Geometry triangle(Random random, Vec2 middle) {
        double turn = 7 * random.nextDouble();
        double size = 0.02 + 0.08 * random.nextDouble();
        return OutlineGeometry.polygon(List.of(
                middle.plus(new Vec2(0, size).tilted(turn)),
                middle.plus(new Vec2(0, size).tilted(turn + 2)),
                middle.plus(new Vec2(0, size).tilted(turn + 4))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"crank-cart", "six-link", "slide-back", "kerb-swing"})
    void smallestGapAndFirstTouchOfTwoThatMove(String name) throws CannotComputeException {
        Motions motions = motions(name);
        Random random = new Random(name.hashCode());
        int touches = 0;
        for (int round = 0; round < 60; round++) {
            int a = 1 + round % 2;
            Vec2 middle = new Vec2(random.nextDouble() - 0.5, random.nextDouble() - 0.5);
            Vec2 beside = middle.plus(new Vec2(0.3 * random.nextDouble() - 0.15, 0.3 * random.nextDouble() - 0.15));
            Motions.Path second = round % 3 == 0 ? motions.rod() : motions.body(3 - a);
            GapSearch search = new GapSearch(
                    motions,
                    triangle(random, middle),
                    motions.body(a),
                    triangle(random, round % 3 == 0 ? new Vec2(-0.1 - 0.3 * random.nextDouble(), 0) : beside),
                    second,
                    0.02);
            int from = round % 4 == 0 ? 2 : 0;
            double least = Double.POSITIVE_INFINITY;
            double touch = Double.NaN;
            for (int i = from * EACH; i <= motions.last() * EACH; i++) {
                double gap = search.at((double) i / EACH);
                least = Math.min(least, gap);
                if (gap <= 0 && Double.isNaN(touch)) {
                    touch = (double) i / EACH;
                }
            }
            GapSearch.Gap found = search.smallest(from);
            if (Double.isNaN(touch)) {
                // no two hundredths of a pose move it by more than a millimetre or so
                assertThat(found.gap()).as("round %s", round).isBetween(least - 2e-3, least + 0.05e-3);
                assertThat(search.at(found.pose())).isCloseTo(found.gap(), within(1e-12));
            } else {
                touches++;
                assertThat(found.gap()).isZero();
                assertThat(found.pose())
                        .isBetween(Math.max(from, touch - 1.0 / EACH - 1e-9), touch + 0.01 / EACH + 1e-3);
            }
        }
        assertThat(touches).isBetween(4, 50);
    }

    /** Two that touch when it begins are said to touch there, wherever that is. */
    @Test
    void touchingFromTheStart() throws CannotComputeException {
        Motions motions = motions("crank-cart");
        Geometry part = triangle(new Random(1), new Vec2(0.2, 0.3));
        GapSearch search = new GapSearch(motions, part, motions.body(1), part, motions.body(1), 0.02);
        for (int from : new int[] {0, 3}) {
            assertThat(search.smallest(from)).isEqualTo(new GapSearch.Gap(0, from));
        }
    }
}
