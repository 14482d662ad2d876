// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Meshes a prism: an outline in the side view, drawn out along z. */
final class Prism {
    private Prism() {}

    /** The closed mesh of a prism; throws ShapeException for an outline that does not enclose one area. */
    static Mesh mesh(List<Vec2> outline, double width, double middle) {
        if (!(width > 0 && width < 1e6) || !Double.isFinite(middle)) {
            throw new ShapeException("a prism's width must be above 0, not " + width + " m");
        }
        List<Vec2> points = counterClockwise(Outline.checked(outline));
        int n = points.size();
        double[] x = new double[n];
        double[] y = new double[n];
        int[] loop = new int[n];
        double[] xyz = new double[6 * n];
        for (int i = 0; i < n; i++) {
            x[i] = points.get(i).x();
            y[i] = points.get(i).y();
            loop[i] = i;
            for (int side = 0; side < 2; side++) {
                int v = 3 * (i + side * n);
                xyz[v] = x[i];
                xyz[v + 1] = y[i];
                xyz[v + 2] = middle + (side - 0.5) * width;
            }
        }
        int[] face = EarClip.triangles(x, y, loop);
        int[] corners = new int[2 * face.length + 6 * n];
        int k = 0;
        for (int i = 0; i < face.length; i += 3) {
            k = triangle(corners, k, face[i] + n, face[i + 1] + n, face[i + 2] + n);
            k = triangle(corners, k, face[i], face[i + 2], face[i + 1]);
        }
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            k = triangle(corners, k, i, j, j + n);
            k = triangle(corners, k, i, j + n, i + n);
        }
        return new Mesh(xyz, corners);
    }

    private static int triangle(int[] corners, int k, int a, int b, int c) {
        corners[k] = a;
        corners[k + 1] = b;
        corners[k + 2] = c;
        return k + 3;
    }

    private static List<Vec2> counterClockwise(List<Vec2> points) {
        if (Outline.area(points) > 0) {
            return points;
        }
        List<Vec2> turned = new ArrayList<>(points);
        Collections.reverse(turned);
        return turned;
    }
}
