// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.CullFace;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.Form;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachinePart;
import tipwright.outline.PartKind;

/** The wheels: tyres with rims; seen through where they would hide what is between them. */
final class WheelPart {
    private static final double RIM = 0.56;
    private static final double HUB = 0.2;
    private static final int ROUND = 40;
    private static final double GHOST = 0.22;

    private final Group solid = new Group();
    private final Group clear = new Group();

    WheelPart(MachineOutline machine, Theme theme) {
        List<Mesh> tyres = new ArrayList<>();
        List<Mesh> rims = new ArrayList<>();
        for (MachinePart part : machine.parts()) {
            if (part.kind() == PartKind.WHEEL && part.form() instanceof Form.Round round) {
                double half = (round.z().to() - round.z().from()) / 2;
                double middle = (round.z().to() + round.z().from()) / 2;
                Vec2 c = round.centre();
                double r = round.radius();
                tyres.add(disc(c, middle, 0.72 * half, r));
                tyres.add(disc(c, middle, half, 0.93 * r));
                rims.add(disc(c, middle, half + 0.004, RIM * r));
                rims.add(disc(c, middle, half + 0.02, HUB * r));
            }
        }
        if (!tyres.isEmpty()) {
            add(Forms.joined(tyres), Surface.matt(theme.tyre()), theme.tyre());
            add(Forms.joined(rims), Surface.bright(theme.frame(), 0.3), theme.frame());
        }
        solid.setMouseTransparent(true);
        clear.setMouseTransparent(true);
        clear.setVisible(false);
    }

    private void add(Mesh mesh, PhongMaterial material, javafx.scene.paint.Color colour) {
        solid.getChildren().add(Surface.view(mesh, material));
        var ghost = Surface.view(mesh, Surface.clear(colour, GHOST));
        ghost.setCullFace(CullFace.BACK);
        clear.getChildren().add(ghost);
    }

    private static Mesh disc(Vec2 c, double z, double half, double radius) {
        return Forms.rod(new Vec3(c.x(), c.y(), z - half), new Vec3(c.x(), c.y(), z + half), radius, ROUND);
    }

    /** As they are, to be drawn among what is opaque. */
    Node solid() {
        return solid;
    }

    /** Seen through, to be drawn last. */
    Node clear() {
        return clear;
    }

    /** Sets whether one looks along the axle, so that they would stand before everything else. */
    void seenAlong(boolean along) {
        solid.setVisible(!along);
        clear.setVisible(along);
    }
}
