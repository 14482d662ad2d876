// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import tipwright.geometry.Head;
import tipwright.geometry.Plane;
import tipwright.geometry.RevolvedTank;
import tipwright.geometry.Vec3;

/** Partly filled horizontal tanks with two heads, after D. Jones, "Calculating Tank Volume". */
class HorizontalTankVolumeTest {
    private static final double INCH = 0.0254;
    private static final double GALLON = 231 * INCH * INCH * INCH;
    private static final double DIAMETER = 108;
    private static final Vec3 UP = new Vec3(0, 1, 0);

    @ParameterizedTest(name = "{0}, {1} in deep, filled {2} in")
    @CsvFileSource(resources = "/tipwright/validation/horizontal-tank-volume.csv", useHeadersInDisplayName = false)
    void holdsThePublishedVolume(String heads, double headDepth, double depth, double gallons) {
        Head head = head(heads, headDepth / DIAMETER);
        RevolvedTank tank = RevolvedTank.of(Vec3.ZERO, new Vec3(1, 0, 0), DIAMETER * INCH, 156 * INCH, head, head);
        Plane surface = new Plane(UP, (depth - DIAMETER / 2) * INCH);
        assertThat(tank.below(surface).volume() / GALLON).isCloseTo(gallons, within(1e-6 * gallons));
    }

    private static Head head(String name, double depth) {
        return switch (name) {
            case "flat" -> Head.flat();
            case "conical" -> new Head.Conical(depth);
            case "ellipsoidal" -> new Head.Ellipsoidal(depth);
            case "spherical cap" -> new Head.Dished(depth);
            case "torispherical" -> Head.torispherical();
            default -> throw new IllegalArgumentException(name);
        };
    }

    /** Source: tests of the open library 'fluids' (C. Bell), torispherical head depths. */
    @Test
    void torisphericalHeadsAreAsDeepAsPublished() {
        assertThat(new Head.Torispherical(0.9, 0.2).depth(96)).isCloseTo(25.684269, within(1e-8 * 26 + 5e-7));
        assertThat(Head.torispherical().depth(108)).isCloseTo(18.288462, within(5e-7));
    }
}
