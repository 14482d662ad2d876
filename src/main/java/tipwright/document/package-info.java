// SPDX-License-Identifier: Apache-2.0
/** The report on paper or in a browser: pages, drawings, plots. */
@NullMarked
package tipwright.document;

import org.jspecify.annotations.NullMarked;
