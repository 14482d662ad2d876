// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.List;
import java.util.function.ToDoubleFunction;
import tipwright.analysis.Balance;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Row;

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

    private static double rest(Balance balance) {
        return balance.force();
    }

    private static double[] values(List<Row> rows, ToDoubleFunction<Row> value) {
        return rows.stream().mapToDouble(value).toArray();
    }

    @Override
    public Standing at(double tilt, double volume) {
        return new Standing(grid.linear(force, tilt), grid.linear(rest, tilt), grid.linear(volumes, tilt), 0, 0);
    }

    @Override
    public double excess(double tilt, double volume) {
        return 0;
    }

    @Override
    public double slide(double tilt) {
        int i = grid.before(tilt);
        return Math.max(0, volumes[i] - volumes[i + 1]) / (grid.tilt(i + 1) - grid.tilt(i));
    }

    @Override
    public void runDry() {
        // what follows the tilt alone ends by itself
    }
}
