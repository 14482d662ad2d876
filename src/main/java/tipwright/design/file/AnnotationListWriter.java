// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import tipwright.design.Design;
import tipwright.design.key.AnnotationList;

/** For the build: writes the list of what the annotations of a design's records say. */
public final class AnnotationListWriter {
    private AnnotationListWriter() {}

    /**
     * Writes the list beside the classes.
     *
     * @param args the folder of the classes
     */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0], AnnotationList.class.getPackageName().split("\\.", -1));
        Files.writeString(
                folder.resolve(AnnotationList.FILE), AnnotationList.text(Shape.below(Design.class, () -> false)));
    }
}
