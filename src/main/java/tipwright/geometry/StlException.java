// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/** A mesh file that was not understood; the message names the place in it by byte or line. */
public final class StlException extends Exception {
    private static final long serialVersionUID = 1L;

    /** With the whole message, ready for a reader. */
    public StlException(String message) {
        super(message);
    }
}
