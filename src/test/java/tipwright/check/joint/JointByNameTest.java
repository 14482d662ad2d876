// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.JointPlan;
import tipwright.analysis.Row;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;
import tipwright.quantity.UnitSystem;

/** A joint named in a design is that joint of the mechanism, with the force that its balance says. */
class JointByNameTest {
    private static final String LUG =
            "    lug: {width: 100 mm, thickness: 10 mm, hole: 25 mm, end: 60 mm, yield: 235 MPa}\n";

    private static String shipped(String name, String joint, String more) throws IOException {
        String text = Files.readString(Path.of("geometry", name + ".yaml"));
        return text.substring(0, text.indexOf("fastenings:")) + "fastenings:\n  - joint: " + joint + "\n" + more + LUG;
    }

    private static double most(Analysis analysis, String joint) {
        List<String> names =
                analysis.mechanism().joints().stream().map(JointPlan::name).toList();
        int index = names.indexOf(joint);
        double most = 0;
        for (CaseResult c : analysis.cases()) {
            for (Row row : c.rows()) {
                for (var b : List.of(row.rest(), row.raise(), row.lower())) {
                    most = Math.max(most, b.joints().get(index).norm());
                }
            }
        }
        return most;
    }

    /** A crank's or a knee's tank pin is the pin between link and tank, not the end of the actuator. */
    @Test
    void theTankPinOfAMechanismIsNotTheActuators() throws IOException, CannotComputeException {
        for (String name : List.of("crank-cart", "knee-stand")) {
            for (String on : List.of("", "    on: tank\n")) {
                Analysis analysis = Analyser.analyse(Examples.read(shipped(name, "tank-pin", on)));
                Finding net = new LugCheck()
                        .run(analysis).stream()
                                .filter(f -> f.id().endsWith("net-section"))
                                .findFirst()
                                .orElseThrow();
                // F / ((w - d) t)
                assertThat(net.demand())
                        .as(name + on)
                        .isCloseTo(most(analysis, "tank-pin") / (0.075 * 0.010), within(1e-3));
            }
        }
    }

    @Test
    void theWorkedFigureOfATankPinIsItsOwn() throws IOException, CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(Files.readString(Path.of("geometry", "crank-cart.yaml"))));
        PinCheck check = new PinCheck();
        List<Finding> pins = new ArrayList<>(check.run(analysis));
        Finding tank = pins.stream()
                .filter(f -> f.id().equals("pin/tank-pin"))
                .findFirst()
                .orElseThrow();
        String worked = check.worked(analysis, tank, UnitSystem.METRIC);
        String stress =
                tipwright.quantity.Quantities.show(tank.demand(), tipwright.quantity.Kind.PRESSURE, UnitSystem.METRIC);
        assertThat(worked.isEmpty() || worked.endsWith("combined " + stress))
                .as(worked + " against " + stress)
                .isTrue();
    }

    /** Both bearings' sum in one place is nobody's load: where they pull against each other it would be too little. */
    @Test
    void theWholePivotIsNoJointToWeld() throws IOException {
        Reading reading = DesignFile.read(
                "test.yaml", shipped("crank-cart", "pivot", ""), NamedFiles.folder(Path.of("geometry")));
        assertThat(reading).isInstanceOf(Reading.Bad.class);
        assertThat(reading.toString()).contains("no joint 'pivot'").contains("bearing-1");
    }

    /** A carriage on a rail moves against the frame, and its couple is no force at a pin. */
    @Test
    void aSlideIsNotTakenForAPin() throws IOException, CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(shipped("slide-back", "rail", "")));
        List<Finding> found = new LugCheck().run(analysis);
        assertThat(found).allMatch(f -> f.verdict() == Verdict.NOT_CHECKED);
        assertThat(found.get(0).note().metric()).contains("rail").contains("slide");
    }
}
