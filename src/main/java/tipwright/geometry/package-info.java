// SPDX-License-Identifier: Apache-2.0
/**
 * Vectors, closed solids, clipping by a plane and mass properties; metres, in the design's axes (x to the dump side, y
 * up, z along the pivot).
 *
 * <p><b>Allowed input.</b> A {@link tipwright.geometry.RevolvedTank} has any axis and position, a diameter above 0, a
 * shell of 0 or more and two {@link tipwright.geometry.Head}s that bulge outward or are flat. A {@link
 * tipwright.geometry.Polyhedron} is a box, a prism over an outline that neither crosses nor touches itself, or a mesh
 * that is one watertight, outward body (see {@link tipwright.geometry.MeshCheck}; parts of a mesh that cross each other
 * are not looked for). Directions and normals are unit vectors. {@link tipwright.geometry.Stl} trusts nothing in a file.
 *
 * <p><b>Results.</b> Volume, first moment about the origin and area of the cut. {@link tipwright.geometry.Level} turns
 * a volume into a plane, {@link tipwright.geometry.MeshCut} a plane into a picture of the liquid. All values are
 * immutable; the arrays inside a {@link tipwright.geometry.Mesh} are shared and must not be written to.
 *
 * <p><b>Degenerate cases.</b> A plane under the solid gives {@link tipwright.geometry.Moments#NOTHING}, one above it the
 * whole volume with section 0. Where a flat face lies in the plane the section may be that of either side. A plane
 * square to a revolved tank's axis is cut in closed form. Unusable dimensions raise a {@link
 * tipwright.geometry.ShapeException}, unreadable files a {@link tipwright.geometry.StlException}, each with a message
 * for the reader.
 *
 * <p><b>Accuracy.</b> Polyhedra are exact to rounding. Revolved tanks: 1e-9 of the volume, 1e-9 of volume times
 * diameter for the first moment, 1e-6 of the section; whole volumes are closed forms. Levels hold the volume within
 * 1e-10 of the whole. Meshes lie within the sag asked for.
 */
@NullMarked
package tipwright.geometry;

import org.jspecify.annotations.NullMarked;
