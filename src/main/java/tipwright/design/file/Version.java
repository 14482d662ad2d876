// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

/** The first line of every file: which format it is and of which version. */
final class Version {
    private Version() {}

    /** Whether a file may be read on; what is wrong is noted. */
    static boolean isFirst(String key, Node.Fields top, Problems problems) {
        if (top.fields().isEmpty()) {
            problems.add(top.place(), "", "an empty group; start the file with '" + key + ": 1'");
            return false;
        }
        String first = top.fields().keySet().iterator().next();
        Node.Field field = top.fields().get(key);
        if (field == null) {
            Place at = top.fields().values().iterator().next().key();
            problems.add(
                    at, "", "the file must start with the line '" + key + ": 1'; found " + ErrorText.quoted(first));
            return false;
        }
        if (!first.equals(key)) {
            problems.add(field.key(), key, "must be the first line of the file; move it to the top");
        }
        if (!(field.value() instanceof Node.Scalar scalar) || !scalar.text().equals("1")) {
            problems.add(
                    field.value().place(),
                    key,
                    "version " + field.value().words() + " of the format is not known; this program reads version 1");
            return false;
        }
        return true;
    }
}
