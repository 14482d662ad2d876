// SPDX-License-Identifier: Apache-2.0
package tipwright.fuzz;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import tipwright.design.file.PartsFile;

/** Any bytes as a parts file: parts, or problems in plain words. */
public final class PartsFuzz {
    private PartsFuzz() {}

    /** Loads the classes before the clock of the first input runs. */
    public static void fuzzerInitialize() {
        PartsFile.shipped();
    }

    /** Throws when the answer is not as it should be. */
    public static void fuzzerTestOneInput(byte[] data) throws IOException {
        Path file = Files.createTempFile("fuzz", ".yaml");
        try {
            Files.write(file, data);
            PartsFile.Contents contents = PartsFile.read(file);
            String text = new String(data, StandardCharsets.UTF_8);
            contents.problems().forEach(p -> DesignFuzz.look(p, text));
        } finally {
            Files.delete(file);
        }
    }
}
