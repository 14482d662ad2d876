// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Row;
import tipwright.check.actuator.PushCheck;
import tipwright.design.Design;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.time.Timing;

/** How findings are made, and what a check says of them unless it knows better. */
class FindingsTest {
    private static final Design BOX = Examples.read(Examples.BOX);
    private static final Findings MAKE = new Findings(new PushCheck(), BOX);

    /** A check that tells no more than it must. */
    private static final class Plain implements Check {
        @Override
        public String id() {
            return "plain";
        }

        @Override
        public String title() {
            return "Left Arm: breaking";
        }

        @Override
        public String rule() {
            return "a rule";
        }

        @Override
        public String formula() {
            return "a formula";
        }

        @Override
        public String source() {
            return "a source";
        }

        @Override
        public Set<Trait> traits() {
            return Set.of();
        }

        @Override
        public List<Finding> run(Analysis analysis) {
            return List.of(new Findings(this, analysis.design()).cannot("end one", "no reason"));
        }
    }

    private static Finding used(double demand, double capacity, double factor) {
        return MAKE.compare("", demand, capacity, factor, Kind.FORCE, Extreme.NOWHERE, "");
    }

    @Test
    void aCheckSaysWhatItCanOfItself() throws CannotComputeException {
        Check plain = new Plain();
        Analysis analysis = Analyser.analyse(BOX);
        List<Finding> found = plain.run(analysis, new Timing(List.of(), "x", false));
        assertThat(found).isEqualTo(plain.run(analysis)).hasSize(1);
        Finding finding = found.get(0);
        assertThat(finding.id()).isEqualTo("plain/end-one");
        assertThat(finding.title()).isEqualTo("Left Arm: breaking, end one");
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(finding.missing()).isFalse();
        assertThat(plain.title("")).isEqualTo("Left Arm: breaking");
        assertThat(plain.shortly(finding)).isEqualTo("left arm");
        assertThat(plain.part(finding)).isEqualTo("plain end one");
        assertThat(plain.bounding()).containsExactly("plain");
        assertThat(plain.bound("plain")).isEmpty();
        assertThat(plain.opener()).isEmpty();
        assertThat(plain.trouble(finding)).isEmpty();
        assertThat(plain.takes(finding)).isEqualTo(Text.NONE);
        assertThat(plain.ratesBearing(0, finding)).isFalse();
        assertThat(plain.looksAt()).isEmpty();
        assertThat(plain.worked(analysis, finding, UnitSystem.METRIC)).isEmpty();
        assertThat(plain.says(finding).metric()).isEqualTo("Left Arm: breaking, end one: no reason");
        assertThat(plain.owns(finding)).isTrue();
        assertThat(plain.owns(used(1, 2, 1))).isFalse();
        assertThat(plain.concerned(analysis, finding)).isEqualTo(new Concerned(Set.of(), "end-one", false));
        assertThat(plain.fix(used(600, 1000, 2), BOX.limits()).metric())
                .isEqualTo("a part rated 1.412 kN in place of 1 kN, or less load");
    }

    /** The capacity at which the share is 85 %: demand times factor over that. */
    @Test
    void aFixTellsTheCapacityWhereThatDecides() {
        String words = "a stronger part{}, or less load";
        assertThat(Fix.of(words, used(850, 1000, 2), BOX.limits()).metric())
                .isEqualTo("a stronger part (2 kN in place of 1 kN), or less load");
        assertThat(Fix.of(words, used(850, 1000, 1), BOX.limits()).metric()).isEqualTo("a stronger part, or less load");
        assertThat(Fix.of(words, used(0, 0, 1), BOX.limits()).metric()).isEqualTo("a stronger part, or less load");
        assertThat(Fix.part(used(850, 1000, 1), BOX.limits())).isEqualTo(Text.NONE);
        Finding other = MAKE.given("", 300, 1000, 1, Kind.FORCE, 2, Extreme.NOWHERE, Verdict.FAIL, "");
        assertThat(Fix.part(other, BOX.limits())).isEqualTo(Text.NONE);
        for (double[] none : new double[][] {
            {Double.POSITIVE_INFINITY, 1000, Double.POSITIVE_INFINITY},
            {1000, Double.POSITIVE_INFINITY, 2},
            {0, 0, 2},
            {-10, -5, 2},
            {10, 0, Double.POSITIVE_INFINITY}
        }) {
            Finding odd = MAKE.given("", none[0], none[1], 1, Kind.FORCE, none[2], Extreme.NOWHERE, Verdict.FAIL, "");
            assertThat(Fix.part(odd, BOX.limits())).isEqualTo(Text.NONE);
        }
    }

    @Test
    void theSideOfABearingIsToldInItsTitle() {
        Finding first = new Findings(new Plain(), BOX).missing("bearing 1", "x");
        assertThat(first.id()).isEqualTo("plain/bearing-1");
        assertThat(first.title()).isEqualTo("Left Arm: breaking, bearing 1 (right)");
        assertThat(new Findings(new Plain(), BOX).missing("at bearing 2", "x").title())
                .isEqualTo("Left Arm: breaking, at bearing 2 (left)");
        assertThat(Findings.bearing(first)).isZero();
        assertThat(Findings.bearing(MAKE.missing("at bearing 2 speed", "x"))).isEqualTo(1);
        assertThat(Findings.bearing(MAKE.missing("bearing 3", "x"))).isEqualTo(-1);
        assertThat(Findings.bearing(MAKE.missing("", "x"))).isEqualTo(-1);
    }

    /** What the file does not give is missing; what the integration lost is not. */
    @Test
    void whatIsNotTimedTellsWhy() {
        Finding untold = MAKE.untimed("a part", new Timing(List.of(), "actuator.speed", false));
        assertThat(untold.note().metric()).isEqualTo("actuator.speed");
        assertThat(untold.missing()).isTrue();
        assertThat(untold.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(untold.id()).isEqualTo("push/a-part");
        assertThat(MAKE.untimed("", new Timing(List.of(), "lost at 3 s", true)).missing())
                .isFalse();
        assertThat(MAKE.missing("", "x").missing()).isTrue();
        assertThat(MAKE.missing("", "x").demand()).isNaN();
        assertThat(MAKE.missing("", "x").needs()).isNaN();
        assertThat(MAKE.missing("", "x").has()).isNaN();
        assertThat(MAKE.missing("", "x").worst()).isEqualTo(Extreme.NOWHERE);
    }

    @Test
    void whatAnotherFoundKeepsItsFigures() {
        Extreme worst = new Extreme(1, 0.5, "held", MotionDirection.LOWERING);
        Finding other = MAKE.atLeast("x", 3, 4, Kind.LENGTH, 0.75, worst, Verdict.CLOSE, Text.words("note"));
        assertThat(other.factor()).isEqualTo(1);
        assertThat(other.sense()).isEqualTo(Sense.AT_LEAST);
        Finding own = new Findings(new Plain(), BOX).of("side two", "Title: y", other);
        assertThat(own)
                .isEqualTo(new Finding(
                        "plain/side-two",
                        "Title: y",
                        3,
                        4,
                        1,
                        Kind.LENGTH,
                        Sense.AT_LEAST,
                        0.75,
                        worst,
                        Verdict.CLOSE,
                        other.source(),
                        Text.words("note")));
        Then then = new Then(other, Text.words("it sinks"), List.of());
        Extreme where = Extreme.at(2, 0.25);
        Finding trouble = new Findings(new Plain(), BOX).of("wheel", then, where);
        assertThat(trouble)
                .isEqualTo(new Finding(
                        "plain/wheel",
                        "Left Arm: breaking, wheel",
                        3,
                        4,
                        1,
                        Kind.LENGTH,
                        Sense.AT_LEAST,
                        0.75,
                        where,
                        Verdict.CLOSE,
                        "a source",
                        then.note(),
                        then,
                        false));
    }

    /** The worst over loads, tilts and directions by each way of asking, against a plain search. */
    @Test
    void theWorstIsFoundByEveryWay() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(BOX);
        double most = 0;
        for (CaseResult load : analysis.cases()) {
            for (Row row : load.rows()) {
                for (MotionDirection way : MotionDirection.ALL) {
                    most = Math.max(most, Math.abs(row.balance(way).force()));
                }
            }
        }
        Findings.Rule rule = (row, b) -> new Usage(Math.abs(b.force()), 24_000, 2, Kind.FORCE);
        Finding worst = MAKE.worst("", analysis, rule, Text.words("n"));
        assertThat(worst.demand()).isCloseTo(most, within(1e-9 * most));
        assertThat(worst.utilisation()).isCloseTo(most / 12_000, within(1e-12));
        assertThat(MAKE.worst("", analysis, (row, b) -> Math.abs(b.force()) / 12_000, rule, Text.words("n")))
                .isEqualTo(worst);
        Finding largest = MAKE.atLargest(
                "",
                analysis,
                (row, b) -> Math.abs(b.force()),
                f -> new Usage(f, 24_000, 2, Kind.FORCE),
                Text.words("n"));
        assertThat(largest.demand()).isEqualTo(worst.demand());
        assertThat(largest.tilt()).isEqualTo(worst.tilt());
        assertThat(largest.loadCase()).isEqualTo(worst.loadCase());
    }

    @Test
    void wordsOfVerdictsSensesAndOccasions() {
        assertThat(List.of(Verdict.values()))
                .extracting(Verdict::word)
                .containsExactly("pass", "close", "fail", "not checked");
        assertThat(List.of(Verdict.values()))
                .extracting(Verdict::says)
                .containsExactly("passes", "close", "fails", "cannot tell");
        assertThat(List.of(Sense.values())).extracting(Sense::word).containsExactly("at most", "at least");
        assertThat(List.of(Occasion.values()))
                .extracting(Occasion::word)
                .containsExactly("normal dump", "if something goes wrong");
    }

    @Test
    void namesOfPartsInTitles() {
        assertThat(Titles.the("frame-pin")).isEqualTo("the frame pin");
        assertThat(Titles.the("bearing-1")).isEqualTo("bearing 1");
        assertThat(Titles.part("Tank: clearance")).isEqualTo("Tank");
        assertThat(Titles.part("Tank")).isEqualTo("Tank");
        assertThat(Titles.what("Tank: clearance")).isEqualTo("clearance");
        assertThat(Titles.what("Tank")).isEmpty();
        assertThat(Titles.part(": clearance")).isEmpty();
        assertThat(Titles.what(": clearance")).isEqualTo("clearance");
        assertThat(Titles.link("link")).isEqualTo("Link");
        assertThat(Titles.link("tie-bar")).isEqualTo("Tie bar");
    }

    /** One that has no capacity is used without end. */
    @Test
    void usageIsDemandOverWhatIsAllowed() {
        assertThat(new Usage(3, 12, 2, Kind.FORCE).utilisation()).isEqualTo(0.5);
        assertThat(new Usage(3, 0, 2, Kind.FORCE).utilisation()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(new Usage(0, 0, 2, Kind.FORCE).utilisation()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(new Usage(3, -1, 2, Kind.FORCE).utilisation()).isEqualTo(Double.POSITIVE_INFINITY);
    }
}
