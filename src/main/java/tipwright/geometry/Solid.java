// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/** A closed solid in the design's axes with the tank stowed; metres. Immutable. */
public interface Solid {
    /** Volume properties of the part below the plane (n . p &lt;= level). Zero volume when the plane passes under it. */
    Moments below(Plane plane);

    /** Volume properties of the whole; section 0. */
    Moments whole();

    /**
     * Smallest and largest of direction . p over the solid.
     *
     * @param direction unit vector
     */
    Range extent(Vec3 direction);

    /** Area and area centroid of the real surface. */
    Skin skin();

    /**
     * A closed triangle mesh of the surface, outward, for pictures and clearances.
     *
     * @param sag largest distance of the mesh from the true surface, m
     */
    Mesh mesh(double sag);

    /**
     * This solid with flat faces, for cuts by two planes at once.
     *
     * @param sag largest distance of the faces from the true surface, m
     */
    default Polyhedron faceted(double sag) {
        return Polyhedron.unchecked(mesh(sag));
    }

    /** Whether every section by a plane is in one piece: false means that a pocket may keep liquid above the lip. */
    boolean convex();
}
