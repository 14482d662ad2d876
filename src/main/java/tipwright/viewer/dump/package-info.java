// SPDX-License-Identifier: Apache-2.0
/** The dump as a picture needs it: an analysed design at any tilt, with no drawing library in sight. */
@NullMarked
package tipwright.viewer.dump;

import org.jspecify.annotations.NullMarked;
