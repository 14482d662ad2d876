// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatObject;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.Checker;
import tipwright.check.rule.Verdict;
import tipwright.geometry.Head;
import tipwright.geometry.Mesh;
import tipwright.geometry.Polyhedron;
import tipwright.geometry.RevolvedTank;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** Outlines of solids seen along the pivot, against plane geometry. */
class SilhouetteTest {
    private static final Vec3 AT = new Vec3(0.3, 0.7, 0.1);
    private static final Mesh DRUM = RevolvedTank.of(AT, new Vec3(1, 0, 0), 0.8, 1.2, Head.flat(), Head.flat())
            .mesh(1e-5);

    /** A lying drum of radius R between z = a and z = b of its middle shows L by twice sqrt(R^2 - d^2), d the nearest to it. */
    @ParameterizedTest
    @CsvSource({
        "-9, 9, 0",
        "-9, -0.2, 0.2",
        "0.1, 0.3, 0.1",
        "0.32, 9, 0.32",
        "-0.3, 0.1, 0",
        "-0.25, -0.24, 0.24",
    })
    void partsOfADrum(double from, double to, double nearest) {
        ZRange zone = new ZRange(AT.z() + from, AT.z() + to);
        double half = Math.sqrt(0.16 - nearest * nearest);
        for (boolean convex : new boolean[] {true, false}) {
            Geometry seen = OutlineGeometry.silhouette(DRUM, zone, convex);
            assertThat(seen.getArea()).isCloseTo(1.2 * 2 * half, within(2e-4));
            Envelope box = seen.getEnvelopeInternal();
            assertThat(box.getMinX()).isCloseTo(AT.x() - 0.6, within(1e-9));
            assertThat(box.getMaxX()).isCloseTo(AT.x() + 0.6, within(1e-9));
            assertThat(box.getMinY()).isCloseTo(AT.y() - half, within(1e-4));
            assertThat(box.getMaxY()).isCloseTo(AT.y() + half, within(1e-4));
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void nothingIsSeenBesideIt(boolean convex) {
        assertThat(OutlineGeometry.silhouette(DRUM, new ZRange(0.51, 2), convex).isEmpty())
                .isTrue();
        assertThat(OutlineGeometry.silhouette(DRUM, new ZRange(-2, -0.31), convex)
                        .isEmpty())
                .isTrue();
        assertThat(OutlineGeometry.nothing().isEmpty()).isTrue();
        assertThat(OutlineGeometry.thick(OutlineGeometry.nothing(), 0.1).isEmpty())
                .isTrue();
    }

    /** A cone towards +x seen whole is a triangle on the drum's rectangle. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aConeShowsATriangle(boolean convex) {
        Mesh mesh = RevolvedTank.of(AT, new Vec3(1, 0, 0), 0.8, 1.2, Head.flat(), new Head.Conical(0.5))
                .mesh(1e-5);
        Geometry seen = OutlineGeometry.silhouette(mesh, ZRange.ALL, convex);
        assertThat(seen.getArea()).isCloseTo(1.2 * 0.8 + 0.4 * 0.8 / 2, within(2e-4));
        assertThat(seen.getEnvelopeInternal().getMaxX()).isCloseTo(AT.x() + 1, within(1e-9));
    }

    @Test
    void aHollowPrismShowsItsOutlineAndItsHullIfTakenAsConvex() {
        List<Vec2> outline =
                List.of(new Vec2(0, 0), new Vec2(3, 0), new Vec2(3, 1), new Vec2(1, 1), new Vec2(1, 2), new Vec2(0, 2));
        Mesh mesh = Polyhedron.prism(outline, 0.8, 0.1).mesh(1e-3);
        assertThat(OutlineGeometry.silhouette(mesh, ZRange.ALL, false).getArea())
                .isCloseTo(4, within(1e-12));
        // Between its end faces too: what lies inside the outline there is in the way.
        assertThat(OutlineGeometry.silhouette(mesh, ZRange.around(0.1, 0.2), false)
                        .getArea())
                .isCloseTo(4, within(1e-12));
        assertThat(OutlineGeometry.silhouette(mesh, ZRange.around(0.5, 0.1), false)
                        .getArea())
                .isCloseTo(4, within(1e-12));
        assertThat(OutlineGeometry.silhouette(mesh, ZRange.around(0.1, 0.2), true)
                        .getArea())
                .isCloseTo(5, within(1e-12));
    }

    @Test
    void swollenAndBittenAreas() {
        Geometry bar = OutlineGeometry.polygon(OutlineGeometry.barCorners(-0.2, 1.0, 0.1));
        assertThat(bar.getArea()).isCloseTo(1.2 * 0.2, within(1e-12));
        assertThatObject(bar.getEnvelopeInternal()).isEqualTo(new Envelope(-0.2, 1.0, -0.1, 0.1));
        // rounded corners of eight chords each: 16 sin(pi / 16) r^2 in all
        double rounds = 16 * Math.sin(Math.PI / 16);
        assertThat(OutlineGeometry.thick(bar, 0.05).getArea())
                .isCloseTo(0.24 + 2.8 * 0.05 + rounds * 0.0025, within(1e-6));
        assertThatObject(OutlineGeometry.thick(bar, 0)).isSameAs(bar);
        assertThat(OutlineGeometry.without(bar, new Vec2(0.4, 0), 0.05).getArea())
                .isCloseTo(0.24 - rounds * 0.0025, within(1e-6));
        assertThatObject(OutlineGeometry.without(bar, new Vec2(0.4, 0.2), 0.05)).isSameAs(bar);
        // A crossing outline is mended: two triangles of a quarter each.
        assertThat(OutlineGeometry.polygon(List.of(new Vec2(0, 0), new Vec2(1, 1), new Vec2(1, 0), new Vec2(0, 1)))
                        .getArea())
                .isCloseTo(0.5, within(1e-12));
    }

    /** A slice that shows the whole outline is told without being cut; any other is as it would be cut. */
    @Test
    void slicesOfBodiesAsIfEachWereCut() {
        Random random = new Random(7);
        int whole = 0;
        for (int i = 0; i < 60; i++) {
            Vec3 axis = new Vec3(random.nextDouble() - 0.5, random.nextDouble() - 0.5, i % 3 == 0 ? 0 : 1);
            Mesh mesh = RevolvedTank.of(AT, axis, 0.8, 1.2, Head.flat(), new Head.Conical(0.3))
                    .mesh(1e-3);
            Form.Body body = new Form.Body(mesh, true, 0.005);
            ZRange slice = ZRange.around(AT.z() + 0.4 * (random.nextDouble() - 0.5), 0.4 * random.nextDouble());
            Geometry cut = OutlineGeometry.thick(OutlineGeometry.silhouette(mesh, slice.grown(0.005), true), 0.005);
            assertThat(body.within(slice).symDifference(cut).getArea())
                    .as("round %s", i)
                    .isLessThan(1e-9);
            whole += body.within(slice) == body.within(ZRange.ALL) ? 1 : 0;
        }
        assertThat(whole).isBetween(5, 15);
    }

    /** A post in the middle of the width of a hollow tub, where the tub comes down: not only its end plates are in the way. */
    @Test
    void aHollowTubHitsWhatStandsInTheMiddleOfItsWidth() throws CannotComputeException {
        String tub = swap(
                Examples.BOX,
                "{shape: box, size: [1 m, 1 m, 1 m], centre: [0 m, 1 m, 0 m]}",
                "{shape: prism, width: 1 m, outline: [[-50 cm, 50 cm], [0 m, 80 cm], [50 cm, 50 cm], [50 cm, 150 cm],"
                        + " [-50 cm, 150 cm]]}");
        String post = "obstacles: [{name: post, z: [-50 mm, 50 mm],"
                + " outline: [[1 m, 0 mm], [1050 mm, 0 mm], [1050 mm, 700 mm], [1 m, 700 mm]]}]\n";
        assertThat(Checker.check(Examples.read(tub + post)).findings()).anySatisfy(f -> {
            assertThat(f.id()).startsWith("clearance").contains("post").contains("tank");
            assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
        });
    }

    @Test
    void zones() {
        assertThat(ZRange.of(List.of())).isEqualTo(ZRange.ALL);
        assertThat(ZRange.of(List.of(0.5, -0.2))).isEqualTo(new ZRange(-0.2, 0.5));
        assertThat(ZRange.around(0.5, 0.25)).isEqualTo(new ZRange(0.25, 0.75));
        assertThat(new ZRange(0, 1).overlaps(new ZRange(0.9, 2))).isTrue();
        assertThat(new ZRange(0, 1).overlaps(new ZRange(1, 2))).isFalse();
        assertThat(new ZRange(1, 2).overlaps(new ZRange(0, 1))).isFalse();
        assertThat(new ZRange(0, 1).and(new ZRange(0.9, 2))).isEqualTo(new ZRange(0.9, 1));
    }
}
