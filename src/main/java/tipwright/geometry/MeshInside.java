// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The inside of a tank from a mesh as people have it: the closed inside; an open shell with one flat mouth, which is capped there; or
 * the tank's steel drawn as a solid, of which the inner face is taken.
 *
 * @param solid m, stowed
 * @param mouth the rim where it was capped, in order, m, stowed; empty: it was closed as drawn
 * @param told what was done to it, in plain words
 */
public record MeshInside(Polyhedron solid, List<Vec3> mouth, List<String> told) {
    /** Copies the lists. */
    public MeshInside {
        mouth = List.copyOf(mouth);
        told = List.copyOf(told);
    }

    /**
     * The inside, scaled about the origin, then moved.
     *
     * @param welded in a unit of its own, joined at equal vertices, see {@link Mesh#welded}
     * @param scale m a unit, above 0
     * @param move m
     * @throws ShapeException if no inside can be told, with places in the mesh's own unit; see {@link MeshCheck}
     */
    public static MeshInside of(Mesh welded, double scale, Vec3 move) {
        List<String> told = new ArrayList<>();
        Mesh mesh = Seams.closed(welded, told);
        HalfEdges edges = new HalfEdges(mesh.corners());
        List<Vec3> mouth = List.of();
        if (edges.repeated() == HalfEdges.NONE && mesh.triangles() > 0) {
            Mesh shell = OpenRim.isOpen(edges) ? mesh : SteelShell.inner(mesh, edges);
            if (shell != null) {
                if (!OpenRim.isOpen(edges)) {
                    told.add("it is the tank's steel as a solid: its inner face is taken as the inside");
                }
                mesh = shell;
                @Nullable OpenRim rim = OpenRim.of(shell);
                if (rim != null) {
                    mesh = rim.capped();
                    mouth = rim.places();
                    told.add("it is open on one side: it is closed there, and the rim is the opening");
                }
            }
        }
        Polyhedron solid = Polyhedron.of(mesh, scale, move);
        return new MeshInside(
                solid, mouth.stream().map(p -> p.times(scale).plus(move)).toList(), told);
    }
}
