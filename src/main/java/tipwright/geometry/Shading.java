// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/** Normals for pictures: smooth over curved walls, sharp over edges. */
public final class Shading {
    private Shading() {}

    /**
     * A unit normal for each corner of each triangle: the mean, by area, of the triangles around its vertex that stand at less
     * than the crease angle to its own. A vertex is shared where its number is.
     *
     * @param crease rad
     * @return [9 * triangle + 3 * corner + axis]
     */
    public static float[] normals(Mesh mesh, double crease) {
        int[] corners = mesh.corners();
        double[] faces = faces(mesh);
        int[] first = new int[mesh.xyz().length / 3 + 1];
        for (int corner : corners) {
            first[corner + 1]++;
        }
        for (int i = 1; i < first.length; i++) {
            first[i] += first[i - 1];
        }
        int[] around = new int[corners.length];
        int[] next = first.clone();
        for (int c = 0; c < corners.length; c++) {
            around[next[corners[c]]++] = c / 3;
        }
        float[] normals = new float[3 * corners.length];
        double limit = Math.cos(crease);
        for (int c = 0; c < corners.length; c++) {
            int own = 4 * (c / 3);
            double x = 0;
            double y = 0;
            double z = 0;
            for (int k = first[corners[c]]; k < first[corners[c] + 1]; k++) {
                int other = 4 * around[k];
                double cos = faces[own] * faces[other]
                        + faces[own + 1] * faces[other + 1]
                        + faces[own + 2] * faces[other + 2];
                if (cos >= limit || other == own) {
                    x += faces[other + 3] * faces[other];
                    y += faces[other + 3] * faces[other + 1];
                    z += faces[other + 3] * faces[other + 2];
                }
            }
            double length = Math.sqrt(x * x + y * y + z * z);
            boolean flat = length > 0;
            normals[3 * c] = (float) (flat ? x / length : 0);
            normals[3 * c + 1] = (float) (flat ? y / length : 1);
            normals[3 * c + 2] = (float) (flat ? z / length : 0);
        }
        return normals;
    }

    /** Unit normal and twice the area of each triangle [4 * triangle + ...]; no normal without an area. */
    private static double[] faces(Mesh mesh) {
        double[] p = mesh.xyz();
        int[] corners = mesh.corners();
        double[] faces = new double[4 * mesh.triangles()];
        for (int t = 0; t < mesh.triangles(); t++) {
            int a = 3 * corners[3 * t];
            int b = 3 * corners[3 * t + 1];
            int c = 3 * corners[3 * t + 2];
            double ux = p[b] - p[a];
            double uy = p[b + 1] - p[a + 1];
            double uz = p[b + 2] - p[a + 2];
            double vx = p[c] - p[a];
            double vy = p[c + 1] - p[a + 1];
            double vz = p[c + 2] - p[a + 2];
            double x = uy * vz - uz * vy;
            double y = uz * vx - ux * vz;
            double z = ux * vy - uy * vx;
            double length = Math.sqrt(x * x + y * y + z * z);
            if (length > 0) {
                faces[4 * t] = x / length;
                faces[4 * t + 1] = y / length;
                faces[4 * t + 2] = z / length;
                faces[4 * t + 3] = length;
            }
        }
        return faces;
    }
}
