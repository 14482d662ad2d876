// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import org.ejml.data.DMatrixRMaj;
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
        double far = skeleton.actuator().onB().minus(skeleton.actuator().onA()).norm();
        if (!(far > 0)) {
            throw new LinkageException("the two pins of the actuator are in the same place");
        }
        for (Joint j : skeleton.joints()) {
            far = Math.max(far, j.at().minus(skeleton.actuator().onA()).norm());
            far = Math.max(far, j.at().minus(skeleton.actuator().onB()).norm());
        }
        this.size = far;
    }

    /** Where a stowed point is, in units of size; q in units of size and rad. */
    Vec2 place(double[] q, int body, Vec2 stowed) {
        Vec2 p = stowed.times(1 / size);
        if (body == 0) {
            return p;
        }
        int i = 3 * (body - 1);
        double c = Math.cos(q[i + 2]);
        double s = Math.sin(q[i + 2]);
        return new Vec2(q[i] + c * p.x() + s * p.y(), q[i + 1] - s * p.x() + c * p.y());
    }

    /** Writes the residuals of joints and tilt driver into out [rows]. */
    void residuals(double[] q, double tilt, double[] out) {
        int row = 0;
        for (Joint j : skeleton.joints()) {
            Vec2 gap = place(q, j.a(), j.at()).minus(place(q, j.b(), j.at()));
            if (j instanceof Joint.Slide slide) {
                double turnA = turn(q, j.a());
                Vec2 across = across(slide, turnA);
                out[row] = turnA - turn(q, j.b());
                out[row + 1] = across.dot(gap);
            } else {
                out[row] = gap.x();
                out[row + 1] = gap.y();
            }
            row += 2;
        }
        out[row] = turn(q, skeleton.tank()) - tilt;
    }

    /**
     * Writes the Jacobian of the joints into the first rows of j, and the driver's row: the tank's angle, or the actuator's length.
     *
     * @param j overwritten, unknowns x unknowns
     * @return the actuator's length in units of size
     */
    double jacobian(double[] q, boolean byLength, DMatrixRMaj j) {
        j.zero();
        int row = 0;
        for (Joint joint : skeleton.joints()) {
            if (joint instanceof Joint.Slide slide) {
                slideRows(q, slide, row, j);
            } else {
                pointRow(q, joint.a(), joint.at(), new Vec2(1, 0), row, j);
                pointRow(q, joint.a(), joint.at(), new Vec2(0, 1), row + 1, j);
                pointRow(q, joint.b(), joint.at(), new Vec2(-1, 0), row, j);
                pointRow(q, joint.b(), joint.at(), new Vec2(0, -1), row + 1, j);
            }
            row += 2;
        }
        Strut strut = skeleton.actuator();
        Vec2 line = place(q, strut.b(), strut.onB()).minus(place(q, strut.a(), strut.onA()));
        double length = line.norm();
        if (byLength) {
            Vec2 u = line.times(1 / length);
            pointRow(q, strut.b(), strut.onB(), u, row, j);
            pointRow(q, strut.a(), strut.onA(), u.times(-1), row, j);
        } else {
            addTurn(skeleton.tank(), 1, row, j);
        }
        return length;
    }

    private void slideRows(double[] q, Joint.Slide slide, int row, DMatrixRMaj j) {
        addTurn(slide.a(), 1, row, j);
        addTurn(slide.b(), -1, row, j);
        double turnA = turn(q, slide.a());
        Vec2 n = across(slide, turnA);
        pointRow(q, slide.a(), slide.at(), n, row + 1, j);
        pointRow(q, slide.b(), slide.at(), n.times(-1), row + 1, j);
        Vec2 gap = place(q, slide.a(), slide.at()).minus(place(q, slide.b(), slide.at()));
        Vec2 turned = new Vec2(n.y(), -n.x());
        addTurn(slide.a(), turned.dot(gap), row + 1, j);
    }

    /** Adds the derivative of direction . place(point) to a row. */
    void pointRow(double[] q, int body, Vec2 stowed, Vec2 direction, int row, DMatrixRMaj j) {
        if (body == 0) {
            return;
        }
        int i = 3 * (body - 1);
        Vec2 p = place(q, body, stowed);
        j.add(row, i, direction.x());
        j.add(row, i + 1, direction.y());
        j.add(row, i + 2, direction.x() * (p.y() - q[i + 1]) - direction.y() * (p.x() - q[i]));
    }

    private static void addTurn(int body, double value, int row, DMatrixRMaj j) {
        if (body != 0) {
            j.add(row, 3 * (body - 1) + 2, value);
        }
    }

    static double turn(double[] q, int body) {
        return body == 0 ? 0 : q[3 * (body - 1) + 2];
    }

    private static Vec2 across(Joint.Slide slide, double turnA) {
        Vec2 d = slide.direction().unit().tilted(turnA);
        return new Vec2(-d.y(), d.x());
    }
}
