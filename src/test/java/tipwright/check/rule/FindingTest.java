// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/** What a finding tells of its own figures. */
class FindingTest {
    private static final Text NOTE = Text.words("the note");
    private static final Extreme WORST = new Extreme(7, 0.5, "held", MotionDirection.RAISING);

    private static Finding of(
            double demand,
            double capacity,
            double factor,
            Kind kind,
            Sense sense,
            double utilisation,
            Verdict verdict) {
        return new Finding(
                "rule/left-pin",
                "Left pin: bending",
                demand,
                capacity,
                factor,
                kind,
                sense,
                utilisation,
                WORST,
                verdict,
                "a source",
                NOTE);
    }

    private static Finding force(double demand, double capacity, double factor, Verdict verdict) {
        return of(demand, capacity, factor, Kind.FORCE, Sense.AT_MOST, demand * factor / capacity, verdict);
    }

    private static Finding used(double utilisation, Verdict verdict) {
        return of(utilisation * 1000, 1000, 1, Kind.FORCE, Sense.AT_MOST, utilisation, verdict);
    }

    @Test
    void theIdTellsCheckAndPart() {
        Finding finding = used(0.5, Verdict.PASS);
        assertThat(finding.checkId()).isEqualTo("rule");
        assertThat(finding.partId()).isEqualTo("left-pin");
        assertThat(Finding.partOf("rule")).isEmpty();
        assertThat(Finding.partOf("/x/y")).isEqualTo("x/y");
        assertThat(finding.isOf("rule")).isTrue();
        assertThat(finding.isOf("rul")).isFalse();
        assertThat(finding.isOf("rule/left-pin")).isTrue();
        assertThat(finding.isOf("left")).isFalse();
    }

    /** Only what cannot be told lacks a value, unless it says otherwise. */
    @Test
    void onlyWhatIsNotCheckedIsMissing() {
        assertThat(used(0.5, Verdict.NOT_CHECKED).missing()).isTrue();
        for (Verdict verdict : List.of(Verdict.PASS, Verdict.CLOSE, Verdict.FAIL)) {
            assertThat(used(0.5, verdict).missing()).isFalse();
        }
    }

    @Test
    void demandAndCapacityChangePlacesByTheSense() {
        Finding most = of(300, 1000, 2, Kind.FORCE, Sense.AT_MOST, 0.6, Verdict.PASS);
        assertThat(most.needs()).isEqualTo(300);
        assertThat(most.has()).isEqualTo(500);
        Finding least = of(300, 1000, 2, Kind.FORCE, Sense.AT_LEAST, 0.6, Verdict.PASS);
        assertThat(least.needs()).isEqualTo(2000);
        assertThat(least.has()).isEqualTo(300);
    }

    /** At 85 %: a share up to 1 passes, over 0.85 is close, over 1 fails; what is not checked has none. */
    @ParameterizedTest
    @CsvSource({
        "PASS, 0.3, true",
        "PASS, 1, true",
        "PASS, 1.125, false",
        "CLOSE, 0.75, false",
        "CLOSE, 0.875, false",
        "CLOSE, 0.9375, true",
        "CLOSE, 1, true",
        "CLOSE, 1.125, false",
        "FAIL, 1, false",
        "FAIL, 1.125, true",
        "NOT_CHECKED, 0.3, false",
        "NOT_CHECKED, 1.125, false"
    })
    void theShareTellsTheVerdictWithinItsBounds(Verdict verdict, double used, boolean told) {
        assertThat(used(used, verdict).toldByShare(0.875)).isEqualTo(told);
    }

    /** Close, though there is less than it asks for: it may happen without harm, and the two figures tell nothing. */
    @Test
    void whatMayHappenWithoutHarmHasWords() {
        Finding harmless = of(1200, 1000, 1, Kind.FORCE, Sense.AT_MOST, 0.95, Verdict.CLOSE);
        assertThat(harmless.toldByShare(0.85)).isFalse();
        assertThat(harmless.byWords()).isEqualTo(NOTE);
        assertThat(harmless.nearness().isEmpty()).isTrue();
        Finding failing = of(1200, 1000, 1, Kind.FORCE, Sense.AT_MOST, 1.2, Verdict.FAIL);
        assertThat(failing.byWords().metric()).isEqualTo("needs 1.2 kN, has 1 kN");
        // what differs by rounding alone is no less
        Finding nearly = of(1000 * (1 + 5e-7), 1000, 1, Kind.FORCE, Sense.AT_MOST, 0.95, Verdict.CLOSE);
        assertThat(nearly.toldByShare(0.85)).isTrue();
        assertThat(nearly.byWords().metric()).isEqualTo("needs 1 kN, has 1 kN");
        Finding beyond = of(1000 * (1 + 2e-6), 1000, 1, Kind.FORCE, Sense.AT_MOST, 0.95, Verdict.CLOSE);
        assertThat(beyond.toldByShare(0.85)).isFalse();
    }

    /** Of what may be at least so much, used up by its share, yet close though there is less. */
    @Test
    void whatMayHappenWithoutHarmHasNoNearness() {
        Finding harmless = of(0.5, 1, 1, Kind.LENGTH, Sense.AT_LEAST, 0.95, Verdict.CLOSE);
        assertThat(harmless.nearness()).isEqualTo(Text.NONE);
        Finding failing = of(0.5, 1, 1, Kind.LENGTH, Sense.AT_LEAST, 2, Verdict.FAIL);
        assertThat(failing.nearness().metric()).isEqualTo("fails by 500 mm");
    }

    @Test
    void wordsTakeThePlaceOfFiguresThatAreNone() {
        assertThat(of(Double.NaN, 1000, 1, Kind.FORCE, Sense.AT_MOST, 1, Verdict.FAIL)
                        .byWords())
                .isEqualTo(NOTE);
        assertThat(of(10, Double.POSITIVE_INFINITY, 1, Kind.FORCE, Sense.AT_MOST, 0, Verdict.PASS)
                        .byWords())
                .isEqualTo(NOTE);
        assertThat(of(10, Double.POSITIVE_INFINITY, 1, Kind.FORCE, Sense.AT_MOST, 0, Verdict.PASS)
                        .allowed("it draws"))
                .isEqualTo(NOTE);
        assertThat(of(Double.NaN, 1000, 1, Kind.FORCE, Sense.AT_MOST, 1, Verdict.FAIL)
                        .allowed("it draws"))
                .isEqualTo(NOTE);
        assertThat(force(400, 1000, 2, Verdict.PASS).allowed("it draws").metric())
                .isEqualTo("it draws 400 N, 500 N allowed");
    }

    @Test
    void nearnessIsTheDifferenceInItsOwnQuantity() {
        assertThat(force(300, 1000, 2, Verdict.PASS).nearness().metric()).isEqualTo("200 N to spare");
        assertThat(force(500, 1000, 2, Verdict.CLOSE).nearness().metric()).isEqualTo("0 N to spare");
        assertThat(force(700, 1000, 2, Verdict.FAIL).nearness().metric()).isEqualTo("fails by 200 N");
        assertThat(of(0.15, 0.1, 1, Kind.LENGTH, Sense.AT_LEAST, 0.3, Verdict.PASS)
                        .nearness()
                        .metric())
                .isEqualTo("150 mm left, 100 mm wanted");
        assertThat(of(0.25, 0.5, 1, Kind.RATIO, Sense.AT_MOST, 0.5, Verdict.PASS)
                        .nearness()
                        .metric())
                .isEqualTo("25 % to spare");
        assertThat(of(0.125, 0.2495, 1, Kind.RATIO, Sense.AT_MOST, 0.125 / 0.2495, Verdict.PASS)
                        .nearness()
                        .metric())
                .isEqualTo("12.5 % to spare");
        double asked = Math.toRadians(20);
        double there = Math.toRadians(52.25);
        assertThat(of(asked, there, 1, Kind.ANGLE, Sense.AT_MOST, asked / there, Verdict.PASS)
                        .nearness()
                        .metric())
                .isEqualTo("32.25 deg to spare");
    }

    /** Nothing is told where there is no figure, nothing is asked for, or another rule decides. */
    @Test
    void thereIsNoNearnessWhereAnotherRuleDecides() {
        assertThat(force(0, 1000, 1, Verdict.PASS).nearness()).isEqualTo(Text.NONE);
        assertThat(of(300, Double.POSITIVE_INFINITY, 1, Kind.FORCE, Sense.AT_MOST, 0, Verdict.PASS)
                        .nearness())
                .isEqualTo(Text.NONE);
        assertThat(of(300, 1000, 1, Kind.FORCE, Sense.AT_MOST, 0.8, Verdict.PASS)
                        .nearness())
                .isEqualTo(Text.NONE);
        assertThat(of(-300, 1000, 1, Kind.FORCE, Sense.AT_MOST, -0.3, Verdict.PASS)
                        .nearness())
                .isEqualTo(Text.NONE);
        // an angle of at least so much has a rule of its own for its share, and yet two figures
        double wanted = Math.toRadians(10);
        double there = Math.toRadians(40);
        assertThat(of(there, wanted, 1, Kind.ANGLE, Sense.AT_LEAST, 0.6, Verdict.PASS)
                        .nearness()
                        .metric())
                .isEqualTo("40 deg left, 10 deg wanted");
    }

    /** Two decimals of an angle, none where it needs none; more, up to six, where the one beside it would read alike. */
    @ParameterizedTest
    @CsvSource({
        "40, 10, 40 deg, 10 deg",
        "40.25, 10.5, 40.25 deg, 10.5 deg",
        "40.256, 10, 40.26 deg, 10 deg",
        "10.001, 10.0023, 10.001 deg, 10.002 deg",
        "10.00001, 10.00003, 10.00001 deg, 10.00003 deg",
        "10.0000001, 10.0000003, 10 deg, 10 deg",
        "10.004, 10.004, 10 deg, 10 deg",
        "10.00300000000002, 10.00300000000001, 10 deg, 10 deg"
    })
    void anglesShowWhatTellsThemApart(double there, double wanted, String one, String other) {
        Finding finding = of(
                Math.toRadians(there),
                Math.toRadians(wanted),
                1,
                Kind.ANGLE,
                Sense.AT_LEAST,
                wanted / there,
                Verdict.PASS);
        assertThat(finding.there().metric()).isEqualTo(one);
        assertThat(finding.needed().metric()).isEqualTo(other);
    }

    @Test
    void lengthsShowWhatTellsThemApart() {
        Finding finding = of(0.0201, 0.02, 1, Kind.LENGTH, Sense.AT_LEAST, 0.02 / 0.0201, Verdict.CLOSE);
        assertThat(finding.byWords().metric()).isEqualTo("needs 20 mm, has 20.1 mm");
        assertThat(finding.figure(0.02).metric()).isEqualTo("20 mm");
        assertThat(finding.figure(0.0201).metric()).isEqualTo("20.1 mm");
    }

    /** The last finding under a condition tells the condition in its load case, and all else is the same. */
    @Test
    void aConditionIsToldInTheLoadCase() {
        Finding finding = used(0.5, Verdict.PASS);
        Finding under = finding.under("40 % full");
        assertThat(under.loadCase()).isEqualTo("held, 40 % full");
        assertThat(under.worst()).isEqualTo(new Extreme(7, 0.5, "held, 40 % full", MotionDirection.RAISING));
        assertThat(under.judged(Verdict.PASS).titled("x").title()).isEqualTo("x");
        Finding nowhere = new Finding(
                "a", "A", 1, 2, 1, Kind.FORCE, Sense.AT_MOST, 0.5, Extreme.at(3, 0.25), Verdict.PASS, "a source", NOTE);
        assertThat(nowhere.under("empty").worst()).isEqualTo(new Extreme(3, 0.25, "empty", null));
        assertThat(nowhere.under("empty").tilt()).isEqualTo(0.25);
        Finding judged = finding.judged(Verdict.FAIL);
        assertThat(judged.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(judged.judged(Verdict.PASS)).isEqualTo(finding);
    }

    /** Within a millionth of the ratio, or of 1 where that is more. */
    @Test
    void aRuleOfItsOwnIsToldFromTheRatio() {
        assertThat(of(500, 1000, 2, Kind.FORCE, Sense.AT_MOST, 1 + 9e-7, Verdict.FAIL)
                        .byRatio())
                .isTrue();
        assertThat(of(500, 1000, 2, Kind.FORCE, Sense.AT_MOST, 1 + 1.1e-6, Verdict.FAIL)
                        .byRatio())
                .isFalse();
        assertThat(of(500, 1000, 2, Kind.FORCE, Sense.AT_MOST, 1 - 1.1e-6, Verdict.FAIL)
                        .byRatio())
                .isFalse();
        assertThat(of(4000, 1000, 2, Kind.FORCE, Sense.AT_MOST, 8 + 7e-6, Verdict.FAIL)
                        .byRatio())
                .isTrue();
        assertThat(of(4000, 1000, 2, Kind.FORCE, Sense.AT_MOST, 8 + 9e-6, Verdict.FAIL)
                        .byRatio())
                .isFalse();
    }

    @Test
    void theVerdictCountsBeforeTheShare() {
        assertThat(used(0.9, Verdict.CLOSE).worseThan(used(0.95, Verdict.PASS))).isTrue();
        assertThat(used(0.95, Verdict.PASS).worseThan(used(0.9, Verdict.CLOSE))).isFalse();
        assertThat(used(0.95, Verdict.PASS).worseThan(used(0.9, Verdict.PASS))).isTrue();
        assertThat(used(0.9, Verdict.PASS).worseThan(used(0.9, Verdict.PASS))).isFalse();
        assertThat(used(0.1, Verdict.PASS).worseThan(used(9, Verdict.NOT_CHECKED)))
                .isTrue();
        assertThat(used(9, Verdict.NOT_CHECKED).worseThan(used(0.1, Verdict.PASS)))
                .isFalse();
        assertThat(used(9, Verdict.NOT_CHECKED).worseThan(used(0.1, Verdict.NOT_CHECKED)))
                .isFalse();
        assertThat(used(9, Verdict.NOT_CHECKED).clearlyWorseThan(used(0.1, Verdict.NOT_CHECKED)))
                .isFalse();
        assertThat(used(0.9, Verdict.CLOSE).clearlyWorseThan(used(0.95, Verdict.PASS)))
                .isTrue();
    }

    /** Where there is nothing at all, the one that needs more is worse. */
    @Test
    void ofWhatHasNothingTheOneThatNeedsMoreIsWorse() {
        assertThat(force(300, 0, 1, Verdict.FAIL).worseThan(force(200, 0, 1, Verdict.FAIL)))
                .isTrue();
        assertThat(force(200, 0, 1, Verdict.FAIL).worseThan(force(300, 0, 1, Verdict.FAIL)))
                .isFalse();
        assertThat(force(300, 0, 1, Verdict.FAIL).worseThan(force(300, 0, 1, Verdict.FAIL)))
                .isFalse();
        assertThat(force(300, 0, 1, Verdict.FAIL).worseThan(force(900, 10, 1, Verdict.FAIL)))
                .isTrue();
    }

    /** By more than a millionth of the share; where the shares are the same, of the demand. */
    @Test
    void roundingMakesNothingClearlyWorse() {
        Finding half = used(0.5, Verdict.PASS);
        assertThat(used(0.5 * (1 + 9e-7), Verdict.PASS).clearlyWorseThan(half)).isFalse();
        assertThat(used(0.5 * (1 + 1.1e-6), Verdict.PASS).clearlyWorseThan(half))
                .isTrue();
        assertThat(used(0.25, Verdict.PASS).clearlyWorseThan(half)).isFalse();
        Finding one = of(-400, 1, 1, Kind.FORCE, Sense.AT_MOST, 0, Verdict.PASS);
        assertThat(of(-400 * (1 - 1.1e-6), 1, 1, Kind.FORCE, Sense.AT_MOST, 0, Verdict.PASS)
                        .clearlyWorseThan(one))
                .isTrue();
        assertThat(of(-400 * (1 - 9e-7), 1, 1, Kind.FORCE, Sense.AT_MOST, 0, Verdict.PASS)
                        .clearlyWorseThan(one))
                .isFalse();
        assertThat(of(-500, 1, 1, Kind.FORCE, Sense.AT_MOST, 0, Verdict.PASS).clearlyWorseThan(one))
                .isFalse();
        Finding none = of(0, 1, 1, Kind.FORCE, Sense.AT_MOST, 0, Verdict.PASS);
        assertThat(none.clearlyWorseThan(none)).isFalse();
    }

    @Test
    void theLeastUsedComesFirst() {
        Finding little = used(0.25, Verdict.PASS);
        Finding much = used(0.75, Verdict.PASS);
        assertThat(List.of(much, little).stream().sorted(Finding.BY_USE)).containsExactly(little, much);
    }

    /** One that stands for another names both. */
    @Test
    void oneThatStandsForAnotherIsNamedByBoth() {
        Finding worst = used(1.25, Verdict.FAIL);
        Then then = new Then(worst, Text.words("stuck fast"), List.of("One"));
        Finding trouble = new Finding(
                "what-if/wheel",
                "Wheel sinks: what then",
                1,
                1,
                1,
                Kind.FORCE,
                Sense.AT_MOST,
                1,
                WORST,
                Verdict.FAIL,
                "s",
                then.note(),
                then,
                false);
        assertThat(trouble.named()).isEqualTo("Wheel sinks: Left pin: bending");
        assertThat(worst.named()).isEqualTo("Left pin: bending");
        assertThat(trouble.titled("Other: x").then()).isEqualTo(then);
    }
}
