// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

/**
 * The two bearings of the hinge line, and what a force beside the middle does to them.
 *
 * <p>Source: the lever rule.
 *
 * @param left where one bearing sits along the hinge line, m
 * @param right where the other sits, m, further along
 */
public record HingePair(double left, double right) {
    /** @throws IllegalArgumentException if they are not apart */
    public HingePair {
        Precondition.positive("distance", right - left);
    }

    /** Share of a force at a place along the hinge line that the left bearing carries; the right one has the rest. */
    public double share(double place) {
        return new Beam(left, right).first(new double[] {place}, new double[] {1});
    }

    /**
     * Force with which each bearing bears a couple whose vector is square to the hinge line, N, one way at the left and the other way
     * at the right: of a side load some way off the hinge line, or of an actuator beside the middle.
     *
     * @param force N
     * @param arm from where the force acts to where it is borne, square to both, m
     */
    public double couple(double force, double arm) {
        return force * arm / (right - left);
    }

    /**
     * Moment that twists frame and tank when two actuators push with unlike forces, N m: about the middle between the bearings.
     *
     * @param places along the hinge line, m [actuator]
     * @param forces N [actuator]
     */
    public double twisting(double[] places, double[] forces) {
        double middle = (left + right) / 2;
        double sum = 0;
        for (int i = 0; i < places.length; i++) {
            sum += forces[i] * (places[i] - middle);
        }
        return sum;
    }
}
