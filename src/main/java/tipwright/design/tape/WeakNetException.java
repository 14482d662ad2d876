// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tape;

/** The readings leave a point open, or nearly so. */
public final class WeakNetException extends Exception {
    private static final long serialVersionUID = 1L;

    private final int point;
    private final double x;
    private final double y;

    /**
     * For a point that can move freely in a direction.
     *
     * @param point its number; -1 when it is not known which
     */
    WeakNetException(int point, double x, double y) {
        super("the readings leave a point open");
        this.point = point;
        this.x = x;
        this.y = y;
    }

    /** Number of the point that is open; -1 when it is not known which. */
    public int point() {
        return point;
    }

    /** Whether it is open up and down rather than along. */
    public boolean upAndDown() {
        return Math.abs(y) > Math.abs(x);
    }
}
