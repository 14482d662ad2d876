// SPDX-License-Identifier: Apache-2.0
/** Results as text, JSON and CSV. */
@NullMarked
package tipwright.report;

import org.jspecify.annotations.NullMarked;
