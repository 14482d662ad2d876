// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** Words for where a bearing's load points. */
class DirectionTest {
    @ParameterizedTest
    @CsvSource({
        "0, -1, 0, -1, into its base, 'pushes into its base, 0 deg off square'",
        "1, -1, 0, -1, at an angle, 'pushes into its base at an angle, 45 deg off square'",
        "-1, 0, 0, -1, sideways, 'pushes sideways along its base, 90 deg off square'",
        "0, 1, 0, -2, off its base, 'pulls off its base, 180 deg off square'",
        "0, -1, -1, 0, sideways, 'pushes sideways along its base, 90 deg off square'",
    })
    void isMeasuredFromTheBase(double x, double y, double baseX, double baseY, String word, String words) {
        Direction direction = Direction.of(new Vec3(x, y, 7), new Vec2(baseX, baseY));
        assertThat(direction.word()).isEqualTo(word);
        assertThat(direction.words()).isEqualTo(words);
    }
}
