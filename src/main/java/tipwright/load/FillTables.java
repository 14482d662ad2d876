// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.List;
import tipwright.design.Design;
import tipwright.design.tank.Slurry;

/**
 * The load tables of one tank at the same tilts with one slurry after another in it: less of it, or denser. What does not depend on
 * the slurry is made once. What stays behind is that of the design as stated. A workspace.
 */
public final class FillTables {
    private final Design design;
    private final double[] tilts;
    private final Emptying emptying;
    private final Vessel vessel;

    /**
     * For a design.
     *
     * @param tilts rad, rising, at least one
     * @param emptying what stays behind of the design's own slurry
     * @param vessel its tank's
     */
    public FillTables(Design design, double[] tilts, Emptying emptying, Vessel vessel) {
        this.design = design;
        this.tilts = tilts.clone();
        this.emptying = emptying;
        this.vessel = vessel;
    }

    /** The load cases of a normal dump with this slurry. */
    public LoadTable of(Slurry slurry) {
        CaseMaker maker = new CaseMaker(design.withSlurry(slurry), vessel, tilts);
        List<LoadCase> cases = LoadTable.cases(maker, maker.normal(), maker.layers());
        return LoadTable.of(design, tilts, cases, emptying, List.of(), vessel);
    }
}
