// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.ActuatorSpeed;
import tipwright.design.Design;
import tipwright.design.Factors;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.joint.BallInsert;
import tipwright.design.joint.Bearing;
import tipwright.design.joint.PinJoint;
import tipwright.design.joint.PlainBush;
import tipwright.design.joint.Shaft;
import tipwright.strength.PinStress;

/**
 * Utilisation of every limit for candidates with one actuator, by the rules of the checks. Immutable; writes into arrays that its
 * caller owns [limit].
 */
final class Judge {
    static final int LIMITS = Limit.values().length;

    final ListedActuator listed;
    final double[] pinRadii;
    final Housing housing;
    private final Design design;
    private final int sharing;
    private final @Nullable Buckling buckling;
    private final double margin;
    private final double wantedTime;
    private final double mostPush;
    private final double crossing;

    /**
     * The judge of one actuator.
     *
     * @param wantedTime s; infinite: any
     */
    Judge(Design design, ListedActuator listed, TiltLoads loads, double wantedTime) {
        this(design, listed, Buckling.of(listed.actuator()), loads, wantedTime);
    }

    private Judge(
            Design design, ListedActuator listed, @Nullable Buckling buckling, TiltLoads loads, double wantedTime) {
        this.buckling = buckling;
        this.design = design;
        this.listed = listed;
        this.wantedTime = wantedTime;
        Actuator actuator = listed.actuator();
        pinRadii = TiltLoads.pinRadii(design, actuator);
        housing = new Housing(design);
        sharing = design.drive().actuators().size();
        margin = design.limits().strokeMargin();
        double most = 0;
        for (int i = 0; i <= 64; i++) {
            most = Math.max(most, actuator.ratedPush(actuator.closed() + actuator.stroke() * i / 64));
        }
        mostPush = most;
        crossing = crosses(loads) ? 1 : 0;
    }

    /** The same with the tank on another pivot. */
    Judge withLoads(TiltLoads loads, double time) {
        return new Judge(design, listed, buckling, loads, time);
    }

    /** Whether in any load case the moment changes its sign on the way: the same for every straight drive. */
    private static boolean crosses(TiltLoads loads) {
        for (double[][][] load : loads.loads()) {
            for (int i = 1; i < load.length; i++) {
                double before = load[i - 1][0][0];
                if (before != 0 && before * load[i][0][0] <= 0) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether the lengths fit the actuator, its margins included; the quick first look. */
    boolean fits(double shortest, double longest) {
        Actuator a = listed.actuator();
        return shortest - a.closed() >= margin && a.closed() + a.stroke() - longest >= margin;
    }

    /** Utilisations from the block's peaks; those that need every tilt are left at a lower bound. */
    void quick(Lanes l, int j, TiltLoads loads, double[] out) {
        Arrays.fill(out, 0);
        boolean grows = l.sign[j] > 0;
        double push = Math.max(0, grows ? l.most[j] : -l.least[j]);
        double pull = Math.max(0, grows ? -l.least[j] : l.most[j]);
        double restPush = grows ? l.restMost[j] : -l.restLeast[j];
        double restPull = Math.max(0, grows ? -l.restLeast[j] : l.restMost[j]);
        if (l.arm[j] <= 0 || l.free[j] <= 0) {
            out[Limit.REACH.index()] = 2;
        }
        double sine = Math.min(1, l.arm[j] / l.reach(j));
        double angle = Math.asin(Math.max(sine, 1e-9));
        out[Limit.PUSH.index()] = over(push, mostPush, design.factors().service());
        lengths(l.shortest[j], l.longest[j], out);
        forces(push, pull, Math.max(restPush, restPull), restPull, angle, out);
        double one = Math.sqrt(l.bearing1[j]);
        double two = Math.sqrt(l.bearing2[j]);
        bearings(one, two, loads, out);
        double factor = design.factors().bearingHousing();
        out[Limit.HOUSING.index()] = Math.max(one * factor / housing.greatest(0), two * factor / housing.greatest(1));
    }

    /** Utilisations with every tilt looked at. */
    void exact(Detail d, double[] out) {
        Arrays.fill(out, 0);
        int n = d.reached;
        if (n < d.length.length) {
            double from = d.loads.tilts()[0];
            double to = d.loads.tilts()[d.length.length - 1];
            double at = n == 0 ? from : d.loads.tilts()[n - 1];
            out[Limit.REACH.index()] = 1 + (to - at) / (to - from);
        }
        double shortest = Double.POSITIVE_INFINITY;
        double longest = 0;
        double push = 0;
        double pull = 0;
        double buckles = 0;
        double pushes = 0;
        Actuator a = listed.actuator();
        for (int i = 0; i < n; i++) {
            shortest = Math.min(shortest, d.length[i]);
            longest = Math.max(longest, d.length[i]);
            push = Math.max(push, d.push[i]);
            pull = Math.max(pull, d.pull[i]);
            pushes = Math.max(
                    pushes,
                    over(d.push[i], a.ratedPush(d.length[i]), design.factors().service()));
            if (buckling != null) {
                buckles = Math.max(
                        buckles,
                        d.push[i]
                                / sharing
                                / buckling.at(d.length[i])
                                * design.factors().buckling());
            }
        }
        if (n == 0) {
            return;
        }
        out[Limit.PUSH.index()] = pushes;
        lengths(shortest, longest, out);
        forces(push, pull, d.rest, d.restPull, Math.max(1e-9, d.transmission), out);
        bearings(d.bearing[0], d.bearing[1], d.loads, out);
        out[Limit.BUCKLING.index()] = buckles;
        out[Limit.HOUSING.index()] =
                Math.max(d.housing[0], d.housing[1]) * design.factors().bearingHousing();
        if (Double.isFinite(wantedTime)) {
            double over = time(d, true) / wantedTime;
            out[Limit.TIME.index()] = over > 1 ? over : 0;
        }
    }

    private double over(double demand, double rated, double factor) {
        return demand == 0 ? 0 : rated > 0 ? demand * factor / (rated * sharing) : Double.POSITIVE_INFINITY;
    }

    private void lengths(double shortest, double longest, double[] out) {
        Actuator a = listed.actuator();
        out[Limit.STROKE_IN.index()] = stroke(shortest - a.closed());
        out[Limit.STROKE_OUT.index()] = stroke(a.closed() + a.stroke() - longest);
    }

    private double stroke(double left) {
        return left > margin / 2 ? margin / left : 2 + (margin / 2 - left) / Math.max(margin, 1e-3);
    }

    private void forces(double push, double pull, double rest, double restPull, double angle, double[] out) {
        Actuator a = listed.actuator();
        Factors factors = design.factors();
        out[Limit.PULL.index()] = over(pull, a.ratedPull(), factors.service());
        Double hold = a.ratedHold();
        if (hold != null) {
            out[Limit.HOLD.index()] = over(rest, hold, factors.service());
        }
        out[Limit.TRANSMISSION.index()] = design.limits().transmissionFail() / angle;
        if (crossing > 0) {
            double rated = a.ratedPull() * sharing;
            out[Limit.OVER_CENTRE.index()] = rated > 0 ? restPull / rated : 2;
        }
        double force = Math.max(push, pull) / sharing;
        out[Limit.PIN.index()] = Math.max(
                pin(design.drive().framePinJoint(), force), pin(design.drive().tankPinJoint(), force));
    }

    private double pin(@Nullable PinJoint joint, double force) {
        return joint == null
                ? 0
                : PinStress.combined(joint, force) * design.factors().pin() / joint.yield();
    }

    private void bearings(double one, double two, TiltLoads loads, double[] out) {
        bearing(0, one, loads.axial()[0], out);
        bearing(1, two, loads.axial()[1], out);
        Shaft shaft = design.pivot().shaft();
        if (shaft != null) {
            double load = Math.max(one, two);
            out[Limit.SHAFT.index()] = PinStress.combined(shaft.diameter(), load * shaft.overhang(), load)
                    * design.factors().shaft()
                    / shaft.yield();
        }
    }

    private void bearing(int k, double radial, double axial, double[] out) {
        Bearing b = design.pivot().bearings().get(k).bearing();
        if (b instanceof BallInsert insert) {
            Double c0 = insert.c0();
            if (c0 != null) {
                double p0 = Math.max(radial, 0.6 * radial + 0.5 * axial);
                raise(out, Limit.BEARING, p0 * design.factors().bearingStatic() / c0);
            }
        } else if (b instanceof PlainBush bush) {
            Double pressure = bush.pressure();
            if (pressure != null) {
                double p = radial / (bush.bore() * bush.length());
                raise(out, Limit.BUSH, p * design.factors().bush() / pressure);
            }
        }
    }

    private static void raise(double[] out, Limit limit, double to) {
        out[limit.index()] = Math.max(out[limit.index()], to);
    }

    /** Time to raise or lower against the worst load at each tilt, s; infinite: stalls, or the speed is not known. */
    double time(Detail d, boolean raise) {
        double sum = 0;
        for (int i = 1; i < d.reached; i++) {
            double way = d.length[i] - d.length[i - 1];
            double against = (raise ? d.up[i] : d.down[i]) / sharing;
            boolean out = raise == (way > 0);
            Double speed = ActuatorSpeed.at(listed.actuator(), d.length[i] - way / 2, against, out);
            if (speed == null) {
                return Double.POSITIVE_INFINITY;
            }
            sum += Math.abs(way) / speed;
        }
        return d.reached < d.length.length ? Double.POSITIVE_INFINITY : sum;
    }

    /** Time for a way in m without load, s: no load is faster. */
    double quickest(double way) {
        Actuator a = listed.actuator();
        Double speed = ActuatorSpeed.at(a, a.closed() + a.stroke(), 0, true);
        Double back = ActuatorSpeed.at(a, a.closed() + a.stroke(), 0, false);
        return speed == null || back == null ? Double.POSITIVE_INFINITY : way / Math.max(speed, back);
    }

    /** Largest force of one actuator, N. */
    double force(Detail d) {
        double most = 0;
        for (int i = 0; i < d.reached; i++) {
            most = Math.max(most, Math.max(d.push[i], d.pull[i]));
        }
        return most / sharing;
    }

    /** Price of all the actuators; infinite when not known. */
    double price() {
        Double price = listed.actuator().price();
        return price == null ? Double.POSITIVE_INFINITY : price * sharing;
    }

    /** The same for the block's peaks. */
    double force(Lanes l, int j) {
        return Math.max(Math.abs(l.most[j]), Math.abs(l.least[j])) / sharing;
    }

    /** Ordinal of the largest. */
    static int governing(double[] utilisations) {
        int most = 0;
        for (int i = 1; i < utilisations.length; i++) {
            if (utilisations[i] > utilisations[most]) {
                most = i;
            }
        }
        return most;
    }
}
