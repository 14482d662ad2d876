// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

/** A skeleton that is no mechanism with one degree of freedom; the message says what is wrong with it. */
public final class LinkageException extends Exception {
    private static final long serialVersionUID = 1L;

    /** With the whole message. */
    public LinkageException(String message) {
        super(message);
    }
}
