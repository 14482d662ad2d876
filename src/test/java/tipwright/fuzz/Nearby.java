// SPDX-License-Identifier: Apache-2.0
package tipwright.fuzz;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import tipwright.design.file.NamedFiles;

/** A folder in which every name is the shipped mesh. */
final class Nearby {
    static final NamedFiles MESH = (name, most) -> mesh();

    private Nearby() {}

    private static byte[] mesh() {
        try (InputStream in = Nearby.class.getResourceAsStream("/tipwright/geometry/wash-tub.stl")) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
