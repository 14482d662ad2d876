// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.dump;

import org.jspecify.annotations.Nullable;
import tipwright.analysis.Row;
import tipwright.geometry.Filled;
import tipwright.geometry.Level;
import tipwright.geometry.Vec3;
import tipwright.load.Contents;
import tipwright.load.Fill;

/** The surface between two tilts that were computed: it keeps the volume between. */
final class Surfaces {
    private Surfaces() {}

    /**
     * What is in the tank.
     *
     * @param s share of the way from a to b, 0 to 1
     * @param tilt rad
     */
    static @Nullable Fill between(Contents contents, Row a, Row b, double s, double tilt) {
        Fill from = a.load().fill();
        Fill to = b.load().fill();
        if (from == null || s <= 0 || (to == null && s < 1)) {
            return from;
        }
        if (to == null || s >= 1) {
            return to;
        }
        boolean liquid = from.stuff() == Fill.Stuff.LIQUID;
        Vec3 normal = from.surface().normal();
        double turn = Math.acos(Math.min(1, normal.dot(to.surface().normal())));
        if (!liquid && turn > 3 * (b.tilt() - a.tilt()) + 1e-9) {
            // a stuck cake that lets go on the way: it is stuck until it does
            return from;
        }
        Vec3 up = liquid
                ? contents.up(tilt)
                : normal.times(1 - s).plus(to.surface().normal().times(s)).unit();
        double volume = (1 - s) * from.volume() + s * to.volume();
        double guess = (1 - s) * from.surface().level() + s * to.surface().level();
        Filled filled = Level.filling(contents.solid(), up, volume, guess);
        return new Fill(from.stuff(), filled.plane(), volume);
    }
}
