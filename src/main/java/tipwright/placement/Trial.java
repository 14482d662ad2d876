// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.drive.Straight;
import tipwright.design.tank.Slurry;

/** Tries a design with its mounts a little off, or with another load. */
sealed interface Trial permits StraightTrial, AnyTrial {
    /** The coordinates that can be off, in words. */
    List<String> places();

    /**
     * Utilisations of all limits [limit]; not to be kept.
     *
     * @param off by how much each coordinate is off, m, as in {@link #places()}
     */
    double[] at(double... off);

    /** Utilisations with another slurry [limit]. */
    double[] with(Slurry slurry) throws CannotComputeException;

    /**
     * Utilisations with more of the empty tank [limit]; null when that cannot be told apart.
     *
     * @param share of its weight that is added
     */
    double @Nullable [] heavier(double share);

    /** The quickest way to try a design. */
    static Trial of(Design design) throws CannotComputeException {
        return design.drive() instanceof Straight straight ? new StraightTrial(design, straight) : new AnyTrial(design);
    }
}
