// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.JointPlan;
import tipwright.analysis.LinkPlan;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.drive.BoxSection;
import tipwright.design.drive.FlatSection;
import tipwright.design.drive.RoundSection;
import tipwright.design.drive.Section;
import tipwright.geometry.Vec2;

/** Links as columns, their loads by plane statics of the tank alone. */
class LinkTest {
    private static final double G = 9.80665;

    private static String text(String name) throws IOException {
        return Files.readString(Path.of("geometry", name + ".yaml"));
    }

    private static LinkPlan plan(Analysis analysis, String link) {
        return Objects.requireNonNull(
                analysis.mechanism().link(analysis.mechanism().bodies().indexOf(link)));
    }

    private static LinkLoad load(Analysis analysis, String link) {
        return new LinkLoad(analysis, plan(analysis, link));
    }

    private static Vec2 place(Analysis analysis, Pose pose, String joint) {
        JointPlan plan = analysis.mechanism().joints().stream()
                .filter(j -> j.name().equals(joint))
                .findFirst()
                .orElseThrow();
        return plan.place(pose);
    }

    /** One link and the pivot hold the tank: the link's force times its lever is the weight's moment. Source: statics. */
    @ParameterizedTest
    @CsvSource({"knee-stand, upper, knee, tank-pin", "rail-pusher, link, slider-pin, tank-pin"})
    void linkThatHoldsTheTankAgainstThePivot(String name, String link, String from, String to)
            throws CannotComputeException, IOException {
        Analysis analysis = Analyser.analyse(Examples.read(text(name)));
        Vec2 pivot = analysis.design().pivot().at();
        LinkLoad load = load(analysis, link);
        for (CaseResult result : analysis.cases()) {
            for (Row row : result.rows()) {
                Vec2 tankPin = place(analysis, row.pose(), to);
                Vec2 u = tankPin.minus(place(analysis, row.pose(), from)).unit();
                double weight = row.load().mass() * G;
                Vec2 pull = analysis.design().site().up().xy().times(-weight);
                double moment = row.centroid().xy().minus(pivot).cross(pull);
                double hand = -moment / tankPin.minus(pivot).cross(u);
                LinkLoad.Borne borne = load.at(row.pose(), row.rest());
                assertThat(borne.squeeze()).isCloseTo(hand, within(1e-6 * weight));
                assertThat(borne.draw()).isCloseTo(-hand, within(1e-6 * weight));
                assertThat(borne.bend()).isEqualTo(0);
            }
        }
    }

    /** Two pairs of links, the actuator and the weight hold the tank in balance. Source: statics. */
    @Test
    void linksOnBothSidesOfAFourBar() throws CannotComputeException, IOException {
        Analysis analysis = Analyser.analyse(Examples.read(text("kerb-swing")));
        LinkLoad main = load(analysis, "main");
        LinkLoad second = load(analysis, "second");
        assertThat(main.sides()).isEqualTo(2);
        for (CaseResult result : analysis.cases()) {
            for (Row row : result.rows()) {
                Pose pose = row.pose();
                double weight = row.load().mass() * G;
                Vec2 mainPin = place(analysis, pose, "main-tank-pin");
                Vec2 onMain =
                        mainPin.minus(place(analysis, pose, "pivot")).unit().times(both(main, row));
                Vec2 secondPin = place(analysis, pose, "second-tank-pin");
                Vec2 onSecond = secondPin
                        .minus(place(analysis, pose, "second-frame-pin"))
                        .unit()
                        .times(both(second, row));
                Vec2 push = pose.tankPin()
                        .minus(pose.framePin())
                        .unit()
                        .times(row.rest().force());
                Vec2 pull = analysis.design().site().up().xy().times(-weight);
                Vec2 centroid = row.centroid().xy();
                assertThat(onMain.plus(onSecond).plus(push).plus(pull).norm()).isLessThan(1e-6 * weight);
                double moment = mainPin.cross(onMain)
                        + secondPin.cross(onSecond)
                        + pose.tankPin().cross(push)
                        + centroid.cross(pull);
                assertThat(moment).isCloseTo(0, within(1e-6 * weight));
            }
        }
    }

    /** What both links of a pair bear together: the worse one's compression less the other's tension. */
    private static double both(LinkLoad load, Row row) {
        LinkLoad.Borne worse = load.at(row.pose(), row.rest());
        return worse.squeeze() - worse.draw();
    }

    /** The link's own weight: bends it as a beam on two supports, and presses its lower end more than its upper one. */
    @Test
    void weightOfTheLinkItself() throws CannotComputeException, IOException {
        Analysis analysis = Analyser.analyse(Examples.read(text("crank-cart")));
        LinkLoad load = load(analysis, "link");
        Row row = analysis.cases().get(0).rows().get(30);
        Vec2 low = place(analysis, row.pose(), "link-pin");
        Vec2 line = place(analysis, row.pose(), "tank-pin").minus(low);
        double length = line.norm();
        Vec2 pull = analysis.design().site().up().xy().times(-6 * G);
        double across = Math.abs(line.unit().cross(pull));
        LinkLoad.Borne borne = load.at(row.pose(), row.rest());
        // The weight hangs in the middle of the line between the pins.
        assertThat(borne.bend()).isCloseTo(across * length / 4, within(1e-6 * length));
        assertThat(borne.squeeze() + borne.draw()).isCloseTo(Math.abs(pull.dot(line.unit())), within(1e-6));
    }

    /** A long thin link by hand: pi^2 E I / L^2 about the weaker axis of two bars. */
    @Test
    void eulerByHand() throws CannotComputeException, IOException {
        String yaml = swap(text("rail-pusher"), "width: 80 mm, thickness: 20 mm}", "width: 60 mm, thickness: 10 mm}");
        Finding f = find(yaml, "link/link");
        // Pins at [-540, -390] and [140, 240] mm.
        double length = Math.hypot(0.680, 0.630);
        double euler = 2 * Math.PI * Math.PI * 205e9 * 0.06 * 1e-6 / 12 / (length * length);
        assertThat(f.capacity()).isCloseTo(euler, within(1e-9 * euler));
        assertThat(f.utilisation()).isCloseTo(3 * f.demand() / euler, within(1e-9));
        assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    }

    /** The sum of shares, by hand from the figures of the finding. */
    @Test
    void pressedAndBentByHand() throws CannotComputeException, IOException {
        String yaml = swap(text("crank-cart"), "mass: 6 kg, centre", "mass: 60 kg, centre");
        Finding f = find(yaml, "link/link");
        Analysis analysis = Analyser.analyse(Examples.read(yaml));
        LinkLoad load = load(analysis, "link");
        Row row = Objects.requireNonNull(f.worst().row(analysis.cases()));
        double worst = 0;
        for (Balance balance : List.of(row.rest(), row.raise(), row.lower())) {
            LinkLoad.Borne b = load.at(row.pose(), balance);
            double inPlane = 2
                    * Math.PI
                    * Math.PI
                    * 205e9
                    * 0.012
                    * Math.pow(0.06, 3)
                    / 12
                    / Math.pow(plan(analysis, "link").length(), 2);
            double sigma = b.bend() / (2 * 0.012 * 0.06 * 0.06 / 6);
            double share = 3 * b.squeeze() / f.capacity() + 2 * sigma / 235e6 / (1 - 3 * b.squeeze() / inPlane);
            worst = Math.max(worst, share);
        }
        assertThat(f.utilisation()).isCloseTo(worst, within(1e-9));
        assertThat(f.note().metric()).contains("bent by its own weight");
    }

    @Test
    void linkWithoutASectionOrWithThreePins() throws CannotComputeException, IOException {
        String yaml = text("crank-cart");
        String without = yaml.substring(0, yaml.indexOf("link-sections:")) + yaml.substring(yaml.indexOf("assists:"));
        assertThat(find(without, "link/link").note().metric())
                .startsWith("link-sections: 'link' missing; it is pressed with up to 9.967 kN");
        assertThat(find(without, "link/crank").note().metric())
                .isEqualTo("it has more than two pins, so it bends; check it by hand");
        String sprung = swap(
                yaml,
                "assists:\n",
                "assists:\n  - {kind: torsion-spring, name: coil, pin: link-pin, moment: 3 N m, rate: 0 N m/deg}\n");
        assertThat(find(sprung, "link/link").note().metric()).contains("a spring sits on it");
    }

    @Test
    void straightDriveHasNoLinks() throws CannotComputeException {
        assertThat(Checker.check(Examples.read(Examples.BOX)).findings()).noneMatch(f -> f.id().startsWith("link"));
    }

    @Test
    void drawnBesideTheHole() throws CannotComputeException, IOException {
        // as full as the file says; the whole check tells the worst of all part fills
        Analysis analysis = Analyser.analyse(Examples.read(text("slide-back")));
        Finding f = new LinkCheck()
                .run(analysis).stream()
                        .filter(found -> found.id().equals("link/tie-tension"))
                        .findFirst()
                        .orElseThrow();
        LinkLoad load = load(analysis, "tie");
        Row row = Objects.requireNonNull(f.worst().row(analysis.cases()));
        double draw = Stream.of(row.rest(), row.raise(), row.lower())
                .mapToDouble(b -> load.at(row.pose(), b).draw())
                .max()
                .orElseThrow();
        double net = 0.06 * 0.06 - 0.052 * 0.052 - 2 * 0.004 * 0.03;
        assertThat(f.demand()).isCloseTo(draw / net, within(1e-9 * f.demand()));
        assertThat(f.capacity() / f.factor()).isCloseTo(235e6 / 2, within(1.0));
    }

    /** Sections against the sum over a fine grid of little squares, which knows no formula. */
    @Test
    void sectionsAgainstAGrid() {
        Section tube = new RoundSection(0.06, 0.05);
        double r = 0.03;
        grid(tube, 0.012, (x, y) -> Math.hypot(x, y) < r && Math.hypot(x, y) > 0.025);
        grid(new RoundSection(0.06, 0), 0.02, (x, y) -> Math.hypot(x, y) < r);
        grid(new RoundSection(0.06, 0.01), 0.02, (x, y) -> Math.hypot(x, y) < r && Math.hypot(x, y) > 0.005);
        grid(new FlatSection(0.06, 0.012), 0.02, (x, y) -> Math.abs(y) < r && Math.abs(x) < 0.006);
        grid(
                new BoxSection(0.06, 0.04, 0.004),
                0.02,
                (x, y) -> Math.abs(y) < r && Math.abs(x) < 0.02 && (Math.abs(y) > 0.026 || Math.abs(x) > 0.016));
    }

    private interface Metal {
        /** x along the pivot axis, y across the link in the side view. */
        boolean at(double x, double y);
    }

    private static void grid(Section section, double hole, Metal metal) {
        int n = 1500;
        double step = 0.06 / n;
        double[] sums = new double[4];
        for (int i = 0; i < n; i++) {
            double x = (i + 0.5) * step - 0.03;
            for (int j = 0; j < n; j++) {
                double y = (j + 0.5) * step - 0.03;
                if (metal.at(x, y)) {
                    sums[0] += step * step;
                    sums[1] += step * step * y * y;
                    sums[2] += step * step * x * x;
                    sums[3] += Math.abs(y) < hole / 2 ? step * step : 0;
                }
            }
        }
        assertThat(section.area()).isCloseTo(sums[0], within(1e-3 * sums[0]));
        assertThat(section.inertia()).isCloseTo(sums[1], within(1e-3 * sums[1]));
        assertThat(section.inertiaAcross()).isCloseTo(sums[2], within(1e-3 * sums[2]));
        assertThat(section.drilled(hole)).isCloseTo(sums[3], within(1e-3 * sums[3]));
    }

    private static Finding find(String yaml, String id) throws CannotComputeException {
        return Objects.requireNonNull(
                Checker.check(Examples.read(yaml)).findings().stream()
                        .filter(f -> f.id().equals(id))
                        .findFirst()
                        .orElse(null),
                id);
    }

    /** The two eyes of the upper link under the force of statics: F/(2 d t), T/(4 t (e - d/2)) over 0.577, T/(2 (w - d) t). */
    @Test
    void eyesOfALink() throws CannotComputeException, IOException {
        Analysis analysis = Analyser.analyse(Examples.read(text("knee-stand")));
        double d = 0.03;
        double t = 0.015;
        double most = 0;
        LinkLoad load = load(analysis, "upper");
        for (CaseResult result : analysis.cases()) {
            for (Row row : result.rows()) {
                for (Balance b : List.of(row.rest(), row.raise(), row.lower())) {
                    LinkLoad.Borne borne = load.at(row.pose(), b);
                    double pull = Math.max(0, borne.draw());
                    double either = Math.max(pull, borne.squeeze());
                    most = Math.max(most, either / (2 * d * t));
                    most = Math.max(most, pull / (4 * t * (0.045 - d / 2)) * Math.sqrt(3));
                    most = Math.max(most, pull / (2 * (0.07 - d) * t));
                }
            }
        }
        Finding eye = new LinkCheck()
                .run(analysis).stream()
                        .filter(f -> f.id().equals("link/upper-eye"))
                        .findFirst()
                        .orElseThrow();
        assertThat(eye.demand()).isCloseTo(most, within(1e-9 * most));
        assertThat(eye.capacity()).isEqualTo(235e6);
        String bare = text("knee-stand").replaceAll(", eye: \\{[^}]*\\}", "");
        Finding unknown = new LinkCheck()
                .run(Analyser.analyse(Examples.read(bare))).stream()
                        .filter(f -> f.id().equals("link/upper-eye"))
                        .findFirst()
                        .orElseThrow();
        assertThat(unknown.verdict()).isEqualTo(Verdict.NOT_CHECKED);
    }
}
