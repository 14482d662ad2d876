// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/**
 * A search by repetition that came to the end of its allowance without an answer; the message says what was looked for and where.
 * Unchecked, because it can come up from under any figure; whoever talks to a person tells the message.
 */
public final class NotConvergedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** With the whole message, ready for a reader. */
    public NotConvergedException(String message) {
        super(message);
    }
}
