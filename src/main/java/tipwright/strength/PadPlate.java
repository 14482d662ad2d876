// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import tipwright.quantity.Text;

/**
 * A flat or rolled plate welded all round between a bracket and the shell.
 *
 * @param wall its thickness, m
 * @param halfLength half of it along the shell, m
 * @param halfWidth half of it around the shell, m
 */
public record PadPlate(double wall, double halfLength, double halfWidth) {
    /** @throws IllegalArgumentException if a dimension is not above 0 */
    public PadPlate {
        Precondition.positive("wall", wall);
        Precondition.positive("half the length of the pad", halfLength);
        Precondition.positive("half the width of the pad", halfWidth);
    }

    /**
     * What unit loads on a bracket do, of which the worse counts: at the bracket, in wall and pad together; and at the pad's own
     * footprint, in the bare wall.
     *
     * <p>Source: common practice, no source. Pad and wall touch but are joined at the rim only, so each bends by itself: together they
     * count as one wall of the thickness s with s^2 = (t^3 + p^3) / max(t, p), which gives the thicker one its true stress.
     *
     * @param bracket on the bare shell
     * @throws IllegalArgumentException if the pad does not reach beyond the bracket, or reaches beyond the shell's ends
     */
    public PatchInfluence influence(ShellPatch bracket) {
        if (halfLength < bracket.halfLength() || halfWidth < bracket.halfWidth()) {
            throw new OutOfRangeException(Text.words("the pad must be at least as large as the bracket"));
        }
        CylinderShell shell = bracket.shell();
        CylinderShell both = shell.withWall(together(shell.wall(), wall));
        ShellPatch inside = new ShellPatch(both, bracket.place(), bracket.halfLength(), bracket.halfWidth());
        ShellPatch outside = new ShellPatch(shell, bracket.place(), halfLength, halfWidth);
        return inside.influence().or(outside.influence());
    }

    /** Thickness that two walls count for, m, which bend by the same amount each by itself. */
    static double together(double one, double other) {
        return Math.sqrt((one * one * one + other * other * other) / Math.max(one, other));
    }
}
