// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files as a whole: missing, too large, not text, reached by tricks; too much in them. */
class FilesTest {
    @TempDir
    private Path folder;

    private String silt = "";

    @BeforeEach
    void readTheSoundOne() throws IOException {
        silt = ErrorTextTest.resource("silt.yaml");
    }

    private Path write(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    private List<String> told(String text) throws IOException {
        return told(write("silt.yaml", text.getBytes(UTF_8)));
    }

    private List<String> told(Path file) {
        Reading reading = DesignFile.read(file);
        return reading instanceof Reading.Bad bad
                ? bad.problems().stream()
                        .map(p -> p.text().replace(folder + "/", ""))
                        .toList()
                : List.of();
    }

    @Test
    void noSuchFile() {
        assertThat(told(folder.resolve("silt.yaml"))).containsExactly("silt.yaml: no such file");
    }

    @Test
    void aFolder() throws IOException {
        assertThat(told(Files.createDirectory(folder.resolve("silt.yaml"))))
                .containsExactly("silt.yaml: is no ordinary file");
    }

    @Test
    void largerThanAllowed() throws IOException {
        byte[] large = new byte[DesignFile.LARGEST + 1];
        assertThat(told(write("silt.yaml", large))).containsExactly("silt.yaml: is larger than 10 MB");
        Reading reading = DesignFile.read("silt.yaml", " ".repeat(DesignFile.LARGEST + 1), NamedFiles.folder(folder));
        assertThat(((Reading.Bad) reading).problems())
                .extracting(Problem::text)
                .containsExactly("silt.yaml: is larger than 10 MB");
    }

    @Test
    void notUtf8() throws IOException {
        byte[] latin = swap(silt, "Silt tank", "Schlamm f\u00fcr").getBytes(ISO_8859_1);
        assertThat(told(write("silt.yaml", latin)))
                .containsExactly(
                        "silt.yaml:2:16: not UTF-8 text from here on; save the file as UTF-8 in a text editor");
        assertThat(told(write("silt.yaml", silt.getBytes(UTF_16))))
                .containsExactly("silt.yaml:1:1: not UTF-8 text from here on; save the file as UTF-8 in a text editor");
    }

    @Test
    void cutShortInACharacter() throws IOException {
        assertThat(told(write("silt.yaml", new byte[] {'a', '\n', (byte) 0xe2, (byte) 0x82})))
                .containsExactly("silt.yaml:2:1: not UTF-8 text from here on; save the file as UTF-8 in a text editor");
    }

    @Test
    void binary() throws IOException {
        assertThat(told("tipwright: 1\nname: a\u0000b\n"))
                .containsExactly("silt.yaml:2:8: not a text file (a zero byte)");
    }

    /** The parser failed on a wide character across the edge of its buffer of 1025 characters. */
    @Test
    void aWideCharacterMayStandAnywhere() {
        for (int length = 1000; length < 1100; length++) {
            String text = "#" + "x".repeat(length) + "\ud83d\udccf\n" + silt;
            assertThat(DesignFile.read("silt.yaml", text, NamedFiles.folder(folder)))
                    .isInstanceOf(Reading.Good.class);
        }
    }

    @Test
    void halfACharacterIsRefused() {
        for (int length = 1000; length < 1100; length++) {
            String text = "tipwright: 1\n#" + "x".repeat(length) + "\ud83d";
            Reading reading = DesignFile.read("silt.yaml", text, NamedFiles.folder(folder));
            assertThat(((Reading.Bad) reading).problems())
                    .extracting(Problem::text)
                    .containsExactly(
                            "silt.yaml:2:" + (length + 2) + ": half a character (a lone surrogate); write it again");
        }
    }

    @Test
    void aMarkInFrontAndLinesOfAnotherSystemAreFine() throws IOException {
        assertThat(told("\ufeff" + swap(silt, "\n", "\r\n"))).isEmpty();
    }

    @Test
    void columnsCountCharactersAsTheEditorShowsThem() throws IOException {
        String text = swap(silt, "name: cradle, mass: 46 kg", "name: \ud83d\udccf\u00e9, mass: 46");
        assertThat(told(text))
                .containsExactly(
                        "silt.yaml:8:24: tank.attached[1].mass: no unit in '46'; a mass is needed; did you mean '46 kg'?");
    }

    @Test
    void nestedTooDeep() throws IOException {
        String path = "x" + "[1]".repeat(24);
        assertThat(told("tipwright: 1\nx: " + "[".repeat(5_000_000)))
                .containsExactly("silt.yaml:2:28: " + path + ": nested more than 24 deep; no design needs that");
    }

    @Test
    void tooManyValues() throws IOException {
        assertThat(told("tipwright: 1\nx:\n" + "- a\n".repeat(2_400_000)))
                .containsExactly("silt.yaml:99998:3: x[99996]: more than 100000 values; no design needs that many");
    }

    @Test
    void tooManyEntries() throws IOException {
        String many = swap(
                silt,
                "  attached:\n",
                "  attached:\n" + "    - {name: a, mass: 1 kg, centre: [0 m, 0 m, 0 m]}\n".repeat(999));
        assertThat(told(many)).containsExactly("silt.yaml:8:5: tank.attached: 1001 entries; 0 to 200 are allowed");
    }

    @Test
    void aHundredProblemsAreEnough() throws IOException {
        StringBuilder text = new StringBuilder(silt);
        for (int i = 0; i < 20_000; i++) {
            text.append("key").append(i).append(": 1\n");
        }
        List<String> told = told(text.toString());
        assertThat(told).hasSize(101);
        assertThat(told.get(0)).startsWith("silt.yaml:44:1: key0: key 'key0' is not known here; allowed: ");
        assertThat(told.get(100)).isEqualTo("silt.yaml: 100 mistakes are listed, there may be more; fix these first");
    }

    @Test
    void aLinkThatLeadsOutIsRefusedOneThatStaysIsNot(@TempDir Path elsewhere) throws IOException {
        String parts = "tipwright-parts: 1\nbearings:\n  yard-42: {kind: bush, bore: 40 mm, length: 50 mm}\n";
        Files.writeString(elsewhere.resolve("shop.yaml"), parts);
        Files.createSymbolicLink(folder.resolve("shop.yaml"), elsewhere.resolve("shop.yaml"));
        String text = swap(silt, "bearing: yard-40", "bearing: yard-42") + "parts: shop.yaml\n";
        assertThat(told(text))
                .containsExactly(
                        "silt.yaml:24:29: pivot.bearings[1].bearing: no part 'yard-42' among the bearings; did you mean 'yard-40'?",
                        "silt.yaml:44:8: parts: 'shop.yaml': is in another folder; copy it into the folder of your design");
        Files.delete(folder.resolve("shop.yaml"));
        Files.writeString(folder.resolve("real.yaml"), parts);
        Files.createSymbolicLink(folder.resolve("shop.yaml"), folder.resolve("real.yaml"));
        assertThat(told(text)).isEmpty();
    }

    @Test
    void aLinkToItselfIsRefused() throws IOException {
        Files.createSymbolicLink(folder.resolve("shop.yaml"), folder.resolve("shop.yaml"));
        assertThat(told(silt + "parts: shop.yaml\n"))
                .singleElement()
                .asString()
                .startsWith("silt.yaml:44:8: parts: 'shop.yaml': cannot be read: ");
    }
}
