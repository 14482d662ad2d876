// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.geometry.Vec3;
import tipwright.linkage.Configuration;
import tipwright.linkage.Linkage;

/** Solves the equilibrium for any load at any tilt, also between analysis rows. Mutable: owned by one caller. */
public final class EquilibriumSolver {
    private final Linkage linkage;
    private final Balancer balancer;

    /**
     * A probe of a design.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn
     */
    public EquilibriumSolver(Design design) throws CannotComputeException {
        linkage = Analyser.linkage(design);
        balancer = new Balancer(design, linkage, Mechanism.of(linkage.skeleton()), null);
    }

    /**
     * The forces that hold a load.
     *
     * @param tilt rad
     * @param mass of all that turns with the tank, kg
     * @param centroid of it, m, in the tank's axes as stowed
     * @param motion 1: while it tips, -1: while it goes back, friction against it; 0: at rest without friction
     * @return null when the linkage does not reach the tilt or nothing can be in balance there
     */
    public @Nullable Balance at(double tilt, double mass, Vec3 centroid, int motion) {
        List<Configuration> configurations = linkage.sweep(new double[] {tilt}).configurations();
        if (configurations.isEmpty() || !balancer.moveTo(configurations.get(0))) {
            return null;
        }
        return balancer.balance(mass, centroid, motion);
    }
}
