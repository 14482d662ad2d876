// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import tipwright.design.Design;
import tipwright.quantity.Text;

/**
 * A change of a design that has not been tried.
 *
 * @param words what to do, as short as on a button: 'move the frame pin 10 mm down'
 * @param detail what follows it where there is room: '(to x = 220 mm, y = -405 mm)'; may be empty
 * @param change how much it changes, to rank by: 0 nothing, about 1 a rebuild. Common practice, no source
 * @param design with the change
 */
record Proposal(Text words, Text detail, double change, Design design) {
    /** One that its words tell in full. */
    Proposal(Text words, double change, Design design) {
        this(words, Text.NONE, change, design);
    }
}
