// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.around.Mounts;
import tipwright.design.drive.Straight;
import tipwright.geometry.Vec2;

/** Tells the utilisation of a design with its pins elsewhere, fast enough to follow a drag. Mutable inside: owned by one caller. */
public final class Probe {
    private final Straight straight;
    private final Judge judge;
    private final Detail detail;
    private final double[] utilisations = new double[Judge.LIMITS];

    /**
     * A probe.
     *
     * @throws CannotComputeException when the drive is not a straight one
     */
    public Probe(Design design) throws CannotComputeException {
        straight = TiltLoads.straight(design);
        Actuator actuator = straight.actuators().get(0).actuator();
        TiltLoads loads = TiltLoads.of(design);
        Mounts mounts = design.mounts();
        Double time = mounts == null ? null : mounts.wants().time();
        judge = new Judge(
                design,
                new ListedActuator("as drawn", actuator),
                loads,
                time == null ? Double.POSITIVE_INFINITY : time);
        detail = new Detail(loads, judge.pinRadii);
    }

    /**
     * What the largest utilisation is.
     *
     * @param utilisation over 1: fails
     * @param governing which limit
     */
    public record Reading(double utilisation, Limit governing) {}

    /** With one pin at a place in m and the other where it is drawn. */
    public Reading at(Pin pin, Vec2 place) {
        return pin == Pin.FRAME ? at(place, straight.tankPin()) : at(straight.framePin(), place);
    }

    /** With both pins at places in m. */
    public Reading at(Vec2 framePin, Vec2 tankPin) {
        detail.run(framePin, tankPin, judge.housing);
        judge.exact(detail, utilisations);
        int g = Judge.governing(utilisations);
        return new Reading(utilisations[g], Limit.at(g));
    }
}
