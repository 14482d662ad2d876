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
    /** What the kernel's figures may be off by, as a share. */
    static final double SLACK = 1e-3;

    private static final int LENGTHS = 64;

    private final Design design;
    private final Actuator actuator;
    private final int sharing;
    private final double mostPush;
    private final double mostPull;
    private final double quickest;

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

    /** Whether the lengths fit the actuator, its margins included; the quick first look. */
    boolean fits(double shortest, double longest) {
        double margin = design.limits().strokeMargin() * (1 - SLACK);
        return shortest - actuator.closed() >= margin && actuator.closed() + actuator.stroke() - longest >= margin;
    }

    /** A utilisation that the candidate has at least, less the slack. */
    double least(Lanes l, int j) {
        if (!(l.arm[j] > 0) || !(l.free[j] > 0)) {
            return BoundingChecks.PASSED;
        }
        boolean grows = l.sign[j] > 0;
        double push = Math.max(0, grows ? l.most[j] : -l.least[j]);
        double pull = Math.max(0, grows ? -l.least[j] : l.most[j]);
        double rest = Math.max(Math.abs(l.restMost[j]), Math.abs(l.restLeast[j]));
        double most = Math.max(lengths(l.shortest[j], l.longest[j]), forces(push, pull, rest));
        double angle = Math.asin(Math.min(1, l.arm[j] / l.reach(j)));
        most = Math.max(most, TransmissionCheck.utilisation(angle, design.limits()));
        most = Math.max(most, bearing(0, Math.sqrt(l.bearing1[j])));
        return (1 - SLACK) * Math.max(most, bearing(1, Math.sqrt(l.bearing2[j])));
    }

    /** Largest force of one actuator at least, N. */
    double force(Lanes l, int j) {
        return (1 - SLACK) * Math.max(Math.abs(l.most[j]), Math.abs(l.least[j])) / sharing;
    }

    /** Time for the candidate's stroke without load, s: no load is faster. */
    double quickest(Lanes l, int j) {
        return (l.longest[j] - l.shortest[j]) / quickest;
    }

    private double lengths(double shortest, double longest) {
        double margin = design.limits().strokeMargin();
        double left = Math.min(shortest - actuator.closed(), actuator.closed() + actuator.stroke() - longest);
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
