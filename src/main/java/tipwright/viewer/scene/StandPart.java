// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.joint.Support;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.linkage.Joint;
import tipwright.linkage.Skeleton;
import tipwright.viewer.dump.Surroundings;

/** What stands still: bearings, pivot shaft, and a plain stand from them and from the frame pin down to the ground. */
final class StandPart {
    private static final Vec3 ACROSS = new Vec3(0, 0, 1);
    private static final Vec3 ALONG = new Vec3(1, 0, 0);

    private final Group all = new Group();

    StandPart(Design design, Skeleton skeleton, Surroundings room, Theme theme) {
        double bar = Math.max(0.035, room.radius() / 30);
        double z0 = design.pivot().bearings().get(0).z();
        double z1 = design.pivot().bearings().get(1).z();
        double floor = room.ground();
        List<Mesh> bars = new ArrayList<>();
        Vec2 framePin = skeleton.actuator().onA();
        boolean fixed = skeleton.actuator().a() == 0;
        List<Vec2> grounded = grounded(skeleton);
        double left = Math.min(
                framePin.x(),
                room.low().x() + 0.25 * (room.high().x() - room.low().x()));
        double right = left;
        for (Vec2 p : grounded) {
            right = Math.max(right, p.x());
            left = Math.min(left, p.x());
        }
        double rail = floor + bar / 2;
        boolean madeUp = !StillPart.given(design);
        if (madeUp) {
            for (double z : new double[] {z0, z1}) {
                bars.add(Forms.beam(at(left - bar, rail, z), at(right + 2 * bar, rail, z), bar, bar, ACROSS));
                for (Vec2 p : grounded) {
                    double top = p.y() - 0.06;
                    bars.add(Forms.beam(at(p.x(), floor + bar, z), at(p.x(), top, z), bar, 1.2 * bar, ACROSS));
                    double back = Math.max(left, p.x() - 0.6 * (top - floor));
                    double high = floor + 0.85 * (top - floor);
                    bars.add(Forms.beam(at(back, floor + bar, z), at(p.x(), high, z), 0.6 * bar, 0.6 * bar, ACROSS));
                }
            }
            for (double x : new double[] {left, right}) {
                bars.add(Forms.beam(at(x, rail, z0), at(x, rail, z1), bar, bar, ALONG));
            }
        }
        if (fixed && madeUp) {
            bars.add(Forms.beam(at(framePin.x(), rail, z0), at(framePin.x(), rail, z1), 1.6 * bar, bar, ALONG));
            for (PlacedActuator a : design.drive().actuators()) {
                double half = 1.9 * DrivePart.tubeRadius(a.actuator());
                for (double side : new double[] {-half, half}) {
                    Vec3 foot = at(framePin.x(), rail, a.z() + side);
                    Vec3 top = at(framePin.x(), framePin.y() + 0.03, a.z() + side);
                    bars.add(Forms.beam(foot, top, 0.012, 0.09, ACROSS));
                }
            }
        }
        if (!bars.isEmpty()) {
            all.getChildren().add(Surface.view(Forms.joined(bars), Surface.bright(theme.frame(), 0.2)));
        }
        bearings(design, theme, bar);
        all.setMouseTransparent(true);
    }

    /** The joints that the frame carries. */
    private static List<Vec2> grounded(Skeleton skeleton) {
        List<Vec2> all = new ArrayList<>();
        for (Joint joint : skeleton.joints()) {
            if (joint.a() == 0 || joint.b() == 0) {
                all.add(joint.at());
            }
        }
        return all;
    }

    private void bearings(Design design, Theme theme, double bar) {
        Vec2 pivot = design.pivot().at();
        List<Mesh> housings = new ArrayList<>();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double bore = 0;
        for (Support s : design.pivot().bearings()) {
            double r = Math.max(0.03, 0.95 * s.bearing().bore());
            Vec2 base = s.base().unit();
            housings.add(Forms.rod(at(pivot, s.z() - 0.022), at(pivot, s.z() + 0.022), r, 28));
            Vec2 foot = pivot.plus(base.times(0.06));
            Vec3 side = new Vec3(-base.y(), base.x(), 0);
            housings.add(Forms.beam(at(pivot, s.z()), at(foot, s.z()), 2.6 * r, 0.04, side));
            low = Math.min(low, s.z());
            high = Math.max(high, s.z());
            bore = Math.max(bore, s.bearing().bore());
        }
        all.getChildren().add(Surface.view(Forms.joined(housings), Surface.bright(theme.bearing(), 0.3)));
        Mesh shaft = Forms.rod(at(pivot, low - bar), at(pivot, high + bar), bore / 2, 24);
        all.getChildren().add(Surface.view(shaft, Surface.bright(theme.rod(), 0.8)));
    }

    Node node() {
        return all;
    }

    private static Vec3 at(Vec2 p, double z) {
        return new Vec3(p.x(), p.y(), z);
    }

    private static Vec3 at(double x, double y, double z) {
        return new Vec3(x, y, z);
    }
}
