// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

/** A design that was understood but cannot be computed; the message says why, at which tilt, and what to change. */
public final class CannotComputeException extends Exception {
    private static final long serialVersionUID = 1L;

    /** With the whole message, ready for a reader. */
    public CannotComputeException(String message) {
        super(message);
    }

    /** With the whole message and what caused it. */
    public CannotComputeException(String message, Throwable cause) {
        super(message, cause);
    }
}
