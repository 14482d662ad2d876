// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import java.util.Arrays;
import java.util.Map;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.MeshView;
import javafx.scene.transform.Affine;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.MeshCut;
import tipwright.geometry.Plane;
import tipwright.geometry.Vec3;
import tipwright.load.Fill;
import tipwright.viewer.dump.Lying;
import tipwright.viewer.dump.MachineState;

/** What is in the tank: the interior cut at the free surface, the surface lighter than the rest; and what pours out. */
final class SlurryPart {
    private static final double FLAT = 1e-6;

    private final Mesh inside;
    private final Lying lying;
    private final Affine place = new Affine();
    private final MeshView body = new MeshView();
    private final MeshView surface = new MeshView();
    private final MeshView stream = new MeshView();
    private final MeshView left = new MeshView();
    private final Group slurry = new Group(body, surface);
    private final Group all = new Group(slurry, stream, left);
    private final Map<Fill.Stuff, PhongMaterial> bodies;
    private final Map<Fill.Stuff, PhongMaterial> surfaces;
    private final double bottom;
    private @Nullable Fill shown;
    private @Nullable Vec3 fell;

    /**
     * Nothing in it yet.
     *
     * @param inside watertight mesh of the interior, m
     * @param lying how lies what has left
     */
    SlurryPart(Mesh inside, Lying lying, Theme theme) {
        this.inside = inside;
        this.lying = lying;
        bottom = lying.place().floor();
        bodies = Map.of(Fill.Stuff.LIQUID, Surface.matt(theme.liquid()), Fill.Stuff.CAKE, Surface.matt(theme.cake()));
        surfaces = Map.of(
                Fill.Stuff.LIQUID,
                Surface.bright(theme.liquidSurface(), 0.35),
                Fill.Stuff.CAKE,
                Surface.matt(theme.cakeSurface()));
        stream.setMaterial(Surface.bright(theme.liquidSurface(), 0.3));
        slurry.getTransforms().add(place);
        all.setMouseTransparent(true);
    }

    Node node() {
        return all;
    }

    void show(MachineState now) {
        BodyMover.place(place, now.tank());
        Fill fill = now.fill();
        slurry.setVisible(fill != null);
        if (fill != null && !fill.equals(shown)) {
            Mesh cut = MeshCut.below(inside, fill.surface());
            int[][] split = split(cut, fill.surface());
            body.setMesh(Surface.triangles(new Mesh(cut.xyz(), split[0])));
            surface.setMesh(Surface.triangles(new Mesh(cut.xyz(), split[1])));
            body.setMaterial(bodies.get(fill.stuff()));
            surface.setMaterial(surfaces.get(fill.stuff()));
        }
        shown = fill;
        left(now);
        stream.setVisible(!now.pours().isEmpty());
        if (!now.pours().isEmpty()) {
            stream.setMesh(Surface.triangles(
                    Forms.joined(now.pours().stream().map(p -> p.mesh(bottom)).toList())));
            stream.setMaterial(surfaces.get(fill == null ? Fill.Stuff.LIQUID : fill.stuff()));
        }
    }

    /** What has left lies where it fell. */
    private void left(MachineState now) {
        Fill fill = now.fill();
        boolean grit = fill != null && fill.stuff() == Fill.Stuff.CAKE;
        Vec3 at = now.pours().isEmpty()
                ? new Vec3((lying.place().west() + lying.place().east()) / 2, bottom, 0)
                : now.pours().get(0).lands(bottom);
        if (!now.pours().isEmpty() || fell == null) {
            fell = at;
        }
        Mesh mesh = lying.mesh(now.out(), grit, fell);
        left.setVisible(mesh != null);
        if (mesh != null) {
            left.setMesh(Surface.triangles(mesh));
            left.setMaterial(surfaces.get(grit ? Fill.Stuff.CAKE : Fill.Stuff.LIQUID));
        }
    }

    /** Corners of the triangles along the wall, and of those in the surface. */
    static int[][] split(Mesh cut, Plane plane) {
        int[] corners = cut.corners();
        int[] wall = new int[corners.length];
        int[] top = new int[corners.length];
        int w = 0;
        int t = 0;
        for (int i = 0; i < corners.length; i += 3) {
            boolean flat = true;
            for (int j = i; j < i + 3; j++) {
                flat &= Math.abs(plane.height(cut.vertex(corners[j]))) < FLAT;
            }
            for (int j = i; j < i + 3; j++) {
                if (flat) {
                    top[t++] = corners[j];
                } else {
                    wall[w++] = corners[j];
                }
            }
        }
        return new int[][] {Arrays.copyOf(wall, w), Arrays.copyOf(top, t)};
    }
}
