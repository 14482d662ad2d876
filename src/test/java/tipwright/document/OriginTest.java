// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tipwright.analysis.Examples;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.design.file.SourceFile;

/** The hash of a print covers every file that went into it. */
class OriginTest {
    private static final String PARTS =
            "tipwright-parts: 1\nbearings:\n  own-40: {kind: ball-insert, bore: 40 mm, c0: 19 kN}\n";

    @TempDir
    Path folder;

    private Path design;

    private void fill() throws IOException {
        Path shipped = Path.of("geometry");
        String text = Files.readString(shipped.resolve("wash-tub.yaml"));
        design = folder.resolve("tub.yaml");
        Files.writeString(design, text.replaceFirst("bearing: nylon-40", "bearing: own-40") + "\nparts: [own.yaml]\n");
        Files.writeString(folder.resolve("own.yaml"), PARTS);
        Files.copy(
                shipped.resolve("wash-tub.stl"), folder.resolve("wash-tub.stl"), StandardCopyOption.REPLACE_EXISTING);
    }

    private Origin origin() {
        Reading reading = DesignFile.read(design);
        if (reading instanceof Reading.Good good) {
            return Origin.of("tub.yaml", good.files(), "test", "2026-01-01");
        }
        throw new AssertionError(reading.toString());
    }

    /** What another program says in the folder. */
    private String shell(String command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder("/bin/sh", "-c", command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
        assertThat(process.waitFor()).as(said).isZero();
        return said.substring(0, 64);
    }

    /** Against sha256sum of the GNU core utilities. */
    @Test
    void everyFileHasItsHashAndAllHaveOne() throws IOException, InterruptedException {
        fill();
        Origin origin = origin();
        assertThat(origin.inputs().stream().map(Origin.Input::name).toList())
                .startsWith("tub.yaml", "own.yaml", "wash-tub.stl")
                .allMatch(n -> n.endsWith("l") || n.endsWith("(came with the program)"));
        for (Origin.Input input : origin.inputs().subList(0, 3)) {
            assertThat(input.hash()).isEqualTo(shell("sha256sum " + input.name()));
        }
        StringBuilder rest = new StringBuilder();
        for (Origin.Input input : origin.inputs().subList(3, origin.inputs().size())) {
            String name = swap(input.name(), " (came with the program)", "");
            Path file = Path.of("geometry", name.split("/")).toAbsolutePath();
            assertThat(input.hash()).isEqualTo(shell("sha256sum " + file));
            rest.append(' ').append(file);
        }
        assertThat(origin.hash())
                .isEqualTo(shell("sha256sum tub.yaml own.yaml wash-tub.stl" + rest + " | cut -c1-64 | sha256sum"));
        assertThat(origin.lines()).hasSize(origin.inputs().size() + 1);
        assertThat(origin.files()).startsWith("tub.yaml and ").endsWith(" more files");
    }

    @Test
    void aRemarkInAPartsFileOrABitOfAMeshChangesIt() throws IOException {
        fill();
        String before = origin().hash();
        Files.writeString(folder.resolve("own.yaml"), PARTS + "# bought in May\n");
        String after = origin().hash();
        assertThat(after).isNotEqualTo(before);
        byte[] mesh = Files.readAllBytes(folder.resolve("wash-tub.stl"));
        // In the title of the file, which nobody reads.
        mesh[10] ^= 1;
        Files.write(folder.resolve("wash-tub.stl"), mesh);
        assertThat(origin().hash()).isNotEqualTo(after);
    }

    /** The byte order mark that some editors write counts too, as it does for other programs. */
    @Test
    void aDesignAloneHasTheHashOfItsBytes() throws IOException, InterruptedException {
        design = folder.resolve("alone.yaml");
        String text = "\ufeff" + Examples.BOX;
        Files.writeString(design, text);
        Reading.Good good = (Reading.Good) DesignFile.read(design);
        Origin origin = Origin.of("alone.yaml", good.files(), "test", "2026-01-01");
        assertThat(origin.hash()).isEqualTo(shell("sha256sum alone.yaml"));
        assertThat(origin.lines()).containsExactly("alone.yaml: SHA-256 " + origin.hash());
        assertThat(origin.files()).isEqualTo("alone.yaml");
    }

    /** Source: FIPS 180-2, appendix B.1. */
    @Test
    void abc() {
        assertThat(SourceFile.sha256("abc".getBytes(StandardCharsets.US_ASCII)))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }
}
