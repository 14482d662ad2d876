// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;
import javafx.scene.transform.Affine;
import tipwright.analysis.BodyPosition;
import tipwright.design.tank.Opening;
import tipwright.design.tank.Tank;
import tipwright.geometry.Aperture;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Range;
import tipwright.geometry.Vec3;

/** The tank: a see-through wall with its openings cut out and their rims drawn. The far half is drawn before the near half. */
final class TankPart {
    private static final double THINNEST = 0.006;

    private final Affine place = new Affine();
    private final Group rims = new Group();
    private final Group wall = new Group();

    /**
     * The tank as stowed.
     *
     * @param shell its outside, watertight, m
     */
    TankPart(Tank tank, Mesh shell, Theme theme) {
        Mesh outside = shell;
        double size = outside.extent(new Vec3(1, 0, 0)).span();
        PhongMaterial ring = Surface.bright(theme.tank().interpolate(theme.ink(), 0.25), 0.5);
        for (Opening opening : tank.openings()) {
            List<Vec3> rim = opening.rimPoints();
            if (rim.size() < 3 || opening.areaVector().norm() == 0) {
                continue;
            }
            double across = Math.sqrt(opening.areaVector().norm());
            outside = Aperture.cut(outside, rim, opening.areaVector().unit(), 0.35 * across, across / 14);
            rims.getChildren().add(Surface.view(ring(rim, Math.max(0.007, size / 170)), ring));
        }
        MeshView far = Surface.view(outside, Surface.clear(theme.tank(), 0.30));
        far.setCullFace(CullFace.FRONT);
        MeshView near = Surface.view(outside, shiny(theme));
        wall.getChildren().addAll(far, near);
        wall.getTransforms().add(place);
        rims.getTransforms().add(place);
    }

    private static PhongMaterial shiny(Theme theme) {
        PhongMaterial material = Surface.clear(theme.tank(), 0.26);
        material.setSpecularColor(javafx.scene.paint.Color.gray(0.55));
        material.setSpecularPower(40);
        return material;
    }

    private static double thickness(Tank tank) {
        return Math.max(THINNEST, tank.wall() == null ? 0 : tank.wall().thickness());
    }

    /** The inside grown by the wall, axis by axis about its middle. */
    static Mesh outside(Mesh inside, Tank tank) {
        double wall = thickness(tank);
        Range x = inside.extent(new Vec3(1, 0, 0));
        Range y = inside.extent(new Vec3(0, 1, 0));
        Range z = inside.extent(new Vec3(0, 0, 1));
        double[] xyz = inside.xyz().clone();
        Range[] box = {x, y, z};
        for (int i = 0; i < xyz.length; i++) {
            Range r = box[i % 3];
            double middle = (r.low() + r.high()) / 2;
            xyz[i] = middle + (xyz[i] - middle) * (1 + 2 * wall / r.span());
        }
        return new Mesh(xyz, inside.corners());
    }

    private static Mesh ring(List<Vec3> rim, double radius) {
        List<Mesh> bars = new ArrayList<>();
        int step = Math.max(1, rim.size() / 45);
        for (int i = 0; i < rim.size(); i += step) {
            Vec3 a = rim.get(i);
            Vec3 b = rim.get((i + step) % rim.size());
            bars.add(Forms.rod(a, b, radius, 6));
        }
        return Forms.joined(bars);
    }

    /** The rims: opaque, to be drawn first. */
    Node rims() {
        return rims;
    }

    /** The wall: see-through, to be drawn last. */
    Node wall() {
        return wall;
    }

    void show(BodyPosition tank) {
        BodyMover.place(place, tank);
    }
}
