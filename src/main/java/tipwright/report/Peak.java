// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Balance;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Row;
import tipwright.geometry.Vec3;

/**
 * The largest of something, and where.
 *
 * @param value SI
 * @param loadCase name of the case
 * @param tilt rad
 * @param motion at which it happens: 'raising', 'lowering', 'at rest'
 */
public record Peak(double value, String loadCase, double tilt, String motion) {
    /** Force of the actuators that is furthest to one side, friction included; null when none goes to that side. */
    public static @Nullable Peak force(List<CaseResult> cases, Tilts tilts, boolean push) {
        Peak[] best = new Peak[1];
        each(cases, tilts, (name, row, balance, motion) -> {
            double force = push ? balance.force() : -balance.force();
            if (force > 0 && (best[0] == null || force > best[0].value)) {
                best[0] = new Peak(force, name, row.tilt(), motion);
            }
        });
        return best[0];
    }

    /** A bearing's largest load; null when there are no rows. */
    public static @Nullable OnBearing bearing(List<CaseResult> cases, Tilts tilts, int from, int to) {
        OnBearing[] best = new OnBearing[1];
        each(cases, tilts, (name, row, balance, motion) -> {
            for (int b = from; b < to; b++) {
                Vec3 load = balance.bearings().get(b);
                if (best[0] == null || load.norm() > best[0].peak.value) {
                    best[0] = new OnBearing(b, load, new Peak(load.norm(), name, row.tilt(), motion));
                }
            }
        });
        return best[0];
    }

    private static void each(List<CaseResult> cases, Tilts tilts, Visitor visitor) {
        for (CaseResult c : cases) {
            for (int i = tilts.from; i < Math.min(tilts.to, c.rows().size()); i++) {
                Row row = c.rows().get(i);
                visitor.see(c.name(), row, row.rest(), "at rest");
                visitor.see(c.name(), row, row.raise(), "raising");
                visitor.see(c.name(), row, row.lower(), "lowering");
            }
        }
    }

    private interface Visitor {
        void see(String loadCase, Row row, Balance balance, String motion);
    }

    /** Which tilts to look at, by number: from, up to but without to. */
    public record Tilts(int from, int to) {
        public static final Tilts ALL = new Tilts(0, Integer.MAX_VALUE);

        /** One tilt. */
        public static Tilts only(int i) {
            return new Tilts(i, i + 1);
        }
    }

    /**
     * Where a bearing's load is largest.
     *
     * @param bearing its number, from 0
     * @param load of the tank on the bearing, N
     */
    public record OnBearing(int bearing, Vec3 load, Peak peak) {}
}
