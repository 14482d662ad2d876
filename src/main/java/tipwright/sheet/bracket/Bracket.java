// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.bracket;

import java.util.List;
import tipwright.geometry.Vec2;
import tipwright.quantity.Text;

/**
 * A plate of a bracket, lug or mount, with what is to be known to cut and weld it.
 *
 * @param name in the builder's words: 'lug of the frame pin'
 * @param plate its shape; for a lug the middle of the hole is the origin and its foot lies down
 * @param count how many of them are cut
 * @param proposed whether any of it is proposed because the design does not describe it
 * @param words what is written beside it, a sentence each
 * @param outlines where it is seen in the side view, m, stowed
 * @param body number of the body that it sits on
 */
public record Bracket(
        String name,
        CutPlate plate,
        int count,
        boolean proposed,
        List<Text> words,
        List<List<Vec2>> outlines,
        int body) {
    /** Copies the lists. */
    public Bracket {
        words = List.copyOf(words);
        outlines = List.copyOf(outlines);
    }
}
