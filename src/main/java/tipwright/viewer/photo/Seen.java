// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.photo;

import tipwright.geometry.Vec2;

/**
 * Where something in a photo is.
 *
 * @param at in the side view, m
 * @param doubt along x and along y, m: in 95 of 100 both are within
 */
public record Seen(Vec2 at, Vec2 doubt) {}
