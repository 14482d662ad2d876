// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.joint.Guide;
import tipwright.linkage.ReactionSolver;

/** Friction of every joint of any mechanism, in proportion to what it bears. Owned by one balancer. */
final class JointFriction {
    private final double framePin;
    private final double rodPin;
    private final int pivot;
    private final double[] pinRadius;
    private final @Nullable Guide[] guides;
    private final double[] bearingRadius;

    JointFriction(Design design, Mechanism mechanism) {
        FrictionRadii radii = FrictionRadii.of(design);
        framePin = radii.framePin();
        rodPin = radii.rodPin();
        pivot = mechanism.pivot();
        pinRadius = new double[mechanism.joints().size()];
        guides = new @Nullable Guide[pinRadius.length];
        for (int i = 0; i < pinRadius.length; i++) {
            String name = mechanism.joints().get(i).name();
            pinRadius[i] = radii.pin(name);
            guides[i] = design.drive().guide(name);
        }
        bearingRadius = new double[design.pivot().bearings().size()];
        for (int i = 0; i < bearingRadius.length; i++) {
            bearingRadius[i] = radii.bearing(i);
        }
    }

    /**
     * Writes the friction of each joint under the forces found last, and in the actuator's two pins.
     *
     * @param bearings radial load of each bearing, N [bearing]
     * @param out N m at pins, N at slides, with the sign of sense [joint, then the fixed and the moving end]
     */
    void fill(ReactionSolver solved, double[] bearings, int sense, double[] out) {
        for (int i = 0; i < guides.length; i++) {
            Guide guide = guides[i];
            if (i == pivot) {
                double moment = 0;
                for (int k = 0; k < bearingRadius.length; k++) {
                    moment += FrictionRadii.pin(sense, bearingRadius[k], bearings[k]);
                }
                out[i] = moment;
            } else {
                double x = solved.jointX(i);
                double y = solved.jointY(i);
                double load = Math.sqrt(x * x + y * y);
                out[i] = guide == null
                        ? FrictionRadii.pin(sense, pinRadius[i], load)
                        : FrictionRadii.slide(sense, guide, load, solved.couple(i));
            }
        }
        double push = Math.abs(solved.force());
        out[guides.length] = FrictionRadii.pin(sense, framePin, push);
        out[guides.length + 1] = FrictionRadii.pin(sense, rodPin, push);
    }
}
