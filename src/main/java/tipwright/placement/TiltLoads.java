// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.JointFriction;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.drive.Straight;
import tipwright.design.joint.Friction;
import tipwright.geometry.Vec2;

/**
 * What the tank asks of any straight drive, at every tilt: it does not depend on where the actuator's pins are.
 *
 * <p>The forces are read off the general analysis of the same tank on a very long drive without friction, which has a good arm at
 * every tilt: moment = force times arm, and the load of a bearing less its share of the actuator's force is what the weight alone
 * puts on it. All are affine in the place of the pivot.
 *
 * @param pivot where the pivot is, m
 * @param tilts rad [tilt]
 * @param names of the load cases [case]
 * @param loads [case][tilt][way: 0 rest, 1 raise, 2 lower][moment N m against tipping; G1x G1y G2x G2y, load of bearings 1 and
 *     2 without the actuator, N]
 * @param axial largest load along the pivot of bearings 1 and 2 in any case, N
 * @param share of the actuator's force that goes to bearings 1 and 2
 * @param radius friction radius of bearings 1 and 2, m
 */
@SuppressWarnings("ArrayRecordComponent")
record TiltLoads(
        Vec2 pivot,
        double[] tilts,
        List<String> names,
        double[][][][] loads,
        double[] axial,
        double[] share,
        double[] radius) {
    /** Numbers for one case, tilt and way. */
    static final int FIGURES = 5;

    private static final double ARM = 0.3;
    private static final double FAR = 100;

    /**
     * The loads of a design's tank.
     *
     * @throws CannotComputeException when the tank cannot be computed over the whole tilt
     */
    static TiltLoads of(Design design) throws CannotComputeException {
        Straight straight = straight(design);
        Vec2 pivot = design.pivot().at();
        double middle = 0.5 * (design.tilt().from() + design.tilt().to());
        Straight far =
                straight.movedTo(pivot.plus(new Vec2(-ARM, -FAR)), pivot.plus(new Vec2(-ARM, 0).tilted(-middle)));
        Actuator any = straight.actuators().get(0).actuator();
        Analysis analysis =
                Analyser.analyse(design.withFriction(new Friction(0.0, 0)).withDrive(far.with(any)));
        if (analysis.stop() != null) {
            throw new CannotComputeException(design.name() + ": placing works for tilt ranges of less than 175 deg");
        }
        double[] tilts = analysis.poses().stream().mapToDouble(Pose::tilt).toArray();
        double[] share = shares(design, straight);
        List<String> names = new ArrayList<>();
        double[][][][] loads = new double[analysis.cases().size()][][][];
        double[] axial = new double[2];
        for (int c = 0; c < loads.length; c++) {
            CaseResult result = analysis.cases().get(c);
            names.add(result.name());
            loads[c] = new double[result.rows().size()][][];
            for (int i = 0; i < loads[c].length; i++) {
                Row row = result.rows().get(i);
                loads[c][i] = new double[][] {
                    figures(row, row.rest(), share), figures(row, row.raise(), share), figures(row, row.lower(), share)
                };
                for (int k = 0; k < 2; k++) {
                    axial[k] = Math.max(
                            axial[k], Math.abs(row.rest().bearings().get(k).z()));
                }
            }
        }
        double[] radius = design.pivot().bearings().stream()
                .mapToDouble(s -> JointFriction.bearingRadius(design, s))
                .toArray();
        return new TiltLoads(pivot, tilts, List.copyOf(names), loads, axial, share, radius);
    }

    /** The design's drive, when it is one that can be placed. */
    static Straight straight(Design design) throws CannotComputeException {
        if (design.drive() instanceof Straight straight) {
            return straight;
        }
        throw new CannotComputeException(design.name()
                + ": the map that follows a drag is for a straight drive only; this design has another one");
    }

    private static double[] shares(Design design, Straight straight) {
        double z = straight.actuators().stream()
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

    /** Friction radii of the pins at frame and tank with an actuator, m. */
    static double[] pinRadii(Design design, Actuator actuator) {
        return new double[] {
            JointFriction.pinRadius(design, design.drive().framePinJoint(), actuator),
            JointFriction.pinRadius(design, design.drive().tankPinJoint(), actuator)
        };
    }

    /** This plus factor times (that minus the base): the affine step from one pivot to another. */
    TiltLoads towards(Vec2 place, TiltLoads alongX, TiltLoads alongY, double stepX, double stepY) {
        double[][][][] moved = new double[loads.length][tilts.length][3][FIGURES];
        for (int c = 0; c < loads.length; c++) {
            for (int i = 0; i < tilts.length; i++) {
                for (int way = 0; way < 3; way++) {
                    for (int f = 0; f < FIGURES; f++) {
                        double base = loads[c][i][way][f];
                        moved[c][i][way][f] = base
                                + stepX * (alongX.loads[c][i][way][f] - base)
                                + stepY * (alongY.loads[c][i][way][f] - base);
                    }
                }
            }
        }
        return new TiltLoads(place, tilts, names, moved, axial, share, radius);
    }

    /** This plus a share of one case's loads in every case. */
    TiltLoads plus(int added, double part) {
        double[][][][] more = new double[loads.length][tilts.length][3][FIGURES];
        for (int c = 0; c < loads.length; c++) {
            for (int i = 0; i < tilts.length; i++) {
                for (int way = 0; way < 3; way++) {
                    for (int f = 0; f < FIGURES; f++) {
                        more[c][i][way][f] = loads[c][i][way][f] + part * loads[added][i][way][f];
                    }
                }
            }
        }
        return new TiltLoads(pivot, tilts, names, more, axial, share, radius);
    }
}
