// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

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
        Limit.positive("wall", wall);
        Limit.positive("halfLength", halfLength);
        Limit.positive("halfWidth", halfWidth);
    }

    /**
     * The greater of two stresses: at the bracket, in wall and pad together; and at the pad's own footprint, in the bare wall.
     *
     * <p>Source: common practice, no source. Pad and wall touch but are joined at the rim only, so each bends by itself: together they
     * count as one wall of the thickness s with s^2 = (t^3 + p^3) / max(t, p), which gives the thicker one its true stress.
     *
     * @param bracket on the bare shell
     * @throws IllegalArgumentException if the pad does not reach beyond the bracket, or beyond the shell's ends
     */
    public ShellPatch.Worst worst(ShellPatch bracket, PatchLoad load) {
        if (halfLength < bracket.halfLength() || halfWidth < bracket.halfWidth()) {
            throw new IllegalArgumentException("the pad must be at least as large as the bracket");
        }
        CylinderShell shell = bracket.shell();
        CylinderShell both = shell.withWall(together(shell.wall(), wall));
        ShellPatch.Worst inside =
                new ShellPatch(both, bracket.place(), bracket.halfLength(), bracket.halfWidth()).worst(load);
        ShellPatch.Worst outside = new ShellPatch(shell, bracket.place(), halfLength, halfWidth).worst(load);
        return new ShellPatch.Worst(
                Math.max(inside.equivalent(), outside.equivalent()),
                Math.max(inside.direct(), outside.direct()),
                Math.max(inside.moved(), outside.moved()));
    }

    /** Thickness that two walls count for, m, which bend by the same amount each by itself. */
    static double together(double one, double other) {
        return Math.sqrt((one * one * one + other * other * other) / Math.max(one, other));
    }
}
