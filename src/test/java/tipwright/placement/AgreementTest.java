// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.ClosedFormAnalyser;
import tipwright.analysis.RandomDesigns;
import tipwright.check.Checker;
import tipwright.check.Checks;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;
import tipwright.geometry.Vec2;
import tipwright.load.LoadTable;
import tipwright.viewer.editor.Solved;

/**
 * The check, the search by either engine, the tolerance as drawn, the what-ifs and the window say the same of a design: the same
 * verdict, the same governing check, the same utilisation, passing or not.
 *
 * <p>Not all agree yet: tolerance of telescopic and unlike cylinders, of a hand winch and of a mechanism that has been shifted, and
 * the closed form of one kind of seeded design differ. Until they do, it is run by hand: -Dtest.agreement=true.
 */
@EnabledIfSystemProperty(named = "test.agreement", matches = "true", disabledReason = "not all agree yet, see above")
class AgreementTest {
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
        Judgement check = byCheck(Checker.findings(design));
        alike("window", byCheck(Solved.of(design).findings()), check, design);
        Trial trial = new Trial(design);
        alike("tolerance", trial.at(new double[trial.places().size()]), check, design);
        engines(design, atTheStatedFill(design));
    }

    /** Candidates are judged at the stated fill; every one that is left then meets the whole check, part fills and all. */
    private static Judgement atTheStatedFill(Design design) throws CannotComputeException {
        return byCheck(Checks.quick(Analyser.analyse(design)));
    }

    @Test
    void fiveHundredStraightDrivesAreJudgedAlike() throws CannotComputeException {
        RandomDesigns random = new RandomDesigns(1313);
        int failing = 0;
        int passing = 0;
        for (int i = 0; i < 500; i++) {
            Design drawn = Variants.of(random.next(), i);
            Design design = i / 10 % 2 == 0 ? drawn : Variants.fitting(drawn);
            try {
                Judgement check = byCheck(quick(Analyser.analyse(design)));
                engines(design, check);
                failing += check.verdict() == Verdict.FAIL ? 1 : 0;
                passing += check.verdict() == Verdict.FAIL ? 0 : 1;
            } catch (CannotComputeException none) {
                LoadTable loads = Analyser.loads(design);
                assertThat(ClosedFormAnalyser.suits(design)).isTrue();
                org.assertj.core.api.Assertions.assertThatThrownBy(() -> ClosedFormAnalyser.analyse(design, loads))
                        .hasMessage(none.getMessage());
            }
        }
        assertThat(failing).isGreaterThan(100);
        assertThat(passing).isGreaterThan(20);
    }

    /**
     * Two hundred mechanisms: every shipped one with one of its places but the pivot shifted at random. The pivot stays: which of two
     * slid loads counts is told from where it is drawn, and the tolerance keeps the loads as drawn.
     */
    @Test
    void twoHundredMechanismsAreJudgedAlike() throws IOException, CannotComputeException {
        List<Design> drawn = new ArrayList<>();
        for (Path file : designs().toList()) {
            Design design = read(file);
            if (!design.drive().direct()) {
                drawn.add(design);
            }
        }
        SplittableRandom random = new SplittableRandom(20);
        for (int i = 0; i < 200; i++) {
            Design design = drawn.get(i % drawn.size());
            double[] off = random.doubles(2, -0.02, 0.02).toArray();
            Vec2 by = new Vec2(off[0], off[1]);
            List<Vec2> places =
                    new ArrayList<>(design.drive().places(design.pivot().at()).values());
            Vec2 chosen = places.get(random.nextInt(1, places.size()));
            if (chosen.equals(design.pivot().at())) {
                continue;
            }
            Trial trial = new Trial(design);
            double[] shift = new double[trial.places().size()];
            int at = List.copyOf(new java.util.LinkedHashSet<>(places)).indexOf(chosen);
            shift[2 * at] = by.x();
            shift[2 * at + 1] = by.y();
            Design moved = design.withPivot(design.pivot()
                            .movedTo(
                                    design.pivot().at().equals(chosen)
                                            ? chosen.plus(by)
                                            : design.pivot().at()))
                    .withDrive(design.drive().moved(p -> p.equals(chosen) ? p.plus(by) : p));
            Judgement check;
            try {
                check = byCheck(quick(Analyser.analyse(moved)));
            } catch (CannotComputeException none) {
                check = Judgement.impossible();
            }
            alike("tolerance", trial.at(shift), check, moved);
        }
    }

    /** Both engines, and what they make of the what-ifs and of all other checks. */
    private static void engines(Design design, Judgement check) throws CannotComputeException {
        LoadTable loads = Analyser.loads(design);
        alike("general", CandidateEngine.GENERAL.judged(design, loads), check, design);
        if (!ClosedFormAnalyser.suits(design)) {
            return;
        }
        Analysis closed = CandidateEngine.CLOSED_FORM.analyse(design, loads);
        alike("closed form", CandidateEngine.CLOSED_FORM.judged(design, loads), check, design);
        for (Check what : Checks.all()) {
            if (what.id().equals("what-if")) {
                List<Finding> one = what.run(closed);
                List<Finding> two = what.run(CandidateEngine.GENERAL.analyse(design, loads));
                assertThat(one.stream().map(f -> f.id() + f.verdict()).toList())
                        .isEqualTo(two.stream().map(f -> f.id() + f.verdict()).toList());
                for (int i = 0; i < one.size(); i++) {
                    double u = two.get(i).utilisation();
                    if (!Double.isNaN(u) && !Double.isInfinite(u)) {
                        assertThat(one.get(i).utilisation()).isCloseTo(u, within(CLOSE * (1 + Math.abs(u))));
                    }
                }
            }
        }
    }

    private static List<Finding> quick(Analysis analysis) {
        return BoundingChecks.all().stream()
                .flatMap(c -> c.run(analysis).stream())
                .toList();
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
