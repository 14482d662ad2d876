// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.geometry.Vec3;
import tipwright.linkage.Configuration;
import tipwright.linkage.Linkage;

/** The linkage at chosen tilts, to balance any load on it. A workspace: it remembers the tilt that it stands at. */
public final class Forces {
    private final List<Configuration> configurations;
    private final Balancer balancer;
    private int standing = -1;
    private boolean balanced;

    private Forces(List<Configuration> configurations, Balancer balancer) {
        this.configurations = configurations;
        this.balancer = balancer;
    }

    /**
     * The linkage of a design at these tilts, or at those of them that it reaches.
     *
     * @param tilts rad, rising
     * @throws CannotComputeException when the linkage cannot be assembled
     */
    public static Forces of(Design design, double[] tilts) throws CannotComputeException {
        return of(design, tilts, null);
    }

    /** The same in a wind. */
    public static Forces of(Design design, double[] tilts, @Nullable Wind wind) throws CannotComputeException {
        Linkage linkage = Analyser.linkage(design);
        List<Configuration> configurations = linkage.sweep(tilts).configurations();
        if (configurations.isEmpty()) {
            throw new CannotComputeException(design.name() + ": the linkage reaches none of the tilts asked for");
        }
        return new Forces(configurations, new Balancer(design, linkage, Mechanism.of(linkage.skeleton()), wind));
    }

    /** How many tilts are reached. */
    public int count() {
        return configurations.size();
    }

    /** Tilt, rad. */
    public double tilt(int i) {
        return configurations.get(i).tilt();
    }

    /** Length of the actuators, m. */
    public double length(int i) {
        return configurations.get(i).length();
    }

    /** dL/dtilt, m per rad. */
    public double arm(int i) {
        return configurations.get(i).arm();
    }

    /**
     * Force of all actuators, N; positive pushes; NaN when friction locks the linkage.
     *
     * @param mass kg
     * @param centroid in the tank's axes as stowed, m
     * @param sense +1 while tipping, -1 on the way back, 0 at rest without friction
     */
    public double force(int i, double mass, Vec3 centroid, int sense) {
        Balance balance = at(i) ? balancer.balance(mass, centroid, sense) : null;
        return balance == null ? Double.NaN : balance.force();
    }

    /**
     * Force of the tank on each bearing at rest without friction, N [bearing]; empty when the linkage has no balance there.
     *
     * @param mass kg
     * @param centroid in the tank's axes as stowed, m
     */
    public List<Vec3> bearings(int i, double mass, Vec3 centroid) {
        Balance balance = at(i) ? balancer.balance(mass, centroid, 0) : null;
        return balance == null ? List.of() : balance.bearings();
    }

    private boolean at(int i) {
        if (standing != i) {
            balanced = balancer.moveTo(configurations.get(i));
            standing = i;
        }
        return balanced;
    }
}
