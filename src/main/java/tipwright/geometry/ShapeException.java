// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/** A shape that cannot be a tank; the message says what is wrong and what is allowed, ready for a reader. */
public final class ShapeException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** With the whole message. */
    public ShapeException(String message) {
        super(message);
    }
}
