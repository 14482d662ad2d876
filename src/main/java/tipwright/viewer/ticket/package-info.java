// SPDX-License-Identifier: Apache-2.0
/** The answer beside the picture: verdict, five numbers, what fails, fixes that can be applied, all of it worked out beside the window. */
@NullMarked
package tipwright.viewer.ticket;

import org.jspecify.annotations.NullMarked;
