// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tank;

import java.util.List;

/**
 * A usual kind of slurry.
 *
 * @param name as written in files
 * @param low density, kg/m3
 * @param high density, kg/m3
 * @param source of both
 * @param density that is taken, kg/m3
 */
public record UsualSlurry(String name, double low, double high, String source, double density) {
    private static final double EITHER_WAY = 0.1;
    private static final String TABLE =
            "engineering table of densities of dirt and mud, 10 % either way by common practice";

    private static final List<UsualSlurry> ALL = List.of(
            one("flowing-mud", 1730, TABLE),
            one("wet-sand", 1905, TABLE),
            one("wet-gravel", 2000, TABLE),
            one("wet-clay", 1760, TABLE),
            between(
                    "hydro-excavation",
                    1332,
                    1660,
                    "trade journal: 60 % water, 40 % solids; by mass the low figure, by volume the high one"),
            one("screen-discard", 1960, "drilling handbook on mud cleaners: 60 % solids by volume, 10 % either way"),
            between("stone-saw", 1100, 1400, "common practice, no source"),
            between("concrete-washout", 1100, 1800, "common practice, no source"));

    private static UsualSlurry one(String name, double density, String source) {
        return new UsualSlurry(name, density * (1 - EITHER_WAY), density * (1 + EITHER_WAY), source, density);
    }

    private static UsualSlurry between(String name, double low, double high, String source) {
        return new UsualSlurry(name, low, high, source, 0.5 * (low + high));
    }

    /** All kinds, in the order in which they are listed. */
    public static List<UsualSlurry> all() {
        return ALL;
    }

    /** The same kind with another density, kg/m3. */
    public UsualSlurry as(double other) {
        return new UsualSlurry(name, low, high, source, other);
    }
}
