// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.Design;
import tipwright.geometry.Vec3;
import tipwright.linkage.Linkage;
import tipwright.linkage.Posture;

/** The linkage at chosen tilts, to balance any load on it. */
public final class Forces {
    private final List<Posture> postures;
    private final List<Balancer> balancers;

    private Forces(List<Posture> postures, List<Balancer> balancers) {
        this.postures = postures;
        this.balancers = balancers;
    }

    /**
     * The linkage of a design at these tilts, or at those of them that it reaches.
     *
     * @param tilts rad, rising
     * @throws CannotComputeException when the linkage cannot be assembled
     */
    public static Forces of(Design design, double[] tilts) throws CannotComputeException {
        Linkage linkage = Analyser.linkage(design);
        List<Posture> postures = linkage.sweep(tilts).postures();
        if (postures.isEmpty()) {
            throw new CannotComputeException(design.name() + ": the linkage reaches none of the tilts asked for");
        }
        List<Balancer> balancers = new ArrayList<>(postures.size());
        Balancer balancer = new Balancer(design, linkage, postures.get(0));
        for (Posture posture : postures) {
            balancer = balancer.at(linkage, posture);
            balancers.add(balancer);
        }
        return new Forces(postures, balancers);
    }

    /** How many tilts are reached. */
    public int count() {
        return postures.size();
    }

    /** Tilt, rad. */
    public double tilt(int i) {
        return postures.get(i).tilt();
    }

    /** Length of the actuators, m. */
    public double length(int i) {
        return postures.get(i).length();
    }

    /** dL/dtilt, m per rad. */
    public double arm(int i) {
        return postures.get(i).arm();
    }

    /**
     * Force of all actuators, N; positive pushes; NaN when friction locks the linkage.
     *
     * @param mass kg
     * @param centroid in the tank's axes as stowed, m
     * @param sense +1 while tipping, -1 on the way back, 0 at rest without friction
     */
    public double force(int i, double mass, Vec3 centroid, int sense) {
        Balance balance = balancers.get(i).balance(mass, centroid, sense);
        return balance == null ? Double.NaN : balance.force();
    }
}
