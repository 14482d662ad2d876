// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.LinkPlan;
import tipwright.analysis.Row;
import tipwright.check.One;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.drive.FlatSection;
import tipwright.design.drive.LinkSection;
import tipwright.geometry.Vec2;

/** Bars of a link under loads by hand, and weights on a link against a beam on two supports. */
class LinkBarsTest {
    private static final double G = 9.80665;
    private static final double YIELD = 235e6;
    private static final String WEIGHT = "mass: 6 kg, centre: [-25 mm, -25 mm, 0 mm]";

    /** Two bars of 60 by 10 mm with holes of 20 mm, 2 m long. */
    private static LinkBars bars() {
        LinkSection made = new LinkSection("link", new FlatSection(0.06, 0.01), 2, 0.02, null, YIELD, 205e9);
        return new LinkBars(made, 2, Examples.read(Examples.BOX).factors());
    }

    /** Euler about the weaker axis, of both bars; Euler in the side view enlarges the bending, which has a factor of its own. */
    @Test
    void pressedAndBentAddUp() {
        double weak = 2 * Math.PI * Math.PI * 205e9 * 0.06 * 1e-6 / 12 / 4;
        double inPlane = 2 * Math.PI * Math.PI * 205e9 * 0.01 * 216e-6 / 12 / 4;
        LinkBars bars = bars();
        assertThat(bars.buckling()).isCloseTo(weak, within(1e-9 * weak));
        assertThat(bars.share(new LinkLoad.Borne(weak / 6, -1, 0))).isCloseTo(0.5, within(1e-12));
        assertThat(bars.share(new LinkLoad.Borne(-weak, weak, 0))).isZero();
        // 100 N m on 2 x t h^2 / 6
        double sigma = 100 / (2 * 0.01 * 0.0036 / 6);
        double bent = 2 * sigma / YIELD;
        assertThat(bars.share(new LinkLoad.Borne(-5, 5, 100))).isCloseTo(bent, within(1e-12));
        double squeeze = weak / 6;
        double share = 0.5 + bent / (1 - 3 * squeeze / inPlane);
        assertThat(bars.share(new LinkLoad.Borne(squeeze, -1, 100))).isCloseTo(share, within(1e-12));
        // pressed to Euler's load in the side view any bending is too much
        assertThat(bars.share(new LinkLoad.Borne(inPlane, -1, 100))).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(bars.share(new LinkLoad.Borne(inPlane, -1, 0))).isCloseTo(3 * inPlane / weak, within(1e-9));
    }

    /** T / (2 (w - d) t) and M / (2 t h^2 / 6); what is not drawn is not judged as drawn. */
    @Test
    void drawnAndBentAddUp() {
        double drawn = 8000 / (2 * (0.06 - 0.02) * 0.01);
        double bent = 50 / (2 * 0.01 * 0.0036 / 6);
        assertThat(bars().stress(new LinkLoad.Borne(-8000, 8000, 50))).isCloseTo(drawn + bent, within(1e-3));
        assertThat(bars().stress(new LinkLoad.Borne(0, 0, 50))).isZero();
        assertThat(bars().stress(new LinkLoad.Borne(8000, -8000, 50))).isZero();
    }

    private static String cart() throws IOException {
        return swap(
                Files.readString(Path.of("geometry", "crank-cart.yaml")),
                "tilt: {to: 45 deg",
                "tilt: {step: 9 deg, to: 45 deg");
    }

    private static LinkLoad load(Analysis analysis, String name) {
        LinkPlan plan = Objects.requireNonNull(
                analysis.mechanism().link(analysis.mechanism().bodies().indexOf(name)));
        return new LinkLoad(analysis, plan);
    }

    /**
     * A weight on a link at a share of the way from pin to pin and so far beside it, in two parts of half of it: what presses along, and a
     * beam that overhangs its supports where the weight is beyond a pin. Source: statics.
     */
    @ParameterizedTest
    @CsvSource({
        "0.5, 0",
        "0.25, 0",
        "0.75, 0",
        "0, 0",
        "1, 0",
        "-0.25, 0",
        "1.5, 0",
        "0.5, 0.1",
        "-0.25, -0.1",
        "1.5, 0.2"
    })
    void aWeightOnTheLink(double share, double beside) throws IOException, CannotComputeException {
        Vec2 from = new Vec2(-0.05, -0.29);
        Vec2 line = new Vec2(0, 0.24).minus(from);
        double length = line.norm();
        Vec2 u = line.unit();
        Vec2 at = from.plus(line.times(share)).plus(new Vec2(-u.y(), u.x()).times(beside));
        String place = String.format(Locale.ROOT, "centre: [%.9f m, %.9f m, 0 mm]", at.x(), at.y());
        String yaml = swap(cart(), WEIGHT, "mass: 40 kg, " + place);
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        Row row = analysis.cases().get(0).rows().get(1);
        int body = analysis.mechanism().bodies().indexOf("link");
        double turn = row.pose().bodies().get(body).turn();
        Vec2 pull = analysis.design().site().up().xy().times(-40 * G);
        Vec2 now = u.tilted(turn);
        double along = pull.dot(now);
        double across = Math.abs(now.x() * pull.y() - now.y() * pull.x());
        // the supports' forces, then the moment under the weight or at the support that it hangs over
        double far = across * share;
        double near = across - far;
        double moment = share >= 0 && share <= 1 ? near * share * length : share < 0 ? far * length : near * length;
        LinkLoad.Borne borne = load(analysis, "link").at(row.pose(), row.rest());
        double expected = Math.abs(moment) + Math.abs(along * beside);
        assertThat(borne.bend()).isCloseTo(expected, within(1e-6 * (1 + expected)));
        assertThat(borne.squeeze() + borne.draw()).isCloseTo(Math.abs(along), within(1e-6));
        assertThat(borne.squeeze()).isGreaterThan(0);
    }

    /** A spring from frame to tank sits on no link; one that begins or ends on it makes it untold. */
    @Test
    void aSpringElsewhereLeavesTheLinkToBeChecked() throws IOException, CannotComputeException {
        String spring = "assists:\n  - {kind: gas-spring, name: helper, from: {body: %s, at: [-100 mm, -100 mm]},"
                + " to: {body: %s, at: [0 mm, 300 mm]}, extended: 2 m, stroke: 1900 mm, force: 10 N, compressed-force: 10 N}\n";
        String yaml = cart();
        Finding told = One.of(swap(yaml, "assists:\n", spring.formatted("frame", "tank")), "link/link");
        assertThat(told.verdict()).isEqualTo(Verdict.PASS);
        for (String sprung : new String[] {spring.formatted("link", "tank"), spring.formatted("frame", "link")}) {
            Finding untold = One.of(swap(yaml, "assists:\n", sprung), "link/link");
            assertThat(untold.verdict()).isEqualTo(Verdict.NOT_CHECKED);
            assertThat(untold.note().metric()).isEqualTo("a spring sits on it, so it bends; check it by hand");
        }
    }
}
