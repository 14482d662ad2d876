// SPDX-License-Identifier: Apache-2.0
/**
 * Where the mounts may go. {@link tipwright.placement.Placer} searches zones and actuators, {@link
 * tipwright.placement.PlacementMap} tells the utilisation over a zone, {@link tipwright.placement.Tolerance} what a weld that is
 * off does.
 *
 * <p>Allowed input: a design with a straight drive whose tank turns about its pivot. The load of the tank depends on the tilt
 * alone, so it is worked out once; a candidate then costs a closed form at each tilt, friction included. Every answer is checked
 * again by the full check.
 */
@NullMarked
package tipwright.placement;

import org.jspecify.annotations.NullMarked;
