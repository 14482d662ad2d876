// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

/** The pins of a straight drive that a map can be drawn over. */
public enum Pin {
    FRAME,
    TANK
}
