// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/**
 * A solid filled to a plane.
 *
 * @param plane the surface
 * @param moments of the part below it
 */
public record Filled(Plane plane, Moments moments) {}
