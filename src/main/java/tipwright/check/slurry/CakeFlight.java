// SPDX-License-Identifier: Apache-2.0
package tipwright.check.slurry;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Row;
import tipwright.design.Design;
import tipwright.design.tank.Opening;
import tipwright.geometry.Plane;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * A stuck cake that lets go as one block, slides down the floor and flies on from the lip. Its head leaves from rest; its tail has slid
 * all along the tank, its top leaves from as high over the lip as the cake lies there. The floor lies as the tank's own x axis.
 *
 * @param before the last row while it still sticks
 * @param row at the tilt where it lets go
 * @param length of the way of its tail to the lip, m
 */
record CakeFlight(Design design, Opening opening, Row before, Row row, double length) {
    private static final Vec3 ALONG = new Vec3(1, 0, 0);
    private static final Vec3 HIGH = new Vec3(0, 1, 0);
    private static final double NEARLY = 1e-9;

    /** Out of an opening; null when no cake lets go, or not through this opening. */
    static @Nullable CakeFlight of(Analysis analysis, Opening opening) {
        Design design = analysis.design();
        double release = design.slurry().release();
        List<Row> rows = analysis.cases().stream()
                .filter(c -> c.name().equals("caked"))
                .findFirst()
                .map(CaseResult::rows)
                .orElse(List.of());
        if (!(opening.opensAt() <= release + NEARLY) || opening.outward().dot(ALONG) < -NEARLY) {
            return null;
        }
        for (int i = 1; i < rows.size(); i++) {
            if (rows.get(i).tilt() >= release - NEARLY && rows.get(i - 1).tilt() < release - NEARLY) {
                Solid solid = analysis.vessel().solid();
                Vec3 up = design.site().up().tilted(-rows.get(i).tilt());
                double length =
                        ALONG.dot(opening.lipPoint(up)) - solid.extent(ALONG).low();
                return length > 0 ? new CakeFlight(design, opening, rows.get(i - 1), rows.get(i), length) : null;
            }
        }
        return null;
    }

    void offer(LandingSpot spot) {
        double turn = row.pose().bodies().get(row.pose().tank()).turn();
        Vec3 up = design.site().up().tilted(-turn);
        double slope = Math.asin(Math.max(-1, Math.min(1, -up.dot(ALONG))));
        double fastest = Stream.sliding(length, slope, design.slurry().wallFriction());
        Vec3 lip = opening.lipPoint(up);
        Vec3 top = lip.plus(HIGH.times(over(lip)));
        Vec2 way = ALONG.tilted(turn).xy();
        for (Vec3 from : List.of(lip, top)) {
            spot.offer(row.tilt(), row.pose().place(from), way.times(fastest), fastest, "caked", null);
        }
    }

    /** Height of the settled cake over the lip, no higher than the opening, m. */
    private double over(Vec3 lip) {
        if (before.load().fill() == null) {
            return 0;
        }
        Plane surface = before.load().fill().surface();
        double high = opening.rimPoints().stream().mapToDouble(HIGH::dot).max().orElse(HIGH.dot(lip));
        double steep = surface.normal().dot(HIGH);
        double cake = steep > 0 ? (surface.level() - surface.normal().dot(lip)) / steep : 0;
        return Math.max(0, Math.min(cake, high - HIGH.dot(lip)));
    }
}
