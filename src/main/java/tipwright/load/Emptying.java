// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import org.jspecify.annotations.Nullable;

/**
 * Does it empty?
 *
 * @param liquid what a thin slurry leaves behind at full tilt
 * @param cake what the settled solids leave behind at full tilt; null when there are none
 * @param pocket where pockets keep the most that the loads leave out
 */
public record Emptying(Residue liquid, @Nullable Residue cake, Pocket pocket) {
    /** Of a tank without pockets. */
    public Emptying(Residue liquid, @Nullable Residue cake) {
        this(liquid, cake, Pocket.NONE);
    }

    /**
     * What pockets of the inside keep while the tank tips, beyond what the loads count, which are worked out under one surface.
     *
     * @param share of what was in the tank, 0 to 1
     * @param tilt at which, rad
     */
    public record Pocket(double share, double tilt) {
        static final Pocket NONE = new Pocket(0, 0);
    }

    /**
     * What stays behind.
     *
     * @param volume left at full tilt, m3
     * @param share of what was in the tank, 0 to 1
     * @param tiltNeeded to leave less than the allowed share, rad, 180 degrees at the most; null when no tilt does
     */
    public record Residue(double volume, double share, @Nullable Double tiltNeeded) {}
}
