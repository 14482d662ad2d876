// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.One;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.geometry.Vec2;

/** Force that reaches links beside their middle puts F e on them across, which no rule for pins and links in a plane looks at. */
class TwistedLinksTest {
    private static final String CART = text("crank-cart");
    private static final String MOTOR = between(CART, "      - {z: 0 mm, actuator: ", "    pins:");
    private static final String LINKS = between(CART, "# What the two links look like", "frame:\n  mass");
    private static final String WELD =
            "  - {joint: crank-pivot, weld: {at: [-250 mm, -100 mm, 0 mm], leg: 6 mm, rectangle: {u: 80 mm, v: 80 mm}}}\n"
                    + "# Where the pins could go";

    private static String text(String example) {
        try {
            return Files.readString(Path.of("geometry", example + ".yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String between(String text, String from, String to) {
        int start = text.indexOf(from);
        return text.substring(start, text.indexOf(to, start));
    }

    private static String ram(double z, int bore, int rod) {
        return "      - {z: " + z + " mm, actuator: {kind: hydraulic, bore: " + bore + " mm, rod: {diameter: " + rod
                + " mm}, closed: 690 mm, stroke: 640 mm, relief-pressure: 100 bar}}\n";
    }

    private static String cart(String actuators) {
        String yaml = swap(CART, MOTOR, actuators, "# Where the pins could go", WELD);
        return actuators.contains("hydraulic")
                ? swap(yaml, between(yaml, "supply:", "\n"), "supply: {kind: pump, flow: 8 L/min}")
                : yaml;
    }

    private static Verdict verdict(String yaml, String id) throws CannotComputeException {
        return One.of(yaml, id).verdict();
    }

    private static void twisted(String yaml, boolean twisted) throws CannotComputeException {
        Verdict crank = twisted ? Verdict.NOT_CHECKED : Verdict.PASS;
        assertThat(verdict(yaml, "pin/crank-pivot")).isEqualTo(crank);
        assertThat(verdict(yaml, "pin/link-pin")).isEqualTo(crank);
        assertThat(verdict(yaml, "weld/crank-pivot")).isEqualTo(crank);
        assertThat(verdict(yaml, "pin/frame-pin")).isEqualTo(Verdict.PASS);
        assertThat(verdict(yaml, "pin/tank-pin")).isEqualTo(Verdict.PASS);
    }

    /**
     * Bores of 60 and 50 mm 100 mm on either side push at (25 - 36)/61 of that, 18 mm beside the crank; their rings of oil, 11 and 21
     * parts, pull 31 mm beside it. Source: p = F / A.
     */
    @Test
    void unlikeCylindersPushTheCrankAside() throws CannotComputeException {
        String unlike = cart(ram(-100, 60, 50) + ram(100, 50, 20));
        String undrawn = swap(unlike, LINKS, "");
        for (String yaml : new String[] {unlike, undrawn}) {
            twisted(yaml, true);
            Finding found = One.of(yaml, "pin/crank-pivot");
            assertThat(found.missing()).isFalse();
            assertThat(found.note().metric()).startsWith("force reaches a link beside its middle");
        }
        twisted(cart(ram(-100, 50, 20) + ram(100, 50, 20)), false);
        twisted(swap(undrawn, ram(-100, 60, 50), ram(-100, 50, 20)), false);
        // both bores alike, so only the pull is aside: it pushes all the way here
        twisted(cart(ram(-100, 50, 40) + ram(100, 50, 20)), false);
    }

    /** That bores alike push in the middle does not tell what the rods' rings do once the drive pulls on a tank that is stuck. */
    @Test
    void aJamPullsAsideWhereTheDumpDoesNot() throws CannotComputeException {
        String same = cart(ram(-100, 50, 20) + ram(100, 50, 20));
        String thick = cart(ram(-100, 50, 40) + ram(100, 50, 20));
        assertThat(One.of(same, "what-if/jam-other-parts").note().metric()).doesNotContain("crank pivot");
        assertThat(One.of(thick, "what-if/jam-other-parts").note().metric())
                .contains("crank pivot")
                .contains("welds at the crank pivot");
    }

    /** One motor beside the crank that is drawn, by less and by more than a thousandth of a millimetre. */
    @Test
    void theCrankLiesWhereItIsDrawn() throws CannotComputeException {
        for (double edge : new double[] {45.0018, 45.0022}) {
            String drawn = swap(cart(MOTOR), "z: [-45 mm, 45 mm]", "z: [-45 mm, " + edge + " mm]");
            assertThat(verdict(drawn, "pin/crank-pivot")).isEqualTo(edge < 45.002 ? Verdict.PASS : Verdict.NOT_CHECKED);
        }
        twisted(cart(swap(MOTOR, "z: 0 mm", "z: -30 mm")), true);
        String undrawn = swap(cart(swap(MOTOR, "z: 0 mm", "z: 30 mm")), LINKS, "");
        twisted(undrawn, false);
    }

    /** A link on one side of the crank alone: what it pulls with acts beside the crank, though the motor does not. */
    @Test
    void aLinkBesideTheCrankTwistsIt() throws CannotComputeException {
        String yaml = cart(MOTOR);
        String one = swap(yaml, between(yaml, "  - {body: link, outline", "\n"), "", ", z: [48 mm, 60 mm]}", "}");
        twisted(yaml, false);
        twisted(swap(one, "[-30 mm, 240 mm]]}", "[-30 mm, 240 mm]], z: [-12 mm, 12 mm]}"), false);
        String aside = swap(one, "[-30 mm, 240 mm]]}", "[-30 mm, 240 mm]], z: [48 mm, 60 mm]}");
        assertThat(verdict(aside, "pin/crank-pivot")).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(verdict(aside, "link/link")).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(verdict(aside, "pin/frame-pin")).isEqualTo(Verdict.PASS);
    }

    /** A pin that breaks without the twist breaks with it. */
    @Test
    void whatFailsAnywayFails() throws CannotComputeException {
        String thin = "{pin: crank-pivot, joint: {diameter: 12 mm";
        String yaml =
                swap(cart(ram(-100, 60, 50) + ram(100, 50, 20)), "{pin: crank-pivot, joint: {diameter: 30 mm", thin);
        assertThat(verdict(yaml, "pin/crank-pivot")).isEqualTo(Verdict.FAIL);
        assertThat(verdict(yaml, "pin/link-pin")).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(One.of(yaml, "what-if/other-parts-when-one-carries-all")
                        .note()
                        .metric())
                .contains("link pin")
                .doesNotContain("tell: crank pivot", "; crank pivot");
    }

    /** Pins on both sides of a lever whose motor is 100 mm off the middle between the bearings do not bear half each. */
    @Test
    void pinsOnBothSidesOfALeverThatOnePushesAside() throws CannotComputeException {
        String joint = ", both-sides: yes, joint: {diameter: 40 mm, lug: 25 mm, cheek: 12 mm, gap: 1 mm}}";
        String lever = swap(FreeMechanismTest.LEVER, ", both-sides: yes}", joint);
        for (String pin : new String[] {"pin/fulcrum", "pin/low"}) {
            assertThat(verdict(lever, pin)).isEqualTo(Verdict.PASS);
            assertThat(verdict(swap(lever, "{z: 0 mm, actuator", "{z: 100 mm, actuator"), pin))
                    .isEqualTo(Verdict.NOT_CHECKED);
        }
    }

    /** Unlike motors share alike in a dump; stuck fast each stalls by itself, 100 mm beside the crank. */
    @Test
    void aJamOfUnlikeMotorsDoesNotTellOfTheCrank() throws CannotComputeException {
        String strong = swap(MOTOR, "push: 12 kN, pull: 12 kN", "push: 20 kN, pull: 20 kN", "z: 0 mm", "z: -100 mm");
        String yaml = cart(strong + swap(MOTOR, "z: 0 mm", "z: 100 mm"));
        twisted(yaml, false);
        assertThat(One.of(yaml, "what-if/jam-other-parts").note().metric()).contains("crank pivot; link pin");
        String alike = cart(swap(MOTOR, "z: 0 mm", "z: -100 mm") + swap(MOTOR, "z: 0 mm", "z: 100 mm"));
        assertThat(One.of(alike, "what-if/jam-other-parts").note().metric()).doesNotContain("crank pivot");
    }

    /**
     * A link that lies 200 mm beside the middle lifts the tank there, wherever the motor turns its crank: of its force on the tank each
     * bearing, 350 mm off the middle, loses 200/700 or gets it on top. Second computation: moments along the pivot. Source: statics.
     */
    @Test
    void aLinkBesideTheMiddleLiftsOneBearing() throws CannotComputeException {
        String still = swap(CART, LINKS, "", "site:", "friction: {pivot: 0, pins: 0}\nsite:");
        String link =
                "links: [{body: link, outline: [[-85 mm, -290 mm], [-15 mm, -290 mm], [0 mm, 240 mm]], z: [%s mm, %s mm]}]\n";
        for (int z : new int[] {200, -200}) {
            String aside = still + link.formatted(z - 6, z + 6);
            Analysis middle = Analyser.analyse(Examples.read(still));
            Analysis beside = Analyser.analyse(Examples.read(aside));
            for (int c = 0; c < middle.cases().size(); c++) {
                for (int i = 0; i < middle.poses().size(); i++) {
                    Balance a = middle.cases().get(c).rows().get(i).rest();
                    Balance b = beside.cases().get(c).rows().get(i).rest();
                    assertThat(b.force()).isCloseTo(a.force(), within(1e-6));
                    Vec2 lift = a.joints().get(3);
                    for (int k = 0; k < 2; k++) {
                        Vec2 more =
                                b.bearings().get(k).minus(a.bearings().get(k)).xy();
                        double share = (k == 0 ? 1 : -1) * z / 700.0;
                        assertThat(more.minus(lift.times(share)).norm()).isCloseTo(0, within(1e-6));
                    }
                }
            }
            assertThat(verdict(aside, "twist/tank")).isEqualTo(Verdict.NOT_CHECKED);
            assertThat(One.all(aside, "twist/frame")).extracting(Finding::id).doesNotContain("twist/frame");
        }
        assertThat(One.all(still + link.formatted(-6, 6), "twist")).isEmpty();
    }

    /** What holds the pin of a link bears it where the link lies: 30 mm beside a weld, 30 mm more on its lever. Source: statics. */
    @Test
    void aBracketBearsALinkWhereItLies() throws CannotComputeException {
        String motor = swap(CART, MOTOR, swap(MOTOR, "z: 0 mm", "z: 30 mm"));
        String drawn =
                swap(CART, "z: [-45 mm, 45 mm]", "z: [-15 mm, 75 mm]", "z: [-60 mm, -48 mm]", "z: [-30 mm, -18 mm]");
        String aside = swap(drawn, "z: [48 mm, 60 mm]", "z: [78 mm, 90 mm]");
        String undrawn = swap(motor, LINKS, "");
        double there = One.of(aside, "weld/tank-pin").demand();
        assertThat(there).isCloseTo(One.of(undrawn, "weld/tank-pin").demand(), within(1e-9 * there));
        assertThat(there).isGreaterThan(1.2 * One.of(CART, "weld/tank-pin").demand());
    }
}
