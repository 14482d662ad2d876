// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import tipwright.quantity.Kind;

/**
 * A value of a file that may be off.
 *
 * @param path of the value; the numbers of a point end in '.x', '.y' and '.z'
 * @param said as written
 * @param kind what it measures
 * @param value SI
 * @param doubt standard doubt, SI, more than 0
 */
public record Uncertain(String path, String said, Kind kind, double value, double doubt) {}
