// SPDX-License-Identifier: Apache-2.0
/**
 * Whether the whole machine stays on its feet, and how it hangs from its eye. Masses, wind and grades come in; margins about each edge
 * of the feet go out.
 */
@NullMarked
package tipwright.check.standing;

import org.jspecify.annotations.NullMarked;
