// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
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
     * @param open what the file asks, when nothing else stands in the way; null: there is more that is wrong
     */
    record Bad(List<Problem> problems, @Nullable Open open) implements Reading {
        /** What is wrong. */
        public Bad(List<Problem> problems) {
            this(problems, null);
        }
    }

    /**
     * A design with a question mark where a size is to be found.
     *
     * @param design with a usual size in each such place; it need not make sense
     * @param units in which most of its lengths are written
     * @param questions in the order of the file
     * @param with reads the file with answers, as a builder would write them, by the path of a {@link SizeQuestion}
     */
    record Open(
            Design design,
            UnitSystem units,
            List<SizeQuestion> questions,
            Function<Map<String, String>, Reading> with) {
        /** Copies the list. */
        public Open {
            questions = List.copyOf(questions);
        }
    }
}
