// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.List;
import java.util.Map;

/** A piece of a YAML text with its place. */
sealed interface Node {
    Place place();

    /** What it is, for messages. */
    String words();

    /**
     * A single value.
     *
     * @param plain whether it is written without quotes
     */
    record Scalar(Place place, String text, boolean plain) implements Node {
        /** Whether nothing was written. */
        boolean isNothing() {
            return plain && (text.isEmpty() || text.equals("~") || text.equals("null"));
        }

        @Override
        public String words() {
            return isNothing() ? "nothing" : ErrorText.quoted(text);
        }
    }

    /** A list. */
    record Items(Place place, List<Node> items) implements Node {
        @Override
        public String words() {
            if (items.isEmpty()) {
                return "an empty list";
            }
            return items.size() == 1 ? "a list of one" : "a list of " + items.size();
        }
    }

    /** Keys with values, in the order of the file. */
    record Fields(Place place, Map<String, Field> fields) implements Node {
        @Override
        public String words() {
            return fields.isEmpty() ? "an empty group" : "a group of keys";
        }
    }

    /** A value under its key. */
    record Field(Place key, Node value) {}
}
