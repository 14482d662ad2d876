// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;

/**
 * The empty tank as weighed.
 *
 * @param empty kg
 * @param centre centre of mass, m, stowed
 */
public record Weighed(@Measured(value = Kind.MASS, above = "0 kg") double empty, @Measured(Kind.LENGTH) Vec3 centre) {}
