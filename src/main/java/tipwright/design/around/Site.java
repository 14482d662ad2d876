// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * The ground. The slopes turn gravity, never the geometry.
 *
 * @param grade rad, positive: the dump side (+x) is lower
 * @param crossSlope rad, positive: the +z side is lower
 * @param windPressure Pa
 * @param anyWay slope on which it may stand whichever way round, rad
 * @param temperature of the coldest day that it works on, K
 * @param hottest temperature of the hottest day, K
 */
public record Site(
        @Note("Slope along the machine; + means that the dump side is lower")
                @Measured(value = Kind.ANGLE, preset = "0 deg", atLeast = "-45 deg", atMost = "45 deg")
                double grade,
        @Note("Slope across the machine; + means that the +z side is lower")
                @Measured(value = Kind.ANGLE, preset = "0 deg", atLeast = "-45 deg", atMost = "45 deg")
                double crossSlope,
        @Note("Wind pressure on the side area of tank and frame members")
                @Measured(value = Kind.PRESSURE, preset = "0 Pa", atLeast = "0 Pa")
                double windPressure,
        @Note("Slope on which it may stand any way round")
                @Measured(value = Kind.ANGLE, preset = "0 deg", atLeast = "0 deg", atMost = "30 deg")
                double anyWay,
        @Note("Of the coldest day that it works on: oil, gas springs")
                @Measured(value = Kind.TEMPERATURE, preset = "20 degC", atLeast = "-40 degC", atMost = "50 degC")
                double temperature,
        @Note("Of the hottest day that it works on, in the sun: gas springs push harder then")
                @Measured(value = Kind.TEMPERATURE, preset = "50 degC", atLeast = "-20 degC", atMost = "90 degC")
                double hottest) {

    /** Unit vector straight up against gravity, in the design's axes with the tank stowed: along (-tan grade, 1, -tan cross). */
    public Vec3 up() {
        return new Vec3(-Math.tan(grade), 1, -Math.tan(crossSlope)).unit();
    }

    /** This site with other slopes, rad. */
    public Site leaning(double otherGrade, double otherCrossSlope) {
        return new Site(otherGrade, otherCrossSlope, windPressure, anyWay, temperature, hottest);
    }
}
