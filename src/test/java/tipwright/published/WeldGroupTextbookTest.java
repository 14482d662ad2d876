// SPDX-License-Identifier: Apache-2.0
package tipwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import tipwright.design.joint.FilletWeld;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.strength.WeldGroup;

/** Fillet weld groups as lines, against handbook formulas and figures. */
class WeldGroupTextbookTest {
    private static final double INCH = 0.0254;
    private static final double KIP = 4448.2216152605;
    private static final double KSI = 6.894757293168361e6;
    private static final double E70 = 70 * KSI;
    private static final Percentage EXACT = Percentage.withPercentage(1e-9);

    private static WeldGroup group(FilletWeld.Seam... seams) {
        return new WeldGroup(weld(null, null, List.of(seams)));
    }

    private static FilletWeld weld(
            FilletWeld.Rectangle rectangle, FilletWeld.Lines lines, List<FilletWeld.Seam> seams) {
        return new FilletWeld(Vec3.ZERO, new Vec3(0, 0, 1), 0.006, E70, rectangle, lines, null, seams);
    }

    private static FilletWeld.Seam seam(double u1, double v1, double u2, double v2) {
        return new FilletWeld.Seam(new Vec2(u1, v1), new Vec2(u2, v2));
    }

    /** Source: Shigley, Mechanical Engineering Design, 9th ed., table 9-2, rows 1 to 6 (read): unit second moments of area. */
    @Test
    void bendingPropertiesOfTable92() {
        double b = 0.06;
        double d = 0.11;
        assertThat(group(seam(0, 0, 0, d)).aboutU()).isCloseTo(d * d * d / 12, EXACT);
        assertThat(new WeldGroup(weld(null, new FilletWeld.Lines(d, b, FilletWeld.Way.V), List.of())).aboutU())
                .isCloseTo(d * d * d / 6, EXACT);
        assertThat(new WeldGroup(weld(null, new FilletWeld.Lines(b, d, FilletWeld.Way.U), List.of())).aboutU())
                .isCloseTo(b * d * d / 2, EXACT);
        WeldGroup channel = group(seam(0, 0, b, 0), seam(0, 0, 0, d), seam(0, d, b, d));
        assertThat(channel.length()).isCloseTo(2 * b + d, EXACT);
        assertThat(channel.aboutU()).isCloseTo(d * d * (6 * b + d) / 12, EXACT);
        WeldGroup open = group(seam(0, d, b, d), seam(0, 0, 0, d), seam(b, 0, b, d));
        double y = d * d / (b + 2 * d);
        assertThat(open.aboutU()).isCloseTo(2 * d * d * d / 3 - 2 * d * d * y + (b + 2 * d) * y * y, EXACT);
        WeldGroup box = new WeldGroup(weld(new FilletWeld.Rectangle(b, d), null, List.of()));
        assertThat(box.aboutU()).isCloseTo(d * d * (3 * b + d) / 6, EXACT);
    }

    /** Source: Shigley, table 9-1 (from memory): all round a rectangle, unit polar moment (b + d)^3 / 6. */
    @Test
    void polarMomentOfABox() {
        WeldGroup box = new WeldGroup(weld(new FilletWeld.Rectangle(0.05, 0.1), null, List.of()));
        assertThat(box.polar()).isCloseTo(Math.pow(0.15, 3) / 6, EXACT);
    }

    /**
     * Source: line method, O. Blodgett, Design of Welded Structures (from memory; answer computed): box 50 by 100 mm, 10 kN at 200
     * mm: bending 240.0, direct 33.33, together 242.30 N/mm.
     */
    @Test
    void bracketWeldedAllRound() {
        WeldGroup box = new WeldGroup(weld(new FilletWeld.Rectangle(0.05, 0.1), null, List.of()));
        double most = box.most(new Vec3(0, -10_000, 0), new Vec3(0, 0, 0.2));
        assertThat(most / 1000).isCloseTo(242.30, within(0.005));
        double bending = box.most(new Vec3(0, -1e-6, 0), new Vec3(0, 0, 0.2 * 1e10));
        assertThat(bending / 1000).isCloseTo(240.0, within(0.05));
    }

    /** Source: own input set, by hand: two seams 100 mm long 80 mm apart, 6 kN along them 150 mm beside: torsion and direct. */
    @Test
    void twistedPairOfSeams() {
        FilletWeld pair = weld(null, new FilletWeld.Lines(0.1, 0.08, FilletWeld.Way.U), List.of());
        double polar = 2 * (Math.pow(0.1, 3) / 12 + 0.1 * 0.04 * 0.04);
        double moment = 6000 * 0.15;
        double along = 6000 / 0.2 + moment * 0.04 / polar;
        double across = moment * 0.05 / polar;
        assertThat(new WeldGroup(pair).most(new Vec3(6000, 0, 0), new Vec3(0, 0.15, 0)))
                .isCloseTo(Math.hypot(along, across), EXACT);
    }

    /** A single seam bends about its own length without end: it must not pass for strong. */
    @Test
    void singleSeamCannotBendAboutItself() {
        WeldGroup one = group(seam(-0.05, 0, 0.05, 0));
        assertThat(one.most(new Vec3(0, 1000, 0), new Vec3(0, 0, 0.1))).isInfinite();
        // Bent the other way it is a line of length L: M / (L^2 / 6), with the direct force across it.
        double bent = 100 / (0.01 / 6);
        assertThat(one.most(new Vec3(1000, 0, 0), new Vec3(0, 0, 0.1))).isCloseTo(Math.hypot(bent, 1000 / 0.1), EXACT);
    }

    /**
     * Source: table of allowable loads of fillet welds on a public page (read): E60 12.73, E70 14.85, E80 16.97 kip/in per inch of
     * leg; 3/8 in of E70 5.57 kip/in; 4 in of it 22.28 kip (exact 22.27).
     */
    @Test
    void allowableLoadsOfTheTable() {
        double unit = KIP / INCH;
        assertThat(WeldGroup.allowed(INCH, 60 * KSI) / unit).isCloseTo(12.73, within(0.005));
        assertThat(WeldGroup.allowed(INCH, E70) / unit).isCloseTo(14.85, within(0.005));
        assertThat(WeldGroup.allowed(INCH, 80 * KSI) / unit).isCloseTo(16.97, within(0.005));
        assertThat(WeldGroup.allowed(INCH / 16, E70) / unit).isCloseTo(0.928, within(0.0005));
        assertThat(WeldGroup.allowed(3 * INCH / 8, E70) * 4 * INCH / KIP).isCloseTo(22.27, within(0.005));
    }
}
