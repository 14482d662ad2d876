// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.still;

/** The drawing library gave back an empty picture. */
public final class BlankPictureException extends Exception {
    private static final long serialVersionUID = 1L;

    BlankPictureException() {
        super("the picture came out blank: this machine's 3D drawing does not work");
    }
}
