// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import tipwright.design.Design;
import tipwright.quantity.Text;

/**
 * A change of a design that has not been tried.
 *
 * @param words what to do: 'a pin of 40 mm at the frame pin'
 * @param change how much it changes, to rank by: 0 nothing, about 1 a rebuild. Common practice, no source
 * @param design with the change
 */
record Proposal(Text words, double change, Design design) {}
