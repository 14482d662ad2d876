// SPDX-License-Identifier: Apache-2.0
/**
 * Flat drawings: marks in mm with y up, and writers for SVG, PNG, PDF and DXF. Text is drawn in Liberation Sans, which comes with
 * the PDF library, so that every machine shows the same.
 */
@NullMarked
package tipwright.drawing;

import org.jspecify.annotations.NullMarked;
