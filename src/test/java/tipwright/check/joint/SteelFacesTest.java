// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import tipwright.design.joint.FilletWeld;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.OutlineGeometry;

/** Welds on random steel against areas of the JTS Topology Suite: its strips, intersections and buffers. */
class SteelFacesTest {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double UNSURE = 2e-4;

    /** What is left of the sides of a part in the strip, m. */
    private static final double SHORT = 1e-3;

    private record Part(List<Vec2> outline, double z0, double z1) {}

    /** Corners of a rectangle with a way along its top and the middle of that top, m. */
    private static List<Vec2> plate(Vec2 middle, Vec2 along, double length, double deep) {
        Vec2 half = along.times(length / 2);
        Vec2 down = new Vec2(along.y(), -along.x()).times(deep);
        return List.of(
                middle.minus(half).plus(down), middle.plus(half).plus(down), middle.plus(half), middle.minus(half));
    }

    /** Whether all seams lie within a distance of steel, along u and along z each, m. */
    private static boolean covered(FilletWeld weld, Vec2 along, List<Part> parts, double within) {
        Vec2 at = weld.at().xy();
        List<Geometry> areas = new ArrayList<>();
        Geometry strip = OutlineGeometry.polygon(plate(at.plus(square(along).times(within)), along, 8, 2 * within));
        for (Part part : parts) {
            Geometry side = OutlineGeometry.polygon(part.outline).getBoundary().intersection(strip);
            for (int i = 0; i < side.getNumGeometries(); i++) {
                double low = Double.POSITIVE_INFINITY;
                double high = Double.NEGATIVE_INFINITY;
                for (Coordinate c : side.getGeometryN(i).getCoordinates()) {
                    double u = new Vec2(c.x, c.y).minus(at).dot(along);
                    low = Math.min(low, u);
                    high = Math.max(high, u);
                }
                if (high - low > SHORT) {
                    double z = weld.at().z();
                    areas.add(FACTORY.toGeometry(new Envelope(low, high, part.z0 - z, part.z1 - z)));
                }
            }
        }
        Geometry steel = BufferOp.bufferOp(
                FACTORY.buildGeometry(areas),
                within,
                new BufferParameters(1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 5));
        List<Geometry> seams = new ArrayList<>();
        for (FilletWeld.Seam s : weld.seams()) {
            seams.add(FACTORY.createLineString(
                    new Coordinate[] {new Coordinate(s.from().x(), s.from().y()), new Coordinate(s.to().x(), s.to().y())
                    }));
        }
        return FACTORY.buildGeometry(seams).difference(steel).getLength() < 1e-9;
    }

    private static Vec2 square(Vec2 along) {
        return new Vec2(-along.y(), along.x());
    }

    @Test
    void randomWeldsOnRandomSteel() {
        Random random = new Random(5);
        int on = 0;
        int off = 0;
        int untold = 0;
        for (int run = 0; run < 3000; run++) {
            Vec2 along = new Vec2(1, 0).tilted((random.nextDouble() - 0.5) * 3);
            Vec3 normal = new Vec3(square(along).x(), square(along).y(), 0);
            FilletWeld weld = new FilletWeld(
                    new Vec3(random.nextDouble(), random.nextDouble(), random.nextDouble()),
                    normal,
                    0.005,
                    480e6,
                    run % 3 == 0 ? new FilletWeld.Rectangle(0.08, 0.05) : null,
                    run % 3 == 1 ? new FilletWeld.Lines(0.09, 0.04, FilletWeld.Way.values()[run % 2]) : null,
                    null,
                    run % 3 == 2
                            ? List.of(new FilletWeld.Seam(
                                    new Vec2(-0.04, (random.nextDouble() - 0.5) * 0.06), new Vec2(0.05, 0.02)))
                            : List.of());
            List<Part> parts = new ArrayList<>();
            for (int i = 0; i <= random.nextInt(3); i++) {
                Vec2 middle = weld.at()
                        .xy()
                        .plus(along.times((random.nextDouble() - 0.5) * 0.2))
                        .plus(square(along).times((random.nextDouble() - 0.5) * 0.008));
                double z = weld.at().z() + (random.nextDouble() - 0.5) * 0.04;
                double half = 0.02 + 0.04 * random.nextDouble();
                Vec2 turned = along.tilted((random.nextDouble() - 0.5) * 0.01);
                parts.add(new Part(plate(middle, turned, 0.05 + 0.3 * random.nextDouble(), 0.05), z - half, z + half));
            }
            boolean sure = covered(weld, along, parts, 0.003 - UNSURE);
            if (sure != covered(weld, along, parts, 0.003 + UNSURE)) {
                continue;
            }
            Foot foot = Objects.requireNonNull(Foot.of(
                    weld, weld.seams(), weld.at().xy().plus(square(along).times(0.1))));
            SteelFaces faces = new SteelFaces(foot);
            parts.forEach(p -> faces.add("part", p.outline, p.z0, p.z1));
            double past = 0;
            for (FilletWeld.Seam s : weld.seams()) {
                past = Math.max(past, faces.past(s.from(), s.to()));
            }
            if (faces.none()) {
                untold++;
                continue;
            }
            assertThat(past <= SteelFaces.GAP).as("run " + run + ": " + past).isEqualTo(sure);
            on += sure ? 1 : 0;
            off += sure ? 0 : 1;
        }
        assertThat(on).isGreaterThan(400);
        assertThat(off).isGreaterThan(400);
        assertThat(untold).isLessThan(600);
    }
}
