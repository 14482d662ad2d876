// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.editor;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.file.ChangedText;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.PartsAtHand;
import tipwright.design.file.Reading;
import tipwright.load.Contents;

/**
 * A design's text as it stood at one moment, so that another thread can work on it.
 *
 * @param name as shown
 * @param file where it is saved; null: not yet anywhere
 */
public record Draft(String name, String text, @Nullable Path file) {
    /** What is on the editor now. */
    public static Draft of(DesignEditor editor) {
        return new Draft(editor.name(), editor.sheet().text(), editor.file());
    }

    /** The same with another text. */
    public Draft with(String other) {
        return new Draft(name, other, file);
    }

    /** What it says. */
    public Reading read() {
        Path at = folder();
        return DesignFile.read(name, text, at == null ? NamedFiles.shipped() : NamedFiles.folder(at));
    }

    /**
     * Writes changes of its design into the text, each for itself: from the design with other values to the text; null when it cannot be
     * written so.
     *
     * @param read what it says
     */
    public Function<Design, @Nullable String> changes(Reading.Good read) {
        PartsAtHand names = parts(read.design());
        double capacity = new Contents(read.design()).capacity();
        return changed -> ChangedText.of(
                read, changed, capacity, names::name, other -> with(other).read());
    }

    /** Where it is saved; null: not yet anywhere. */
    public @Nullable Path folder() {
        Path f = file;
        return f == null ? null : f.toAbsolutePath().getParent();
    }

    /** The parts that are at hand for it: those of its own files, where it says anything, and of the program. */
    public PartsAtHand parts(@Nullable Design design) {
        return PartsAtHand.of(folder(), design == null ? List.of() : design.parts(), List.of());
    }
}
