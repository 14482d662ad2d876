// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file appears whole or not at all. */
class WholeFileTest {
    @TempDir
    private Path folder;

    private static WholeFile.Content text(String text) {
        return out -> out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    private long files() throws IOException {
        try (Stream<Path> list = Files.list(folder)) {
            return list.count();
        }
    }

    @Test
    void writesANewFileAndReplacesAnOldOne() throws IOException {
        Path file = folder.resolve("out.json");
        WholeFile.write(file, text("one"));
        assertThat(file).hasContent("one");
        WholeFile.write(file, text("two"));
        assertThat(file).hasContent("two");
        assertThat(files()).isEqualTo(1);
    }

    @Test
    void whatStoodThereStaysWhenWritingFailsHalfWay() throws IOException {
        Path file = folder.resolve("out.json");
        WholeFile.write(file, text("old"));
        assertThatThrownBy(() -> WholeFile.write(file, out -> {
                    out.write(new byte[100_000]);
                    throw new IOException("No space left on device");
                }))
                .hasMessage(file + ": not written: the disk is full; free some space or choose another folder");
        assertThatThrownBy(() -> WholeFile.write(file, out -> {
                    throw new IllegalStateException("fault");
                }))
                .hasMessage("fault");
        assertThat(file).hasContent("old");
        assertThat(files()).isEqualTo(1);
    }

    @Test
    void aFolderIsNoFile() {
        assertThatThrownBy(() -> WholeFile.write(folder, text("x")))
                .hasMessage(folder + ": is a folder; give the name of a file in it");
    }

    @Test
    void aMissingFolderIsNamed() {
        Path file = folder.resolve("none").resolve("out.json");
        assertThatThrownBy(() -> WholeFile.write(file, text("x")))
                .hasMessage(file + ": there is no folder " + folder.resolve("none") + "; make it first");
    }

    @Test
    void aFolderThatMayNotBeWrittenInIsNamed() {
        // Nobody, not even root, makes files there.
        Path file = Path.of("/sys/tipwright.json");
        assumeTrue(Files.isDirectory(file.getParent()));
        assertThatThrownBy(() -> WholeFile.write(file, text("x")))
                .isInstanceOf(IOException.class)
                .hasMessageStartingWith(file + ": not written: ")
                .hasMessageEndingWith("choose another folder or allow writing to it");
    }

    @Test
    void aFolderIsMadeUnlessAFileIsInTheWay() throws IOException {
        Path deep = folder.resolve("a").resolve("b");
        WholeFile.folder(deep);
        WholeFile.folder(deep);
        assertThat(deep).isDirectory();
        Path file = Files.writeString(folder.resolve("file"), "kept");
        Path below = file.resolve("pictures");
        assertThatThrownBy(() -> WholeFile.folder(below))
                .hasMessage(below + ": not made: " + file + " is a file, no folder; choose another folder");
        assertThat(file).hasContent("kept");
    }

    @Test
    void aFullDeviceIsCalledFull() {
        Path full = Path.of("/dev/full");
        assumeTrue(Files.exists(full));
        assertThatThrownBy(() -> WholeFile.write(full, text("x")))
                .hasMessage("/dev/full: not written: the disk is full; free some space or choose another folder");
    }

    @Test
    void aLinkIsKeptAndItsTargetWritten() throws IOException {
        Path file = folder.resolve("real.json");
        Path link = folder.resolve("link.json");
        Files.writeString(file, "old");
        Files.createSymbolicLink(link, file);
        WholeFile.write(link, text("new"));
        assertThat(link).isSymbolicLink();
        assertThat(file).hasContent("new");
    }

    @Test
    void permissionsOfTheOldFileStay() throws IOException {
        Path file = folder.resolve("out.json");
        Files.writeString(file, "old");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r--"));
        WholeFile.write(file, text("new"));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-rw-r--");
    }
}
