// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.start;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Later Javas warn at start unless they are told; earlier ones stop at words that they do not know. */
class DrawingJavaTest {
    @Test
    void eachJavaGetsTheWordsThatItKnows() {
        assertThat(DrawingJava.leave(17)).isEmpty();
        assertThat(DrawingJava.leave(21)).isEmpty();
        assertThat(DrawingJava.leave(22)).containsExactly("--enable-native-access=javafx.graphics");
        assertThat(DrawingJava.leave(25))
                .containsExactly("--enable-native-access=javafx.graphics", "--sun-misc-unsafe-memory-access=allow");
    }
}
