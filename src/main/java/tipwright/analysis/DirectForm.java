// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.List;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Sharing;
import tipwright.design.joint.Support;
import tipwright.geometry.Vec2;
import tipwright.linkage.Configuration;
import tipwright.linkage.Strut;

/**
 * Motion and balance of a tank that turns on its pivot with the actuator straight between frame and tank, in closed form. Mutable:
 * owned by one analysis; allocates nothing while it balances.
 *
 * <p>With b the tank pin from the pivot, L the length, u the line, v = db/dtilt, arm = u . v and w = turn of the line per turn of the
 * tank, the moments about the pivot give F arm = M + s (r1 R1 + r2 R2 + |F| (rA |w| + rB |1 - w|)), s = +1 while tipping and -1 on the
 * way back; friction in the end pins pushes across the line with s |F| (rB sgn(1 - w) - rA sgn w) / L. Source: moment balance about
 * the pivot; Coulomb friction in a journal (from memory).
 */
final class DirectForm {
    private static final int REPEATS = 60;
    private static final double CLOSE = 1e-12;

    /** Friction that takes more than this part of the arm is left to the general solver, which tells where it locks. */
    private static final double SETTLES = 0.4;

    private final Vec2 axis;
    private final Strut strut;
    private final double rA;
    private final double rB;
    private final double r1;
    private final double r2;
    private final List<PlacedActuator> actuators;
    private final double z1;
    private final double z2;

    /** Share of bearing 2 in what the actuators push, and in what they pull. */
    private double pushed;

    private double pulled;
    private double ux;
    private double uy;
    private double arm;
    private double kappa;
    private double across;
    /** Loads of bearings 1 and 2 without the actuator, N. */
    private double g1x;

    private double g1y;
    private double g2x;
    private double g2y;
    /** Loads of bearings 1 and 2 under the force found last, N. */
    private double b1x;

    private double b1y;
    private double b2x;
    private double b2y;
    private double radial1;
    private double radial2;

    /** What the actuator does to the tank under the force found last, N. */
    private double driveX;

    private double driveY;

    DirectForm(Design design, Vec2 axis, Strut strut) {
        this.axis = axis;
        this.strut = strut;
        FrictionRadii radii = FrictionRadii.of(design);
        rA = radii.framePin();
        rB = radii.rodPin();
        r1 = radii.bearing(0);
        r2 = radii.bearing(1);
        actuators = design.drive().actuators();
        List<Support> bearings = design.pivot().bearings();
        z1 = bearings.get(0).z();
        z2 = bearings.get(1).z();
    }

    private double share2(double length, boolean push) {
        return (Sharing.middle(actuators, length, push) - z1) / (z2 - z1);
    }

    /** Where the tank is at a tilt, with the rates of its motion. */
    Configuration configuration(double tilt) {
        Vec2 turned = axis.tilted(tilt);
        double[] place = {axis.x() - turned.x(), axis.y() - turned.y(), tilt};
        double[] rates = {-turned.y(), turned.x(), 1};
        Vec2 a = strut.onA();
        Vec2 b = strut.onB().tilted(tilt).plus(new Vec2(place[0], place[1]));
        double x = b.x() - axis.x();
        double y = b.y() - axis.y();
        double length = Math.hypot(b.x() - a.x(), b.y() - a.y());
        double grows = ((b.x() - a.x()) * y - (b.y() - a.y()) * x) / length;
        return new Configuration(tilt, place, rates, a, b, length, grows, Math.sqrt(x * x + y * y));
    }

    /** Goes to a configuration; false where friction takes so much of the arm that only the general solver can tell. */
    boolean moveTo(Configuration p) {
        double x = p.onB().x() - axis.x();
        double y = p.onB().y() - axis.y();
        double length = p.length();
        pushed = share2(length, true);
        pulled = share2(length, false);
        ux = (p.onB().x() - p.onA().x()) / length;
        uy = (p.onB().y() - p.onA().y()) / length;
        arm = p.arm();
        double w = (uy * y + ux * x) / length;
        kappa = rA * Math.abs(w) + rB * Math.abs(1 - w);
        across = (rB * Math.signum(1 - w) - rA * Math.signum(w)) / length;
        double most = Math.max(rubbing(pushed), rubbing(pulled)) * (1 + Math.abs(across));
        return kappa + most < SETTLES * Math.abs(arm);
    }

    private double rubbing(double share2) {
        return r1 * Math.abs(1 - share2) + r2 * Math.abs(share2);
    }

    /** Takes what the load alone puts on the bearings. */
    void load(BearingSplit split) {
        g1x = split.x(0);
        g1y = split.y(0);
        g2x = split.x(1);
        g2y = split.y(1);
    }

    /**
     * Force of the actuators in balance with a moment, N; NaN when it does not settle.
     *
     * @param moment about the pivot that holds the tank back, N m
     * @param sense +1 while tipping, -1 on the way back, 0 at rest without friction
     * @param weight scale of the forces, N
     */
    double force(double moment, int sense, double weight) {
        double f = moment / arm;
        take(f, sense);
        if (sense == 0) {
            return f;
        }
        for (int k = 0; k < REPEATS; k++) {
            double held = moment + FrictionRadii.pin(sense, r1, radial1) + FrictionRadii.pin(sense, r2, radial2);
            double next = held / (arm - FrictionRadii.pin(sense, kappa, Math.signum(held * arm)));
            boolean stands = Math.abs(next - f) <= CLOSE * (Math.abs(next) + weight);
            f = next;
            take(f, sense);
            if (stands) {
                return f;
            }
        }
        return Double.NaN;
    }

    private void take(double f, int sense) {
        double side = FrictionRadii.pin(sense, across, Math.abs(f));
        driveX = f * ux + side * uy;
        driveY = f * uy - side * ux;
        double share2 = f < 0 ? pulled : pushed;
        b1x = g1x + (1 - share2) * driveX;
        b1y = g1y + (1 - share2) * driveY;
        b2x = g2x + share2 * driveX;
        b2y = g2y + share2 * driveY;
        radial1 = Math.sqrt(b1x * b1x + b1y * b1y);
        radial2 = Math.sqrt(b2x * b2x + b2y * b2y);
    }

    /** Load of a bearing under the force found last along x, N. */
    double bearingX(int bearing) {
        return bearing == 0 ? b1x : b2x;
    }

    /** Load of a bearing under the force found last along y, N. */
    double bearingY(int bearing) {
        return bearing == 0 ? b1y : b2y;
    }

    double driveX() {
        return driveX;
    }

    double driveY() {
        return driveY;
    }
}
