// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

/** A command that could not do its work; the message is for the user. */
final class FailedException extends Exception {
    private static final long serialVersionUID = 1L;

    private final int code;

    /** With the exit code 3. */
    FailedException(String message, Throwable cause) {
        this(message, cause, Exit.CANNOT_COMPUTE);
    }

    /**
     * With an exit code of its own.
     *
     * @param code see {@link Exit}
     */
    FailedException(String message, Throwable cause, int code) {
        super(message, cause);
        this.code = code;
    }

    int code() {
        return code;
    }
}
