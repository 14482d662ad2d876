// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import tipwright.quantity.Kind;

/**
 * Ground or deck under the machine, in the design's axes.
 *
 * @param y height of its surface, m
 */
public record Ground(@Note("Height of the ground or deck") @Measured(Kind.LENGTH) double y) {}
