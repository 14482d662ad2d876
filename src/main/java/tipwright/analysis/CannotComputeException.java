// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import tipwright.design.Design;
import tipwright.geometry.NotConvergedException;

/** A design that was understood but cannot be computed; the message says why, at which tilt, and what to change. */
public final class CannotComputeException extends Exception {
    private static final long serialVersionUID = 1L;

    /** For what did not converge in a design. */
    public static CannotComputeException of(Design design, NotConvergedException lost) {
        return new CannotComputeException(design.name() + ": " + lost.getMessage(), lost);
    }

    /** With the whole message, ready for a reader. */
    public CannotComputeException(String message) {
        super(message);
    }

    /** With the whole message and what caused it. */
    public CannotComputeException(String message, Throwable cause) {
        super(message, cause);
    }
}
