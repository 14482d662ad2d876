// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Unsaved work is the user's alone, and lies where the user's things lie. */
class RecoveryTest {
    @TempDir
    private Path folder;

    private static String mode(Path path) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
    }

    @Test
    void nobodyElseMayReadIt() throws IOException {
        Path place = folder.resolve("state/unsaved");
        Recovery recovery = Recovery.of(place, "my-tank.yaml");
        recovery.keep("one");
        assertThat(mode(recovery.file())).isEqualTo("rw-------");
        assertThat(mode(place)).isEqualTo("rwx------");
        assertThat(mode(place.getParent())).isEqualTo("rwx------");
        // Also where an earlier version left it open to all.
        Files.setPosixFilePermissions(recovery.file(), PosixFilePermissions.fromString("rw-r--r--"));
        Files.setPosixFilePermissions(place, PosixFilePermissions.fromString("rwxr-xr-x"));
        recovery.keep("two");
        assertThat(recovery.left()).isEqualTo("two");
        assertThat(mode(recovery.file())).isEqualTo("rw-------");
        assertThat(mode(place)).isEqualTo("rwx------");
    }

    @Test
    void homeAndStateFolderAreThoseOfTheEnvironment() {
        assertThat(Recovery.folder(Map.of("HOME", "/h"), "/p", true)).hasToString("/h/.local/state/tipwright/unsaved");
        assertThat(Recovery.folder(Map.of(), "/p", true)).hasToString("/p/.local/state/tipwright/unsaved");
        assertThat(Recovery.folder(Map.of("HOME", "/h", "XDG_STATE_HOME", "/s"), "/p", true))
                .hasToString("/s/tipwright/unsaved");
        // The specification has relative ones ignored.
        assertThat(Recovery.folder(Map.of("HOME", "/h", "XDG_STATE_HOME", "s"), "/p", true))
                .hasToString("/h/.local/state/tipwright/unsaved");
        assertThat(Recovery.folder(Map.of("HOME", "/h"), "/p", false)).hasToString("/h/.tipwright/unsaved");
    }
}
