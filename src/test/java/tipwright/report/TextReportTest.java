// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Pose;
import tipwright.analysis.Stop;
import tipwright.check.Checks;
import tipwright.check.HowFull;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Verdict;
import tipwright.load.Emptying;
import tipwright.quantity.UnitSystem;

/** What a builder reads after a check. */
class TextReportTest {
    private static final Demo DEMO = Demo.shipped();

    private static String text(Demo demo) {
        return TextReport.of(demo.checked(), Style.PLAIN);
    }

    @Test
    void everyLineFitsAHundredColumnsAndIsPlainAscii() {
        for (String line : text(DEMO).split("\n")) {
            assertThat(line.length()).as(line).isLessThanOrEqualTo(100);
            assertThat(line).matches("[ -~]*");
        }
    }

    @Test
    void theJobStandsFirstInASentence() {
        assertThat(text(DEMO))
                .startsWith("Silt trailer\n")
                .contains("of slurry in it", "moved by one electric actuator, straight from frame to tank");
    }

    @Test
    void theVerdictIsAWordAndASign() {
        Demo pass = DEMO.withFindings(Demo.finding("a", Verdict.PASS, 0.5, ""));
        Demo close = DEMO.withFindings(
                Demo.finding("a", Verdict.PASS, 0.5, ""), Demo.finding("b", Verdict.CLOSE, 0.9, "almost"));
        Demo fail = DEMO.withFindings(
                Demo.finding("a", Verdict.CLOSE, 0.9, "almost"), Demo.finding("b", Verdict.FAIL, 1.5, "breaks"));
        assertThat(text(pass)).contains("+ VERDICT: PASSES\n", "Normal dump: passes. 1 of 1 check passes.");
        assertThat(text(close))
                .contains(
                        "! VERDICT: CLOSE\n",
                        "1 of 2 checks pass, 1 is close.",
                        "Closest to failing: full, outlet shut,");
        assertThat(text(fail)).contains("X VERDICT: FAILS\n", "1 of 2 checks fails, 1 is close. Worst: full, outlet");
    }

    @Test
    void whatWasNotCheckedIsSaidInTheVerdictAndListedWithTheReason() {
        Demo demo = DEMO.withFindings(
                Demo.finding("a", Verdict.PASS, 0.5, ""),
                Demo.finding("b", Verdict.NOT_CHECKED, 0, "bearing.c0 missing"));
        assertThat(text(demo))
                .contains("+ VERDICT: PASSES SO FAR, 1 check cannot tell", "  ? Title of b: bearing.c0 missing")
                .endsWith("+ VERDICT: PASSES SO FAR, 1 check cannot tell\n");
    }

    /** A check whose rule does not reach so far does not stand under 'give the sizes that are missing'. */
    @Test
    void whatNoSizeWouldHelpStandsApart() {
        Finding missing = Demo.finding("a", Verdict.NOT_CHECKED, 0, "bearing.c0 missing");
        Finding link = new Findings(
                        Checks.all().get(0), DEMO.result().analysis().design())
                .cannot("long link", "it has more than two pins, so it bends");
        String both = text(DEMO.withFindings(missing, link));
        assertThat(both.indexOf("Cannot tell yet: give the sizes that are missing."))
                .isBetween(0, both.indexOf("? Title of a: bearing.c0 missing"));
        assertThat(both.indexOf("Cannot tell, for another reason than a missing size."))
                .isBetween(both.indexOf("? Title of a: bearing.c0 missing"), both.indexOf("it has more than two pins"));
        assertThat(text(DEMO.withFindings(link))).doesNotContain("sizes that are missing");
        assertThat(text(DEMO.withFindings(missing))).doesNotContain("for another reason");
        assertThat(CannotTell.toldInFull(List.of(missing))).isEqualTo("which sizes are missing");
        assertThat(CannotTell.toldInFull(List.of(link))).isEqualTo("why");
        assertThat(CannotTell.toldInFull(List.of(missing, link))).contains("missing, and why else");
    }

    @Test
    void checksStandWorstFirstWithBarDemandCapacityAndPlace() {
        Demo demo = DEMO.withFindings(
                Demo.finding("a", Verdict.PASS, 0.52, ""),
                Demo.finding("b", Verdict.FAIL, 1.5, "it breaks"),
                Demo.finding("c", Verdict.PASS, 0.7, ""),
                Demo.finding("d", Verdict.CLOSE, 0.9, "almost"));
        String text = text(demo);
        assertThat(text.indexOf("Title of b  ")).isLessThan(text.indexOf("Title of d  "));
        assertThat(text.indexOf("Title of d  ")).isLessThan(text.indexOf("Title of c  "));
        assertThat(text.indexOf("Title of c  ")).isLessThan(text.indexOf("Title of a  "));
        assertThat(text)
                .contains(" X FAILS   [##########>  150%  Title of b  1.5 kN  1 kN  12 deg, full,\n")
                .contains(" + passes  [#####.....]   52%  Title of a   520 N  1 kN  12 deg, full,\n");
    }

    @Test
    void forcesSayTheirSignInWordsWithFriction() {
        Demo demo = DEMO.withRows(row -> Demo.withForce(row, -1000, 2500, -4000));
        assertThat(text(demo))
                .contains("full, outlet shut        pushes 2.5 kN at 0 deg, raising  pulls 4 kN at 0 deg, lowering");
        assertThat(text(DEMO.withRows(row -> Demo.withForce(row, 1, 1, 1)))).contains("never pulls");
    }

    @Test
    void theEnvelopeNamesTheGoverningCase() {
        Demo demo = DEMO.withRows(row -> row);
        assertThat(text(demo))
                .contains("  tilt  pin to  stroke", "   deg  pin mm    used", "  tilt  pull", "into its base");
        List<Pose> poses = DEMO.analysis().poses();
        assertThat(Envelope.shown(DEMO.analysis()).stream().map(Envelope::pose))
                .hasSizeBetween(8, 17)
                .startsWith(poses.get(0))
                .endsWith(poses.get(poses.size() - 1));
    }

    @Test
    void usUnitsAreUsedThroughout() {
        String text = TextReport.of(DEMO.checked(), new Style(false, UnitSystem.US));
        String figures = text.substring(0, text.indexOf("Assumed, because"));
        assertThat(figures).contains(" lbf", " gal ", " lb ", " in ").doesNotContain(" kN", " mm", " L ", " kg");
    }

    @Test
    void colourStandsOnlyWhereItIsWanted() {
        assertThat(text(DEMO)).doesNotContain("\u001b");
        Demo pass = DEMO.withFindings(Demo.finding("a", Verdict.PASS, 0.5, ""));
        assertThat(TextReport.of(pass.checked(), new Style(true, UnitSystem.METRIC)))
                .contains("\u001b[32m+ VERDICT: PASSES\u001b[0m");
    }

    @Test
    void whereTheLinkageStopsIsTheFirstWarning() {
        assertThat(text(DEMO.withStop(new Stop(0.5, "jammed at 28.6 deg")))).contains("\n  ! jammed at 28.6 deg\n");
    }

    @Test
    void howFullNamesTheLevelSwitchAndTheLimit() {
        assertThat(text(DEMO.withHowFull(new HowFull(0.62, 0.4, 560, 0.45, 1200, "Actuator: push", List.of()))))
                .contains("Up to 62 %: 400 L, 560 kg of this slurry. Set the level switch 450 mm above")
                .contains("Above that fails: Actuator: push.")
                .contains("up to 1200 kg/m3");
        assertThat(text(DEMO.withHowFull(new HowFull(1, 0.4, 560, 0.45, Double.NaN, null, List.of()))))
                .contains("To the rim: 400 L", "Filled to the rim it fails even with plain water.");
        assertThat(text(DEMO.withHowFull(null))).contains("so no fill level passes");
    }

    @Test
    void emptyingTellsWhatStaysAndTheTiltNeeded() {
        Emptying emptying = new Emptying(
                new Emptying.Residue(0.02, 0.04, Math.toRadians(61)), new Emptying.Residue(0.1, 0.3, null));
        String full = Math.round(Math.toDegrees(DEMO.analysis().design().tilt().to())) + " deg";
        assertThat(text(DEMO.withEmptying(emptying)))
                .contains("Liquid: 20 L (4 %) is left at " + full + "; it must tilt to 61 deg to leave 2 % or less.")
                .contains("Grit: 100 L (30 %) is left at " + full + "; no tilt up to 180 deg leaves");
    }

    @Test
    void defaultsThatWereTakenAreListed() {
        assertThat(text(DEMO)).contains("friction: pins 0.15; pivot 0.01 (ball bearing)", "bearing-static 2.0");
    }

    @Test
    void everyCautionIsShown() {
        String text = text(DEMO).replaceAll("\\s+", " ");
        for (String caution : Cautions.all()) {
            assertThat(text).contains(caution);
        }
    }

    @Test
    void namesFromTheFileCannotSteerTheTerminal() {
        Demo demo = DEMO.withFindings(Demo.finding("evil\u001b[2J\u202e", Verdict.FAIL, 2, "a\u0007b"));
        assertThat(text(demo)).doesNotContain("\u001b", "\u0007", "\u202e");
    }
}
