// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.joint.FilletWeld;
import tipwright.geometry.Vec3;

/**
 * Fillet welds of one plane as lines. Direct force, torsion and bending add as vectors at the ends of the seams, where they are
 * largest. Source: line method (Shigley, Mechanical Engineering Design, tables 9-1 and 9-2; O. Blodgett, Design of Welded
 * Structures, from memory); allowed 0.30 of the electrode's strength on a throat of 0.707 of the leg (AISC ASD, AWS D1.1).
 */
public final class WeldGroup {
    /** Throat of a fillet over its leg. */
    public static final double THROAT = 0.707;

    private static final double ALLOWED = 0.30;

    private final FilletWeld weld;
    private final ElasticGroup spread;
    private final List<ElasticGroup.Spot> ends;

    /** The group as drawn. */
    public WeldGroup(FilletWeld weld) {
        this.weld = weld;
        PlaneAxes axes = PlaneAxes.of(weld.normal());
        List<ElasticGroup.Piece> pieces = new ArrayList<>();
        List<Vec3> places = new ArrayList<>();
        for (FilletWeld.Seam seam : weld.seams()) {
            Vec3 from = axes.at(seam.from());
            Vec3 to = axes.at(seam.to());
            Vec3 half = to.minus(from).times(0.5);
            pieces.add(new ElasticGroup.Piece(from.plus(half), 2 * half.norm(), half));
            places.add(from);
            places.add(to);
        }
        spread = new ElasticGroup(axes, pieces);
        ends = places.stream().map(spread::spot).toList();
    }

    /** Length of all seams, m. */
    public double length() {
        return spread.size();
    }

    /** Second moment about the axis u through the centroid, m3. */
    public double aboutU() {
        return spread.aboutU();
    }

    /** Polar second moment about the centroid, m3. */
    public double polar() {
        return spread.polar();
    }

    /**
     * The largest force on the weld, N per m of seam.
     *
     * @param force on what is welded on, N, in the axes that the group is drawn in
     * @param at where it acts, m
     * @return infinite where a single seam would have to bend about itself
     */
    public double most(Vec3 force, Vec3 at) {
        ElasticGroup.Under load = under(force, at);
        double most = 0;
        for (ElasticGroup.Spot end : ends) {
            most = Math.max(most, load.all(end));
        }
        return most;
    }

    private ElasticGroup.Under under(Vec3 force, Vec3 at) {
        return spread.under(force, at.minus(weld.at().plus(spread.centroid())).cross(force));
    }

    /** How many ends of seams there are. */
    public int ends() {
        return ends.size();
    }

    /**
     * Force at each end of a seam, N per m of seam [end]; as {@link #most}.
     *
     * @param force on what is welded on, N, in the axes that the group is drawn in
     * @param at where it acts, m
     */
    public List<Vec3> along(Vec3 force, Vec3 at) {
        ElasticGroup.Under load = under(force, at);
        return ends.stream().map(load::at).toList();
    }

    /** What a seam of this leg and electrode may carry, N per m. */
    public static double allowed(double leg, double electrode) {
        return THROAT * leg * ALLOWED * electrode;
    }
}
