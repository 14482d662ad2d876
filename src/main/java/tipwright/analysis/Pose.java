// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import tipwright.geometry.Vec2;

/**
 * Where the linkage is at one tilt.
 *
 * @param tilt rad
 * @param length of the actuator, pin to pin, m
 * @param arm effective moment arm dL/dtilt, m per rad; positive: it grows as the tank tips
 * @param transmission angle between the actuator's line and the arm to its moving pin, rad, 0 to pi/2
 * @param swing direction of the actuator from its frame pin, rad from +x towards +y
 * @param framePin m
 * @param tankPin m, at this tilt
 */
public record Pose(
        double tilt, double length, double arm, double transmission, double swing, Vec2 framePin, Vec2 tankPin) {}
