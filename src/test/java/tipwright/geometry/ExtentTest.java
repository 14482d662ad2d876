// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Boxes around points, by hand. */
class ExtentTest {
    @Test
    void reachesFromTheLowestToTheHighestOfBothAxes() {
        Extent extent = Extent.of(List.of(new Vec2(1, 5), new Vec2(-3, 2), new Vec2(0, 4)));
        assertThat(extent).isEqualTo(new Extent(new Vec2(-3, 2), new Vec2(1, 5)));
        assertThat(extent.width()).isEqualTo(4);
        assertThat(extent.height()).isEqualTo(3);
        assertThat(extent.middle()).isEqualTo(new Vec2(-1, 3.5));
    }

    @Test
    void ofOnePointIsThatPointAndOfNoneTheOrigin() {
        Vec2 point = new Vec2(-2, -7);
        assertThat(Extent.of(List.of(point))).isEqualTo(new Extent(point, point));
        assertThat(Extent.of(List.of())).isEqualTo(new Extent(Vec2.ZERO, Vec2.ZERO));
    }
}
