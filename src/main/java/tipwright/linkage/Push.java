// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import tipwright.geometry.Vec2;

/**
 * A force on a body.
 *
 * @param at where it acts, a point of the body as stowed, m
 * @param force in space, N
 */
public record Push(int body, Vec2 at, Vec2 force) {}
