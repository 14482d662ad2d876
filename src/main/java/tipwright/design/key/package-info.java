// SPDX-License-Identifier: Apache-2.0
/**
 * Annotations that say how a component of a design record is written in the file: its kind of quantity, limits, preset, remark. Reader,
 * schema and editor all follow them.
 */
@NullMarked
package tipwright.design.key;

import org.jspecify.annotations.NullMarked;
