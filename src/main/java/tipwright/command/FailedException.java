// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

/** A command that could not do its work; the message is for the user. */
final class FailedException extends Exception {
    private static final long serialVersionUID = 1L;

    FailedException(String message, Throwable cause) {
        super(message, cause);
    }
}
