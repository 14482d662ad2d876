// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import java.nio.file.Path;
import java.util.List;
import tipwright.design.Design;
import tipwright.design.file.PartsAtHand;
import tipwright.viewer.editor.DesignEditor;
import tipwright.viewer.editor.Solved;

/** The names of the parts that are at hand. */
final class PartNames {
    private PartNames() {}

    /** The parts of the design's own files and of the program. */
    static PartsAtHand at(DesignEditor editor) {
        Solved good = editor.lastGood();
        Design design = good == null ? null : good.design();
        Path file = editor.file();
        Path folder = file == null ? null : file.toAbsolutePath().getParent();
        return PartsAtHand.of(folder, design == null ? List.of() : design.parts(), List.of());
    }

    /** Names of a section of the parts files. */
    static List<String> of(DesignEditor editor, String section) {
        return at(editor).names(section);
    }
}
