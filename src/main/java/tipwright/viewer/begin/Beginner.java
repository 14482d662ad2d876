// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.begin;

import java.nio.file.Path;

/** Goes on from the start. */
public interface Beginner {
    /** Opens a file. */
    void open(Path file);

    /** Opens a design that came with the program. */
    void example(String name);

    /** Opens a design that is in no file yet. */
    void fresh(String name, String text);
}
