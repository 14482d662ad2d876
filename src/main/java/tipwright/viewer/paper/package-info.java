// SPDX-License-Identifier: Apache-2.0
/** What is handed over from the window: report, sheet, drawings and pictures, made beside it by what the commands use. */
@NullMarked
package tipwright.viewer.paper;

import org.jspecify.annotations.NullMarked;
