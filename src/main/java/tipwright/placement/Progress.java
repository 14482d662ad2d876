// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import org.jspecify.annotations.Nullable;

/**
 * How far a search is.
 *
 * @param share done, 0 to 1
 * @param best lowest utilisation so far; null: nothing fits yet
 */
public record Progress(double share, @Nullable Candidate best) {}
