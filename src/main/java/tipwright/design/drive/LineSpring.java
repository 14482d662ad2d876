// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

/** A spring between two points, along its own line. */
public interface LineSpring {
    /** Where it is fixed. */
    Anchor from();

    /** Its other end. */
    Anchor to();

    /** Place along the pivot axis, m. */
    double z();

    /** Force that pushes its ends apart at a length in m, N; negative pulls them together. */
    double push(double length);

    /** Energy stored at a length in m, J; its slope along the length is minus the push. */
    double energy(double length);

    /** Friction along its line, N. */
    double friction();

    /** Shortest length allowed, m. */
    double shortest();

    /** Longest length allowed, m. */
    double longest();
}
