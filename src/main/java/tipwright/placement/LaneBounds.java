// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.ActuatorSpeed;
import tipwright.analysis.FrictionRadii;
import tipwright.check.actuator.HoldCheck;
import tipwright.check.actuator.PushCheck;
import tipwright.check.actuator.Ratings;
import tipwright.check.actuator.TransmissionCheck;
import tipwright.check.bearing.BearingStaticCheck;
import tipwright.check.bearing.BushCheck;
import tipwright.check.bearing.ShaftCheck;
import tipwright.check.joint.PinCheck;
import tipwright.check.rule.Usage;
import tipwright.design.Design;
import tipwright.design.Factors;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.joint.BallInsert;
import tipwright.design.joint.Bearing;
import tipwright.design.joint.HousingStrength;
import tipwright.design.joint.PinJoint;
import tipwright.design.joint.PlainBush;
import tipwright.design.joint.Shaft;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * What the peaks of a block tell of its candidates with one actuator: a utilisation that no candidate stays under. It may turn a
 * candidate down that the checks turn down too, and never passes one: whoever gets by is judged by the checks. Immutable.
 */
final class LaneBounds {
    /** What a force may be off by, as a share, were the arm right: friction is told by a repetition or three. */
    private static final double SLACK = 1e-3;

    /** What rounding does to the square of a radial load, of the square of all that it is made of: eight roundings of 2^-24. */
    private static final double ROUNDING = 1e-6;

    private static final int LENGTHS = 64;

    private final Design design;
    private final Actuator actuator;
    private final int sharing;
    private final double mostPush;
    private final double mostPull;
    private final double quickest;
    private final double[] share;

    LaneBounds(Design design, ListedActuator listed) {
        this.design = design.withDrive(design.drive().with(listed.actuator()));
        actuator = listed.actuator();
        sharing = design.drive().actuators().size();
        mostPull = Ratings.pull(this.design);
        double most = 0;
        for (int i = 0; i <= LENGTHS; i++) {
            most = Math.max(most, Ratings.push(this.design, actuator.closed() + actuator.stroke() * i / LENGTHS));
        }
        mostPush = most;
        quickest = fastest(actuator);
        share = TiltLoads.shares(this.design);
    }

    /** The fastest that it goes without load, m/s; 0: not known. */
    private static double fastest(Actuator actuator) {
        double most = 0;
        for (int i = 0; i <= LENGTHS; i++) {
            double length = actuator.closed() + actuator.stroke() * i / LENGTHS;
            Double out = ActuatorSpeed.at(actuator, length, 0, true);
            Double in = ActuatorSpeed.at(actuator, length, 0, false);
            most = out == null || in == null ? most : Math.max(most, Math.max(out, in));
        }
        return most;
    }

    /** Friction radii of frame pin and tank pin while tipping, m. */
    double[] pinRadii() {
        FrictionRadii radii = FrictionRadii.of(design, actuator);
        return new double[] {FrictionRadii.braking(radii.framePin(), 1), FrictionRadii.braking(radii.rodPin(), 1)};
    }

    /** Whether the lengths may fit the actuator, its margins included; the quick first look. */
    boolean fits(Lanes l, int j) {
        return left(l, j) >= design.limits().strokeMargin();
    }

    /** Stroke that is left at either end at most, m. */
    private double left(Lanes l, int j) {
        double in = l.shortest[j] - actuator.closed();
        double out = actuator.closed() + actuator.stroke() - l.longest[j];
        return Math.min(in, out) + l.lengthOff(j);
    }

    /** A utilisation that the candidate has at least. */
    double least(Lanes l, int j) {
        double off = l.armOff(j);
        double arm = l.arm[j] + off;
        if (arm <= 0 || l.free[j] + 2 * off <= 0) {
            return BoundingChecks.PASSED;
        }
        double angle = Math.asin(Math.min(1, arm / l.reach(j)));
        double most = Math.max(stroke(l, j), TransmissionCheck.utilisation(angle, design.limits()));
        double largest = largest(l, j);
        double doubt = doubt(l, j);
        if (!(doubt < largest)) {
            return most;
        }
        boolean grows = l.sign[j] > 0;
        double push = Math.max(0, (grows ? l.most[j] : -l.least[j]) - doubt);
        double pull = Math.max(0, (grows ? -l.least[j] : l.most[j]) - doubt);
        double rest = Math.max(0, Math.max(Math.abs(l.restMost[j]), Math.abs(l.restLeast[j])) - doubt);
        most = Math.max(most, forces(push, pull, rest));
        most = Math.max(most, bearing(0, radial(l.bearing1[j], share[0], largest, doubt)));
        return Math.max(most, bearing(1, radial(l.bearing2[j], share[1], largest, doubt)));
    }

    /** Largest force of one actuator at least, N. */
    double force(Lanes l, int j) {
        double moving = Math.max(Math.abs(l.most[j]), Math.abs(l.least[j]));
        return Math.max(0, moving - doubt(l, j)) / sharing;
    }

    /** Time for the candidate's stroke without load, s: no load is faster. */
    double quickest(Lanes l, int j) {
        return Math.max(0, l.longest[j] - l.shortest[j] - 2 * l.lengthOff(j)) / quickest;
    }

    /** What any force may be off by, N: as a share, that of the arm that friction leaves, and the slack; infinite: it cannot be told. */
    private static double doubt(Lanes l, int j) {
        return (SLACK + 2 * l.armOff(j) / Math.max(0, l.free[j])) * largest(l, j);
    }

    private static double largest(Lanes l, int j) {
        double moving = Math.max(Math.abs(l.most[j]), Math.abs(l.least[j]));
        return Math.max(moving, Math.max(Math.abs(l.restMost[j]), Math.abs(l.restLeast[j])));
    }

    /** Radial load of a bearing at least, N; the weight on it is no more than what is left of it and of its share of the force. */
    private static double radial(double square, double share, double force, double doubt) {
        double made = Math.sqrt(square) + 2 * Math.abs(share) * force;
        double least = Math.sqrt(Math.max(0, square - ROUNDING * made * made));
        return Math.max(0, least * (1 - SLACK) - Math.abs(share) * doubt);
    }

    private double stroke(Lanes l, int j) {
        double margin = design.limits().strokeMargin();
        double left = left(l, j);
        return left > 0 ? margin / left : BoundingChecks.PASSED;
    }

    private double forces(double push, double pull, double rest) {
        Factors factors = design.factors();
        double most = used(PushCheck.usage(push, mostPush, factors));
        most = Math.max(most, used(PushCheck.usage(pull, mostPull, factors)));
        Double hold = actuator.ratedHold();
        most = hold == null ? most : Math.max(most, used(HoldCheck.usage(rest, hold * sharing, factors)));
        double one = Math.max(push, pull) / sharing;
        most = Math.max(most, pin(design.drive().framePinJoint(), one));
        return Math.max(most, pin(design.drive().tankPinJoint(), one));
    }

    private static double used(Usage usage) {
        return usage.demand() > 0 ? usage.utilisation() : 0;
    }

    private double pin(@Nullable PinJoint joint, double force) {
        return joint == null
                ? 0
                : PinCheck.usage(force, joint, design.factors()).utilisation();
    }

    private double bearing(int k, double radial) {
        Factors factors = design.factors();
        double most = 0;
        Bearing bearing = design.pivot().bearings().get(k).bearing();
        if (bearing instanceof BallInsert insert) {
            Double c0 = insert.c0();
            // The load along the pivot need not be there together with the largest across it.
            most = c0 == null
                    ? 0
                    : BearingStaticCheck.usage(new Vec3(radial, 0, 0), c0, factors)
                            .utilisation();
            double strongest = strongest(insert.housing());
            most = Math.max(most, strongest > 0 ? radial * factors.bearingHousing() / strongest : 0);
        } else if (bearing instanceof PlainBush bush) {
            Double pressure = bush.pressure();
            most = pressure == null
                    ? 0
                    : BushCheck.usage(new Vec2(radial, 0), bush, pressure, factors)
                            .utilisation();
        }
        Shaft shaft = design.pivot().shaft();
        if (shaft == null || !shaft.carriedAt().isEmpty()) {
            return most;
        }
        return Math.max(most, ShaftCheck.usage(radial, shaft, factors).utilisation());
    }

    private static double strongest(List<HousingStrength> figures) {
        double most = 0;
        for (HousingStrength figure : figures) {
            most = Math.max(most, figure.load());
        }
        return most;
    }
}
