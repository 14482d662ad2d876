// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import tipwright.design.Design;
import tipwright.geometry.Solid;

/**
 * What does not depend on the fill.
 *
 * @param solid the inside of the tank
 * @param empty the tank alone
 * @param bed its inside, to be cut by two planes
 */
record Vessel(Solid solid, EmptyTank empty, Bed bed) {
    static Vessel of(Design design) {
        Solid solid = design.tank().interior().solid();
        return new Vessel(solid, EmptyTank.of(design, solid), new Bed(solid));
    }
}
