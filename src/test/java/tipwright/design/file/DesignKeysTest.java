// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Whatever key a design file may have can be asked about. */
class DesignKeysTest {
    /** Every key with a description in the schema is known by its name, with that description. */
    @Test
    void knowsEveryKeyOfTheSchema() throws IOException {
        Set<String> described = new TreeSet<>();
        collect(
                new ObjectMapper()
                        .readTree(Path.of("geometry", "tipwright.schema.json").toFile()),
                described);
        assertThat(described).hasSizeGreaterThan(200);
        Set<String> known = new TreeSet<>();
        DesignKeys.all().forEach(k -> known.add(k.path().substring(k.path().lastIndexOf('.') + 1)));
        assertThat(known).containsAll(described);
        assertThat(DesignKeys.names()).containsAll(described);
    }

    private static void collect(JsonNode node, Set<String> described) {
        JsonNode properties = node.get("properties");
        if (properties != null) {
            properties.fields().forEachRemaining(e -> {
                if (e.getValue().has("description")) {
                    described.add(e.getKey());
                }
            });
        }
        node.forEach(child -> collect(child, described));
    }

    @Test
    void aKeyIsFoundByItsPathAndByItsEnd() {
        assertThat(DesignKeys.find("what-if.structure")).isEqualTo(DesignKeys.find("structure"));
        assertThat(DesignKeys.find("structure")).singleElement().satisfies(k -> {
            assertThat(k.path()).isEqualTo("what-if.structure");
            assertThat(k.preset()).isNull();
            assertThat(k.needed()).isFalse();
        });
        assertThat(DesignKeys.find("supports.soft")).singleElement().satisfies(k -> assertThat(k.preset())
                .isEqualTo("50 %"));
        assertThat(DesignKeys.find("drive.knuckle.actuators.actuator.closed"))
                .as("told where an actuator is met first")
                .isNotEmpty();
        assertThat(DesignKeys.find("no-such-key")).isEmpty();
    }
}
