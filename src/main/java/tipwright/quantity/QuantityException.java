// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

/** A quantity that was not understood; the message says what is wrong, what was expected and how to mend it. */
public final class QuantityException extends Exception {
    private static final long serialVersionUID = 1L;

    /** With the whole message, ready for a reader. */
    public QuantityException(String message) {
        super(message);
    }
}
