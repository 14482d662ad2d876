// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;
import tipwright.analysis.Wind;
import tipwright.check.MadeUpCheck;
import tipwright.check.One;
import tipwright.check.actuator.PushCheck;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.time.CycleTimer;
import tipwright.time.Moment;

/** A tank on a rope if something goes wrong: the rope goes slack where a rod would push, and what it holds it holds by pulling. */
class RopeFaultsTest {
    private static final String ACTUATOR = "{kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}";
    private static final String ROPE = "{kind: rope, closed: 800 mm, stroke: 2 m, pull: 12 kN, hold: 14 kN}";
    private static final String UNWOUND =
            swap(Examples.BOX, ACTUATOR, ROPE, "[-600 mm, -500 mm]", "[-500 mm, 3000 mm]", "80 deg", "20 deg")
                    + "friction: {pivot: 0, pins: 0}\n";
    private static final String WOUND =
            UNWOUND + "supply: {kind: hand-winch, travel-per-turn: 200 mm, turns-per-minute: 30}\n";

    /** Twice what the empty tank asks less what the full one does: the rope would have to push, and nothing is rated for that. */
    @Test
    void aRopeGoesSlackWhereTheTankSpringsUp() throws CannotComputeException {
        Finding found = One.of(WOUND, "what-if/load-let-go-at-once");
        double arm = 0.85 * 2.6 / Math.hypot(0.05, 2.6);
        double load = 1400 * 9.80665 * 0.4 / arm;
        double steel = 7850 * 0.004 * 5 * 9.80665 * 0.4 / arm;
        assertThat(found.demand()).isCloseTo(load - steel, within(0.02 * load));
        assertThat(found.capacity()).isZero();
        assertThat(found.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(found.note().metric()).startsWith("the rope cannot push: with ");
    }

    /** Nobody knows how hard a winch that is not described is turned: not a jam without any force. */
    @Test
    void withoutAWinchAJamIsNotTold() throws CannotComputeException {
        assertThat(One.all(UNWOUND, "what-if").stream()
                        .filter(f -> f.id().startsWith("what-if/jam"))
                        .map(Finding::verdict))
                .containsExactly(Verdict.NOT_CHECKED);
    }

    /** Two ropes, one of which stalls and holds: told against what it holds, and failed where a rope would have to push. */
    @Test
    void oneRopeThatCarriesAllIsTakenByWhatItHolds() throws CannotComputeException {
        String two = swap(
                WOUND,
                "- {z: 0 mm, actuator: {kind: rope, closed: 800 mm, stroke: 2 m, pull: 12 kN, hold: 14 kN}}",
                "- {z: -200 mm, actuator: {kind: rope, closed: 800 mm, stroke: 2 m, pull: 4 kN, hold: 9 kN}}\n"
                        + "      - {z: 200 mm, actuator: {kind: rope, closed: 800 mm, stroke: 2 m, pull: 4 kN, hold: 9 kN}}");
        Finding found = One.of(two, "what-if/one-carries-all");
        assertThat(found.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(found.capacity()).isCloseTo(9000, within(1e-6));
        assertThat(found.utilisation()).isCloseTo(found.demand() / 9000, within(1e-9));
        String below = swap(two, "[-500 mm, 3000 mm]", "[-600 mm, -500 mm]");
        assertThat(One.of(below, "what-if/one-carries-all").verdict()).isEqualTo(Verdict.FAIL);
    }

    /** A rope holds what draws on it, and nothing of what presses on it. */
    @Test
    void aRopeHoldsNothingThatPresses() throws CannotComputeException {
        Finding drawn = One.of(WOUND, "hold");
        assertThat(drawn.verdict()).isEqualTo(Verdict.PASS);
        assertThat(drawn.capacity()).isEqualTo(14_000);
        String below = swap(WOUND, "[-500 mm, 3000 mm]", "[-600 mm, -500 mm]");
        for (String id : new String[] {"hold", "what-if/lost-power"}) {
            Finding pressed = One.of(below, id);
            assertThat(pressed.verdict()).isEqualTo(Verdict.FAIL);
            assertThat(pressed.capacity()).isZero();
            assertThat(pressed.note().metric()).doesNotContain("stays");
        }
    }

    /** What a rope would have to push when the load is frozen is no stall: it holds nothing that way. */
    @Test
    void aLoadThatWouldHaveToBePushedFailsWhateverTheRopeHolds() throws CannotComputeException {
        Analysis below = Analyser.analyse(Examples.read(swap(WOUND, "[-500 mm, 3000 mm]", "[-600 mm, -500 mm]")));
        Check push = new MadeUpCheck("push", Set.of(Trait.DEPENDS_ON_FILL), a -> new PushCheck().run(a));
        List<Finding> all =
                WhatIfUpset.find(new Findings(new WhatIfCheck(List.of()), below.design()), below, List.of(push));
        assertThat(all).isNotEmpty().allMatch(f -> f.verdict() == Verdict.FAIL);
    }

    /**
     * A pawl stops the tank at once on its way down: the rope bears the load and v sqrt(k m) on what gives. Second computation from
     * the masses of the box about its pivot. Source: energy of the mass goes into the spring.
     */
    @Test
    void aWinchThatStopsAtOnceJerksTheRope() throws CannotComputeException {
        String pins = swap(
                WOUND,
                "    actuators:",
                "    frame-pin-joint: {diameter: 20 mm, lug: 20 mm, cheek: 10 mm}\n    actuators:");
        Analysis analysis = Analyser.analyse(Examples.read(pins + "what-if: {structure: 3000 N/mm}\n"));
        Moment m = CycleTimer.time(analysis).of("held").moments().stream()
                .filter(x -> x.phase() == Moment.Phase.LOWER)
                .reduce((a, b) -> b)
                .orElseThrow();
        Row row = analysis.cases().get(0).rows().get(new MovingMass(analysis).nearest(m.tilt()));
        double reach = row.centroid().xy().minus(analysis.design().pivot().at()).norm();
        double mass = row.load().mass()
                * (reach * reach + 2 / 12.0)
                / Math.pow(row.pose().arm(), 2);
        double peak = -m.force() + 0.1 * Math.sqrt(3e6 * mass);
        assertThat(new WhatIfStop(analysis).peak(row, m)).isCloseTo(peak, within(2e-3 * peak));
        Finding told = One.of(pins + "what-if: {structure: 3000 N/mm}\n", "what-if/drive-stops-on-the-way");
        assertThat(told.verdict()).isNotEqualTo(Verdict.NOT_CHECKED);
        assertThat(told.note().metric()).contains("stopped at once, the load pulls with");
        assertThat(One.of(pins, "what-if/drive-stops-on-the-way").verdict()).isEqualTo(Verdict.NOT_CHECKED);
    }

    /**
     * In a wind the tank that is left is in the same wind: 2 (F_empty + F_wind) - (F_full + F_wind) = 2 F_empty - F_full + F_wind.
     * Second computation: moments about the pivot of a box of 1 m by 1 m that the wind meets squarely. Source: statics.
     */
    @Test
    void theTankThatSpringsUpIsInTheWindOfItsLoad() throws CannotComputeException {
        String yaml = swap(Examples.BOX, "80 deg", "10 deg")
                + "friction: {pivot: 0, pins: 0}\nsite: {wind-pressure: 900 Pa}\ncases: {skip: [draining, heaped, caked, heel]}\n";
        Analysis calm = Analyser.analyse(Examples.read(yaml));
        Wind one = Wind.of(calm.design()).get(0);
        List<CaseResult> cases = new ArrayList<>(calm.cases());
        for (CaseResult load : Analyser.blown(calm, one).cases()) {
            cases.add(new CaseResult(load.load().named(load.name() + ", " + one.words()), load.rows()));
        }
        double arm = 0.85 * 0.9 / Math.hypot(0.15, 0.9);
        double full = calm.cases().get(0).rows().get(0).load().mass() * 9.80665;
        double steel = full - 1400 * 9.80665;
        double blows = 900 * 0.6 / arm;
        double calmly = 2 * steel * 0.4 / arm - full * 0.4 / arm;
        assertThat(one.words()).isEqualTo("wind to +x");
        // blown towards the dump end it tips the tank, which eases the rod and makes it pull the more
        Finding found = WhatIfLetGo.find(new Findings(new WhatIfCheck(List.of()), calm.design()), calm.with(cases));
        assertThat(found.demand()).isCloseTo(-(calmly - blows), within(2e-3 * -calmly));
    }
}
