// SPDX-License-Identifier: Apache-2.0
/** What the trade stocks: sheet by gauge, pipe by size and schedule, rectangular tube; sizes in metres, areas and masses from them. */
@NullMarked
package tipwright.geometry.stock;

import org.jspecify.annotations.NullMarked;
