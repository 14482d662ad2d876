// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec2;
import tipwright.quantity.Kind;

/**
 * A pull of a hook scale that holds the empty tank, with the actuator off.
 *
 * @param at where the hook holds, m, tank stowed
 * @param pull N; pull up and let down and take the mean, which takes out the friction of the pivot
 * @param direction of the pull in the side view, any length
 * @param tilt that the tank is held at, rad
 */
public record HookReading(
        @Note("Where the hook holds, tank stowed") @Measured(Kind.LENGTH) Vec2 at,
        @Note("On the scale: the mean of pulling up and letting down") @Measured(value = Kind.FORCE, above = "0 N")
                double pull,
        @Note("Direction of the pull; left out: straight up") @Measured(value = Kind.RATIO, preset = "[0, 1]")
                Vec2 direction,
        @Note("Tilt that the tank is held at")
                @Measured(value = Kind.ANGLE, preset = "0 deg", atLeast = "0 deg", atMost = "170 deg")
                double tilt) {

    /** Moment of the pull about the pivot, N m; positive holds up a tank whose centre is on the dump side. */
    public double moment(Vec2 pivot) {
        return at.minus(pivot).tilted(tilt).cross(direction.unit()) * pull;
    }
}
