// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.cut;

import tipwright.quantity.Text;

/**
 * A part that is bought.
 *
 * @param name in the builder's words
 * @param count how many
 * @param figures that matter when it is chosen
 */
public record BoughtPart(String name, int count, Text figures) {}
