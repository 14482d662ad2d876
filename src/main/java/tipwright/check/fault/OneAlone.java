// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Sharing;
import tipwright.design.drive.Drive;
import tipwright.design.joint.Bolts;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.FilletWeld;
import tipwright.design.joint.Support;
import tipwright.geometry.Vec3;

/**
 * A design with several actuators, of which one carries all: the forces in the side view stay as they are, the actuators' force moves
 * along z to that one, and the two bearings bear the moment. Source: statics of a rigid body.
 */
final class OneAlone {
    private static final List<String> PINS = List.of(Drive.FRAME_PIN, Drive.ROD_PIN, Drive.TANK_PIN);
    /** A bracket is half way between two actuators within this, m: then it bears each of them. */
    private static final double MIDDLE = 1e-9;

    private final List<Support> supports;
    private final List<PlacedActuator> actuators;
    private final PlacedActuator alone;

    private OneAlone(Design design, PlacedActuator one) {
        supports = design.pivot().bearings();
        actuators = design.drive().actuators();
        alone = one;
    }

    static Analysis of(Analysis analysis, PlacedActuator one) {
        Design design = analysis.design();
        OneAlone alone = new OneAlone(design, one);
        List<Fastening> held =
                design.fastenings().stream().filter(f -> bears(design, f, one)).toList();
        return analysis.with(analysis.cases().stream().map(alone::load).toList())
                .of(design.withFastenings(held).withDrive(design.drive().with(List.of(one))));
    }

    /** Whether a fastening holds the pins of this actuator, or none of an actuator's. */
    private static boolean bears(Design design, Fastening fastening, PlacedActuator one) {
        FilletWeld weld = fastening.weld();
        Bolts bolts = fastening.bolts();
        if (!PINS.contains(fastening.joint()) || (weld == null && bolts == null)) {
            return true;
        }
        double z = weld != null
                ? weld.at().z()
                : Objects.requireNonNull(bolts).at().z();
        double off = Math.abs(one.z() - z) - MIDDLE;
        return design.drive().actuators().stream().noneMatch(a -> Math.abs(a.z() - z) < off);
    }

    private CaseResult load(CaseResult result) {
        return new CaseResult(
                result.load(), result.rows().stream().map(this::row).toList());
    }

    private Row row(Row row) {
        return new Row(
                row.pose(),
                row.load(),
                row.centroid(),
                balance(row.pose(), row.rest()),
                balance(row.pose(), row.raise()),
                balance(row.pose(), row.lower()));
    }

    private Balance balance(Pose pose, Balance b) {
        double span = supports.get(1).z() - supports.get(0).z();
        double aside = (alone.z() - Sharing.middle(actuators, pose.length(), b.force() > 0)) / span;
        List<Vec3> bearings = new ArrayList<>();
        for (int i = 0; i < supports.size(); i++) {
            Vec3 load = b.bearings().get(i);
            double share = i == 1 ? aside : -aside;
            bearings.add(new Vec3(
                    load.x() + share * b.drive().x(),
                    load.y() + share * b.drive().y(),
                    load.z()));
        }
        return new Balance(b.force(), b.pivot(), bearings, b.drive(), b.joints(), b.couples());
    }
}
