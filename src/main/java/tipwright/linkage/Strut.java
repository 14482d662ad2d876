// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import tipwright.geometry.Vec2;

/**
 * A massless two-pin member between two bodies: the actuator.
 *
 * @param onA its pin on body a, m, stowed
 * @param onB its pin on body b, m, stowed
 */
public record Strut(String name, int a, Vec2 onA, int b, Vec2 onB) {}
