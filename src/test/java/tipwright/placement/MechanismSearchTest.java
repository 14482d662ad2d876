// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.geometry.Vec2;

/** The search over any mechanism: against the fast search, a problem whose answer is known, and the full check. */
class MechanismSearchTest {
    private static final String CRANK =
            """
              bell-crank:
                frame-pin: [-1310 mm, -80 mm]
                rod-pin: [-600 mm, -240 mm]
                crank-pivot: [-370 mm, 160 mm]
                link-pin: [-170 mm, -80 mm]
                tank-pin: [-120 mm, 450 mm]
            """;
    private static final String STRAIGHT =
            """
              straight:
                frame-pin: [-600 mm, -500 mm]
                tank-pin: [-450 mm, 400 mm]
            """;
    private static final String ZONES =
            """
            mounts:
              frame-pin: {outline: [[-1400 mm, -200 mm], [-1200 mm, -200 mm], [-1200 mm, 0 mm], [-1400 mm, 0 mm]]}
              places:
                - {pin: rod-pin, zone: {outline: [[-650 mm, -300 mm], [-550 mm, -300 mm], [-550 mm, -200 mm], [-650 mm, -200 mm]],
                   holes: {from: [-600 mm, -240 mm], across: 25 mm}}}
              actuators:
                - {name: A, actuator: {kind: electric, closed: 690 mm, stroke: 640 mm, push: 60 kN, pull: 60 kN,
                   speed: {no-load: 10 mm/s, rated: 7 mm/s}, price: 500}}
            """;

    private static Design crank(String more) {
        return SearchTest.anyHeel(
                swap(Examples.BOX, STRAIGHT, CRANK, "c0: 19 kN", "c0: 90 kN", "to: 80 deg", "to: 45 deg") + more);
    }

    private static Placer placer(int threads, long candidates) {
        return new Placer(threads, 7, candidates, () -> false, p -> {});
    }

    private static Candidate best(Placement found, Aim aim) {
        return found.answers().stream()
                .filter(a -> a.aims().contains(aim))
                .findFirst()
                .orElseThrow()
                .candidate();
    }

    /** The same zones by the closed form of the straight drive and by the general analysis. */
    @Test
    void aStraightDriveIsPlacedAsByTheFastSearch() throws CannotComputeException {
        Design design = SearchTest.anyHeel(
                swap(Examples.BOX, "c0: 19 kN", "c0: 60 kN", "fill: 100 %", "fill: 70 %")
                        + """
                        mounts:
                          frame-pin: {outline: [[-900 mm, -900 mm], [-200 mm, -900 mm], [-200 mm, -400 mm], [-900 mm, -400 mm]]}
                          tank-pin: {outline: [[-600 mm, 350 mm], [-200 mm, 350 mm], [-200 mm, 550 mm], [-600 mm, 550 mm]]}
                          actuators: {name: A, actuator: {kind: electric, closed: 820 mm, stroke: 750 mm, push: 22 kN, pull: 20 kN,
                            speed: {no-load: 12 mm/s, rated: 8 mm/s}}}
                        """);
        Placement fast = placer(2, 200_000).place(design);
        Placement any = placer(2, 3_000).place(design, CandidateEngine.GENERAL);
        for (Aim aim : List.of(Aim.UTILISATION, Aim.FORCE, Aim.TIME)) {
            double known = best(fast, aim).cost(aim);
            assertThat(best(any, aim).cost(aim)).as(aim.words()).isCloseTo(known, within(0.01 * known));
        }
    }

    /**
     * With a tilt range of almost nothing and no friction the force is the crank's moment over the actuator's arm, which the frame
     * pin does not change: least with the rod pin in the corner of its zone that is furthest from the crank's pivot, and the
     * actuator square to that arm. Source: F = M / r, r at most the distance of the pin; elementary.
     */
    @Test
    void findsTheLongestArmAndPushesSquareToIt() throws CannotComputeException {
        Design design = SearchTest.anyHeel(
                swap(
                                Examples.BOX,
                                STRAIGHT,
                                CRANK,
                                "to: 80 deg",
                                "to: 0.1 deg, step: 0.05 deg",
                                "c0: 19 kN",
                                "c0: 190 kN",
                                "tilt:",
                                "friction: {pivot: 0, pins: 0}\ntilt:")
                        + """
                mounts:
                  frame-pin: {outline: [[-1400 mm, -600 mm], [-1200 mm, -600 mm], [-1200 mm, 600 mm], [-1400 mm, 600 mm]]}
                  places:
                    - {pin: rod-pin, zone: {outline: [[-600 mm, -240 mm], [-500 mm, -240 mm], [-500 mm, -140 mm], [-600 mm, -140 mm]]}}
                  actuators: {name: long, actuator: {kind: electric, closed: 200 mm, stroke: 3000 mm, push: 90 kN, pull: 90 kN}}
                """);
        Candidate least = best(placer(2, 500).place(design), Aim.FORCE);
        Vec2 rod = least.place("rod-pin");
        Vec2 arm = rod.minus(new Vec2(-0.37, 0.16));
        assertThat(rod.minus(new Vec2(-0.6, -0.24)).norm()).isLessThan(1e-3);
        assertThat(rod.minus(least.place("frame-pin")).unit().dot(arm.unit())).isCloseTo(0, within(0.01));
    }

    @Test
    void answersAreTheSameOnOneAndTwoThreadsAndPassTheFullCheck() throws CannotComputeException {
        Design design = crank(ZONES);
        Placement one = placer(1, 600).place(design);
        Placement two = placer(2, 600).place(design);
        assertThat(one.answers()).isNotEmpty();
        assertThat(two.answers().stream().map(Answer::candidate).toList())
                .isEqualTo(one.answers().stream().map(Answer::candidate).toList());
        assertThat(two.fitting()).isEqualTo(one.fitting());
        for (Answer answer : one.answers()) {
            passes(answer);
            double across = (answer.candidate().place("rod-pin").x() + 0.6) / 0.025;
            assertThat(across).as("on a hole").isCloseTo(Math.rint(across), within(1e-9));
        }
    }

    private static void passes(Answer answer) throws CannotComputeException {
        List<Finding> findings = Checker.findings(answer.design());
        assertThat(findings).noneMatch(f -> f.verdict() == Verdict.FAIL);
        assertThat(answer.governing().utilisation())
                .isCloseTo(answer.candidate().utilisation(), within(1e-5));
    }

    /** A zone of 80 mm around two pins of every kind of mechanism: no answer is worse than what is drawn. */
    @ParameterizedTest
    @CsvSource({
        "kerb-swing, second-frame-pin, -410, -150",
        "knee-stand, knee, -430, -10",
        "rail-pusher, pivot, 480, 150",
        "slide-back, tie-tank-pin, -340, 160",
        "rail-pusher, slider-pin, -580, -430",
        "six-link, link-tank, -190, 140"
    })
    void everyKindOfMechanismIsPlaced(String name, String pin, int x, int y)
            throws CannotComputeException, IOException {
        int left = name.equals("kerb-swing") ? 330 : x;
        String zone =
                "mounts:\n  places:\n    - {pin: %s, zone: {outline: [[%d mm, %d mm], [%d mm, %d mm], [%d mm, %d mm], [%d mm, %d mm]]}}\n"
                        .formatted(pin, left, y, left + 80, y, left + 80, y + 80, left, y + 80);
        Design design = SearchTest.anyHeel(Files.readString(Path.of("geometry", name + ".yaml")) + zone);
        Placement found = placer(2, 200).place(design);
        assertThat(found.answers()).isNotEmpty();
        for (Answer answer : found.answers()) {
            passes(answer);
        }
        Trial drawn = new Trial(design);
        assertThat(best(found, Aim.UTILISATION).utilisation())
                .isLessThan(drawn.at(new double[drawn.places().size()]).utilisation());
    }

    @Test
    void saysWhatWouldOpenItWhenNothingFits() throws CannotComputeException {
        Placement weak = placer(2, 400).place(crank(swap(ZONES, "push: 60 kN", "push: 4 kN")));
        assertThat(weak.answers().size()).isZero();
        assertThat(weak.misses()).anyMatch(m -> m.matches("\\d+ % more push than A has"));
        Placement brief = placer(2, 400).place(crank(swap(ZONES, "stroke: 640", "stroke: 250")));
        assertThat(brief.answers().size()).isZero();
        assertThat(brief.misses())
                .anyMatch(m -> m.matches("(\\d+ mm more stroke than A has|A .*\\d+ mm longer when fully out)"));
    }

    @Test
    void stoppedAtOnceItSaysSoAndAnswers() throws CannotComputeException {
        AtomicBoolean stop = new AtomicBoolean();
        Placement found = new Placer(1, 7, 100_000L, stop::get, p -> stop.set(p.share() > 0.01)).place(crank(ZONES));
        assertThat(found.notes()).anyMatch(n -> n.startsWith("stopped before the end"));
        assertThat(found.candidates()).isLessThan(100_000);
        assertThat(found.answers()).isNotEmpty();
    }
}
