// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.ClosedFormAnalyser;
import tipwright.analysis.RandomDesigns;
import tipwright.check.Checker;
import tipwright.check.Checks;
import tipwright.check.Early;
import tipwright.check.StagedCheck;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;
import tipwright.design.key.Copy;
import tipwright.geometry.Vec2;
import tipwright.load.LoadTable;
import tipwright.time.CycleTimer;
import tipwright.viewer.editor.Solved;

/**
 * The check, the search by either engine, the tolerance as drawn, the what-ifs and the window say the same of a design: the same
 * verdict, the same governing check, the same utilisation, passing or not.
 *
 * <p>As a rule each design has one optional key switched on, the next design the next; {@code -Dtest.agreement=all} (the Maven profile
 * 'nightly') takes every design with every key, and four times as many seeded ones.
 */
class AgreementTest {
    private static final boolean ALL =
            System.getProperty("test.agreement", "some").equals("all");
    private static final int STRAIGHT = ALL ? 500 : 120;
    private static final int MECHANISMS = ALL ? 200 : 50;
    private static final double CLOSE = 1e-9;
    private static final Path REGRESSION = Path.of("src", "test", "resources", "tipwright", "check", "regression");
    private static final Path SHIPPED = Path.of("geometry");

    private static Stream<Path> designs() throws IOException {
        List<Path> all = new ArrayList<>();
        for (Path folder : List.of(SHIPPED, REGRESSION)) {
            try (Stream<Path> files = Files.list(folder)) {
                files.filter(f -> f.toString().endsWith(".yaml")).sorted().forEach(all::add);
            }
        }
        return all.stream();
    }

    private static Design read(Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        Reading reading = DesignFile.read(name, Files.readString(file), NamedFiles.folder(SHIPPED));
        assertThat(reading).as(name).isInstanceOf(Reading.Good.class);
        return ((Reading.Good) reading).design();
    }

    @ParameterizedTest
    @MethodSource("designs")
    void everyWayOfAskingSaysTheSameOfADesign(Path file) throws IOException, CannotComputeException {
        Design design = read(file);
        List<Finding> checked = Checker.findings(design);
        Judgement check = tolerance(design, checked);
        window(design, checked);
        engines(design, Analyser.loads(design));
        if (ClosedFormAnalyser.suits(design)) {
            allChecks(design);
        }
    }

    @ParameterizedTest
    @MethodSource("designs")
    void withAnOptionalKeyToo(Path file) throws IOException, CannotComputeException {
        Design design = read(file);
        int own = 1 + Math.floorMod(design.name().hashCode(), Variants.COUNT - 1);
        for (int key = ALL ? 1 : own; key <= (ALL ? Variants.COUNT - 1 : own); key++) {
            Design variant = Copy.with(Variants.of(design, key), "name", design.name() + ", key " + key);
            tolerance(variant, Checker.findings(variant));
            engines(variant, Analyser.loads(elsewhere(variant)));
        }
    }

    /** The tolerance as drawn, which is what the check says; and that. */
    private static Judgement tolerance(Design design, List<Finding> checked) throws CannotComputeException {
        Judgement check = byCheck(checked);
        Trial trial = new Trial(design, CandidateEngine.of(design), checked);
        alike("tolerance", trial.at(new double[trial.places().size()]), check, design);
        return check;
    }

    /**
     * The window answers in stages: what the first two say, the last one says too, or something worse; the last says what the check
     * says.
     */
    private static void window(Design design, List<Finding> checked) throws CannotComputeException {
        Solved solved = Solved.of(design);
        StagedCheck stages = StagedCheck.of(solved.analysis());
        Early rest = stages.atRest();
        assertThat(stages.inTime().findings()).as(design.name()).isEqualTo(checked);
        assertThat(rest.certain().filter(f -> !checked.contains(f)))
                .as(design.name())
                .allMatch(f -> checked.stream().anyMatch(g -> g.id().equals(f.id()) && g.clearlyWorseThan(f)));
        assertThat(rest.fails()).as(design.name()).isEqualTo(rest.certain().anyMatch(f -> f.verdict() == Verdict.FAIL));
        boolean fails = new Early(solved.analysis(), solved.findings()).fails();
        assertThat(!fails || rest.fails())
                .as(design.name() + ": what fails at once")
                .isTrue();
    }

    /** The same tank on a pivot that is somewhere else. */
    private static Design elsewhere(Design design) {
        return design.withPivot(design.pivot().movedTo(design.pivot().at().plus(new Vec2(-0.3, 0.15))));
    }

    @Test
    void straightDrivesAreJudgedAlike() throws CannotComputeException {
        RandomDesigns random = new RandomDesigns(1313);
        int failing = 0;
        int passing = 0;
        for (int i = 0; i < STRAIGHT; i++) {
            Design drawn = Variants.of(random.next(), i);
            Design design = i / Variants.COUNT % 2 == 0 ? drawn : Variants.fitting(drawn);
            LoadTable loads = Analyser.loads(i % 2 == 0 ? design : elsewhere(design));
            try {
                Judgement check = engines(design, loads);
                failing += check.verdict() == Verdict.FAIL ? 1 : 0;
                passing += check.verdict() == Verdict.FAIL ? 0 : 1;
            } catch (CannotComputeException none) {
                assertThat(ClosedFormAnalyser.suits(design)).isTrue();
                assertThatThrownBy(() -> ClosedFormAnalyser.analyse(design, loads))
                        .hasMessage(none.getMessage());
            }
        }
        assertThat(failing).isGreaterThan(STRAIGHT / 5);
        assertThat(passing).isGreaterThan(STRAIGHT / 25);
    }

    /** Mechanisms: every shipped one with one of its places shifted at random, the pivot too. */
    @Test
    void mechanismsAreJudgedAlike() throws IOException, CannotComputeException {
        List<Trial> drawn = new ArrayList<>();
        for (Path file : designs().toList()) {
            Design design = read(file);
            if (!design.drive().direct()) {
                for (Design d : List.of(design, Variants.of(design, 1 + drawn.size() % (Variants.COUNT - 1)))) {
                    drawn.add(new Trial(d, CandidateEngine.GENERAL, List.of()));
                }
            }
        }
        SplittableRandom random = new SplittableRandom(20);
        for (int i = 0; i < MECHANISMS; i++) {
            Trial trial = drawn.get(i % drawn.size());
            double[] shift = new double[trial.places().size()];
            int at = random.nextInt(shift.length / 2);
            shift[2 * at] = random.nextDouble(-0.02, 0.02);
            shift[2 * at + 1] = random.nextDouble(-0.02, 0.02);
            Design moved = trial.moved(shift);
            alike("tolerance", trial.asStated(shift), atTheStatedFill(moved), moved);
        }
    }

    /** Candidates are judged at the stated fill; every one that is left then meets the whole check, part fills and all. */
    private static Judgement atTheStatedFill(Design design) {
        try {
            return byCheck(Checks.quick(Analyser.analyse(design)));
        } catch (CannotComputeException none) {
            return Judgement.impossible();
        }
    }

    /** Both engines, with the loads of the same tank wherever its pivot was; and what the check says. */
    private static Judgement engines(Design design, LoadTable loads) throws CannotComputeException {
        Judgement check = byCheck(Checks.quick(Analyser.analyse(design)));
        alike("general", CandidateEngine.GENERAL.judged(design, loads), check, design);
        if (ClosedFormAnalyser.suits(design)) {
            alike("closed form", CandidateEngine.CLOSED_FORM.judged(design, loads), check, design);
        }
        return check;
    }

    /** All checks, the what-ifs and those of the dump in time among them, make the same of both engines' analyses. */
    private static void allChecks(Design design) throws CannotComputeException {
        LoadTable loads = Analyser.loads(design);
        List<Finding> one = everything(CandidateEngine.CLOSED_FORM.analyse(design, loads));
        List<Finding> two = everything(CandidateEngine.GENERAL.analyse(design, loads));
        assertThat(one.stream().map(f -> f.id() + f.verdict()).toList())
                .isEqualTo(two.stream().map(f -> f.id() + f.verdict()).toList());
        assertThat(one).anyMatch(f -> f.id().startsWith("what-if/"));
        for (int i = 0; i < one.size(); i++) {
            double u = two.get(i).utilisation();
            if (!Double.isNaN(u) && !Double.isInfinite(u)) {
                assertThat(one.get(i).utilisation())
                        .as(design.name() + " " + one.get(i).id())
                        .isCloseTo(u, within(CLOSE * (1 + Math.abs(u))));
            }
        }
    }

    private static List<Finding> everything(Analysis analysis) {
        return Checks.run(Checks.all(), analysis, CycleTimer.time(analysis));
    }

    private static Judgement byCheck(List<Finding> findings) {
        double[] all = new double[Limit.COUNT];
        for (Check check : Checks.all()) {
            BoundingChecks.take(
                    check,
                    findings.stream()
                            .filter(f -> (f.id() + "/").startsWith(check.id() + "/"))
                            .toList(),
                    all);
        }
        return new Judgement(all, Double.NaN, Double.NaN);
    }

    /** The time wanted is no check's: it is left out here. */
    private static void alike(String who, Judgement found, Judgement check, Design design) {
        double[] without = found.utilisations().clone();
        without[Limit.TIME.index()] = 0;
        Judgement judged = new Judgement(without, Double.NaN, Double.NaN);
        String what = design.name() + ", " + who;
        assertThat(judged.verdict()).as(what).isEqualTo(check.verdict());
        assertThat(judged.governing()).as(what).isEqualTo(check.governing());
        for (Limit limit : Limit.values()) {
            double u = check.of(limit);
            if (Double.isInfinite(u)) {
                assertThat(judged.of(limit)).as(what + " " + limit).isEqualTo(u);
            } else {
                assertThat(judged.of(limit)).as(what + " " + limit).isCloseTo(u, within(CLOSE * (1 + u)));
            }
        }
    }
}
