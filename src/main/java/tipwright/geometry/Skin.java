// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/**
 * The surface of a solid as a thin shell.
 *
 * @param area m2
 * @param centroid centroid of the area, m
 */
public record Skin(double area, Vec3 centroid) {}
