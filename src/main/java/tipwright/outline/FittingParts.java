// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.JointPlan;
import tipwright.analysis.Mechanism;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.around.CrossMember;
import tipwright.design.around.Frame;
import tipwright.design.around.KeepOut;
import tipwright.design.around.Mounts;
import tipwright.design.around.Receiver;
import tipwright.design.around.Zone;
import tipwright.design.drive.Drive;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.Lug;
import tipwright.design.joint.PinJoint;
import tipwright.design.joint.Shaft;
import tipwright.design.joint.Support;
import tipwright.design.key.NameId;
import tipwright.design.tank.Opening;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.MachinePart.Basis;

/** Openings, shaft, bearings, pins, lugs, cross member, receiver and the limits of the mounts. */
final class FittingParts {
    /** Radius of a pin that the design does not give, m. */
    private static final double PIN = 0.006;

    private static final double LEAST_HOUSING = 0.03;
    private static final double HOUSING_OVER_BORE = 0.95;
    private static final double HALF_HOUSING = 0.022;
    private static final double BASE = 0.06;
    private static final int ROUND = 24;

    private final Design design;
    private final Mechanism mechanism;
    private final Vec2 framePin;
    private final Vec2 tankPin;
    private final List<MachinePart> all = new ArrayList<>();

    private FittingParts(Analysis analysis) {
        design = analysis.design();
        mechanism = analysis.mechanism();
        var strut = design.drive().skeleton(design.pivot().at()).actuator();
        framePin = strut.onA();
        tankPin = strut.onB();
    }

    static List<MachinePart> of(Analysis analysis) {
        FittingParts parts = new FittingParts(analysis);
        parts.openings();
        parts.lugs();
        parts.crossMember();
        parts.bearings();
        parts.pins();
        parts.around();
        return parts.all;
    }

    private void add(PartKind kind, String name, int body, Basis basis, Form form) {
        all.add(new MachinePart(kind, name, body, basis, form));
    }

    private void openings() {
        for (Opening o : design.tank().openings()) {
            if (o.rimPoints().size() > 2) {
                add(PartKind.OPENING, o.name(), mechanism.tank(), Basis.GIVEN, new Form.Wire(o.rimPoints(), true));
            }
        }
    }

    /** Its size is given, its length down to what it is welded to is not. */
    private void lugs() {
        for (Fastening f : design.fastenings()) {
            Lug lug = f.lug();
            boolean moving = f.joint().equals(Drive.TANK_PIN) || f.joint().equals(Drive.ROD_PIN);
            if (lug == null || !(moving || f.joint().equals(Drive.FRAME_PIN))) {
                continue;
            }
            Vec2 pin = moving ? tankPin : framePin;
            Vec2 u = (moving ? framePin.minus(tankPin) : tankPin.minus(framePin)).unit();
            Vec2 side = new Vec2(-u.y(), u.x()).times(lug.width() / 2);
            Vec2 free = pin.plus(u.times(lug.end()));
            Vec2 root = pin.minus(u.times(lug.width()));
            List<Vec2> corners = List.of(root.minus(side), free.minus(side), free.plus(side), root.plus(side));
            PinJoint joint =
                    moving ? design.drive().tankPinJoint() : design.drive().framePinJoint();
            double half = lug.plates() * lug.thickness() / 2;
            if (lug.plates() > 1 && joint != null) {
                half = joint.lug() / 2 + joint.gap() + lug.thickness();
            }
            int body = moving ? mechanism.actuatorTo() : mechanism.actuatorFrom();
            for (PlacedActuator a : design.drive().actuators()) {
                ZRange z = ZRange.around(a.z(), half);
                add(
                        PartKind.LUG,
                        MachinePart.LUG_OF + NameId.words(f.joint()),
                        body,
                        Basis.SKETCHED,
                        Form.Drawn.of(corners, z));
            }
        }
    }

    private void crossMember() {
        Frame frame = design.frame();
        CrossMember beam = frame == null ? null : frame.crossMember();
        if (beam != null) {
            add(
                    PartKind.CROSS_MEMBER,
                    "cross member",
                    0,
                    Basis.GIVEN,
                    Form.Drawn.of(beam.outline(), ZRange.of(beam.z())));
        }
    }

    /** Housings are sketched about their bores; a shaft that is not given is as thick as the bore. */
    private void bearings() {
        Vec2 pivot = design.pivot().at();
        double bore = 0;
        double reach = 0;
        int number = 0;
        for (Support s : design.pivot().bearings()) {
            double r = Math.max(LEAST_HOUSING, HOUSING_OVER_BORE * s.bearing().bore());
            number++;
            add(
                    PartKind.BEARING,
                    "bearing " + number,
                    mechanism.housing(),
                    Basis.SKETCHED,
                    new Form.Pieces(housing(pivot, s, r)));
            bore = Math.max(bore, s.bearing().bore());
            reach = Math.max(reach, r);
        }
        Shaft shaft = design.pivot().shaft();
        double radius = shaft == null ? bore / 2 : shaft.diameter() / 2;
        Basis basis = shaft == null ? Basis.SKETCHED : Basis.GIVEN;
        add(
                PartKind.SHAFT,
                "pivot shaft",
                mechanism.borne(),
                basis,
                new Form.Round(pivot, radius, between().grown(reach)));
    }

    /** Drawn as a ring around the bore on a block down to its base. */
    static List<Mesh> housing(Vec2 pivot, Support s, double r) {
        Vec2 base = s.base().unit();
        Vec2 foot = pivot.plus(base.times(BASE));
        Vec3 side = new Vec3(-base.y(), base.x(), 0);
        return List.of(
                Forms.rod(at(pivot, s.z() - HALF_HOUSING), at(pivot, s.z() + HALF_HOUSING), r, ROUND),
                Forms.beam(at(pivot, s.z()), at(foot, s.z()), 2.6 * r, 0.04, side));
    }

    private void pins() {
        for (PlacedActuator a : design.drive().actuators()) {
            double half = 1.9 * ActuatorShape.tubeRadius(a.actuator());
            pin("frame pin", mechanism.actuatorFrom(), framePin, design.drive().framePinJoint(), a.z(), half);
            pin(
                    MachinePart.MOVING_PIN,
                    mechanism.actuatorTo(),
                    tankPin,
                    design.drive().tankPinJoint(),
                    a.z(),
                    half);
        }
        for (int i = 0; i < mechanism.joints().size(); i++) {
            JointPlan j = mechanism.joints().get(i);
            if (i != mechanism.pivot() && !j.slide()) {
                PinJoint known = design.drive().pinJoint(j.name());
                double radius = known == null ? PIN : known.diameter() / 2;
                Basis basis = known == null ? Basis.SKETCHED : Basis.GIVEN;
                add(PartKind.PIN, NameId.words(j.name()), j.a(), basis, new Form.Round(j.at(), radius, between()));
            }
        }
    }

    /** From bearing to bearing. */
    private ZRange between() {
        List<Support> bearings = design.pivot().bearings();
        return ZRange.of(List.of(bearings.get(0).z(), bearings.get(1).z()));
    }

    private void pin(String name, int body, Vec2 at, @Nullable PinJoint known, double z, double usual) {
        double half = known == null ? usual : known.lug() / 2 + known.gap() + known.cheek();
        double radius = known == null ? PIN : known.diameter() / 2;
        Basis basis = known == null ? Basis.SKETCHED : Basis.GIVEN;
        add(PartKind.PIN, name, body, basis, new Form.Round(at, radius, ZRange.around(z, half)));
    }

    private void around() {
        Receiver receiver = design.receiver();
        if (receiver != null) {
            Vec2 a = receiver.near();
            Vec2 b = receiver.far();
            List<Vec3> mouth = List.of(new Vec3(a.x(), a.y(), 0), new Vec3(b.x(), b.y(), 0));
            add(PartKind.RECEIVER, receiver.name(), 0, Basis.GIVEN, new Form.Wire(mouth, false));
            all.addAll(ReceiverEdges.of(design));
        }
        Mounts mounts = design.mounts();
        if (mounts == null) {
            return;
        }
        for (KeepOut k : mounts.keepOuts()) {
            add(PartKind.KEEP_OUT, k.name(), 0, Basis.GIVEN, Form.Drawn.of(k.outline(), ZRange.ALL));
        }
        for (String place : design.drive().places(design.pivot().at()).keySet()) {
            zone(place, mounts.zone(place));
        }
        if (!design.drive().places(design.pivot().at()).containsKey(Drive.TANK_PIN)) {
            zone(Drive.TANK_PIN, mounts.zone(Drive.TANK_PIN));
        }
    }

    private void zone(String place, @Nullable Zone zone) {
        if (zone != null) {
            add(
                    PartKind.ZONE,
                    "zone of " + NameId.words(place),
                    0,
                    Basis.GIVEN,
                    Form.Drawn.of(zone.outline(), ZRange.ALL));
        }
    }

    private static Vec3 at(Vec2 p, double z) {
        return new Vec3(p.x(), p.y(), z);
    }
}
