// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import tipwright.geometry.Vec3;
import tipwright.load.LoadState;

/**
 * One load case at one tilt.
 *
 * @param pose the linkage
 * @param load tank and contents, in the tank's axes
 * @param centroid of the load in space at this tilt, m
 * @param rest balance without friction
 * @param raise balance while tipping, friction against it
 * @param lower balance while going back, friction the other way
 */
public record Row(Pose pose, LoadState load, Vec3 centroid, Balance rest, Balance raise, Balance lower) {
    /** rad. */
    public double tilt() {
        return pose.tilt();
    }

    /** The balance for a direction of motion. */
    public Balance balance(MotionDirection direction) {
        return switch (direction) {
            case RESTING -> rest;
            case RAISING -> raise;
            case LOWERING -> lower;
        };
    }
}
