// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.analysis.JointPlan;
import tipwright.analysis.Row;
import tipwright.check.One;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.geometry.Vec2;

/** An actuator between a lever and the tank, which it holds by a link too; and links on both sides whose parts of a twist cannot be told. */
class FreeMechanismTest {
    static final String LEVER = swap(
            Examples.BOX,
            "  straight:\n    frame-pin: [-600 mm, -500 mm]\n    tank-pin: [-450 mm, 400 mm]\n",
            "  free:\n    bodies: [lever, link]\n    pins:\n      - {name: pivot, between: [frame, tank]}\n"
                    + "      - {name: fulcrum, between: [lever, frame], at: [-200 mm, -400 mm], both-sides: yes}\n"
                    + "      - {name: low, between: [link, lever], at: [-600 mm, -400 mm], both-sides: yes}\n"
                    + "      - {name: high, between: [link, tank], at: [-500 mm, 400 mm], both-sides: yes}\n"
                    + "    from: {body: lever, at: [200 mm, -400 mm]}\n    to: {body: tank, at: [200 mm, 400 mm]}\n",
            "to: 80 deg",
            "to: 20 deg, step: 5 deg",
            "closed: 800 mm",
            "closed: 790 mm");

    private static void untold(String yaml, String id, String why) throws CannotComputeException {
        Finding found = One.of(yaml, id);
        assertThat(found.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(found.missing()).isFalse();
        assertThat(found.note().metric()).isEqualTo(why);
    }

    @Test
    void anActuatorThatIsNotPinnedToTheFrame() throws CannotComputeException {
        String tube = "frame: {cross-member: {at: [-600 mm, -600 mm], height: 100 mm, width: 80 mm, wall: 5 mm,"
                + " z: [-400 mm, 400 mm]}}\n";
        untold(LEVER + tube, "cross-member", "the actuator is not pinned to the frame");
        String aside = swap(LEVER, "{z: 0 mm, actuator", "{z: 100 mm, actuator")
                + "twist: {tank: {height: 80 mm, width: 60 mm, wall: 4 mm}, frame: {height: 80 mm, width: 60 mm, wall: 4 mm}}\n";
        untold(aside, "twist/frame", "the actuator is not pinned to the frame");
        assertThat(One.of(aside, "twist/tank").verdict()).isNotEqualTo(Verdict.NOT_CHECKED);
    }

    /** A lever 100 mm high that ends at x = 250 mm carries the actuator's bracket on its top, from x = 160 mm to 240 mm and farther out. */
    @Test
    void aBracketOnALink() throws CannotComputeException {
        String weld = "fastenings:\n  - {joint: frame-pin, weld: {at: [AT mm, -350 mm, 0 mm], leg: 6 mm,"
                + " rectangle: {u: 80 mm, v: 40 mm}}}\n";
        String lever = "links: [{body: lever, outline: [[-650 mm, -450 mm], [250 mm, -450 mm], [250 mm, -350 mm],"
                + " [-650 mm, -350 mm]], z: [-30 mm, 30 mm]}]\n";
        // the pin stands 50 mm over the top
        String high = swap(
                LEVER,
                "{body: lever, at: [200 mm, -400 mm]}",
                "{body: lever, at: [200 mm, -300 mm]}",
                "790 mm",
                "690 mm");
        assertThat(One.of(high + lever + swap(weld, "AT", "200"), "steel-behind/frame-pin")
                        .demand())
                .isZero();
        Finding past = One.of(high + lever + swap(weld, "AT", "220"), "steel-behind/frame-pin");
        assertThat(past.demand()).isCloseTo(0.01, within(1e-9));
        assertThat(past.note().metric()).isEqualTo("in line with it: lever");
        Finding beside = One.of(high + lever + swap(weld, "AT", "200", "-350", "-340"), "steel-behind/frame-pin");
        assertThat(beside.note().metric()).isEqualTo("links: no face in line with the weld is drawn");
        String other = swap(lever, "body: lever", "body: link");
        assertThat(One.of(high + other + swap(weld, "AT", "200"), "steel-behind/frame-pin")
                        .note()
                        .metric())
                .isEqualTo("links missing");
    }

    /** The tank sits in the bearings itself, so no link bears what the two bearings differ by: each side bears half. */
    @Test
    void withoutLinksInTheBearingsEachSideBearsHalf() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(
                swap(LEVER, "{z: 0 mm, actuator", "{z: 200 mm, actuator") + "site: {cross-slope: 3 deg}\n"));
        TwinLinks twins = new TwinLinks(analysis);
        List<JointPlan> joints = analysis.mechanism().joints();
        for (Row row : analysis.cases().get(0).rows()) {
            Balance b = row.rest();
            assertThat(b.bearings().get(0).xy().minus(b.bearings().get(1).xy()).norm())
                    .isGreaterThan(100);
            for (int i = 0; i < joints.size(); i++) {
                double all = b.joints().get(i).norm();
                double expected = joints.get(i).name().equals("pivot") ? all : all / 2;
                assertThat(twins.force(i, row.pose(), b)).isCloseTo(expected, within(1e-9 * all));
            }
        }
    }

    /**
     * The link alone joins lever and tank, so the actuator between the same two and the weight give its force: about the pivot
     * F_link l + F_actuator a + W c = 0, and about the fulcrum of the lever the first two balance. Source: statics.
     */
    @Test
    void theLinkBetweenLeverAndTank() throws CannotComputeException {
        Analysis analysis = Analyser.analyse(Examples.read(LEVER + "friction: {pivot: 0, pins: 0}\n"));
        LinkLoad load = new LinkLoad(
                analysis,
                analysis.mechanism().link(analysis.mechanism().bodies().indexOf("link")));
        assertThat(load.sides()).isEqualTo(2);
        Vec2 pivot = new Vec2(0.4, 0.4);
        Vec2 fulcrum = new Vec2(-0.2, -0.4);
        for (Row row : analysis.cases().get(0).rows()) {
            Vec2 low = place(analysis, row, "low");
            Vec2 high = place(analysis, row, "high");
            Vec2 u = high.minus(low).unit();
            Vec2 a = row.pose().tankPin().minus(row.pose().framePin()).unit();
            double weight = row.load().mass() * 9.80665;
            double down = row.centroid().xy().minus(pivot).cross(new Vec2(0, -weight));
            // on the tank: link S and actuator F push; on the lever they push back
            double l = high.minus(pivot).cross(u);
            double f = row.pose().tankPin().minus(pivot).cross(a);
            double lLever = low.minus(fulcrum).cross(u);
            double fLever = row.pose().framePin().minus(fulcrum).cross(a);
            double det = l * fLever - f * lLever;
            double squeeze = -down * fLever / det;
            double push = down * lLever / det;
            assertThat(row.rest().force()).isCloseTo(push, within(1e-6 * weight));
            LinkLoad.Borne borne = load.at(row.pose(), row.rest());
            assertThat(borne.squeeze()).isCloseTo(squeeze / 2, within(1e-6 * weight));
            assertThat(borne.draw()).isCloseTo(-squeeze / 2, within(1e-6 * weight));
            assertThat(borne.bend()).isZero();
        }
    }

    private static Vec2 place(Analysis analysis, Row row, String joint) {
        return analysis.mechanism().joints().stream()
                .filter(j -> j.name().equals(joint))
                .findFirst()
                .orElseThrow()
                .place(row.pose());
    }

    /** Where the actuator pushes a link, or the links of a side are nearly parallel, each is taken to bear half of the whole twist. */
    @ParameterizedTest
    @ValueSource(strings = {"pushes: main", "second-frame-pin: [-313 mm, -200 mm]"})
    void aTwistThatCannotBeShared(String change) throws IOException, CannotComputeException {
        String all = Files.readString(Path.of("geometry", "kerb-swing.yaml"));
        String text = all.substring(0, all.indexOf("link-sections:")) + all.substring(all.indexOf("supply:"));
        boolean pushes = change.startsWith("pushes");
        String was = pushes ? "pushes: tank" : "second-frame-pin: [370 mm, -110 mm]";
        String pin = pushes ? "rod-pin: [350 mm, 150 mm]" : "rod-pin: [-570 mm, 240 mm]";
        Analysis analysis = Analyser.analyse(Examples.read(swap(
                text,
                was,
                change,
                "rod-pin: [-570 mm, 240 mm]",
                pin,
                "{z: 0 mm, actuator",
                "{z: 200 mm, actuator",
                "tilt: {to: 45 deg}",
                "friction: {pivot: 0, pins: 0}\ntilt: {to: 0.5 deg, step: 0.1 deg}")));
        TwinLinks twins = new TwinLinks(analysis);
        List<String> names =
                analysis.mechanism().joints().stream().map(JointPlan::name).toList();
        int told = 0;
        for (Row row : analysis.cases().get(0).rows()) {
            Vec2 first = place(analysis, row, "main-tank-pin").minus(place(analysis, row, "pivot"));
            Vec2 other = place(analysis, row, "second-tank-pin").minus(place(analysis, row, "second-frame-pin"));
            if (!pushes && Math.abs(first.unit().cross(other.unit())) > 0.099) {
                continue;
            }
            told++;
            Balance b = row.rest();
            Vec2 one = b.bearings().get(0).xy();
            Vec2 two = b.bearings().get(1).xy();
            double half = two.minus(one).norm() / 2;
            double second = b.joints().get(names.indexOf("second-tank-pin")).norm() / 2 + half;
            assertThat(twins.force(names.indexOf("second-tank-pin"), row.pose(), b))
                    .isCloseTo(second, within(1e-6 * second));
            double main = b.joints().get(names.indexOf("main-tank-pin")).norm() / 2
                    + Math.max(
                            half,
                            Math.max(one.norm(), two.norm()) - one.plus(two).norm() / 2);
            assertThat(twins.force(names.indexOf("main-tank-pin"), row.pose(), b))
                    .isCloseTo(main, within(1e-6 * main));
        }
        assertThat(told).isPositive();
    }
}
