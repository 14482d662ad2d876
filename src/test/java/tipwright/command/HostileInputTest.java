// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Whatever a file holds, a command ends with its exit code and a sentence. The time-outs guard against hanging only; how much is read
 * and built is bounded in the readers, and tested there.
 */
@Timeout(120)
class HostileInputTest {
    private static final int LARGE = 60_000_000;

    @TempDir
    private Path folder;

    private static Map<String, byte[]> files() {
        Map<String, byte[]> all = new LinkedHashMap<>();
        byte[] noise = new byte[200_000];
        new Random(8).nextBytes(noise);
        all.put("empty", new byte[0]);
        all.put("noise", noise);
        all.put("huge", new byte[LARGE]);
        all.put("huge text", "a: b\n".repeat(LARGE / 5).getBytes(StandardCharsets.US_ASCII));
        all.put("one long line", "a".repeat(9_000_000).getBytes(StandardCharsets.US_ASCII));
        all.put("deep", "[{a: ".repeat(1_000_000).getBytes(StandardCharsets.US_ASCII));
        all.put("wide characters", "tipwright: 1".getBytes(StandardCharsets.UTF_16LE));
        all.put("not UTF-8", new byte[] {'n', 'a', 'm', 'e', ':', ' ', (byte) 0xff, (byte) 0xfe});
        all.put("anchors in anchors", anchors().getBytes(StandardCharsets.US_ASCII));
        all.put("tags", "!!javax.script.ScriptEngineManager [!!java.net.URL [x]]".getBytes(StandardCharsets.US_ASCII));
        return all;
    }

    /** Every line names the one before nine times. */
    private static String anchors() {
        StringBuilder text = new StringBuilder("a0: &a0 x\n");
        for (int i = 1; i < 30; i++) {
            String before = "*a" + (i - 1) + ", ";
            text.append("a" + i + ": &a" + i + " [" + before.repeat(8) + "*a" + (i - 1) + "]\n");
        }
        return text.toString();
    }

    private static void refused(Cli.Outcome outcome) {
        assertThat(outcome.code()).as(outcome.out() + outcome.err()).isEqualTo(2);
        assertThat(outcome.err())
                .isNotBlank()
                .doesNotContain("Exception", "\tat ", "a fault of the program", "ran out of memory");
        assertThat(outcome.err().length()).isLessThan(100_000);
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "time", "place"})
    void designs(String command) throws IOException {
        for (Map.Entry<String, byte[]> e : files().entrySet()) {
            Path file = Files.write(folder.resolve("design.yaml"), e.getValue());
            refused(Cli.run(command, file.toString()));
        }
    }

    @Test
    void partsFiles() throws IOException {
        for (Map.Entry<String, byte[]> e : files().entrySet()) {
            Path file = Files.write(folder.resolve("parts.yaml"), e.getValue());
            refused(Cli.run("parts", file.toString()));
        }
    }

    @Test
    void meshes() throws IOException {
        Map<String, byte[]> all = files();
        all.put("promises 4 billion triangles", promising(-1));
        all.put("promises one more than it has", promising(2));
        all.put("infinite corner", corner(Float.POSITIVE_INFINITY));
        all.put("no number", corner(Float.NaN));
        all.put("largest number", corner(Float.MAX_VALUE));
        all.put("flat", corner(0));
        String design = Files.readString(Path.of("geometry/wash-tub.yaml"));
        for (Map.Entry<String, byte[]> e : all.entrySet()) {
            Files.write(folder.resolve("tub.stl"), e.getValue());
            Path file = Files.writeString(
                    folder.resolve("design.yaml"), design.replaceAll("file: [^,}\\s]+", "file: tub.stl"));
            refused(Cli.run("check", file.toString()));
        }
    }

    /** A binary mesh of one triangle that says it has more. */
    private static byte[] promising(int triangles) {
        return ByteBuffer.allocate(84 + 50)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt(80, triangles)
                .array();
    }

    private static byte[] corner(float x) {
        ByteBuffer mesh =
                ByteBuffer.allocate(84 + 50).order(ByteOrder.LITTLE_ENDIAN).putInt(80, 1);
        return mesh.putFloat(84 + 12, x).putFloat(84 + 28, 1).array();
    }

    @ParameterizedTest
    @CsvSource({
        "diameter: 760 mm, 0 mm", "diameter: 760 mm, -760 mm", "diameter: 760 mm, NaN mm", "diameter: 760 mm, .nan",
        "diameter: 760 mm, .inf", "diameter: 760 mm, 1e999 mm", "diameter: 760 mm, Infinity mm",
                "diameter: 760 mm, -0 mm",
        "diameter: 760 mm, 1e-320 mm", "diameter: 760 mm, 1e300 mm",
    })
    void figuresThatCannotBe(String key, String figure) throws IOException {
        String design = Files.readString(Path.of("geometry/silt-trailer.yaml"));
        String name = key.substring(0, key.indexOf(':'));
        String spoilt = design.replaceFirst(name + ": [0-9]+ mm", name + ": " + figure);
        assertThat(spoilt).isNotEqualTo(design);
        refused(Cli.run(
                "check", Files.writeString(folder.resolve("d.yaml"), spoilt).toString()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../secret.stl",
                "/etc/passwd",
                "a/../../secret.stl",
                "~/secret.stl",
                "C:\\secret.stl",
                "file:///etc/passwd",
                "/dev/zero",
                "/proc/self/environ",
                "a\\..\\..\\secret.stl",
                "",
                ".",
                "a/b/../../../secret.stl",
                "//x/y",
            })
    void namesThatLeadOut(String name) throws IOException {
        Path inner = Files.createDirectories(folder.resolve("inner/a/b"));
        Files.copy(Path.of("geometry/wash-tub.stl"), folder.resolve("secret.stl"));
        String design = Files.readString(Path.of("geometry/wash-tub.yaml"));
        String told = design.replaceAll("file: [^,}\\s]+", "file: '" + name.replace("\\", "\\\\") + "'");
        Path file = Files.writeString(inner.getParent().getParent().resolve("d.yaml"), told);
        refused(Cli.run("check", file.toString()));
    }

    /** A file that another program writes while it is read is either read or refused. */
    @Test
    void aFileThatChangesWhileItIsRead() throws Exception {
        String whole = Files.readString(Path.of("geometry/silt-trailer.yaml"));
        Path file = Files.writeString(folder.resolve("d.yaml"), whole);
        AtomicBoolean done = new AtomicBoolean();
        Thread writer = new Thread(() -> {
            for (int i = 0; !done.get(); i++) {
                try {
                    Files.writeString(file, i % 3 == 0 ? whole : whole.substring(0, (i * 131) % whole.length()));
                } catch (IOException e) {
                    throw new java.io.UncheckedIOException(e);
                }
            }
        });
        writer.start();
        try {
            for (int i = 0; i < 40; i++) {
                Cli.Outcome outcome = Cli.run("check", "--csv", file.toString());
                assertThat(List.of(0, 1, 2, 3)).contains(outcome.code());
                assertThat(outcome.err()).doesNotContain("Exception", "a fault of the program");
            }
        } finally {
            done.set(true);
            writer.join();
        }
    }
}
