// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

/**
 * Something wrong in a file.
 *
 * @param path the key from the top, 'drive.straight.frame-pin'; list items count from 1; empty for the file itself
 * @param message what is wrong, what is allowed and how to mend it
 */
public record Problem(Place place, String path, String message) {
    /** The whole text: 'silt.yaml:14:22: drive.straight.frame-pin: no unit in ...'. */
    public String text() {
        return place + ": " + (path.isEmpty() ? "" : path + ": ") + message;
    }

    @Override
    public String toString() {
        return text();
    }
}
