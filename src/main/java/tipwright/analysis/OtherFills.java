// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.design.tank.Slurry;
import tipwright.linkage.Configuration;
import tipwright.linkage.Linkage;
import tipwright.linkage.Motion;
import tipwright.linkage.SweepStop;
import tipwright.load.Emptying;
import tipwright.load.FillTables;
import tipwright.load.TiltGrid;
import tipwright.load.Vessel;

/** A machine with one slurry after another in its tank: the linkage is gone through once. A workspace. */
public final class OtherFills {
    private final Design design;
    private final Linkage linkage;
    private final Mechanism mechanism;
    private final List<Configuration> configurations;
    private final @Nullable SweepStop sweepStop;
    private final FillTables tables;

    private OtherFills(Design design, Linkage linkage, Motion motion, Emptying emptying, Vessel vessel) {
        this.design = design;
        this.linkage = linkage;
        this.mechanism = Mechanism.of(linkage.skeleton());
        this.configurations = motion.configurations();
        this.sweepStop = motion.stop();
        this.tables = new FillTables(
                design, configurations.stream().mapToDouble(Configuration::tilt).toArray(), emptying, vessel);
    }

    /**
     * At the tilts of a design, with both sides of all that changes at once.
     *
     * @param emptying what stays behind of the design's own slurry
     * @param vessel its tank's
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn
     */
    public static OtherFills of(Design design, Emptying emptying, Vessel vessel) throws CannotComputeException {
        Linkage linkage = Analyser.linkage(design);
        double[] grid = TiltGrid.of(design);
        Motion motion = linkage.sweep(grid);
        double[] changes = Changes.of(design, linkage, motion.configurations());
        motion = changes.length == 0 ? motion : linkage.sweep(Changes.with(grid, changes));
        if (motion.configurations().isEmpty()) {
            throw new CannotComputeException(design.name() + ": " + Stops.atTheStart(motion.stop()));
        }
        return new OtherFills(design, linkage, motion, emptying, vessel);
    }

    /**
     * The machine with this slurry.
     *
     * @throws CannotComputeException when friction locks the linkage
     */
    public Analysis with(Slurry slurry) throws CannotComputeException {
        return Analyser.balance(
                design.withSlurry(slurry), linkage, mechanism, configurations, tables.of(slurry), sweepStop, null);
    }
}
