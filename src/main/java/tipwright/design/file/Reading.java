// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.List;
import java.util.Map;
import tipwright.design.Design;
import tipwright.quantity.UnitSystem;

/** What came of reading a design file. */
public sealed interface Reading permits Reading.Good, Reading.Bad {
    /**
     * A design.
     *
     * @param text of the file
     * @param assumptions every default that was taken
     * @param warnings what is odd but allowed
     * @param places where each value stands in the text
     * @param files what was read, byte for byte: the design itself, then the parts files and meshes of its folder by name, then
     *     the parts files of the program by name
     * @param uncertain the values that may be off, in the order of the file
     * @param again reads the same file with other values
     */
    record Good(
            Design design,
            String text,
            List<Assumption> assumptions,
            List<Problem> warnings,
            SourceMap places,
            List<SourceFile> files,
            List<Uncertain> uncertain,
            Again again)
            implements Reading {
        /** Copies the lists. */
        public Good {
            files = List.copyOf(files);
            uncertain = List.copyOf(uncertain);
        }

        /** The system in which most of its lengths are written: what its results are best shown in. */
        public UnitSystem units() {
            return TapeUnit.system(text, places);
        }
    }

    /** The same file read with other values. */
    interface Again {
        /** A design, or why there is none; values in SI by the path of an {@link Uncertain}. */
        Reading with(Map<String, Double> values);
    }

    /**
     * No design.
     *
     * @param problems all of them, in the order of the file; at most 100
     */
    record Bad(List<Problem> problems) implements Reading {}
}
