// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A '?' in a design file is answered with the smallest size that is sold and passes. */
class OpenSizesTest {
    private static final String PIN = "frame-pin-joint: {diameter: ";
    private static final String FUSE = "fuse: 40 A";

    @TempDir
    private Path folder;

    @Test
    void theAnswerPassesAndTheNextSmallerSizeDoesNot() throws IOException {
        // without its lugs: their holes are drilled for the one pin
        String lime = shipped("lime-barrel").replaceFirst("(?m)^fastenings:\n((  .*|#.*)\n)+", "");
        assertThat(lime).doesNotContain("lug: {");
        String asked = lime.replace(PIN + "16 mm", PIN + "?").replace(FUSE, "fuse: ?");
        JsonNode all = json(asked);
        String schema = Files.readString(Path.of("geometry", "tipwright-check-output.schema.json"));
        assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                        .getSchema(schema)
                        .validate(all))
                .isEmpty();
        JsonNode bought = all.get("to_buy");
        assertThat(bought.findValuesAsText("what")).containsExactly("pin at the frame pin", "fuse");
        JsonNode fuse = bought.get(1);
        String size = fuse.get("size").asText();
        assertThat(size).isEqualTo(fuse.get("passes_in_normal_dump").asText());
        double needed = fuse.get("seller_must_state").get(0).get("value").asDouble();
        // sizes of ISO 8820 (from memory): 5, 7.5, 10, 15, 20, 25, 30, 40 A
        double[] sold = {5, 7.5, 10, 15, 20, 25, 30, 40};
        double smallest =
                Arrays.stream(sold).filter(a -> a >= needed).findFirst().orElseThrow();
        assertThat(size).isEqualTo((int) smallest + " A");
        // clevis pins of ISO 2341 (from memory): 12, 14, 16 mm
        JsonNode pin = bought.get(0);
        assertThat(pin.get("passes_in_normal_dump").asText()).isEqualTo("12 mm");
        assertThat(pin.get("size").asText()).isEqualTo("16 mm");
        String alone = "what-if/frame-pin-when-one-carries-all";
        assertThat(verdict(lime, alone)).isIn("pass", "close");
        String smaller = lime.replace(PIN + "16 mm", PIN + "14 mm");
        assertThat(verdict(smaller, "pin/frame-pin")).isIn("pass", "close");
        assertThat(verdict(smaller, alone)).isEqualTo("fail");
    }

    @Test
    void aBearingBringsItsShaftAndTheFiguresForTheSeller() throws IOException {
        String asked = shipped("lime-barrel")
                .replace("bearing: yard-30", "bearing: ?")
                .replace("shaft: {diameter: 30 mm", "shaft: {diameter: ?");
        Cli.Outcome run = Cli.run("check", file(asked));
        assertThat(run.out())
                .contains("To buy")
                .contains("2 pivot bearings: 'yard-")
                .contains("seller must state:", "static load rating (C0) at least", "shaft diameter");
    }

    @Test
    void saysPlainlyWhenNoneDoes() throws IOException {
        String asked = shipped("lime-barrel").replace(FUSE, "fuse: ?").replace("rating: 60 A", "rating: 6 A");
        Cli.Outcome run = Cli.run("check", file(asked));
        assertThat(run.out().replaceAll("\\s+", " ")).contains("Fuse: none that is sold does. Nearest: 5 A");
        assertThat(run.code()).isEqualTo(Exit.FAILS);
    }

    @Test
    void otherCommandsTakeTheAnswerAndSayWhich() throws IOException {
        Cli.Outcome run = Cli.run("time", file(shipped("lime-barrel").replace(FUSE, "fuse: ?")));
        assertThat(run.err()).contains("supply.fuse: '?' is taken as ");
        assertThat(run.code()).isZero();
    }

    @Test
    void saysWhereItMayStand() throws IOException {
        Cli.Outcome run = Cli.run("check", file(shipped("lime-barrel").replace("length: 800 mm", "length: ?")));
        assertThat(run.err()).contains("'?' cannot be asked here; it may stand for actuator");
        assertThat(run.code()).isEqualTo(Exit.NOT_UNDERSTOOD);
    }

    private String verdict(String text, String id) throws IOException {
        for (JsonNode check : json(text).get("checks")) {
            if (check.get("id").asText().equals(id)) {
                return check.get("verdict").asText();
            }
        }
        return "";
    }

    private JsonNode json(String text) throws IOException {
        return new ObjectMapper()
                .readTree(Cli.run("check", file(text), "--json").out());
    }

    private String file(String text) throws IOException {
        return Files.writeString(folder.resolve("asked.yaml"), text).toString();
    }

    private static String shipped(String name) throws IOException {
        return Files.readString(Path.of("geometry", name + ".yaml"));
    }
}
