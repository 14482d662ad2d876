// SPDX-License-Identifier: Apache-2.0
/**
 * Where the mounts may go. {@link tipwright.placement.Placer} searches zones and actuators, {@link
 * tipwright.placement.PlacementMap} tells the utilisation over a zone, {@link tipwright.placement.Tolerance} what a weld that is
 * off does.
 *
 * <p>Allowed input: a design with any drive. The load of the tank depends on the tilt alone, so it is worked out once; a candidate
 * of a straight drive then costs a closed form at each tilt, friction included, and one of another mechanism the general analysis.
 * Every answer is checked again by the full check.
 */
@NullMarked
package tipwright.placement;

import org.jspecify.annotations.NullMarked;
