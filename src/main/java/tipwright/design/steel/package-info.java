// SPDX-License-Identifier: Apache-2.0
/** Steel as it is bought: plates, discs, meshes and sections by length, with their masses, centres and outlines. */
@NullMarked
package tipwright.design.steel;

import org.jspecify.annotations.NullMarked;
