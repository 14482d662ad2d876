// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

/**
 * A default that was taken because a key was left out.
 *
 * @param path the key from the top
 * @param value as a builder would write it
 * @param note what the key means; may be empty
 */
public record Assumption(String path, String value, String note) {
    /** In plain words: 'friction.pins: 0.15 taken (in the actuator's pins)'. */
    public String text() {
        return path + ": " + value + " taken" + (note.isEmpty() ? "" : " (" + note + ")");
    }
}
