// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.quantity.Kind;

/**
 * Ground or deck under the machine, in the design's axes.
 *
 * @param y height of its surface, m
 */
public record Ground(@Note("Height of the ground or deck") @Measured(Kind.LENGTH) double y) {}
