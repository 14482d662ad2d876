// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import java.util.List;
import tipwright.design.file.PartsAtHand;
import tipwright.viewer.editor.DesignEditor;
import tipwright.viewer.editor.Draft;
import tipwright.viewer.editor.Solved;

/** The names of the parts that are at hand. */
final class PartNames {
    private PartNames() {}

    /** The parts of the design's own files and of the program. */
    static PartsAtHand at(DesignEditor editor) {
        Solved good = editor.lastGood();
        return Draft.of(editor).parts(good == null ? null : good.design());
    }

    /** Names of a section of the parts files. */
    static List<String> of(DesignEditor editor, String section) {
        return at(editor).names(section);
    }
}
