// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

/**
 * What was taken because a key was left out: a default, or what follows from the builder's own measures.
 *
 * @param path the key from the top
 * @param value as a builder would write it
 * @param note what the key means; may be empty
 * @param measured whether it was worked out from what the builder measured
 */
public record Assumption(String path, String value, String note, boolean measured) {
    /** A default. */
    public Assumption(String path, String value, String note) {
        this(path, value, note, false);
    }

    /** In plain words: 'friction.pins: 0.15 taken (in the actuator's pins)'. */
    public String text() {
        return path + ": " + value + " taken" + (note.isEmpty() ? "" : " (" + note + ")");
    }
}
