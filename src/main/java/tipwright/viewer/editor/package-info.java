// SPDX-License-Identifier: Apache-2.0
/** The design being edited: its text, what follows from it, moving its pins, undo, saving, and nothing lost in a crash. */
@NullMarked
package tipwright.viewer.editor;

import org.jspecify.annotations.NullMarked;
