// SPDX-License-Identifier: Apache-2.0
/** Where a machine is begun: new by questions, opened from a file, or an example; what is remembered from one time to the next. */
@NullMarked
package tipwright.viewer.begin;

import org.jspecify.annotations.NullMarked;
