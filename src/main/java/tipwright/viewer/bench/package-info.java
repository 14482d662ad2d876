// SPDX-License-Identifier: Apache-2.0
/** The design on the bench: its text, what follows from it, moving its pins, undo, saving, and nothing lost in a crash. */
@NullMarked
package tipwright.viewer.bench;

import org.jspecify.annotations.NullMarked;
