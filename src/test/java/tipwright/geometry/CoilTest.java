// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Coils for pictures. */
class CoilTest {
    private static final Vec3 A = new Vec3(0.1, -0.3, 0.2);
    private static final Vec3 B = new Vec3(0.3, 0.4, 0.2);

    @Test
    void goesFromEndToEndAroundItsLine() {
        List<Vec3> coil = Coil.along(A, B, 0.03, 0.05, 9);
        assertThat(coil.get(0)).isEqualTo(A);
        assertThat(coil.get(coil.size() - 1)).isEqualTo(B);
        Vec3 axis = B.minus(A).unit();
        double most = 0;
        for (Vec3 p : coil) {
            Vec3 off = p.minus(A);
            most = Math.max(most, off.minus(axis.times(off.dot(axis))).norm());
        }
        assertThat(most).isCloseTo(0.03, within(1e-12));
        // As long as the turns that are not at the hooks, at the least.
        assertThat(length(coil)).isGreaterThan(8 * 2 * Math.PI * 0.03 * 0.98);
    }

    @Test
    void armsOfACoilAroundAPinPointWhereTheyShould() {
        Vec2 pin = new Vec2(1, 2);
        List<Vec3> coil = Coil.around(pin, 0.1, 0.2, 0.03, 0.1, -Math.PI / 2, Math.PI, 4);
        Vec3 first = coil.get(0);
        Vec3 last = coil.get(coil.size() - 1);
        assertThat(first.minus(new Vec3(1, 1.9, 0.1)).norm()).isLessThan(1e-12);
        assertThat(last.minus(new Vec3(0.9, 2, 0.2)).norm()).isLessThan(1e-12);
        for (Vec3 p : coil.subList(1, coil.size() - 1)) {
            assertThat(p.xy().minus(pin).norm()).isCloseTo(0.03, within(1e-12));
        }
    }

    /** A wire encloses its cross-section times its length; closed and turned outwards, or its volume would be off or negative. */
    @Test
    void wireIsASolid() {
        List<Vec3> coil = Coil.along(A, B, 0.03, 0.05, 9);
        Mesh wire = Forms.wire(coil, 0.002, 12);
        double section = 6 * Math.sin(Math.PI / 6) * 0.002 * 0.002;
        double volume = 0;
        int[] corners = wire.corners();
        for (int i = 0; i < corners.length; i += 3) {
            Vec3 p = wire.vertex(corners[i]);
            volume += p.dot(wire.vertex(corners[i + 1]).cross(wire.vertex(corners[i + 2]))) / 6;
        }
        assertThat(volume).isCloseTo(section * length(coil), within(0.08 * section * length(coil)));
        assertThat(wire.welded().corners()).hasSameSizeAs(corners);
    }

    private static double length(List<Vec3> points) {
        double sum = 0;
        for (int i = 1; i < points.size(); i++) {
            sum += points.get(i).minus(points.get(i - 1)).norm();
        }
        return sum;
    }
}
