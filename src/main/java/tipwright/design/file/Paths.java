// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

/** Builds the paths that name values: 'tank.openings[1].diameter'. */
final class Paths {
    private static final int LONGEST_KEY = 60;

    private Paths() {}

    /** The path of a key in a group. */
    static String key(String path, String name) {
        String clean = name.length() <= LONGEST_KEY ? name : name.substring(0, LONGEST_KEY) + "...";
        if (clean.chars().anyMatch(Character::isISOControl)) {
            clean = clean.replaceAll("\\p{Cntrl}", " ");
        }
        return path.isEmpty() ? clean : path + "." + clean;
    }

    /** The path of a list's entry; the first is 1. */
    static String item(String path, int number) {
        return path + "[" + number + "]";
    }

    /** The path of the group or list around a value; empty at the top. */
    static String above(String path) {
        int end = Math.max(path.lastIndexOf('.'), path.lastIndexOf('['));
        return end < 0 ? "" : path.substring(0, end);
    }
}
