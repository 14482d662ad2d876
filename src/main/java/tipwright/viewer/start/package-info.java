// SPDX-License-Identifier: Apache-2.0
/** Starts the programs that draw, each in a Java of its own; nothing here touches the drawing library. */
@NullMarked
package tipwright.viewer.start;

import org.jspecify.annotations.NullMarked;
