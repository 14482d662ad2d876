// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.ClosedFormAnalyser;
import tipwright.analysis.FrictionRadii;
import tipwright.analysis.Row;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.joint.Friction;
import tipwright.geometry.Vec2;
import tipwright.linkage.Strut;
import tipwright.load.LoadTable;

/**
 * What the tank asks of any straight drive, at every tilt: it does not depend on where the actuator's pins are.
 *
 * <p>The forces are read off the analysis of the same tank on a very long drive without friction, which has a good arm at every tilt:
 * moment = force times arm, and the load of a bearing less its share of the actuator's force is what the weight alone puts on it.
 *
 * @param pivot where the pivot is, m
 * @param tilts rad [tilt]
 * @param loads [case][tilt][way: 0 rest, 1 raise, 2 lower][moment N m against tipping; G1x G1y G2x G2y, load of bearings 1 and
 *     2 without the actuator, N]
 * @param share of the actuator's force that goes to bearings 1 and 2
 * @param radius friction radius of bearings 1 and 2 while tipping, m
 */
@SuppressWarnings("ArrayRecordComponent")
record TiltLoads(Vec2 pivot, double[] tilts, double[][][][] loads, double[] share, double[] radius) {
    /** Numbers for one case, tilt and way. */
    static final int FIGURES = 5;

    private static final double ARM = 0.3;
    private static final double FAR = 100;

    /**
     * The loads of a design's tank, its drive being of a closed form.
     *
     * @param table of the tank at the design's tilts
     * @throws CannotComputeException when the tank cannot be computed over the whole tilt
     */
    static TiltLoads of(Design design, LoadTable table) throws CannotComputeException {
        Vec2 pivot = design.pivot().at();
        Strut strut = design.drive().skeleton(pivot).actuator();
        double middle = 0.5 * (design.tilt().from() + design.tilt().to());
        Vec2 frame = pivot.plus(new Vec2(-ARM, -FAR));
        Vec2 tank = pivot.plus(new Vec2(-ARM, 0).tilted(-middle));
        Analysis analysis = ClosedFormAnalyser.analyse(
                design.withFriction(new Friction(0.0, 0))
                        .withDrive(design.drive()
                                .moved(p -> p.equals(strut.onA()) ? frame : p.equals(strut.onB()) ? tank : p)
                                .with(design.drive().actuators().get(0).actuator())),
                table);
        if (analysis.stop() != null) {
            throw new CannotComputeException(design.name() + ": placing works for tilt ranges of less than 175 deg");
        }
        double[] share = shares(design);
        double[][][][] loads = new double[analysis.cases().size()][][][];
        for (int c = 0; c < loads.length; c++) {
            loads[c] = new double[analysis.poses().size()][][];
            for (int i = 0; i < loads[c].length; i++) {
                Row row = analysis.cases().get(c).rows().get(i);
                loads[c][i] = new double[][] {
                    figures(row, row.rest(), share), figures(row, row.raise(), share), figures(row, row.lower(), share)
                };
            }
        }
        FrictionRadii radii = FrictionRadii.of(design);
        return new TiltLoads(pivot, table.tilts(), loads, share, new double[] {
            FrictionRadii.braking(radii.bearing(0), 1), FrictionRadii.braking(radii.bearing(1), 1)
        });
    }

    /** Shares of the actuator's force that go to bearings 1 and 2. */
    static double[] shares(Design design) {
        double z = design.drive().actuators().stream()
                .mapToDouble(PlacedActuator::z)
                .average()
                .orElse(0);
        double z1 = design.pivot().bearings().get(0).z();
        double z2 = design.pivot().bearings().get(1).z();
        return new double[] {(z2 - z) / (z2 - z1), (z - z1) / (z2 - z1)};
    }

    private static double[] figures(Row row, Balance balance, double[] share) {
        Vec2 push = row.pose().tankPin().minus(row.pose().framePin()).unit().times(balance.force());
        Vec2 one = balance.bearings().get(0).xy().minus(push.times(share[0]));
        Vec2 two = balance.bearings().get(1).xy().minus(push.times(share[1]));
        return new double[] {balance.force() * row.pose().arm(), one.x(), one.y(), two.x(), two.y()};
    }
}
