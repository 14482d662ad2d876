// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.design.drive.Straight;
import tipwright.geometry.Vec2;

/** Welds that are off: Monte Carlo against a normal distribution, slopes and corners against the full check. */
class ToleranceTest {
    private static final double TOL = 0.004;

    private static Design design(double push) {
        return Examples.read(swap(
                Examples.BOX,
                "c0: 19 kN",
                "c0: 90 kN",
                "closed: 800 mm, stroke: 900 mm",
                "closed: 600 mm, stroke: 1500 mm",
                "push: 12 kN, pull: 12 kN",
                "push: " + push + " N, pull: 90 kN"));
    }

    /**
     * The push is nearly linear in six small independent errors, so its sum is nearly normal with variance sum (slope tol)^2 / 3.
     * Source: variance of a uniform distribution, central limit theorem (any text on statistics); the tail 0.158655 at one standard
     * deviation from tables of the normal distribution (from memory).
     */
    @Test
    void chanceOfFailingIsThatOfANormalDistributionWhereOneHolds() throws CannotComputeException {
        Tolerance wide = new Welder(design(40_000)).tolerance(TOL, 0, 1);
        double mean = push();
        double variance = 0;
        for (Tolerance.Swing s : wide.swings()) {
            if (s.place()) {
                double slope = 40_000 * s.slopes().getOrDefault(Limit.of("push"), 0.0);
                variance += Math.pow(slope * TOL, 2) / 3;
            }
        }
        double limit = mean + Math.sqrt(variance);
        int runs = 5_000;
        Tolerance tight = new Welder(design(limit)).tolerance(TOL, runs, 5);
        double spread = Math.sqrt(0.158655 * (1 - 0.158655) / runs);
        // Six uniform errors of unlike size are normal but for about a hundredth; the rest is four standard errors of
        // the runs.
        assertThat(tight.chances().get(Limit.of("push"))).isCloseTo(0.158655, within(4 * spread + 0.012));
        assertThat(tight.chance()).isCloseTo(tight.chances().get(Limit.of("push")), within(1e-12));
    }

    /** Largest push as drawn, N. */
    private static double push() throws CannotComputeException {
        return 40_000 * new Welder(design(40_000)).at(new double[6]).of(Limit.of("push"));
    }

    @Test
    void sameSeedSameChance() throws CannotComputeException {
        Welder welder = new Welder(design(1.02 * push()));
        assertThat(welder.tolerance(TOL, 500, 9).chance())
                .isEqualTo(welder.tolerance(TOL, 500, 9).chance());
    }

    @Test
    void movedPinsGiveWhatTheFullCheckGives() throws CannotComputeException {
        Design design = design(30_000);
        double[] off = {0.003, -0.004, 0.002, 0.001, -0.003, 0.004};
        double quick = new Welder(design).at(off).of(Limit.of("push"));
        Straight drawn = (Straight) design.drive();
        Design moved = design.withPivot(
                        design.pivot().movedTo(design.pivot().at().plus(new Vec2(off[0], off[1]))))
                .withDrive(drawn.movedTo(
                        drawn.framePin().plus(new Vec2(off[2], off[3])),
                        drawn.tankPin().plus(new Vec2(off[4], off[5]))));
        assertThat(quick).isCloseTo(find(moved, "push").utilisation(), within(1e-8));
    }

    @Test
    void theLargestToleranceKeepsEveryCornerAndALittleMoreDoesNot() throws CannotComputeException {
        Tolerance t = new Welder(design(1.02 * push())).tolerance(TOL, 0, 1);
        assertThat(t.largest()).isGreaterThan(0).isLessThan(0.05);
        assertThat(new Welder(design(1.02 * push()))
                        .tolerance(t.largest(), 0, 1)
                        .worstCorner())
                .isLessThanOrEqualTo(1);
        assertThat(new Welder(design(1.02 * push()))
                        .tolerance(t.largest() + 2e-4, 0, 1)
                        .worstCorner())
                .isGreaterThan(1);
    }

    @Test
    void densityMovesThePushAsTheFullCheckSays() throws CannotComputeException {
        Design design = design(30_000);
        Tolerance t = new Welder(design).tolerance(TOL, 0, 1);
        Tolerance.Swing swing = t.swings().stream()
                .filter(s -> s.name().equals("slurry density"))
                .findFirst()
                .orElseThrow();
        double up = find(design.withSlurry(design.slurry().withDensity(1400 * 1.05)), "push")
                .utilisation();
        double down = find(design.withSlurry(design.slurry().withDensity(1400 * 0.95)), "push")
                .utilisation();
        assertThat(swing.slopes().get(Limit.of("push"))).isCloseTo((up - down) / 0.1, within(1e-6));
    }

    private static Finding find(Design design, String id) throws CannotComputeException {
        return Checker.findings(design).stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /**
     * A cylinder that cannot pull: what a part fill, wind and a slope leave of its push is no share of a rating. The whole check at both
     * ends: whether the force turns is the pivot's doing, for the pins of the cylinder only change its arm.
     */
    @Test
    void aCylinderThatCannotPullKeepsPushingUnderEveryConditionWithinTheLargestTolerance()
            throws CannotComputeException {
        Design single = Examples.read(swap(
                Examples.BOX + "site: {any-way: 3 deg, wind-pressure: 150 Pa}\n",
                "fill: 100 %",
                "fill: 80 %",
                "at: [400 mm, 400 mm]",
                "at: [800 mm, 400 mm]",
                "c0: 19 kN",
                "c0: 90 kN",
                "kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN",
                "kind: hydraulic, bore: 80 mm, rod: {diameter: 60 mm}, closed: 600 mm, stroke: 1500 mm, relief-pressure: 160 bar,"
                        + " acting: single",
                "to: 80 deg",
                "to: 46 deg"));
        double largest = new Welder(single).tolerance(TOL, 0, 1).largest();
        assertThat(largest).isBetween(0.001, 0.05);
        assertThat(mostPull(single, largest)).isZero();
        assertThat(mostPull(single, largest + 0.0005)).isPositive();
    }

    /** With the pivot off towards the far side and up or down, N. */
    private static double mostPull(Design design, double off) throws CannotComputeException {
        double most = 0;
        for (double up : new double[] {-off, off}) {
            Vec2 pivot = design.pivot().at().plus(new Vec2(-off, up));
            for (Finding f : Checker.findings(design.withPivot(design.pivot().movedTo(pivot)))) {
                most = f.id().equals("pull") ? Math.max(most, f.demand()) : most;
            }
        }
        return most;
    }
}
