// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.List;

/** A solid bounded by flat triangles: box, prism or a closed mesh from a file. Cuts are exact. */
public final class Polyhedron implements Solid {
    private final Mesh mesh;
    private final SumTree tree;
    private final Moments whole;
    private final boolean convex;

    private Polyhedron(Mesh mesh, boolean convex) {
        this.mesh = mesh;
        this.convex = convex;
        this.tree = new SumTree(mesh, middle(mesh));
        this.whole = tree.whole();
    }

    /**
     * A box square to the axes.
     *
     * @param size lengths along x, y and z, m, each above 0
     * @param centre m
     * @throws ShapeException if a dimension is not usable
     */
    public static Polyhedron box(Vec3 size, Vec3 centre) {
        double x = size.x() / 2;
        double y = size.y() / 2;
        if (!(x > 0 && y > 0 && size.z() > 0)) {
            throw new ShapeException(
                    "a box needs three sizes above 0, not " + size.x() + ", " + size.y() + ", " + size.z() + " m");
        }
        Vec2 middle = centre.xy();
        return prism(
                List.of(
                        middle.plus(new Vec2(-x, -y)),
                        middle.plus(new Vec2(x, -y)),
                        middle.plus(new Vec2(x, y)),
                        middle.plus(new Vec2(-x, y))),
                size.z(),
                centre.z());
    }

    /**
     * A prism along z.
     *
     * @param outline in the side view, m, either way round, hollow corners allowed; closed by itself
     * @param width along z, m, above 0
     * @param zMiddle middle of the width, m
     * @throws ShapeException if the outline crosses or touches itself or encloses nothing
     */
    public static Polyhedron prism(List<Vec2> outline, double width, double zMiddle) {
        Mesh mesh = Prism.mesh(outline, width, zMiddle);
        return new Polyhedron(mesh, new HalfEdges(mesh.corners()).convex(mesh));
    }

    /**
     * The solid inside a closed mesh, m; vertices at the same place are joined first.
     *
     * @throws ShapeException if the mesh is not one watertight, outward body; see {@link MeshCheck}
     */
    public static Polyhedron of(Mesh mesh) {
        return of(mesh.welded(), 1, Vec3.ZERO);
    }

    /**
     * The solid inside a closed mesh that is scaled about the origin, then moved.
     *
     * @param welded in a unit of its own, joined at equal vertices, see {@link Mesh#welded}
     * @param scale m a unit, above 0
     * @param move m
     * @throws ShapeException if the mesh is not one watertight, outward body, with places in the mesh's own unit; see
     *     {@link MeshCheck}
     */
    public static Polyhedron of(Mesh welded, double scale, Vec3 move) {
        HalfEdges edges = new HalfEdges(welded.corners());
        String fault = MeshCheck.fault(welded, edges);
        if (fault != null) {
            throw new ShapeException(fault);
        }
        return new Polyhedron(welded.placed(scale, move), edges.convex(welded));
    }

    /**
     * What a solid's own mesh holds, m: closed and outward; not checked, and not counted as convex.
     *
     * @param mesh as {@link Solid#mesh} gives it
     */
    static Polyhedron unchecked(Mesh mesh) {
        return new Polyhedron(mesh, false);
    }

    private static Vec3 middle(Mesh mesh) {
        Range x = mesh.extent(new Vec3(1, 0, 0));
        Range y = mesh.extent(new Vec3(0, 1, 0));
        Range z = mesh.extent(new Vec3(0, 0, 1));
        return new Vec3(x.low() + x.high(), y.low() + y.high(), z.low() + z.high()).times(0.5);
    }

    @Override
    public Polyhedron faceted(double sag) {
        return this;
    }

    @Override
    public Moments below(Plane plane) {
        Moments wet = tree.below(plane);
        return wet.volume() <= 0 ? Moments.NOTHING : wet;
    }

    /** Volume properties of the part below both planes; the section is that of the first. */
    public Moments below(Plane a, Plane b) {
        return Corner.below(tree, a, b);
    }

    @Override
    public Moments whole() {
        return whole;
    }

    @Override
    public Range extent(Vec3 direction) {
        return new Range(-tree.furthest(direction.times(-1)), tree.furthest(direction));
    }

    @Override
    public Skin skin() {
        double area = 0;
        Vec3 moment = Vec3.ZERO;
        for (int t = 0; t < mesh.triangles(); t++) {
            Vec3 a = mesh.vertex(mesh.corners()[3 * t]);
            Vec3 b = mesh.vertex(mesh.corners()[3 * t + 1]);
            Vec3 c = mesh.vertex(mesh.corners()[3 * t + 2]);
            double part = 0.5 * b.minus(a).cross(c.minus(a)).norm();
            area += part;
            moment = moment.plus(a.plus(b).plus(c).times(part / 3));
        }
        return new Skin(area, moment.times(1 / area));
    }

    /** The mesh itself, whatever the sag: it is exact. */
    @Override
    public Mesh mesh(double sag) {
        return mesh;
    }

    @Override
    public boolean convex() {
        return convex;
    }
}
