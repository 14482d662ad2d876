// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

/**
 * One line of the validation table.
 *
 * @param reference what it should be
 * @param ours what the program computes, in the reference's unit; NaN when it could not
 */
public record ValidationRow(Reference reference, double ours) {
    /** Ours less the reference, in its unit. */
    public double deviation() {
        return ours - reference.value();
    }

    /** Whether the deviation is within the tolerance; what is no number never is. */
    public boolean passes() {
        return Math.abs(deviation()) <= reference.tolerance();
    }
}
