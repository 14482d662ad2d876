// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.joint.PinCheck;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.QuantityException;
import tipwright.quantity.UnitSystem;

/** What is put into the formulas leads, worked out again from the words, to the figures of the findings. */
class WorkedTest {
    private static final String DESIGN = swap(
                    Examples.BOX,
                    "c0: 19 kN}}\n    - {z: 500 mm",
                    "c0: 19 kN}}\n    - {z: 520 mm",
                    "push: 12 kN",
                    "rod: {diameter: 30 mm}, push: 12 kN",
                    "drive:",
                    "  shaft: {diameter: 40 mm, overhang: 45 mm}\ndrive:")
            + "site: {cross-slope: 3 deg, grade: 2 deg}\nfriction: {pivot: 0, pins: 0}\n";

    private static String worked(String id) throws CannotComputeException {
        Analysis analysis = tipwright.analysis.Analyser.analyse(Examples.read(DESIGN));
        for (Check check : Checks.all()) {
            for (Finding f : check.run(analysis)) {
                if (f.id().equals(id)) {
                    return check.worked(analysis, f, UnitSystem.METRIC);
                }
            }
        }
        throw new AssertionError("no finding " + id);
    }

    private static double number(String text, String before, Kind kind) throws QuantityException {
        Matcher m = Pattern.compile(Pattern.quote(before) + "(-?[0-9.]+ [A-Za-z]+( m)?)")
                .matcher(text);
        assertThat(m.find()).as(text).isTrue();
        return Quantities.parse(m.group(1), kind);
    }

    @Test
    void forceIsWeightTimesLeverOverArm() throws CannotComputeException, QuantityException {
        String push = worked("push");
        double weight = number(push, "m/s2 = ", Kind.FORCE);
        double lever = number(push, "about the pivot ", Kind.LENGTH);
        double arm = number(push, "arm dL/dtilt = ", Kind.LENGTH);
        double rest = number(push, "; ", Kind.FORCE);
        assertThat(weight * lever / arm).isCloseTo(rest, within(2e-3 * rest));
        assertThat(worked("hold")).isEmpty();
    }

    @Test
    void bearingLoadFollowsFromItsParts() throws CannotComputeException, QuantityException {
        String text = worked("bearing-static/bearing-1");
        double radial = number(text, "Fr = ", Kind.FORCE);
        double axial = number(text, "Fa = ", Kind.FORCE);
        assertThat(axial).isPositive();
        double p0 = number(text, "Fr) = ", Kind.FORCE);
        assertThat(Math.max(0.6 * radial + 0.5 * axial, radial)).isCloseTo(p0, within(1e-3 * p0));
    }

    @Test
    void shaftStressFollowsFromMomentAndShear() throws CannotComputeException, QuantityException {
        String text = worked("shaft/at-bearing-2");
        double sigma = number(text, "sigma = ", Kind.PRESSURE);
        double tau = number(text, "tau = ", Kind.PRESSURE);
        double moment = number(text, "M = ", Kind.MOMENT);
        assertThat(32 * moment / (Math.PI * Math.pow(0.04, 3))).isCloseTo(sigma, within(1e-3 * sigma));
        double combined = number(text, "combined ", Kind.PRESSURE);
        assertThat(Math.sqrt(sigma * sigma + 3 * tau * tau)).isCloseTo(combined, within(1e-3 * combined));
    }

    @Test
    void strokeAndAngleAndColumn() throws CannotComputeException {
        assertThat(worked("stroke/drawn-in")).matches("left 912\\.4 mm - closed 800 mm = 112\\.4 mm");
        assertThat(worked("transmission")).matches("sin\\(angle\\) = .* mm / 850 mm = 0\\.\\d+");
        assertThat(worked("buckling")).startsWith("rod E I = 8151 N m2, L = ");
    }

    /** What is worked out for every pin of a linkage is what its finding says. */
    @Test
    void pinsOfALinkageAreWorkedWithTheirOwnForce() throws CannotComputeException, QuantityException {
        Result result = Checker.check(((Reading.Good) DesignFile.shipped("crank-cart.yaml")).design());
        PinCheck check = new PinCheck();
        for (String pin : List.of("frame-pin", "rod-pin", "crank-pivot", "link-pin", "tank-pin")) {
            Finding f = result.findings().stream()
                    .filter(g -> g.id().equals("pin/" + pin))
                    .findFirst()
                    .orElseThrow();
            String text = check.worked(result.analysis(), f, UnitSystem.METRIC);
            assertThat(number(text, "combined ", Kind.PRESSURE))
                    .as(pin + ": " + text)
                    .isCloseTo(f.demand(), within(1e-3 * f.demand()));
        }
    }
}
