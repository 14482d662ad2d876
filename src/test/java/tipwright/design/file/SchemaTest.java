// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaId;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitLabel;

/**
 * The shipped JSON Schemas are those that the records give. To write them anew after a change of the format: {@code mvn -q -B test
 * -Dtest=SchemaTest -Dtest.write.schema=true}.
 */
class SchemaTest {
    private static final Path FOLDER = Path.of("geometry");
    private static final Map<String, String> SCHEMAS =
            Map.of("tipwright.schema.json", SchemaWriter.design(), "tipwright-parts.schema.json", SchemaWriter.parts());

    @ParameterizedTest
    @MethodSource("names")
    void isTheOneGeneratedFromTheRecords(String name) throws IOException {
        if (Boolean.getBoolean("test.write.schema")) {
            Files.writeString(FOLDER.resolve(name), SCHEMAS.get(name));
        }
        assertThat(FOLDER.resolve(name)).hasContent(SCHEMAS.get(name));
    }

    @ParameterizedTest
    @MethodSource("names")
    void isAValidSchema(String name) throws IOException {
        JsonSchema meta = factory().getSchema(SchemaLocation.of(SchemaId.V202012));
        assertThat(meta.validate(new ObjectMapper().readTree(SCHEMAS.get(name))))
                .isEmpty();
    }

    static Stream<String> names() {
        return SCHEMAS.keySet().stream().sorted();
    }

    @ParameterizedTest
    @MethodSource("designs")
    void everyShippedDesignIsValid(Path design) throws IOException {
        assertThat(faults("tipwright.schema.json", Files.readString(design))).isEmpty();
    }

    static List<Path> designs() throws IOException {
        return yamlFiles(FOLDER);
    }

    @ParameterizedTest
    @MethodSource("parts")
    void everyShippedPartsFileIsValid(Path parts) throws IOException {
        assertThat(faults("tipwright-parts.schema.json", Files.readString(parts)))
                .isEmpty();
    }

    static List<Path> parts() throws IOException {
        return yamlFiles(FOLDER.resolve("parts"));
    }

    private static List<Path> yamlFiles(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    diameter: 760 mm  | diameter: 760
                    diameter: 760 mm  | diameter: 760 kg
                    diameter: 760 mm  | diametre: 760 mm
                    shape: cylinder   | shape: cone
                    rim: circle       | rim: round
                    'density: 1400 kg/m3' | 'colour: grey'
                    'fill: 85 %'      | 'fill: 85 %\n  volume: 3 L'
                    '[520 mm, 190 mm]' | '[520 mm]'
                    normal: x         | normal: w
                    latches: 2        | latches: two
                    tipwright: 1      | tipwright: 2
                    """)
    void marksAMistake(String good, String bad) throws IOException {
        String text = ErrorTextTest.resource("silt.yaml");
        assertThat(text).contains(good);
        assertThat(faults("tipwright.schema.json", text)).isEmpty();
        assertThat(faults("tipwright.schema.json", text.replace(good, bad))).isNotEmpty();
    }

    /** What the reader reads, the editor does not mark. */
    @Test
    void allowsEverySpellingOfEveryUnit() throws IOException {
        JsonNode definitions =
                new ObjectMapper().readTree(SchemaWriter.design()).get("$defs");
        for (Kind kind : Kind.values()) {
            String pattern =
                    definitions.get(SchemaValues.name(kind)).get("pattern").asText();
            for (UnitLabel unit : Quantities.units(kind)) {
                for (String number : List.of("12", "-0.5", "3/8 ", "12 3/8 ", "12-3/8", ".5 ", "1e3 ", "- 4 ")) {
                    assertThat(number + unit.name()).matches(pattern);
                    unit.aliases().forEach(alias -> assertThat(number + alias).matches(pattern));
                }
            }
        }
        String length = definitions.get("length").get("pattern").asText();
        assertThat(List.of("3 ft 4 1/2 in", "3' 4-1/2\"", "3' - 4\"")).allMatch(text -> text.matches(length));
        assertThat(List.of("12", "mm", "12 kg", "12 mm x", "")).noneMatch(text -> text.matches(length));
    }

    private static JsonSchemaFactory factory() {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);
    }

    private static List<String> faults(String schema, String yaml) throws IOException {
        Object loaded = new Load(LoadSettings.builder().build()).loadFromString(yaml);
        JsonNode node = new ObjectMapper().valueToTree(loaded);
        return factory().getSchema(new ObjectMapper().readTree(SCHEMAS.get(schema))).validate(node).stream()
                .map(Object::toString)
                .toList();
    }
}
