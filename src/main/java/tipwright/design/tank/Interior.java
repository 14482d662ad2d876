// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import tipwright.design.key.Choice;
import tipwright.geometry.Solid;

/** The inside of the tank. Adding a shape: one record here and its name in the permits clause. */
@Choice("shape")
public sealed interface Interior permits CylinderInterior, BoxInterior, PrismInterior, MeshInterior {
    /** The closed solid, in metres, stowed. */
    Solid solid();
}
