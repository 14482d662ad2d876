// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.analysis.Row;
import tipwright.check.MadeUpCheck;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Trait;
import tipwright.check.rule.Verdict;
import tipwright.geometry.Vec2;
import tipwright.load.Gravity;
import tipwright.quantity.Kind;

/** Loads of which each takes the place of all others, with rules that tell what they were shown. */
class UpsetLoadsTest {
    private static final String BOX =
            swap(Examples.BOX, "to: 80 deg", "to: 20 deg, step: 0.5 deg", "repose: 30 deg", "repose: 10 deg");

    /** A rule that finds what it is told to. */
    private static Check told(String id, Set<Trait> traits, Function<Analysis, Finding> found) {
        return new MadeUpCheck(id, traits, a -> List.of(found.apply(a)));
    }

    private static Finding used(String id, Analysis analysis, double use) {
        return of(id, analysis).compare("", use, 1, 1, Kind.RATIO, Extreme.NOWHERE, "");
    }

    private static Findings of(String id, Analysis analysis) {
        return new Findings(told(id, Set.of(), a -> used(id, a, 0)), analysis.design());
    }

    private static List<Finding> find(String yaml, Check... rules) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        return WhatIfUpset.find(new Findings(new WhatIfCheck(List.of()), analysis.design()), analysis, List.of(rules));
    }

    private static Check shown(Set<Trait> traits, List<String> told) {
        return told("told", traits, a -> {
            double cross = Math.toDegrees(a.design().site().crossSlope());
            assertThat(a.cases()).hasSize(1);
            told.add(a.cases().get(0).name() + String.format(Locale.ROOT, " %.1f", cross));
            return used("told", a, 0.5);
        });
    }

    /** Cake along a side is looked at with the ground down to that side too: as the site slopes, or as steep as it may. */
    @Test
    void eachLoadByItselfAndTheGroundDownToTheStuckSide() throws CannotComputeException {
        List<String> told = new ArrayList<>();
        List<Finding> found = find(BOX, shown(Set.of(Trait.DEPENDS_ON_FILL), told));
        assertThat(told).containsExactly("stuck-plus-z 0.0", "stuck-minus-z 0.0", "frozen 0.0", "bridged 0.0");
        assertThat(found)
                .extracting(Finding::title)
                .containsExactly(
                        "Half the cake stuck, +z side: worst check then",
                        "Half the cake stuck, -z side: worst check then",
                        "Frozen solid: worst check then",
                        "Load hangs up on the way: worst check then");
        told.clear();
        find(BOX + "site: {cross-slope: 2 deg, any-way: 5 deg}\n", shown(Set.of(Trait.DEPENDS_ON_FILL), told));
        assertThat(told)
                .containsExactly(
                        "stuck-plus-z 2.0",
                        "stuck-plus-z 5.0",
                        "stuck-minus-z 2.0",
                        "stuck-minus-z -5.0",
                        "frozen 2.0",
                        "bridged 2.0");
        told.clear();
        find(BOX + "site: {cross-slope: -7 deg, any-way: 5 deg}\n", shown(Set.of(Trait.DEPENDS_ON_FILL), told));
        assertThat(told).contains("stuck-plus-z 5.0", "stuck-minus-z -7.0");
    }

    /**
     * What freezes the load makes a gas spring cold, and worn it may be: 3 kN at 20 deg C, of which a fifth has leaked out, at no more
     * than 0 deg C. Moments about the pivot of the stowed tank; Gay-Lussac's law.
     */
    @ParameterizedTest
    @CsvSource({"20, 273.15", "-15, 258.15"})
    void frostMakesGasSpringsColdToo(double lowest, double kelvin) throws CannotComputeException {
        String spring =
                "assists:\n  - {kind: gas-spring, name: strut, from: {body: frame, at: [-700 mm, -300 mm]}, to: {body: tank,"
                        + " at: [-500 mm, 500 mm]}, extended: 2000 mm, stroke: 1600 mm, force: 3 kN, compressed-force: 3 kN}\n"
                        + "cold: {lowest: " + lowest + " degC}\n";
        List<Double> pushes = new ArrayList<>();
        List<Double> moments = new ArrayList<>();
        Check rule = told("told", Set.of(Trait.DEPENDS_ON_FILL), a -> {
            Row stowed = a.cases().get(0).rows().get(0);
            if (a.cases().get(0).name().equals("frozen")) {
                pushes.add(stowed.rest().force());
                moments.add(stowed.load().mass()
                        * Gravity.G
                        * (0.4 - stowed.centroid().x()));
            }
            return used("told", a, 0.5);
        });
        find(BOX + spring, rule);
        double lever = new Vec2(-0.9, 0.1).cross(new Vec2(0.2, 0.8).unit());
        double arm = new Vec2(-0.85, 0).cross(new Vec2(0.15, 0.9).unit());
        assertThat(pushes).hasSize(2);
        for (int i = 0; i < 2; i++) {
            double force = i == 0 ? 3000 : 3000 * 0.8 * kelvin / 293.15;
            double push = (moments.get(i) + force * lever) / -arm;
            assertThat(pushes.get(i)).isCloseTo(push, within(1e-6 * push));
        }
    }

    /** Only what the load may change, and what needs neither long nor the dump in time, nor looks at the surroundings. */
    @Test
    void onlyQuickRulesOfTheLoadAreAsked() throws CannotComputeException {
        List<String> told = new ArrayList<>();
        for (Set<Trait> traits : List.of(
                Set.<Trait>of(),
                Set.of(Trait.DEPENDS_ON_FILL, Trait.ABOUT_SURROUNDINGS),
                Set.of(Trait.DEPENDS_ON_FILL, Trait.SLOW),
                Set.of(Trait.DEPENDS_ON_FILL, Trait.NEEDS_TIME))) {
            assertThat(find(BOX, shown(traits, told))).isEmpty();
        }
        assertThat(told).isEmpty();
    }

    /** Soft feet under the stuck side are asked about the standing alone; half of their 200 N/mm is left. */
    @Test
    void softFeetUnderTheStuckSide() throws CannotComputeException {
        List<String> told = new ArrayList<>();
        Set<Trait> standing = Set.of(Trait.DEPENDS_ON_FILL, Trait.ABOUT_STANDING);
        Check rule = told("told", standing, a -> {
            List<Double> stiffness =
                    Objects.requireNonNull(a.design().supports()).stiffness();
            told.add(a.cases().get(0).name() + " " + stiffness);
            return used("told", a, 1e5 / Collections.min(stiffness));
        });
        String feet =
                BOX + "supports: {outline: [[-1 m, -1 m], [1 m, -1 m], [1 m, 1 m], [-1 m, 1 m]], y: -1 m, FEET}\n";
        List<Finding> found = find(swap(feet, "FEET", "stiffness: [200 N/mm]"), rule);
        assertThat(found).extracting(Finding::utilisation).containsExactly(1.0, 1.0, 0.5, 0.5);
        assertThat(told)
                .containsExactly(
                        "stuck-plus-z [200000.0]",
                        "stuck-plus-z [200000.0, 200000.0, 100000.0, 100000.0]",
                        "stuck-minus-z [200000.0]",
                        "stuck-minus-z [100000.0, 100000.0, 200000.0, 200000.0]",
                        "frozen [200000.0]",
                        "bridged [200000.0]");
        told.clear();
        find(swap(feet, ", FEET", ""), shown(standing, told));
        assertThat(told).hasSize(4);
        told.clear();
        find(swap(feet, "FEET", "stiffness: [200 N/mm]"), told("other", Set.of(Trait.DEPENDS_ON_FILL), a -> {
            told.add(a.cases().get(0).name());
            return used("other", a, 0.5);
        }));
        assertThat(told).hasSize(4);
    }

    /** From one tilt that is looked at to the next are more than 2.4 deg, of steps of half a degree 2.5; the last is always there. */
    @Test
    void someTiltsAreEnough() throws CannotComputeException {
        List<Double> tilts = new ArrayList<>();
        Check rule = told("told", Set.of(Trait.DEPENDS_ON_FILL), a -> {
            if (tilts.isEmpty()) {
                a.poses().forEach(p -> tilts.add(Math.toDegrees(p.tilt())));
            }
            return used("told", a, 0.5);
        });
        find(swap(BOX, "to: 20 deg", "to: 9 deg") + "cases: {skip: [slid]}\n", rule);
        double[] expected = {0, 2.5, 5, 7.5, 9};
        assertThat(tilts).hasSize(expected.length);
        for (int i = 0; i < expected.length; i++) {
            assertThat(tilts.get(i)).isCloseTo(expected[i], within(1e-9));
        }
    }

    /** Too weak for a push but strong enough to hold is close, at any utilisation; other rules, and pushes that pass, stay what they are. */
    @Test
    void anActuatorThatHoldsOnlyStalls() throws CannotComputeException {
        Set<Trait> load = Set.of(Trait.DEPENDS_ON_FILL);
        Check push = told("push", load, a -> used("push", a, 3));
        String holds = swap(BOX, "pull: 12 kN", "pull: 12 kN, hold: 40 kN");
        String weak = swap(BOX, "pull: 12 kN", "pull: 12 kN, hold: 1 kN");
        assertThat(find(holds, push)).allSatisfy(f -> assertThat(f.verdict()).isEqualTo(Verdict.CLOSE));
        for (String yaml : List.of(weak, BOX)) {
            assertThat(find(yaml, push)).allSatisfy(f -> assertThat(f.verdict()).isEqualTo(Verdict.FAIL));
        }
        Check pull = told("pull", load, a -> used("pull", a, 3));
        assertThat(find(holds, pull)).allSatisfy(f -> assertThat(f.verdict()).isEqualTo(Verdict.FAIL));
        Check light = told("push", load, a -> used("push", a, 0.2));
        assertThat(find(holds, light)).allSatisfy(f -> assertThat(f.verdict()).isEqualTo(Verdict.PASS));
        Check untold = told("push", load, a -> of("push", a).missing("", "x"));
        assertThat(find(holds, untold)).isEmpty();
    }
}
