// SPDX-License-Identifier: Apache-2.0
/**
 * Slips of the pen that show in the figures: a machine drawn the other way round, inches for millimetres, pounds for newtons.
 */
@NullMarked
package tipwright.check.mistake;

import org.jspecify.annotations.NullMarked;
