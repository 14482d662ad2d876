// SPDX-License-Identifier: Apache-2.0
/**
 * Where the mounts may go. {@link tipwright.placement.Placer} searches zones and actuators, {@link
 * tipwright.placement.PlacementMap} tells the utilisation over a zone, {@link tipwright.placement.Tolerance} what a weld that is
 * off does.
 *
 * <p>Allowed input: a design with any drive. A candidate is analysed by the general solver or by the closed form of a straight drive,
 * and judged by the checks themselves; no rule of theirs stands here a second time. Every answer passes every check.
 */
@NullMarked
package tipwright.placement;

import org.jspecify.annotations.NullMarked;
