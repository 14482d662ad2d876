// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import org.jspecify.annotations.Nullable;
import tipwright.geometry.Plane;

/**
 * What fills the tank up to a plane.
 *
 * @param stuff what it is
 * @param surface its surface, in the tank's axes as stowed (turn it with the tank to see it at a tilt)
 * @param slope a second plane that it is below, where a heap has begun to slide out; null: none
 * @param bed surface of settled solids under a liquid; null: there are none
 * @param volume m3, with what is settled
 */
public record Fill(Stuff stuff, Plane surface, @Nullable Plane slope, @Nullable Plane bed, double volume) {
    /** With one surface. */
    public Fill(Stuff stuff, Plane surface, double volume) {
        this(stuff, surface, null, null, volume);
    }

    /** With a second plane. */
    public Fill(Stuff stuff, Plane surface, @Nullable Plane slope, double volume) {
        this(stuff, surface, slope, null, volume);
    }

    /** Liquid has a level surface; cake is settled solids. */
    public enum Stuff {
        LIQUID,
        CAKE
    }
}
