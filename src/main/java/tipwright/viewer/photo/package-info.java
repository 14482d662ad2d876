// SPDX-License-Identifier: Apache-2.0
/**
 * Places of pins out of a photo of the machine's side: a sheet of known size in the picture tells how the picture lies to the machine.
 * Pixels with y down go in, places in the side view in metres come out, each with its doubt. A photo gives a first guess, the tape decides.
 */
@NullMarked
package tipwright.viewer.photo;

import org.jspecify.annotations.NullMarked;
