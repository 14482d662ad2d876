// SPDX-License-Identifier: Apache-2.0
package tipwright.fuzz;

import tipwright.geometry.Mesh;
import tipwright.geometry.Stl;
import tipwright.geometry.StlException;

/** Any bytes as an STL file: a mesh of finite corners that fits into what was read, or a reason why not. */
public final class MeshFuzz {
    /** Bytes that the shortest triangle takes, as text or binary. */
    private static final int SHORTEST = 40;

    private MeshFuzz() {}

    /** Throws when the answer is not as it should be. */
    public static void fuzzerTestOneInput(byte[] data) {
        try {
            Mesh mesh = Stl.read(data);
            if (mesh.triangles() > data.length / SHORTEST) {
                throw new AssertionError(mesh.triangles() + " triangles of " + data.length + " bytes");
            }
            for (double x : mesh.xyz()) {
                if (!Double.isFinite(x)) {
                    throw new AssertionError("a corner at " + x);
                }
            }
        } catch (StlException told) {
            if (told.getMessage() == null || told.getMessage().isBlank()) {
                throw new AssertionError("refused without a word", told);
            }
        }
    }
}
