// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import tipwright.design.file.FieldMeaning.Sort;

class FileFieldsTest {
    private static final Path SHIPPED = Path.of("geometry");

    private static FileFields of(String name) throws IOException {
        return FileFields.of(Files.readString(SHIPPED.resolve(name + ".yaml")));
    }

    /** Paths without numbers, kinds after '<': 'tank.interior<box>.size'. */
    private static void reach(FileField field, String path, Set<String> all) {
        all.add(path);
        FieldMeaning m = field.meaning();
        switch (m.sort()) {
            case KINDS -> m.words()
                    .forEach(kind -> below(FileFields.inside(m, "a", kind), path + "<" + kind + ">", all));
            case LIST -> FileFields.inside(m, "a", "").forEach(f -> reach(f, path + "[]", all));
            case GROUP -> below(FileFields.inside(m, "a", ""), path, all);
            case POINT -> below(FileFields.inside(m, "a", ""), path, all);
            default -> {}
        }
    }

    private static void below(List<FileField> fields, String path, Set<String> all) {
        for (FileField f : fields) {
            reach(
                    f,
                    path.isEmpty()
                            ? f.meaning().key()
                            : path + "." + f.meaning().key(),
                    all);
        }
    }

    private JsonNode schema;

    /** All keys that the schema allows, with their paths in the same form. */
    private void walk(JsonNode node, String path, Set<String> all) {
        if (node.has("$ref")) {
            walk(schema.at(node.get("$ref").asText().substring(1)), path, all);
            return;
        }
        for (String many : List.of("oneOf", "anyOf")) {
            if (node.has(many)) {
                node.get(many).forEach(n -> walk(n, path, all));
            }
        }
        if (node.path("items").isObject() && !node.path("items").has("type")) {
            walk(node.get("items"), path + "[]", all);
        } else if (node.has("items")) {
            walk(node.get("items"), path + "[]", all);
        }
        if (!node.has("properties")) {
            return;
        }
        JsonNode keys = node.get("properties");
        String kind = "";
        String by = "";
        for (var e : keys.properties()) {
            if (e.getValue().has("const") && e.getValue().get("const").isTextual()) {
                by = e.getKey();
                kind = "<" + e.getValue().get("const").asText() + ">";
            }
        }
        for (var e : keys.properties()) {
            if (!e.getKey().equals(by)) {
                String below = path + kind + (path.isEmpty() ? "" : ".") + e.getKey();
                all.add(below);
                walk(e.getValue(), below, all);
            }
        }
    }

    /** The same key either as the name of a kind or as a key: 'drive.straight' and 'drive<straight>'. */
    private static String alike(String path) {
        return path.replace("<", ".").replace(">", "").replace("[]", "");
    }

    @Test
    void everyKeyOfTheSchemaIsAField() throws IOException {
        schema = new ObjectMapper()
                .readTree(SHIPPED.resolve("tipwright.schema.json").toFile());
        Set<String> allowed = new TreeSet<>();
        walk(schema, "", allowed);
        Set<String> reached = new HashSet<>();
        reach(FileFields.of("tipwright: 1").root(), "", reached);
        Set<String> fields = new HashSet<>();
        for (String path : reached) {
            fields.add(alike(path));
            for (int i = path.indexOf('<'); i >= 0; i = path.indexOf('<', i + 1)) {
                fields.add(alike(path.substring(0, path.indexOf('>', i) + 1)));
            }
        }
        List<String> unreached = new ArrayList<>();
        for (String path : allowed) {
            if (!fields.contains(alike(path))) {
                unreached.add(path);
            }
        }
        assertThat(allowed.size()).isGreaterThan(1000);
        assertThat(unreached).isEmpty();
    }

    @Test
    void tellsWhatAFieldIsAndWhatIsWritten() throws IOException {
        FileFields fields = of("silt-trailer");
        FileField fill = fields.find("slurry.fill");
        assertThat(fill.text()).isEqualTo("85 %");
        assertThat(fill.written()).isTrue();
        FileField crown = fields.find("tank.interior.crown");
        assertThat(crown.written()).isFalse();
        assertThat(crown.meaning().usual()).isEqualTo("100 %");
        assertThat(crown.meaning().note()).startsWith("Crown radius");
        assertThat(crown.meaning().limits()).isEqualTo("allowed: more than 50 % to 300 %");
        assertThat(fields.find("tank.interior").text()).isEqualTo("cylinder");
        assertThat(fields.find("pivot.at.x").text()).isEqualTo("600 mm");
        assertThat(fields.find("tank.openings[1].door.latches").text()).isEqualTo("2");
        assertThat(fields.find("drive.straight.frame-pin").label()).isEqualTo("frame pin");
        assertThat(fields.find("frame.members[3]").label()).isEqualTo("left post");
        assertThat(fields.find("supply").meaning().words()).contains("battery", "pump");
        assertThat(fields.find("tank.interior.diameter").inPlaceOf()).containsExactly("around");
    }

    @Test
    void setsTakesOutAndAddsWithEverythingElseAsWritten() {
        String text =
                """
                # a machine
                name: a    # its name
                site: {grade: 2 deg}
                tank:
                  wall: {thickness: 5 mm}   # thin
                  # what hangs on it
                  attached:
                    - name: door   # heavy
                      mass: 4 kg
                    - {name: hook, mass: 1 kg}
                pivot: {at: [1 mm, 2 mm]}
                """;
        assertThat(FieldEdit.set(FileFields.of(text), "site.cross-slope", "1 deg"))
                .isEqualTo(text.replace("2 deg}", "2 deg, cross-slope: 1 deg}"));
        assertThat(FieldEdit.set(FileFields.of(text), "site.grade", ""))
                .isEqualTo(text.replace("site: {grade: 2 deg}\n", ""));
        assertThat(FieldEdit.set(FileFields.of(text), "about", "b: c"))
                .isEqualTo(text.replace("its name\n", "its name\nabout: \"b: c\"\n"));
        assertThat(FieldEdit.set(FileFields.of(text), "pivot.at.y", "3 in")).isEqualTo(text.replace("2 mm]", "3 in]"));
        assertThat(FieldEdit.set(FileFields.of(text), "tank.mass.empty", "9 kg"))
                .isEqualTo(text.replace("# thin\n", "# thin\n  mass: {empty: 9 kg}\n"));
        assertThat(FieldEdit.takeOut(text, "tank.attached[1]"))
                .isEqualTo(text.replace("    - name: door   # heavy\n      mass: 4 kg\n", ""));
        assertThat(FieldEdit.takeOut(text, "tank.attached[2]"))
                .isEqualTo(text.replace("    - {name: hook, mass: 1 kg}\n", ""));
        assertThat(FieldEdit.takeOut(text, "tank.attached[1].name"))
                .isEqualTo(text.replace("- name: door   # heavy\n      mass", "- \n      mass")
                        .replace("- \n      mass", "-    # heavy\n      mass"));
        assertThat(FieldEdit.addEntry(text, "tank.attached", ""))
                .isEqualTo(text.replace(
                        "mass: 1 kg}\n", "mass: 1 kg}\n    - {name: \"\", mass: \"\", centre: [\"\", \"\", \"\"]}\n"));
        assertThat(FieldEdit.add(text, "pivot.shaft"))
                .startsWith(text.substring(0, 40))
                .contains("2 mm], shaft: {diameter: \"\"");
        assertThatThrownBy(() -> FieldEdit.set(FileFields.of(text), "no-such", "1"))
                .hasMessageContaining("no-such");
    }

    @Test
    void anotherKindKeepsWhatBothHave() throws IOException {
        String text = Files.readString(SHIPPED.resolve("silt-trailer.yaml"));
        String box = FieldEdit.choose(text, "tank.interior", "box");
        assertThat(box).contains("interior: {shape: box, centre: [0 mm, 640 mm, 0 mm], size: [\"\", \"\", \"\"]}");
        assertThat(box.lines().count()).isEqualTo(text.lines().count());
        String back = FieldEdit.set(FileFields.of(text), "tank.interior.around", "2400 mm");
        assertThat(back).contains("around: 2400 mm").doesNotContain("diameter: 760 mm");
        String pump = FieldEdit.choose(text, "supply", "hand-pump");
        assertThat(FileFields.of(pump).find("supply").text()).isEqualTo("hand-pump");
        String bar = FieldEdit.choose(text, "drive", "four-bar");
        assertThat(bar).contains("  four-bar:\n    frame-pin: [220 mm, -395 mm]    # in a bracket");
        assertThat(FileFields.of(bar).find("drive").text()).isEqualTo("four-bar");
    }

    @Test
    void problemsStandBesideTheirFields() throws IOException {
        String text = Files.readString(SHIPPED.resolve("silt-trailer.yaml"))
                .replace("diameter: 760 mm", "diameter: 760")
                .replace("to: 60 deg, ", "");
        Reading.Bad bad = (Reading.Bad) DesignFile.read("a", text, NamedFiles.shipped());
        assertThat(FileFields.of(text).beside(bad.problems())).containsKeys("tank.interior.diameter", "tilt.to");
        assertThat(FileFields.of("[").root().inner()).noneMatch(FileField::written);
        assertThat(FileFields.of("").find("points").meaning().sort()).isEqualTo(Sort.POINTS);
    }
}
