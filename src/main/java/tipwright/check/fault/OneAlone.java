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
 * A design with several actuators, of which one carries all, or more than its share: the forces in the side view stay as they are, the
 * actuators' force moves along z to that one, and the two bearings bear the moment. Source: statics of a rigid body.
 */
final class OneAlone {
    private static final List<String> PINS = List.of(Drive.FRAME_PIN, Drive.ROD_PIN, Drive.TANK_PIN);
    /** A bracket is half way between two actuators within this, m: then it bears each of them. */
    private static final double MIDDLE = 1e-9;

    private final List<Support> supports;
    private final List<PlacedActuator> actuators;
    private final PlacedActuator alone;
    private final int number;
    private final Excess excess;
    private final Borne borne;

    /** What one actuator carries beyond its share. */
    interface Excess {
        /**
         * That force, N.
         *
         * @param force of all actuators, N
         * @param share of the one in it
         */
        double of(Pose pose, double force, double share);
    }

    /** What the one actuator of a design carries in place of all. */
    private interface Borne {
        /**
         * That force, N.
         *
         * @param force of all actuators, N
         * @param share of the one in it
         * @param more than its share, N
         * @param lever from the others to the one, m
         */
        double of(Pose pose, double force, double share, double more, double lever);
    }

    private OneAlone(Design design, PlacedActuator one, Excess excess, Borne borne) {
        supports = design.pivot().bearings();
        actuators = design.drive().actuators();
        alone = one;
        number = (int) actuators.stream().takeWhile(a -> a.z() != one.z()).count();
        this.excess = excess;
        this.borne = borne;
    }

    static Analysis of(Analysis analysis, PlacedActuator one) {
        return with(analysis, one, (pose, force, share) -> (1 - share) * force);
    }

    /** One carries its share and something more, which the others carry less. */
    static Analysis with(Analysis analysis, PlacedActuator one, Excess excess) {
        OneAlone alone =
                new OneAlone(analysis.design(), one, excess, (pose, force, share, more, lever) -> share * force + more);
        return alone.at(analysis, one);
    }

    /** The same for what bears the twist alone, which the others put in too: what does so from 1 m beside the middle. */
    static Analysis twisted(Analysis analysis, PlacedActuator one, Excess excess) {
        Design design = analysis.design();
        double middle = design.pivot().middle();
        List<PlacedActuator> all = design.drive().actuators();
        Borne borne = (pose, force, share, more, lever) ->
                force * (Sharing.middle(all, pose.length(), force > 0) - middle) + more * lever;
        return new OneAlone(design, one, excess, borne).at(analysis, new PlacedActuator(middle + 1, one.actuator()));
    }

    private Analysis at(Analysis analysis, PlacedActuator place) {
        Design design = analysis.design();
        List<Fastening> held = design.fastenings().stream()
                .filter(f -> bears(design, f, alone))
                .toList();
        return analysis.with(analysis.cases().stream().map(this::load).toList())
                .of(design.withFastenings(held).withDrive(design.drive().with(List.of(place))));
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
        double force = b.force();
        double share = Sharing.shares(actuators, pose.length(), force > 0)[number];
        double others = 1 - share;
        double lever = others > 0 ? (alone.z() - Sharing.middle(actuators, pose.length(), force > 0)) / others : 0;
        double more = excess.of(pose, force, share);
        double span = supports.get(1).z() - supports.get(0).z();
        // the drive's force for 1 N of the actuators'
        double aside = force == 0 ? 0 : more / force * lever / span;
        List<Vec3> bearings = new ArrayList<>();
        for (int i = 0; i < supports.size(); i++) {
            Vec3 load = b.bearings().get(i);
            double part = i == 1 ? aside : -aside;
            bearings.add(new Vec3(
                    load.x() + part * b.drive().x(), load.y() + part * b.drive().y(), load.z()));
        }
        double own = borne.of(pose, force, share, more, lever);
        return new Balance(own, b.pivot(), bearings, b.drive(), b.joints(), b.couples());
    }
}
