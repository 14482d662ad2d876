// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.drive.Straight;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.design.joint.Pivot;
import tipwright.design.joint.Shaft;
import tipwright.design.key.Copy;
import tipwright.geometry.Vec2;

/** The search on problems whose answer is known, and against the full check. */
class SearchTest {
    private static final String ZONES =
            """
            mounts:
              frame-pin: {outline: [[-900 mm, -900 mm], [-200 mm, -900 mm], [-200 mm, -400 mm], [-900 mm, -400 mm]]}
              tank-pin: {outline: [[-600 mm, 350 mm], [-200 mm, 350 mm], [-200 mm, 550 mm], [-600 mm, 550 mm]]}
              actuators:
                - {name: A, actuator: {kind: electric, closed: 820 mm, stroke: 750 mm, push: 22 kN, pull: 20 kN,
                   speed: {no-load: 12 mm/s, rated: 8 mm/s}, price: 500}}
                - {name: B, actuator: {kind: electric, closed: 900 mm, stroke: 850 mm, push: 30 kN, pull: 30 kN,
                   speed: {no-load: 8 mm/s, rated: 5 mm/s}, price: 800}}
            """;

    /** The box keeps a heel at its full tilt, which no mount mends: here any heel will do. */
    static Design anyHeel(String yaml) {
        Design design = Examples.read(yaml);
        return Copy.with(design, "limits", Copy.with(design.limits(), "residue", 10.0));
    }

    private static Design box(String more) {
        return anyHeel(swap(Examples.BOX, "c0: 19 kN", "c0: 60 kN", "fill: 100 %", "fill: 70 %") + more);
    }

    private static Placer placer(int threads, long candidates) {
        return new Placer(threads, 7, candidates, () -> false, p -> {});
    }

    @Test
    void everyAnswerPassesTheFullCheckAndAgreesWithIt() throws CannotComputeException {
        Placement found = placer(1, 60_000).place(box(ZONES));
        assertThat(found.answers().size()).isPositive();
        for (Answer answer : found.answers()) {
            List<Finding> findings = Checker.findings(answer.design());
            assertThat(findings).noneMatch(f -> f.verdict() == Verdict.FAIL);
            assertThat(answer.failed()).isEmpty();
            assertThat(answer.candidate().utilisation())
                    .isCloseTo(answer.governing().utilisation(), within(1e-6));
            assertThat(most(findings)).isCloseTo(answer.candidate().utilisation(), within(1e-6));
        }
    }

    @Test
    void answersAreTheSameOnOneAndTwoThreads() throws CannotComputeException {
        Design design = box(ZONES);
        Placement one = placer(1, 40_000).place(design);
        Placement two = placer(2, 40_000).place(design);
        assertThat(two.answers().stream().map(Answer::candidate).toList())
                .isEqualTo(one.answers().stream().map(Answer::candidate).toList());
        assertThat(two.fitting()).isEqualTo(one.fitting());
    }

    @Test
    void zonesByNameAreTheSameAsByTheirOwnKeys() throws CannotComputeException {
        String named = swap(
                ZONES,
                "  frame-pin: {outline",
                "  places:\n    - {pin: frame-pin, zone: {outline",
                "  tank-pin: {outline",
                "    - {pin: tank-pin, zone: {outline",
                "]]}\n",
                "]]}}\n");
        assertThat(placer(1, 20_000).place(box(named)).answers().stream()
                        .map(Answer::candidate)
                        .toList())
                .isEqualTo(placer(1, 20_000).place(box(ZONES)).answers().stream()
                        .map(Answer::candidate)
                        .toList());
    }

    /**
     * On a circle of tank pins about the pivot nothing is free but the frame pin. With a tilt range of almost nothing the force is
     * least where the arm is longest: the actuator square to the arm. Source: F = M / r, r at most the arm; elementary.
     */
    @Test
    void findsThatTheActuatorPushesSquareToItsArmWhereThatIsBest() throws CannotComputeException {
        String zone =
                """
                mounts:
                  frame-pin: {outline: [[-1200 mm, -800 mm], [600 mm, -800 mm], [600 mm, -700 mm], [-1200 mm, -700 mm]]}
                  actuators: {name: long, actuator: {kind: electric, closed: 200 mm, stroke: 3000 mm, push: 90 kN, pull: 90 kN}}
                """;
        Design design = anyHeel(swap(
                        Examples.BOX,
                        "to: 80 deg",
                        "to: 0.1 deg, step: 0.05 deg",
                        "c0: 19 kN",
                        "c0: 190 kN",
                        "tilt:",
                        "friction: {pivot: 0, pins: 0}\ntilt:")
                + zone);
        Placement found = placer(2, 3000).place(design);
        Answer least = found.answers().stream()
                .filter(a -> a.aims().contains(Aim.FORCE))
                .findFirst()
                .orElseThrow();
        Vec2 arm = least.place("tank-pin").minus(design.pivot().at());
        Vec2 line = least.place("tank-pin").minus(least.place("frame-pin")).unit();
        assertThat(line.dot(arm.unit())).isCloseTo(0, within(2e-3));
        Straight drawn = (Straight) design.drive();
        assertThat(least.place("tank-pin")).isEqualTo(drawn.tankPin());
    }

    /** A fine grid over the whole of a small zone is the known answer: the refined one must not be worse. */
    @Test
    void refinementIsAtLeastAsGoodAsAVeryFineGrid() throws CannotComputeException {
        String zone =
                """
                mounts:
                  frame-pin: {outline: [[-700 mm, -700 mm], [-600 mm, -700 mm], [-600 mm, -600 mm], [-700 mm, -600 mm]]}
                  actuators: {name: A, actuator: {kind: electric, closed: 700 mm, stroke: 1400 mm, push: 60 kN, pull: 60 kN}}
                """;
        Design design = anyHeel(swap(Examples.BOX, "c0: 19 kN", "c0: 190 kN") + zone);
        Candidate refined = placer(1, 100).place(design).answers().get(0).candidate();
        CandidateEvaluator evaluator = CandidateEvaluator.of(Task.of(design), CandidateEngine.of(design));
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 100; i++) {
            for (int k = 0; k <= 100; k++) {
                Vec2 p = new Vec2(-0.7 + i * 0.001, -0.7 + k * 0.001);
                least = Math.min(least, evaluator.judged(List.of(p), 0).utilisation());
            }
        }
        assertThat(refined.utilisation()).isLessThanOrEqualTo(least + 1e-4);
    }

    /** What fails any check is no answer, not even where no mount could mend it: it goes under what nearly fits. */
    @Test
    void whatFailsAnyCheckIsNoAnswer() throws CannotComputeException {
        Design drawn = box(ZONES);
        Design heel = Copy.with(drawn, "limits", Copy.with(drawn.limits(), "residue", 0.0));
        Placement found = placer(1, 20_000).place(heel);
        assertThat(found.answers()).isEmpty();
        assertThat(found.nearly()).isNotEmpty().allMatch(a -> !a.failed().isEmpty());
        assertThat(found.notes()).anyMatch(n -> n.startsWith("moving the mounts does not help, it fails anyway: "));
    }

    /**
     * A tube that touches something as drawn touches it a little way off too, as much as two things can; a place further off is clear
     * of it, so it is not said that no place helps. What the tank touches, it touches wherever the pins are.
     */
    @Test
    void whatTouchesAsDrawnMayBeMendedElsewhere() throws CannotComputeException {
        Design drawn = Examples.read(
                swap(
                                Examples.BOX,
                                "pull: 12 kN}",
                                "pull: 12 kN, rod: {diameter: 35 mm, length: 950 mm},"
                                        + " tube: {outside: 65 mm, inside: 54 mm, length: 700 mm}}")
                        + """
                obstacles:
                  - {name: post, outline: [[-620 mm, -400 mm], [-500 mm, -400 mm], [-500 mm, -300 mm], [-620 mm, -300 mm]]}
                  - {name: wall, outline: [[700 mm, 1 m], [800 mm, 1 m], [800 mm, 2 m], [700 mm, 2 m]]}
                """);
        Rechecker rechecker = new Rechecker(drawn);
        List<String> near = new ArrayList<>();
        List<String> wherever = new ArrayList<>();
        List<String> far = new ArrayList<>();
        for (Finding f : Checker.findings(framePinAt(drawn, -0.62))) {
            if (f.checkId().equals("clearance") && f.verdict() == Verdict.FAIL) {
                (rechecker.everywhere(f) ? wherever : near).add(f.id());
            }
        }
        for (Finding f : Checker.findings(framePinAt(drawn, -0.9))) {
            if (f.checkId().equals("clearance") && f.verdict() == Verdict.FAIL) {
                far.add(f.id());
            }
        }
        assertThat(near).anyMatch(id -> id.contains("post"));
        assertThat(wherever).isNotEmpty().allMatch(id -> id.contains("wall"));
        assertThat(far).noneMatch(id -> id.contains("post")).containsAll(wherever);
    }

    private static Design framePinAt(Design design, double x) {
        Vec2 pin = ((Straight) design.drive()).framePin();
        return design.withDrive(design.drive().moved(p -> p.equals(pin) ? new Vec2(x, p.y()) : p));
    }

    /** A shaft through both bearings that is too thin for any mounts: the search must not promise what the check denies. */
    @Test
    void aShaftThatFailsTheCheckStandsAgainstEveryAnswer() throws CannotComputeException {
        Design shipped = ((Reading.Good) DesignFile.shipped("silt-trailer.yaml")).design();
        Shaft shaft = Copy.with(shipped.pivot().shaft(), "carriedAt", List.of(-0.2, 0.2));
        Design thin = shipped.withPivot(
                new Pivot(shipped.pivot().at(), shipped.pivot().bearings(), shaft));
        double check = Checker.findings(thin).stream()
                .filter(f -> f.id().startsWith("shaft"))
                .mapToDouble(Finding::utilisation)
                .max()
                .orElseThrow();
        Tolerance drawn = new Welder(thin).tolerance(0.003, 20, 1);
        assertThat(check).isGreaterThan(1);
        assertThat(drawn.utilisation()).isCloseTo(check, within(1e-9));
        assertThat(drawn.governing()).isEqualTo(Limit.of("shaft"));
        assertThat(drawn.chance()).isEqualTo(1);
        Placement found = placer(2, 3_000).place(thin);
        assertThat(found.answers()).isEmpty();
        assertThat(found.misses()).anyMatch(m -> m.contains("% more strength of the pivot shaft"));
    }

    @Test
    void saysWhatWouldOpenItWhenNothingFits() throws CannotComputeException {
        Placement weak = placer(1, 20_000).place(box(swap(ZONES, "push: 22 kN", "push: 3 kN", "30 kN", "3 kN")));
        assertThat(weak.answers().size()).isZero();
        assertThat(weak.misses()).anyMatch(m -> m.matches("\\d+ % more push than [AB] has"));
        Placement brief =
                placer(1, 20_000).place(box(swap(ZONES, "stroke: 750", "stroke: 350", "stroke: 850", "stroke: 400")));
        assertThat(brief.answers().size()).isZero();
        assertThat(brief.misses()).anyMatch(m -> m.matches("\\d+ mm more stroke than [AB] has"));
    }

    @Test
    void mapAgreesWithTheFullCheckAtAThousandPoints() throws CannotComputeException {
        Design design = box(ZONES);
        Straight drawn = (Straight) design.drive();
        CandidateEvaluator frame =
                PlacementMap.evaluator(design, Pin.FRAME, new PinRegion(null, drawn.framePin(), List.of(), 0));
        CandidateEvaluator tank =
                PlacementMap.evaluator(design, Pin.TANK, new PinRegion(null, drawn.tankPin(), List.of(), 0));
        SplittableRandom random = new SplittableRandom(31);
        int compared = 0;
        for (int i = 0; i < 1000; i++) {
            Pin pin = random.nextBoolean() ? Pin.FRAME : Pin.TANK;
            Vec2 p = pin == Pin.FRAME
                    ? new Vec2(random.nextDouble(-0.9, -0.2), random.nextDouble(-0.9, -0.4))
                    : new Vec2(random.nextDouble(-0.6, -0.2), random.nextDouble(0.35, 0.55));
            Judgement quick = (pin == Pin.FRAME ? frame : tank).judged(List.of(p), 0);
            Straight moved = pin == Pin.FRAME ? drawn.movedTo(p, drawn.tankPin()) : drawn.movedTo(drawn.framePin(), p);
            double full = most(quickFindings(design.withDrive(moved)));
            assertThat(quick.utilisation()).isCloseTo(full, within(1e-6 * (1 + full)));
            compared++;
        }
        assertThat(compared).isEqualTo(1000);
    }

    /** The checks that need no time: those that the map is made of. */
    private static List<Finding> quickFindings(Design design) throws CannotComputeException {
        var analysis = tipwright.analysis.Analyser.analyse(design);
        List<Finding> all = new ArrayList<>();
        for (var check : tipwright.check.Checks.all()) {
            all.addAll(check.run(analysis));
        }
        return all;
    }

    /** Largest utilisation of the checks that depend on the mounts. */
    private static double most(List<Finding> findings) {
        double most = 0;
        for (Finding f : findings) {
            if (Limit.of(f) != null && f.verdict() != Verdict.NOT_CHECKED) {
                most = Math.max(most, f.utilisation());
            }
        }
        return most;
    }
}
