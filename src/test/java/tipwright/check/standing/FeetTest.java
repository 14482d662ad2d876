// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.One;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.around.Footing;
import tipwright.outline.MachinePart;

/** Which of four feet bears the most and which lifts first, by hand: an empty box of 157 kg that tips on a frame of 400 kg. */
class FeetTest {
    private static final double G = 9.80665;
    private static final double BOX = 5 * 0.004 * 7850;
    private static final double KG = 400 + BOX;

    /** Feet at x = -800 mm and 700 mm, z = 500 mm and -500 mm, told from the far one on the right, to and fro. */
    private static final String EMPTY = Examples.BOX
            + "cases: {skip: [held, draining, heaped, caked, heel, settled, slid]}\n"
            + "frame: {mass: 400 kg, centre: [0 mm, -200 mm, 50 mm]}\n"
            + "supports: {outline: [[-800 mm, -500 mm], [700 mm, -500 mm], [700 mm, 500 mm], [-800 mm, 500 mm]],"
            + " y: -700 mm, rating: 5 kN}\n";

    private static Standing standing(String yaml) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        Footing footing = Objects.requireNonNull(analysis.design().supports());
        return Standing.of(analysis, footing, -0.7);
    }

    /** Where the whole machine's weight acts, from the middle between the feet, as a share of half their distance along x. */
    private static double along(int degrees) {
        double tilt = Math.toRadians(degrees);
        double x = 0.4 - 0.4 * Math.cos(tilt) + 0.5 * Math.sin(tilt);
        return (BOX * x / KG + 0.05) / 0.75;
    }

    /** On equal springs R = W (1 + x/a + z/b) / 4: the most on the foot at the dump end on the heavy side, at the full tilt. */
    @Test
    void theFootAtTheDumpEndOnTheHeavySide() throws CannotComputeException {
        Standing stands = standing(EMPTY);
        double most = KG * G * (1 + along(80) + 400 * 0.05 / KG / 0.5) / 4;
        assertThat(stands.heaviest().value()).isCloseTo(most, within(1e-6 * most));
        assertThat(Math.toDegrees(stands.heaviest().tilt())).isCloseTo(80, within(1e-9));
        assertThat(stands.heaviest().loadCase()).isEqualTo("empty");
        assertThat(stands.feet()).containsExactly(2);
        assertThat(stands.lifts()).isNull();
        // the box alone hangs over the edge by 0.12 m
        assertThat(stands.worstEdge().metric()).contains("x 700 mm").doesNotContain("x -800 mm");
        assertThat(stands.wind().isEmpty()).isTrue();
        // the other way round it is the one on the other side
        assertThat(standing(swap(EMPTY, "-200 mm, 50 mm", "-200 mm, -50 mm")).feet())
                .containsExactly(1);
    }

    /** With feet 100 mm apart the weight leaves their core where x/a + z/b passes 1: there the foot across from it lifts. */
    @Test
    void theFootAcrossLiftsFirst() throws CannotComputeException {
        String narrow = swap(
                EMPTY,
                "[[-800 mm, -500 mm], [700 mm, -500 mm], [700 mm, 500 mm], [-800 mm, 500 mm]]",
                "[[-800 mm, -50 mm], [700 mm, -50 mm], [700 mm, 50 mm], [-800 mm, 50 mm]]");
        int first = 0;
        while (along(first) + 400 * 0.05 / KG / 0.05 < 1) {
            first++;
        }
        assertThat(first).isBetween(5, 75);
        Standing stands = standing(narrow);
        assertThat(Objects.requireNonNull(stands.lifts()).metric()).isEqualTo(first + " deg (empty)");
        assertThat(stands.feet()).containsExactly(0, 2);
        Finding found = One.of(narrow, "tip-over/supports");
        assertThat(found.note().metric()).isEqualTo("load on one support; one lifts off at " + first + " deg (empty)");
        assertThat(found.capacity()).isEqualTo(5000);
    }

    /** On feet too soft for its height it falls over wherever it stands. */
    @Test
    void feetThatAreTooSoft() throws CannotComputeException {
        String soft = swap(EMPTY, "rating: 5 kN", "stiffness: [1 N/mm], rating: 5 kN");
        for (String id : new String[] {"tip-over/as-it-stands", "tip-over/supports"}) {
            Finding found = One.of(soft, id);
            assertThat(found.utilisation()).isEqualTo(Double.POSITIVE_INFINITY);
            assertThat(found.verdict()).isEqualTo(Verdict.FAIL);
        }
        Finding untold = One.of(swap(soft, ", rating: 5 kN", ""), "tip-over/supports");
        assertThat(untold.note().metric()).isEqualTo("supports.rating missing; it overturns");
        Standing stands = standing(soft);
        assertThat(stands.moments().restoring()).isZero();
        // as much as would hold it on hard ground about the first edge, at z = -500 mm
        assertThat(stands.moments().overturning()).isCloseTo(G * (400 * 0.55 + BOX * 0.5), within(1e-6));
        assertThat(stands.keeps().value()).isZero();
        assertThat(stands.tips()).isZero();
    }

    /**
     * Half full of liquid on soft feet: it runs after as the machine leans, by b^2 t / 12 h to the low side and b^2 t^2 / 24 h up in a
     * box of width b with h in it where t is the tangent of the lean.
     */
    @Test
    void whatIsLooseRunsAfterTheLean() throws CannotComputeException {
        String half = swap(
                EMPTY,
                "fill: 100 %, density: 1400 kg/m3",
                "fill: 50 %, density: 1400 kg/m3",
                "[held, draining,",
                "[empty, draining,",
                "[[-800 mm, -500 mm], [700 mm, -500 mm], [700 mm, 500 mm], [-800 mm, 500 mm]], y: -700 mm, rating: 5 kN",
                "[[-800 mm, -500 mm], [5 m, -500 mm], [5 m, 500 mm], [-800 mm, 500 mm]], y: -700 mm, stiffness: [90 N/mm]");
        double slope = Math.tan(Math.toRadians(3));
        double k = 90e3;
        double load = 0;
        double stiff = 0;
        for (double loose : new double[] {0, 1}) {
            double x = 0;
            double z = slope;
            for (int i = 0; i < 1000; i++) {
                double cos = 1 / Math.sqrt(1 + x * x + z * z);
                double up = 0.75 + loose * (x * x + z * z) / 12;
                double fx = (BOX * x * 1.6 + 400 * x * 0.5 + 700 * (loose * x / 6 + x * (up + 0.7))) / (KG + 700) - 2.1;
                double fz =
                        (BOX * z * 1.6 + 400 * (0.05 + z * 0.5) + 700 * (loose * z / 6 + z * (up + 0.7))) / (KG + 700);
                double press = (KG + 700) * G * cos;
                x = press * fx / (4 * k * 2.9 * 2.9);
                z = slope + press * fz / (4 * k * 0.5 * 0.5);
                stiff = loose > 0 ? stiff : load;
                load = press * (1 - fx / 2.9 + fz / 0.5) / 4;
            }
        }
        Standing stands = standing(half + "site: {cross-slope: 3 deg}\n");
        assertThat(load).isGreaterThan(1.005 * stiff);
        assertThat(stands.heaviest().value()).isCloseTo(load, within(1e-5 * load));
        assertThat(stands.heaviest().tilt()).isZero();
    }

    /** Ground that slopes down by 6 deg and the height of each weight move it out, to the dump end or to the left side: the edge is named. */
    @ParameterizedTest
    @CsvSource({"grade: 6 deg, 1, 0", "cross-slope: 6 deg, 0, 1"})
    void theEdgeThatItTurnsOverIsNamed(String slope, int x, int z) throws CannotComputeException {
        Standing stands = standing(EMPTY + "site: {" + slope + "}\n");
        double a = Math.toRadians(6);
        double tilt = Math.toRadians(80);
        double y = 0.4 + 0.4 * Math.sin(tilt) + 0.5 * Math.cos(tilt) + 0.7;
        double out = (400 * 0.5 + BOX * y) / KG * Math.tan(a);
        double share = 1 + along(80) + x * out / 0.75 + (400 * 0.05 / KG + z * out) / 0.5;
        double most = KG * G * Math.cos(a) * share / 4;
        assertThat(stands.heaviest().value()).isCloseTo(most, within(1e-6 * most));
        assertThat(stands.feet()).containsExactly(2);
        assertThat(stands.worstEdge().metric())
                .isEqualTo(
                        z == 0
                                ? "from x 700 mm, z -500 mm to x 700 mm, z 500 mm"
                                : "from x 700 mm, z 500 mm to x -800 mm, z 500 mm");
    }

    /** The foot that bears the most is shown by its number from 1; what turns nothing over says so. */
    @Test
    void whichFootIsShown() throws CannotComputeException {
        TipOverCheck check = new TipOverCheck();
        Analysis analysis = Analyser.analyse(Examples.read(swap(EMPTY, "to: 80 deg", "to: 20 deg")));
        List<Finding> found = check.run(analysis);
        assertThat(check.concerned(analysis, found.get(1)).words()).isEqualTo(MachinePart.support(3));
        assertThat(found.get(0).note().metric())
                .startsWith(
                        "nothing turns it over on this ground; parked any way round it keeps its margin on slopes up to ");
        assertThat(found.get(0).demand()).isZero();
        Finding turns = One.of(EMPTY, "tip-over/as-it-stands");
        assertThat(turns.note().metric())
                .startsWith("over the edge from x 700 mm, z -500 mm to x 700 mm, z 500 mm; parked ");
    }
}
