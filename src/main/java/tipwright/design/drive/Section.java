// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import tipwright.design.key.Choice;

/** Cross-section of a link. Adding a shape: one record and its name in the permits clause. */
@Choice("shape")
public sealed interface Section permits RoundSection, FlatSection, BoxSection {
    /** m2. */
    double area();

    /** Second moment of area against bending in the side view, m4. */
    double inertia();

    /** Second moment of area against bending out of the side view, m4. */
    double inertiaAcross();

    /** Across the link in the side view, m. */
    double depth();

    /** Area that a hole along the pivot axis takes away, m2; its diameter in m. */
    double drilled(double hole);

    /** Largest hole that leaves something, m. */
    double largestHole();
}
