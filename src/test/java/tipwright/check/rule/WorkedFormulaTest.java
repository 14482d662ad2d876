// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.Swap.swap;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.check.One;
import tipwright.check.actuator.BucklingCheck;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.Rod;
import tipwright.design.actuator.TelescopicCylinder;
import tipwright.design.actuator.Tube;
import tipwright.design.drive.FlatSection;
import tipwright.design.drive.LinkSection;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;

/** The numbers of a finding in its formula. E of steel is 205 GPa. */
class WorkedFormulaTest {
    private static final double E = 205e9;

    private static WorkedFormula of(Extreme worst) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(Examples.BOX));
        Finding finding = new Findings(new BucklingCheck(), analysis.design())
                .compare("", 10_000, 40_000, 2, Kind.FORCE, worst, "");
        return new WorkedFormula(analysis, finding, UnitSystem.METRIC);
    }

    private static TelescopicCylinder stages(Double bore, Rod rod, Tube tube) {
        List<TelescopicCylinder.Stage> two =
                List.of(new TelescopicCylinder.Stage(0.08, 0.5, bore), new TelescopicCylinder.Stage(0.06, 0.5, bore));
        return new TelescopicCylinder(two, 0.7, 2e7, null, null, rod, 355e6, E, tube, null, 0.95, null);
    }

    private static String stiffness(double outside, double inside) {
        return Quantities.number(E * Math.PI / 64 * (Math.pow(outside, 4) - Math.pow(inside, 4))) + " N m2";
    }

    /** A rod alone, a rod and a body, and a body as long as the actuator. */
    @Test
    void aColumnIsToldByWhatIsKnownOfIt() throws CannotComputeException {
        WorkedFormula worked = of(Extreme.NOWHERE);
        Rod rod = new Rod(0.03, 0.01, null, 355e6, E);
        String made = "rod E I = " + stiffness(0.03, 0.01);
        Actuator bare = stages(null, rod, null);
        assertThat(worked.column(bare, 1.25)).isEqualTo(made + ", L = 1250 mm: P = 40 kN");
        Tube tube = new Tube(0.06, 0.05, 0.75);
        assertThat(worked.column(stages(null, rod, tube), 1.25))
                .isEqualTo(made + " over 500 mm, body E I = " + stiffness(0.06, 0.05) + " over 750 mm: P = 40 kN");
        assertThat(worked.column(stages(null, rod, tube), 0.75)).isEqualTo(made + ", L = 750 mm: P = 40 kN");
        assertThat(worked.column(stages(null, null, tube), 0.75)).isEmpty();
        assertThat(worked.column(stages(0.02, rod, tube), 1.3))
                .isEqualTo("E I from the body to the narrowest stage " + stiffness(0.06, 0.05) + " over 750 mm, "
                        + stiffness(0.08, 0.02) + " over 500 mm, " + stiffness(0.06, 0.02) + " over 50 mm: P = 40 kN");
    }

    /** A flat bar 50 by 10 mm of 235 MPa changes from Johnson to Euler at L/k = sqrt(2 pi^2 E / Sy) = 131.2, k = 10 mm / sqrt(12). */
    @Test
    void barsAreToldWithTheirSlenderness() throws CannotComputeException {
        WorkedFormula worked = of(Extreme.NOWHERE);
        LinkSection two = new LinkSection("tie", new FlatSection(0.05, 0.01), 2, 0, null, 235e6, E);
        double weak = E * 0.05 * Math.pow(0.01, 3) / 12;
        String made = "E I = " + Quantities.number(weak) + " N m2 about the weaker axis, A Sy = 117.5 kN, L = ";
        assertThat(worked.bars(two, 0.5))
                .isEqualTo("2 bars, each " + made + "500 mm, L/k = " + Quantities.number(0.5 / 0.01 * Math.sqrt(12))
                        + ", Euler: P = 40 kN");
        LinkSection one = new LinkSection("tie", new FlatSection(0.05, 0.01), 1, 0, null, 235e6, E);
        assertThat(worked.bars(one, 0.25))
                .isEqualTo(made + "250 mm, L/k = " + Quantities.number(0.25 / 0.01 * Math.sqrt(12))
                        + ", Johnson: P = 40 kN");
    }

    /** Where no load governs there are no numbers to put in. */
    @Test
    void withoutALoadThereIsNothingToWork() throws CannotComputeException {
        WorkedFormula worked = of(Extreme.NOWHERE);
        assertThat(worked.force()).isEmpty();
        assertThat(worked.bearing(0)).isEmpty();
        assertThat(worked.bush(0, 0.04, 0.05)).isEmpty();
        assertThat(worked.balance()).isEmpty();
    }

    /** p = F / (d b) of the pressure where it is largest; no words for the speed. */
    @Test
    void aBushIsWorkedByItsProjectedArea() throws CannotComputeException {
        String yaml = swap(
                Examples.BOX,
                "{kind: ball-insert, bore: 40 mm, c0: 19 kN}",
                "{kind: bush, bore: 40 mm, length: 50 mm, pressure: 10 MPa}");
        Design design = Examples.read(yaml);
        Finding found = One.of(yaml, "bush/bearing-2");
        Analysis analysis = Analyser.analyse(design);
        String worked = new WorkedFormula(analysis, found, UnitSystem.METRIC).bush(1, 0.04, 0.05);
        double load = found.demand() * 0.04 * 0.05;
        assertThat(worked)
                .isEqualTo("p = " + Quantities.show(load, Kind.FORCE, UnitSystem.METRIC) + " / (40 mm x 50 mm) = "
                        + Quantities.show(found.demand(), Kind.PRESSURE, UnitSystem.METRIC));
    }
}
