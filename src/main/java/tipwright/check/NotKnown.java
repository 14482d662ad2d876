// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Ways to fail that no check knows, so that silence about them is not taken for safety. Common practice, no source. */
public final class NotKnown {
    private static final String LIST = "limits.txt";

    private NotKnown() {}

    /** A sentence each. */
    public static List<String> all() {
        try (InputStream in = NotKnown.class.getResourceAsStream(LIST)) {
            if (in == null) {
                throw new IllegalStateException(LIST + " is not part of the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
