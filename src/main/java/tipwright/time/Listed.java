// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import tipwright.analysis.Balance;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Row;
import tipwright.load.LoadState;
import tipwright.load.TiltGrid;

/**
 * A load that follows the tilt alone, as listed; straight between the tilts of the list.
 *
 * @param force in slow motion [tilt], N
 * @param rest at rest [tilt], N
 * @param volumes [tilt], m3
 */
@SuppressWarnings("ArrayRecordComponent") // a table for one run, never compared
record Listed(Grid grid, double[] force, double[] rest, double[] volumes) implements Load {
    /**
     * A load case of the analysis.
     *
     * @param moving its balance while it moves the way in question
     */
    static Listed of(CaseResult result, ToDoubleFunction<Row> moving) {
        List<Row> rows = result.rows();
        return new Listed(
                new Grid(values(rows, Row::tilt)),
                values(rows, moving),
                values(rows, r -> rest(r.rest())),
                values(rows, r -> r.load().volume()));
    }

    /**
     * A load of which nothing leaves on the way back.
     *
     * @param at the load at a tilt, rad
     */
    static Listed back(LinkageCurve mechanism, DoubleFunction<LoadState> at) {
        Grid grid = mechanism.grid();
        double[] force = new double[grid.size()];
        double[] rest = new double[grid.size()];
        double[] volumes = new double[grid.size()];
        for (int i = 0; i < grid.size(); i++) {
            LoadState state = at.apply(grid.tilt(i));
            rest[i] = mechanism.forces().force(i, state.mass(), state.centroid(), 0);
            double moving = mechanism.forces().force(i, state.mass(), state.centroid(), -1);
            force[i] = Double.isFinite(moving) ? moving : rest[i];
            volumes[i] = state.volume();
        }
        return new Listed(grid, force, rest, volumes);
    }

    private static double rest(Balance balance) {
        return balance.force();
    }

    private static double[] values(List<Row> rows, ToDoubleFunction<Row> value) {
        return rows.stream().mapToDouble(value).toArray();
    }

    @Override
    public Standing at(double tilt, double volume) {
        return new Standing(
                grid.linear(force, tilt), grid.linear(rest, tilt), grid.linear(volumes, tilt), 0, 0, Double.NaN);
    }

    @Override
    public double excess(double tilt, double volume) {
        return 0;
    }

    /** What goes at once at one tilt is spread over the step that ends there: how fast it really goes is not known. */
    @Override
    public double slide(double tilt) {
        int i = grid.before(tilt);
        int j = i + 1;
        if (i > 0 && TiltGrid.sides(grid.tilt(i), grid.tilt(j))) {
            i--;
        } else if (j + 1 < grid.size() && TiltGrid.sides(grid.tilt(j), grid.tilt(j + 1))) {
            j++;
        }
        return Math.max(0, volumes[i] - volumes[j]) / (grid.tilt(j) - grid.tilt(i));
    }

    @Override
    public void runDry() {
        // what follows the tilt alone ends by itself
    }
}
