// SPDX-License-Identifier: Apache-2.0
/** The window: the picture, the dump's controls, the numbers beside it, and moving the mounts by hand. */
@NullMarked
package tipwright.viewer.window;

import org.jspecify.annotations.NullMarked;
