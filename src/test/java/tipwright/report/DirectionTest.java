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
        "0, -1, 0, -1, onto base, 'pressed onto its base, 0 deg off straight'",
        "1, -1, 0, -1, slanting, 'pressed slantwise onto its base, 45 deg off straight'",
        "-1, 0, 0, -1, sideways, 'pushed sideways across its base, 90 deg off straight onto it'",
        "0, 1, 0, -2, off base, 'pulled off its base, 180 deg off straight onto it'",
        "0, -1, -1, 0, sideways, 'pushed sideways across its base, 90 deg off straight onto it'",
    })
    void isMeasuredFromTheBase(double x, double y, double baseX, double baseY, String word, String words) {
        Direction direction = Direction.of(new Vec3(x, y, 7), new Vec2(baseX, baseY));
        assertThat(direction.word()).isEqualTo(word);
        assertThat(direction.words()).isEqualTo(words);
    }
}
