// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import tipwright.geometry.Plane;

/**
 * What fills the tank up to a plane.
 *
 * @param stuff what it is
 * @param surface its surface, in the tank's axes as stowed (turn it with the tank to see it at a tilt)
 * @param volume m3
 */
public record Fill(Stuff stuff, Plane surface, double volume) {
    /** Liquid has a level surface; cake is settled solids. */
    public enum Stuff {
        LIQUID,
        CAKE
    }
}
