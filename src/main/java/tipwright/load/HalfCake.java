// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.Design;
import tipwright.design.tank.Opening;
import tipwright.geometry.Filled;
import tipwright.geometry.Moments;
import tipwright.geometry.Plane;
import tipwright.geometry.Vec3;

/**
 * Cake that sticks along one side of the tank. The whole cake lies as it settled until it could slide; from there on the half
 * beyond the middle of its width stays stuck to the end, and the other half is gone. Source: common practice, no source: halves.
 */
final class HalfCake {
    private HalfCake() {}

    /** Tilt from which one half is gone, rad: something is open, and the cake lets go or is as steep as it can lie. */
    static double parts(Design design) {
        double open = Double.POSITIVE_INFINITY;
        for (Opening opening : design.tank().openings()) {
            open = Math.min(open, opening.opensAt());
        }
        double slides = Math.min(
                design.slurry().release(),
                design.tilt().from() + design.slurry().repose());
        return Math.max(open, slides);
    }

    /** Both cases, first the half at +z; none when no half ever goes. */
    static List<LoadCase> of(Design design, Weights weights, Bed bed, Filled settled, double[] tilts) {
        List<LoadCase> both = new ArrayList<>();
        double parts = parts(design);
        if (parts <= tilts[tilts.length - 1] + TiltGrid.SAME) {
            LoadState whole = weights.cake(settled.plane(), null, settled.moments());
            for (int side : new int[] {1, -1}) {
                // below the plane is what lies beyond the middle on the side in question
                Plane middle = Plane.through(settled.moments().centroid(), new Vec3(0, 0, -side));
                Moments half = bed.part(settled, middle);
                LoadState stuck = weights.cake(settled.plane(), middle, half);
                List<LoadState> states = new ArrayList<>(tilts.length);
                for (double tilt : tilts) {
                    states.add(tilt < parts - TiltGrid.SAME ? whole : stuck);
                }
                both.add(new LoadCase(
                        side > 0 ? "stuck-plus-z" : "stuck-minus-z", LoadCase.NEVER, states, whole.volume()));
            }
        }
        return both;
    }
}
