// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import java.util.List;
import tipwright.geometry.Vec2;

/**
 * The constraint equations of a skeleton and their derivatives. Lengths are in units of the mechanism's size so that rows and
 * columns are comparable.
 *
 * <p>Coordinates are (x, y, angle) of each moving body. A pin gives A(p) - B(p) = 0, a slide gives equal angles and no step
 * across its line; the last row is the driver: the tank's angle, or the actuator's length.
 *
 * <p>Source: Cartesian constraint formulation of planar multibody kinematics, as in E. J. Haug, Computer Aided Kinematics and
 * Dynamics of Mechanical Systems (1989), chapter 3 (from memory).
 */
final class Equations {
    final Skeleton skeleton;
    final double size;
    final int unknowns;
    final Hinge[] hinges;
    final Hinge endA;
    final Hinge endB;

    /** A joint in plain numbers, in units of size; the direction is of length 1, and zero for a pin. */
    record Hinge(boolean slide, int a, int b, double x, double y, double alongX, double alongY) {}

    Equations(Skeleton skeleton) throws LinkageException {
        this.skeleton = skeleton;
        this.unknowns = 3 * (skeleton.bodies().size() - 1);
        int rows = 2 * skeleton.joints().size() + 1;
        if (rows != unknowns) {
            throw new LinkageException((rows > unknowns ? "over-constrained: " : "under-constrained: ")
                    + skeleton.joints().size() + " joints hold " + (rows - 1) + " of the " + unknowns
                    + " freedoms of " + (skeleton.bodies().size() - 1)
                    + " moving bodies; one must be left for the tilt");
        }
        Strut strut = skeleton.actuator();
        double far = strut.onB().minus(strut.onA()).norm();
        if (!(far > 0)) {
            throw new LinkageException("the two pins of the actuator are in the same place");
        }
        for (Joint j : skeleton.joints()) {
            far = Math.max(far, j.at().minus(strut.onA()).norm());
            far = Math.max(far, j.at().minus(strut.onB()).norm());
        }
        this.size = far;
        List<Joint> joints = skeleton.joints();
        this.hinges = new Hinge[joints.size()];
        for (int i = 0; i < hinges.length; i++) {
            Joint j = joints.get(i);
            Vec2 along = j instanceof Joint.Slide slide ? slide.direction().unit() : Vec2.ZERO;
            hinges[i] = hinge(j.a(), j.b(), j.at(), along);
        }
        this.endA = hinge(strut.a(), strut.b(), strut.onA(), Vec2.ZERO);
        this.endB = hinge(strut.a(), strut.b(), strut.onB(), Vec2.ZERO);
    }

    private Hinge hinge(int a, int b, Vec2 at, Vec2 along) {
        return new Hinge(
                !along.equals(Vec2.ZERO), a, b, at.x() * (1 / size), at.y() * (1 / size), along.x(), along.y());
    }

    /** Writes the residuals of joints and tilt driver into the space's residual [rows]. */
    void residuals(double[] q, double tilt, Workspace s) {
        s.turnTo(q);
        int row = 0;
        for (Hinge h : hinges) {
            double gapX = s.x(q, h.a, h.x, h.y) - s.x(q, h.b, h.x, h.y);
            double gapY = s.y(q, h.a, h.x, h.y) - s.y(q, h.b, h.x, h.y);
            if (h.slide) {
                s.residual[row] = turn(q, h.a) - turn(q, h.b);
                s.residual[row + 1] = -s.turnedY(h.a, h) * gapX + s.turnedX(h.a, h) * gapY;
            } else {
                s.residual[row] = gapX;
                s.residual[row + 1] = gapY;
            }
            row += 2;
        }
        s.residual[row] = turn(q, skeleton.tank()) - tilt;
    }

    /**
     * Writes the Jacobian of the joints into the first rows of the space's jacobian, and the driver's row: the tank's angle, or
     * the actuator's length.
     *
     * @return the actuator's length in units of size
     */
    double jacobian(double[] q, boolean byLength, Workspace s) {
        s.jacobian.zero();
        s.turnTo(q);
        int row = 0;
        for (Hinge h : hinges) {
            if (h.slide) {
                slideRows(q, h, row, s);
            } else {
                pointRow(q, h.a, h, 1, 0, row, s);
                pointRow(q, h.a, h, 0, 1, row + 1, s);
                pointRow(q, h.b, h, -1, 0, row, s);
                pointRow(q, h.b, h, 0, -1, row + 1, s);
            }
            row += 2;
        }
        double lineX = s.x(q, endB.b, endB.x, endB.y) - s.x(q, endA.a, endA.x, endA.y);
        double lineY = s.y(q, endB.b, endB.x, endB.y) - s.y(q, endA.a, endA.x, endA.y);
        double length = Math.sqrt(lineX * lineX + lineY * lineY);
        if (byLength) {
            double ux = lineX * (1 / length);
            double uy = lineY * (1 / length);
            pointRow(q, endB.b, endB, ux, uy, row, s);
            pointRow(q, endA.a, endA, -ux, -uy, row, s);
        } else {
            addTurn(skeleton.tank(), 1, row, s);
        }
        return length;
    }

    private static void slideRows(double[] q, Hinge h, int row, Workspace s) {
        addTurn(h.a, 1, row, s);
        addTurn(h.b, -1, row, s);
        double nx = -s.turnedY(h.a, h);
        double ny = s.turnedX(h.a, h);
        pointRow(q, h.a, h, nx, ny, row + 1, s);
        pointRow(q, h.b, h, -nx, -ny, row + 1, s);
        double gapX = s.x(q, h.a, h.x, h.y) - s.x(q, h.b, h.x, h.y);
        double gapY = s.y(q, h.a, h.x, h.y) - s.y(q, h.b, h.x, h.y);
        addTurn(h.a, ny * gapX - nx * gapY, row + 1, s);
    }

    /** Adds the derivative of (dx, dy) . place(hinge's point on the body) to a row. */
    private static void pointRow(double[] q, int body, Hinge h, double dx, double dy, int row, Workspace s) {
        if (body == 0) {
            return;
        }
        int i = 3 * (body - 1);
        double px = s.x(q, body, h.x, h.y);
        double py = s.y(q, body, h.x, h.y);
        s.jacobian.add(row, i, dx);
        s.jacobian.add(row, i + 1, dy);
        s.jacobian.add(row, i + 2, dx * (py - q[i + 1]) - dy * (px - q[i]));
    }

    private static void addTurn(int body, double value, int row, Workspace s) {
        if (body != 0) {
            s.jacobian.add(row, 3 * (body - 1) + 2, value);
        }
    }

    static double turn(double[] q, int body) {
        return body == 0 ? 0 : q[3 * (body - 1) + 2];
    }
}
