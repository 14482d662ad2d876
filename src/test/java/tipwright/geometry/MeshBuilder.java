// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.ArrayList;
import java.util.List;

/** Collects loose triangles for tests. */
final class MeshBuilder {
    private final List<Vec3> points = new ArrayList<>();

    /** A triangle, counter-clockwise seen from outside. */
    MeshBuilder triangle(Vec3 a, Vec3 b, Vec3 c) {
        points.addAll(List.of(a, b, c));
        return this;
    }

    /** A parallelogram that faces along u x v. */
    MeshBuilder rectangle(Vec3 at, Vec3 u, Vec3 v) {
        triangle(at, at.plus(u), at.plus(u).plus(v));
        return triangle(at, at.plus(u).plus(v), at.plus(v));
    }

    /** What was collected; vertices are not shared. */
    Mesh mesh() {
        double[] xyz = new double[3 * points.size()];
        int[] corners = new int[points.size()];
        for (int i = 0; i < points.size(); i++) {
            xyz[3 * i] = points.get(i).x();
            xyz[3 * i + 1] = points.get(i).y();
            xyz[3 * i + 2] = points.get(i).z();
            corners[i] = i;
        }
        return new Mesh(xyz, corners);
    }
}
