// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

/**
 * Where the linkage stops short of the full tilt.
 *
 * @param tilt rad
 * @param why in plain words, with the tilt
 */
public record Stop(double tilt, String why) {}
