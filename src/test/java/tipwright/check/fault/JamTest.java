// SPDX-License-Identifier: Apache-2.0
package tipwright.check.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.Pose;
import tipwright.check.Checker;
import tipwright.check.One;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.geometry.Vec2;

/** A tank held fast: by hand from p A, Euler's column and a pin in double shear. */
class JamTest {
    private static final String ACTUATOR =
            "{kind: electric, closed: 800 mm, stroke: 900 mm, push: 12 kN, pull: 12 kN}}";
    private static final String THIN =
            "{kind: hydraulic, bore: 50 mm, rod: {diameter: 20 mm}, closed: 800 mm, stroke: 900 mm, relief-pressure: 160 bar}}";

    private static List<Finding> jam(String yaml) throws CannotComputeException {
        return Checker.findings(Examples.read(yaml)).stream()
                .filter(f -> f.id().startsWith("what-if/jam"))
                .toList();
    }

    /** The relief pressure on the whole bore, whatever the efficiency: 31.416 kN on a bare rod of 20 mm, pinned, at full length. */
    @Test
    void aThinRodBuckles() throws CannotComputeException {
        String yaml = swap(Examples.BOX, ACTUATOR, THIN);
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        double longest =
                analysis.poses().stream().mapToDouble(Pose::length).max().orElseThrow();
        double euler = Math.PI * Math.PI * 205e9 * Math.PI * Math.pow(0.02, 4) / 64 / (longest * longest);
        Finding found = jam(yaml).get(0);
        assertThat(found.demand()).isCloseTo(31_416, within(1.0));
        assertThat(found.utilisation()).isCloseTo(31_416 / euler, within(0.03 * 31_416 / euler));
        assertThat(found.verdict()).isEqualTo(Verdict.FAIL);
        // a relief valve in the pump that opens at a quarter takes a quarter
        Finding less = jam(yaml + "supply: {kind: pump, flow: 8 L/min, relief: 40 bar}\n")
                .get(0);
        assertThat(less.demand()).isCloseTo(31_416 / 4.0, within(0.3));
    }

    /** 24 kN, twice the rating, in double shear through 20 mm: M = F (10/4 + 20/8 + 1/2 mm). */
    @Test
    void aPinBearsWhereTheMotorStalls() throws CannotComputeException {
        String yaml = Examples.BOX.replace(
                "    actuators:",
                "    frame-pin-joint: {diameter: 20 mm, lug: 20 mm, cheek: 10 mm, gap: 1 mm, yield: 235 MPa}\n    actuators:");
        double moment = 24_000 * (0.010 / 4 * 2 + 0.0005);
        double sigma = 32 * moment / (Math.PI * Math.pow(0.02, 3));
        double tau = 4 * 12_000 / (3 * Math.PI / 4 * 0.02 * 0.02);
        List<Finding> found = jam(yaml);
        assertThat(found.get(0).demand()).isCloseTo(Math.sqrt(sigma * sigma + 3 * tau * tau), within(1.0));
        assertThat(found.get(0).factor()).isEqualTo(1);
        assertThat(found.get(1).verdict()).isEqualTo(Verdict.NOT_CHECKED);
        // the straight line from 10 to 4 mm/s ends at 10/6 of the rating
        String line = yaml.replace("push: 12 kN", "speed: {no-load: 10 mm/s, rated: 4 mm/s}, push: 12 kN");
        assertThat(jam(line).get(0).demand() / found.get(0).demand()).isCloseTo(10.0 / 12, within(1e-9));
    }

    /**
     * The link of a bell crank bears the motor's 24 kN by the levers of its crank, 47.7 kN stowed: two bars of 40 x 9 mm buckle, which a
     * normal dump does not ask. Second computation: moments about the crank's pivot, Euler's column. Source: statics.
     */
    @Test
    void aLinkThatHandsThePushOnBuckles() throws Exception {
        String yaml = swap(
                Files.readString(Path.of("geometry", "crank-cart.yaml")),
                "section: {shape: flat-bar, width: 60 mm, thickness: 12 mm}",
                "section: {shape: flat-bar, width: 40 mm, thickness: 9 mm}");
        Vec2 crank = new Vec2(-0.25, -0.05);
        Vec2 rod = new Vec2(-0.48, -0.45);
        Vec2 pin = new Vec2(-0.05, -0.29);
        Vec2 link = new Vec2(0, 0.24).minus(pin);
        Vec2 push = rod.minus(new Vec2(-1.19, -0.29)).unit();
        double bears = 24_000 * rod.minus(crank).cross(push) / pin.minus(crank).cross(link.unit());
        double euler = 2 * Math.PI * Math.PI * 205e9 * 0.04 * Math.pow(0.009, 3) / 12 / link.dot(link);
        Finding found = One.of(yaml, "what-if/jam");
        assertThat(found.demand()).isCloseTo(Math.abs(bears), within(1.0));
        assertThat(found.capacity()).isCloseTo(euler, within(1e-3 * euler));
        assertThat(found.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(found.note().metric()).contains("Link: buckling");
        assertThat(One.all(yaml, "link").stream().map(Finding::verdict)).doesNotContain(Verdict.FAIL);
    }

    /** What a crank gives is not known: no pass. */
    @Test
    void aHandWinchIsNotTold() throws CannotComputeException {
        assertThat(jam(Examples.BOX + "supply: {kind: hand-winch, travel-per-turn: 3 mm}\n"))
                .hasSize(1)
                .allMatch(f -> f.verdict() == Verdict.NOT_CHECKED);
    }

    /** Two unlike motors, the second with 40 kN by itself on a bare rod of 22 mm that Euler's column lets go: it is told which one. */
    @Test
    void theOneOfTwoUnlikeThatIsWorstIsNamed() throws CannotComputeException {
        String strong = swap(ACTUATOR, "push: 12 kN, pull: 12 kN", "push: 20 kN, pull: 12 kN, rod: {diameter: 22 mm}");
        String weak = swap(ACTUATOR, "pull: 12 kN", "pull: 12 kN, rod: {diameter: 60 mm}");
        String first = swap(Examples.BOX, "{z: 0 mm, actuator: " + ACTUATOR, "{z: -300 mm, actuator: " + weak);
        String yaml = swap(first, "tilt: {to", "      - {z: 300 mm, actuator: " + strong + "\ntilt: {to");
        Finding found = jam(yaml).get(0);
        assertThat(found.demand()).isCloseTo(40_000, within(1e-6));
        assertThat(found.note().metric()).startsWith("stuck fast, actuator 2 pushes with 40 kN");
    }
}
