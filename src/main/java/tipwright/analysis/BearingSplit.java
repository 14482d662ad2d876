// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.List;
import tipwright.design.joint.Pivot;
import tipwright.design.joint.Support;

/**
 * Shares a load between two bearings that are not in the plane of the actuator and the centroid. Add every force on what the
 * bearings carry, then read.
 *
 * <p>Balance of forces and of moments about x and y at the pivot axis: with force F and moment M of all else,
 * R2y = (Mx + z1 Fy) / (z2 - z1), R2x = (z1 Fx - My) / (z2 - z1), R1 = -F - R2; the force along the axis goes to the locating
 * bearing. Source: elementary spatial statics. Mutable: owned by one balancer.
 */
final class BearingSplit {
    private final double z1;
    private final double z2;
    private final int locating;
    private final double[] kept = new double[5];

    private double axisX;
    private double axisY;
    private double fx;
    private double fy;
    private double fz;
    private double mx;
    private double my;

    BearingSplit(Pivot pivot) {
        List<Support> bearings = pivot.bearings();
        z1 = bearings.get(0).z();
        z2 = bearings.get(1).z();
        locating = bearings.get(1).locating() && !bearings.get(0).locating() ? 1 : 0;
    }

    /** Half way between the bearings, m. */
    double middle() {
        return 0.5 * (z1 + z2);
    }

    /** Starts anew with the axis at a place in the side view, m. */
    void start(double x, double y) {
        axisX = x;
        axisY = y;
        fx = 0;
        fy = 0;
        fz = 0;
        mx = 0;
        my = 0;
    }

    /** Adds a force in N at a place in space in m. */
    void add(double x, double y, double z, double forceX, double forceY, double forceZ) {
        fx += forceX;
        fy += forceY;
        fz += forceZ;
        mx += (y - axisY) * forceZ - z * forceY;
        my += z * forceX - (x - axisX) * forceZ;
    }

    /** Remembers what has been added so far. */
    void keep() {
        kept[0] = fx;
        kept[1] = fy;
        kept[2] = fz;
        kept[3] = mx;
        kept[4] = my;
    }

    /** Goes back to what was remembered. */
    void goBack() {
        fx = kept[0];
        fy = kept[1];
        fz = kept[2];
        mx = kept[3];
        my = kept[4];
    }

    /** Adds what is missing to a total force in the side view, N, in a plane z = const, m. */
    void fillUp(double totalX, double totalY, double z) {
        add(axisX, axisY, z, totalX - fx, totalY - fy, 0);
    }

    /** Force so far along x, N. */
    double x() {
        return fx;
    }

    /** Force so far along y, N. */
    double y() {
        return fy;
    }

    /** Load of a bearing along x, N. */
    double x(int bearing) {
        double second = -(z1 * fx - my) / (z2 - z1);
        return bearing == 1 ? second : fx - second;
    }

    /** Load of a bearing along y, N. */
    double y(int bearing) {
        double second = -(mx + z1 * fy) / (z2 - z1);
        return bearing == 1 ? second : fy - second;
    }

    /** Load of a bearing along the axis, N. */
    double z(int bearing) {
        return bearing == locating ? fz : 0;
    }
}
