// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

import tipwright.design.tank.Slurry;

/** Densities of mixtures and settled beds. */
final class Slurries {
    private Slurries() {}

    static void addTo(Figures figures) {
        figures.add("mixture", () -> byWeight(0.30, 2500, 1000).mixtureDensity());
        figures.add("mixture-heavy", () -> byWeight(0.35, 2200, 1200).mixtureDensity());
        figures.add("bed", () -> byWeight(0.43, 2650, 1000).cakeDensity());
    }

    private static Slurry byWeight(double share, double solids, double liquid) {
        return new Slurry(1.0, null, null, share, null, solids, liquid, 0.6, 0.5, 3);
    }
}
