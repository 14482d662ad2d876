// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

/**
 * A quantity with how far off it may be.
 *
 * @param si the value, in the SI unit of its kind
 * @param doubt standard doubt, SI, the same kind; 0 when none was given. What is written behind '+-' is taken as twice this: the
 *     value lies within it in about 95 of 100 cases. Source: JCGM 100 (GUM), expanded uncertainty with coverage factor 2
 * @param unit as written; empty for a bare number
 */
public record Estimate(double si, double doubt, String unit) {}
