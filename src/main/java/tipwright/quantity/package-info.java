// SPDX-License-Identifier: Apache-2.0
/** Units at the edge: reading and writing quantities as builders write them. Inside, everything is SI. */
@NullMarked
package tipwright.quantity;

import org.jspecify.annotations.NullMarked;
