// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.editor;

/** The parts of a machine as a builder speaks of them, in the order of the strip under the picture. */
public enum PartOfMachine {
    TANK("Tank"),
    LOAD("Load"),
    PIVOT("Pivot"),
    ACTUATOR("Actuator"),
    FRAME("Frame"),
    SUPPLY("Supply"),
    JOINTS("Joints");

    private final String word;

    PartOfMachine(String word) {
        this.word = word;
    }

    /** As shown. */
    public String word() {
        return word;
    }
}
