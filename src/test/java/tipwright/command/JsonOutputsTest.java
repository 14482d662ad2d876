// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.Swap;

/** What the commands print as JSON is as the shipped schemas say, and says the same as the text. */
class JsonOutputsTest {
    @ParameterizedTest
    @CsvSource({
        "actuators, silt-trailer, ''",
        "actuators, too-small, ''",
        "actuators, twin-rams, ''",
        "tolerance, silt-trailer, --runs 50",
        "tolerance, too-small, --runs 0",
        "tolerance, six-link, --runs 5",
        "place, silt-trailer, --candidates 20000",
        "check, too-small, ''"
    })
    void isAsTheSchemaSays(String command, String design, String more) throws IOException {
        isAsTheSchemaSays(command, printed(command, design, more));
    }

    @Test
    void howSureIsAsTheSchemaSays(@TempDir Path folder) throws IOException {
        String text = Files.readString(Path.of("geometry", "saw-skid.yaml"));
        Path file = folder.resolve("doubt.yaml");
        Files.writeString(file, Swap.swap(text, "mass: 95 lb", "mass: 95 lb +- 5"));
        JsonNode printed = printed("check", file.toString(), "");
        assertThat(printed.at("/how_sure/samples").isMissingNode()).isFalse();
        isAsTheSchemaSays("check", printed);
    }

    private static void isAsTheSchemaSays(String command, JsonNode printed) throws IOException {
        String schema = Files.readString(Path.of("geometry", "tipwright-" + command + "-output.schema.json"));
        JsonSchema rules =
                JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schema);
        assertThat(rules.validate(printed)).isEmpty();
        assertThat(printed.get("format").asInt()).isEqualTo(command.equals("check") ? 2 : 1);
    }

    @Test
    void theFixesThatWereTriedAreTold() throws IOException {
        JsonNode fixes = printed("check", "too-small", "").get("fixes");
        assertThat(fixes.get("complete").asBoolean()).isTrue();
        JsonNode first = null;
        for (JsonNode fix : fixes.get("tried")) {
            if (fix.get("then_every_check_passes").asBoolean()) {
                first = fix;
                break;
            }
        }
        assertThat(first).isNotNull();
        assertThat(first.get("change").asText()).contains("mid-12-long");
        assertThat(first.get("fixes")).extracting(JsonNode::asText).contains("push", "stroke/drawn-out");
    }

    @Test
    void theDesignsOwnActuatorIsInTheList() throws IOException {
        JsonNode all = printed("actuators", "silt-trailer", "").get("actuators");
        int own = 0;
        double before = 0;
        for (JsonNode a : all) {
            own += a.get("own").asBoolean() ? 1 : 0;
            if (a.get("own").asBoolean()) {
                assertThat(a.get("name").asText()).isEqualTo("mid-12-long");
                assertThat(a.get("verdict").asText()).isIn("pass", "close");
            }
            if (a.get("verdict").asText().equals("pass")) {
                assertThat(a.get("voltage_v").asDouble()).isEqualTo(12);
                assertThat(a.get("used_with_welds_off").asDouble()).isGreaterThanOrEqualTo(before);
                before = a.get("used_with_welds_off").asDouble();
            }
        }
        assertThat(own).isOne();
    }

    private static JsonNode printed(String command, String design, String more) throws IOException {
        String[] rest = more.isBlank() ? new String[0] : more.split(" ");
        String[] all = new String[3 + rest.length];
        all[0] = command;
        all[1] = design;
        all[2] = "--json";
        System.arraycopy(rest, 0, all, 3, rest.length);
        return new ObjectMapper().readTree(Cli.run(all).out());
    }
}
