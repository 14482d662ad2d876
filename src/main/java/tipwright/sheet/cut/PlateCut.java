// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.cut;

import tipwright.sheet.bracket.CutPlate;

/**
 * A plate of the cut list.
 *
 * @param name in the builder's words
 * @param plate its shape
 * @param count how many are cut
 * @param proposed whether the design does not describe it
 */
public record PlateCut(String name, CutPlate plate, int count, boolean proposed) {}
