// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.transform.Affine;
import tipwright.design.Design;
import tipwright.design.joint.Support;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.linkage.Joint;
import tipwright.linkage.Skeleton;
import tipwright.viewer.dump.Placement;

/** The moving bodies other than the tank's shell: a plain cradle between the tank's joints, and the links. */
final class CradlePart {
    private static final Vec3 ACROSS = new Vec3(0, 0, 1);

    private final List<Affine> places = new ArrayList<>();
    private final Group all = new Group();

    /**
     * As stowed.
     *
     * @param bar thickness of a bar, m
     */
    CradlePart(Design design, Skeleton skeleton, Mesh inside, double bar, Theme theme) {
        for (int body = 0; body < skeleton.bodies().size(); body++) {
            Affine place = new Affine();
            places.add(place);
            if (body == 0) {
                continue;
            }
            List<Vec2> joints = joints(skeleton, body);
            List<Mesh> bars = new ArrayList<>();
            double inner = body == skeleton.tank() ? bar : 2.4 * bar;
            for (double z : sides(design, inner)) {
                for (int i = 0; i < joints.size(); i++) {
                    for (int j = i + 1; j < joints.size(); j++) {
                        if (joints.get(i).minus(joints.get(j)).norm() > 1e-6) {
                            bars.add(Forms.beam(at(joints.get(i), z), at(joints.get(j), z), 0.5 * bar, bar, ACROSS));
                        }
                    }
                }
                if (body == skeleton.tank()) {
                    joints.forEach(
                            p -> bars.add(Forms.beam(at(p, z), nearest(inside, at(p, z)), 0.5 * bar, bar, ACROSS)));
                }
            }
            for (Vec2 p : joints) {
                double[] z = sides(design, inner);
                bars.add(Forms.rod(at(p, z[0]), at(p, z[1]), 0.3 * bar, 16));
            }
            Group group = new Group(Surface.view(Forms.joined(bars), Surface.bright(theme.cradle(), 0.2)));
            group.getTransforms().add(place);
            all.getChildren().add(group);
        }
        all.setMouseTransparent(true);
    }

    private static List<Vec2> joints(Skeleton skeleton, int body) {
        List<Vec2> all = new ArrayList<>();
        for (Joint joint : skeleton.joints()) {
            if (joint.a() == body || joint.b() == body) {
                all.add(joint.at());
            }
        }
        if (skeleton.actuator().a() == body) {
            all.add(skeleton.actuator().onA());
        }
        if (skeleton.actuator().b() == body) {
            all.add(skeleton.actuator().onB());
        }
        return all;
    }

    /** Where the two rails run: inside the bearings. */
    private static double[] sides(Design design, double inner) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Support s : design.pivot().bearings()) {
            low = Math.min(low, s.z());
            high = Math.max(high, s.z());
        }
        double step = Math.min(1.6 * inner, 0.4 * (high - low));
        return new double[] {low + step, high - step};
    }

    /** The point of the wall straight above, or else the nearest: where a strut to it would end. */
    private static Vec3 nearest(Mesh inside, Vec3 from) {
        Vec3 best = inside.vertex(0);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < inside.xyz().length / 3; i++) {
            Vec3 d = inside.vertex(i).minus(from);
            double off = d.x() * d.x() + 0.3 * d.y() * d.y() + d.z() * d.z();
            if (off < least && d.norm() > 1e-6) {
                least = off;
                best = inside.vertex(i);
            }
        }
        return best;
    }

    private static Vec3 at(Vec2 p, double z) {
        return new Vec3(p.x(), p.y(), z);
    }

    Node node() {
        return all;
    }

    void show(List<Placement> bodies) {
        for (int i = 0; i < places.size(); i++) {
            Part.place(places.get(i), bodies.get(i));
        }
    }
}
