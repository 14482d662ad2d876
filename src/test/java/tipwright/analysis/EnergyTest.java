// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tipwright.design.Design;
import tipwright.design.drive.TiltRange;
import tipwright.design.tank.Cases;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Gravity;

/** What must hold for every design, whatever its numbers: energy and balance. Source: conservation of energy, Newton's laws. */
class EnergyTest {
    /** Work of the actuator is the change of potential energy, within 0.05 % of the work done either way. */
    @Test
    void actuatorWorkIsTheRiseOfPotentialEnergyForAThousandDesigns() {
        RandomDesigns designs = new RandomDesigns(4711);
        int compared = 0;
        for (int i = 0; compared < 1000 && i < 4000; i++) {
            Design design = heldOnly(designs.next());
            Analysis analysis = analyse(design);
            if (analysis == null || analysis.poses().size() < 20 || slack(analysis)) {
                continue;
            }
            List<Row> rows = analysis.cases().get(0).rows();
            double work = 0;
            double gross = 0;
            for (int k = 2; k < rows.size(); k += 2) {
                double[] part = simpson(rows.get(k - 2), rows.get(k - 1), rows.get(k));
                work += part[0];
                gross += part[1];
            }
            Vec3 up = design.site().up();
            int last = (rows.size() - 1) / 2 * 2;
            double rise = energy(rows.get(last), up) - energy(rows.get(0), up);
            assertThat(Math.abs(work - rise)).as("design %d", i).isLessThan(5e-4 * gross);
            compared++;
        }
        assertThat(compared).isEqualTo(1000);
    }

    /** The two bearings together take the planar pivot force, and forces and moments on the tank vanish about both axes. */
    @Test
    void bearingLoadsBalanceTheTankInSpace() {
        RandomDesigns designs = new RandomDesigns(99);
        for (int i = 0; i < 100; i++) {
            Design design = designs.next();
            Analysis analysis = analyse(design);
            if (analysis == null) {
                continue;
            }
            for (CaseResult result : analysis.cases()) {
                for (Row row : List.of(
                        result.rows().get(0), result.rows().get(result.rows().size() - 1))) {
                    for (Balance b : List.of(row.rest(), row.raise(), row.lower())) {
                        assertBalanced(design, row, b);
                    }
                }
            }
        }
    }

    private static void assertBalanced(Design design, Row row, Balance b) {
        Vec3 weight = design.site().up().times(-row.load().mass() * Gravity.G);
        double scale = 1e-9 * (weight.norm() + Math.abs(b.force()));
        Vec3 sum = weight;
        Vec2 pivot = design.pivot().at();
        Vec3 axis = new Vec3(pivot.x(), pivot.y(), 0);
        Vec3 moment = row.centroid().minus(axis).cross(weight);
        for (int k = 0; k < 2; k++) {
            Vec3 onTank = b.bearings().get(k).times(-1);
            Vec3 at = new Vec3(0, 0, design.pivot().bearings().get(k).z());
            sum = sum.plus(onTank);
            moment = moment.plus(at.cross(onTank));
        }
        // What is missing to balance is the drive: it has no part along z and acts at the actuators' mean z.
        double z = design.drive().actuators().stream()
                .mapToDouble(a -> a.z())
                .average()
                .orElseThrow();
        Vec3 push = sum.times(-1);
        assertThat(Math.abs(push.z())).isLessThan(scale);
        Vec3 pin = new Vec3(row.pose().tankPin().x(), row.pose().tankPin().y(), z);
        Vec3 left = moment.plus(pin.minus(axis).cross(push));
        assertThat(Math.abs(left.x())).isLessThan(3 * scale);
        assertThat(Math.abs(left.y())).isLessThan(3 * scale);
        assertThat(b.bearings()
                        .get(0)
                        .xy()
                        .plus(b.bearings().get(1).xy())
                        .minus(b.pivot())
                        .norm())
                .isLessThan(scale);
    }

    /** Friction never helps: raising takes at least the force at rest against the motion, lowering gives back at most that. */
    @Test
    void frictionAlwaysCostsWork() {
        RandomDesigns designs = new RandomDesigns(5);
        for (int i = 0; i < 100; i++) {
            Analysis analysis = analyse(designs.next());
            if (analysis == null) {
                continue;
            }
            for (CaseResult result : analysis.cases()) {
                for (Row row : result.rows()) {
                    double arm = row.pose().arm();
                    double tiny = 1e-9 * Math.abs(row.rest().force() * arm);
                    assertThat(row.raise().force() * arm)
                            .isGreaterThanOrEqualTo(row.rest().force() * arm - tiny);
                    assertThat(row.lower().force() * arm)
                            .isLessThanOrEqualTo(row.rest().force() * arm + tiny);
                }
            }
        }
    }

    private static Design heldOnly(Design d) {
        Design quick = d.withTilt(new TiltRange(0, d.tilt().to(), Math.toRadians(0.5)));
        return quick.withCases(new Cases(List.of("draining", "heaped", "caked", "empty", "heel"), List.of()));
    }

    private static @Nullable Analysis analyse(Design design) {
        try {
            return Analyser.analyse(design);
        } catch (CannotComputeException e) {
            assertThat(e.getMessage()).isNotBlank();
            return null;
        }
    }

    /** Near a dead centre the force runs away and no quadrature follows it. */
    private static boolean slack(Analysis analysis) {
        return analysis.poses().stream().anyMatch(p -> p.transmission() < Math.toRadians(6));
    }

    /** Work over two steps by Simpson's rule in tilt, net and gross. */
    private static double[] simpson(Row a, Row b, Row c) {
        double first = b.tilt() - a.tilt();
        double second = c.tilt() - b.tilt();
        if (Math.abs(first - second) > 1e-9) {
            double net = first / 2 * (power(a) + power(b)) + second / 2 * (power(b) + power(c));
            return new double[] {net, Math.abs(net)};
        }
        double net = first / 3 * (power(a) + 4 * power(b) + power(c));
        return new double[] {net, first / 3 * (Math.abs(power(a)) + 4 * Math.abs(power(b)) + Math.abs(power(c)))};
    }

    private static double power(Row row) {
        return row.rest().force() * row.pose().arm();
    }

    private static double energy(Row row, Vec3 up) {
        return row.load().mass() * Gravity.G * up.dot(row.centroid());
    }
}
