// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import javafx.scene.paint.Color;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;
import javafx.scene.shape.TriangleMesh;
import javafx.scene.shape.VertexFormat;
import tipwright.geometry.Mesh;
import tipwright.geometry.Shading;

/** Makes things that can be seen out of meshes and colours. */
final class Surface {
    private static final double CREASE = Math.toRadians(32);

    private Surface() {}

    /** A mesh in a colour; only its outside is drawn. */
    static MeshView view(Mesh mesh, PhongMaterial material) {
        MeshView view = new MeshView(triangles(mesh));
        view.setMaterial(material);
        view.setCullFace(CullFace.BACK);
        view.setMouseTransparent(true);
        return view;
    }

    /** The same triangles for the graphics library. */
    static TriangleMesh triangles(Mesh mesh) {
        TriangleMesh triangles = new TriangleMesh(VertexFormat.POINT_NORMAL_TEXCOORD);
        double[] xyz = mesh.xyz();
        float[] points = new float[xyz.length];
        for (int i = 0; i < xyz.length; i++) {
            points[i] = (float) xyz[i];
        }
        int[] corners = mesh.corners();
        int[] faces = new int[3 * corners.length];
        for (int c = 0; c < corners.length; c++) {
            faces[3 * c] = corners[c];
            faces[3 * c + 1] = c;
        }
        triangles.getPoints().setAll(points);
        triangles.getNormals().setAll(Shading.normals(mesh, CREASE));
        triangles.getTexCoords().setAll(0, 0);
        triangles.getFaces().setAll(faces);
        return triangles;
    }

    /** A matt colour. */
    static PhongMaterial matt(Color colour) {
        return new PhongMaterial(colour);
    }

    /** A colour that is the same wherever the lamps stand, for the ground and what lies flat on it. */
    static PhongMaterial flat(Color colour) {
        PhongMaterial material = new PhongMaterial(Color.BLACK);
        javafx.scene.image.WritableImage own = new javafx.scene.image.WritableImage(1, 1);
        own.getPixelWriter().setColor(0, 0, colour);
        material.setSelfIlluminationMap(own);
        return material;
    }

    /** A colour with a shine. */
    static PhongMaterial bright(Color colour, double shine) {
        PhongMaterial material = new PhongMaterial(colour);
        material.setSpecularColor(Color.gray(shine));
        material.setSpecularPower(28);
        return material;
    }

    /** A see-through colour; the graphics library wants it multiplied by its opacity. */
    static PhongMaterial clear(Color c, double opacity) {
        return new PhongMaterial(
                new Color(c.getRed() * opacity, c.getGreen() * opacity, c.getBlue() * opacity, opacity));
    }

    /** A colour that shows the same in any light. */
    static PhongMaterial glowing(Color colour) {
        PhongMaterial material = new PhongMaterial(colour.interpolate(Color.BLACK, 0.45));
        javafx.scene.image.WritableImage own = new javafx.scene.image.WritableImage(1, 1);
        own.getPixelWriter().setColor(0, 0, colour.interpolate(Color.BLACK, 0.45));
        material.setSelfIlluminationMap(own);
        return material;
    }
}
