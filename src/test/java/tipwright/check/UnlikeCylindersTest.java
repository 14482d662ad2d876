// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;
import tipwright.check.actuator.BucklingCheck;
import tipwright.check.actuator.PushCheck;
import tipwright.check.actuator.Ratings;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.geometry.Vec2;
import tipwright.load.Gravity;

/** Cylinders of 40 and 60 mm bore on one line: one pressure, so 16 and 36 parts of 52. By hand from p = F / A and moments along the pivot. */
class UnlikeCylindersTest {
    private static final String ACTUATOR =
            "- {z: 0 mm, actuator: {kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}}";

    private static String ram(int z, int bore) {
        return "- {z: " + z + " mm, actuator: {kind: hydraulic, bore: " + bore
                + " mm, rod: {diameter: 30 mm}, closed: 800 mm, stroke: 900 mm, relief-pressure: 100 bar, efficiency: 100 %}}";
    }

    private static Analysis analysis() throws CannotComputeException {
        return Analyser.analyse(Examples.read(swap(Examples.BOX, ACTUATOR, ram(-300, 40) + "\n      " + ram(300, 60))
                + "friction: {pivot: 0, pins: 0}\n"));
    }

    @Test
    void forceActsWhereTheAreasPutIt() throws CannotComputeException {
        double middle = (-0.3 * 16 + 0.3 * 36) / 52;
        for (Row row : analysis().cases().get(0).rows()) {
            Balance b = row.rest();
            if (b.force() > 0) {
                Vec2 u = row.pose().tankPin().minus(row.pose().framePin()).unit();
                // The bearing at z = +0.5: moments about the one at -0.5; the tank's weight is in the middle plane.
                double share = middle + 0.5;
                double y = u.y() * b.force() * share - row.load().mass() * Gravity.G / 2;
                assertThat(b.bearings().get(1).y()).isCloseTo(y, within(1e-6));
                assertThat(b.bearings().get(1).x()).isCloseTo(u.x() * b.force() * share, within(1e-6));
            }
        }
    }

    /** On one line the lowest relief valve opens first: a ram that is set higher never gets there, alone neither. p = F / A. */
    @Test
    void oneAloneGivesNoMoreThanTheFirstReliefValveLetsIt() throws CannotComputeException {
        String high = swap(ram(-300, 40), "relief-pressure: 100 bar", "relief-pressure: 150 bar");
        Design design = Examples.read(swap(Examples.BOX, ACTUATOR, high + "\n      " + ram(300, 60)));
        Actuator small = design.drive().actuators().get(0).actuator();
        double bore = Math.PI / 4 * 0.04 * 0.04;
        double rod = Math.PI / 4 * 0.03 * 0.03;
        assertThat(Ratings.one(design, small, 0.9, true)).isCloseTo(100e5 * bore, within(1e-6));
        assertThat(Ratings.one(design, small, 0.9, false)).isCloseTo(100e5 * (bore - rod), within(1e-6));
    }

    @Test
    void eachBearsItsShare() throws CannotComputeException {
        Analysis analysis = analysis();
        List<Finding> rods = new BucklingCheck().run(analysis);
        for (int i = 0; i < 2; i++) {
            Finding rod = rods.get(i);
            double all = rod.worst().balance(analysis.cases()).force();
            assertThat(rod.demand()).isCloseTo(all * (i == 0 ? 16 : 36) / 52, within(1e-6));
        }
        // together they give p times both areas, not twice the weaker one
        Finding push = new PushCheck().run(analysis).get(0);
        assertThat(push.capacity()).isCloseTo(100e5 * Math.PI / 4 * (0.04 * 0.04 + 0.06 * 0.06), within(1e-3));
    }
}
