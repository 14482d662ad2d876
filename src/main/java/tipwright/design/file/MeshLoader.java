// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Fills a mesh interior from its file. */
final class MeshLoader {
    private MeshLoader() {}

    static @Nullable Object load(Reader reader, Map<String, Object> read, String path, SourceMap sources) {
        reader.problems().add(sources.nearest(path + ".file"), path + ".file", "meshes " + read.get("file"));
        return null;
    }
}
