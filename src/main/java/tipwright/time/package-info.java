// SPDX-License-Identifier: Apache-2.0
/** The dump in time: raise, run out, lower, and what the supply has to give.
 *
 * <p>Input is a finished {@link tipwright.analysis.Analysis}; the answer is a {@link tipwright.time.Timing}. The motion is quasi-static:
 * the force at each moment is the balance with friction at that tilt and content, without inertia of tank and slurry. The surface
 * of the slurry is level at every moment.
 */
@NullMarked
package tipwright.time;

import org.jspecify.annotations.NullMarked;
