// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every design that is shipped is read without a problem. */
class ShippedDesignsTest {
    @ParameterizedTest
    @ValueSource(strings = {"silt-trailer.yaml"})
    void isReadWithoutAProblem(String name) {
        Reading reading = DesignFile.read(Path.of("geometry", name));
        assertThat(reading).isInstanceOf(Reading.Good.class);
    }
}
