// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.dump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Examples;
import tipwright.analysis.Row;
import tipwright.check.rule.Finding;
import tipwright.check.slurry.StreamCheck;
import tipwright.design.around.Receiver;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Fill;
import tipwright.quantity.UnitSystem;
import tipwright.time.CycleTimer;
import tipwright.viewer.Trial;

class DumpStatesTest {
    private final Analysis analysis = Trial.analysis();
    private final DumpStates dump = new DumpStates(analysis);

    @Test
    void agreesWithTheRowsAtEveryStep() {
        for (CaseResult c : analysis.cases()) {
            for (Row row : c.rows()) {
                MachineState now = dump.at(c.name(), row.tilt());
                assertThat(now.length()).isCloseTo(row.pose().length(), within(1e-9));
                assertThat(now.rest().force())
                        .isCloseTo(
                                row.rest().force(),
                                within(1e-6 * (1 + Math.abs(row.rest().force()))));
                assertThat(now.raise().force())
                        .isCloseTo(
                                row.raise().force(),
                                within(1e-5 * (1 + Math.abs(row.raise().force()))));
                assertThat(now.centroid().minus(row.centroid()).norm()).isLessThan(1e-9);
                for (int i = 0; i < 2; i++) {
                    Vec3 off = now.rest()
                            .bearings()
                            .get(i)
                            .minus(row.rest().bearings().get(i));
                    assertThat(off.norm()).isLessThan(1e-3);
                }
            }
        }
    }

    /** Between the steps the tank pin stays on its circle about the pivot. */
    @Test
    void keepsToTheTrueCurveBetweenTheSteps() {
        Vec2 pivot = dump.design().pivot().at();
        Vec2 stowed = dump.at("held", 0).tankPin();
        for (double degrees = 0.25; degrees < 45; degrees += 1.1) {
            double tilt = Math.toRadians(degrees);
            Vec2 off = dump.at("held", tilt).tankPin().minus(stowed.tiltedAbout(pivot, tilt));
            assertThat(off.norm()).isLessThan(1e-8);
        }
    }

    @Test
    void surfaceBetweenTheStepsIsLevelAndKeepsTheVolume() {
        for (double degrees = 0.5; degrees < 45; degrees += 3.3) {
            double tilt = Math.toRadians(degrees);
            Fill fill = dump.at("held", tilt).fill();
            assertThat(fill.surface().normal().minus(dump.contents().up(tilt)).norm())
                    .isLessThan(1e-12);
            assertThat(dump.contents().solid().below(fill.surface()).volume())
                    .isCloseTo(dump.contents().slurryVolume(), within(1e-9));
        }
    }

    /** An actuator that tells no speed is shown at a usual one, in the reader's units: 10 mm/s are 10 / 25.4 in/s. */
    @Test
    void aSpeedThatIsNotKnownIsToldInTheReadersUnits() throws CannotComputeException {
        String text = Trial.text()
                .replace(
                        "actuator: mid-12}",
                        "actuator: {kind: electric, closed: 570 mm, stroke: 500 mm, push: 12 kN, pull: 12 kN, hold: 18 kN}}");
        Reading.Good read = (Reading.Good) DesignFile.read("trial.yaml", text, NamedFiles.shipped());
        Timeline timeline = Timeline.of(new DumpStates(Analyser.analyse(read.design())), "held");
        assertThat(timeline.told().show(UnitSystem.METRIC)).startsWith("at a constant 10 mm/s of the actuator");
        assertThat(timeline.told().show(UnitSystem.US)).startsWith("at a constant 0.3937 in/s of the actuator");
    }

    @Test
    void reelGoesUpPoursAndComesBackAtItsOwnTime() {
        Timeline timeline = Timeline.of(dump, "draining");
        assertThat(timeline.told().show(UnitSystem.METRIC)).isEqualTo("in real time");
        double poured = 0;
        double last = -1;
        for (Timeline.Spot spot : timeline.spots()) {
            assertThat(spot.time()).isGreaterThan(last);
            poured += last < 0 ? 0 : spot.flow() * (spot.time() - last);
            last = spot.time();
        }
        double start = timeline.spots().get(0).volume();
        double end = timeline.spots().get(timeline.spots().size() - 1).volume();
        // rectangles over uneven steps: a tenth is as close as they come
        assertThat(poured).isCloseTo(start - end, within(0.1 * start));
        assertThat(timeline.at(0).tilt()).isEqualTo(0);
        assertThat(timeline.at(timeline.top()).tilt()).isCloseTo(dump.last(), within(1e-3));
        assertThat(timeline.at(timeline.total()).tilt()).isCloseTo(0, within(1e-3));
        Timeline.Spot rising = timeline.rising(Math.toRadians(30));
        assertThat(rising.tilt()).isCloseTo(Math.toRadians(30), within(1e-9));
        assertThat(timeline.at(rising.time()).tilt()).isCloseTo(Math.toRadians(30), within(1e-9));
    }

    @Test
    void momentsForAMovingPictureGoFromTheStartToTheTopAndShowThePour() {
        Timeline timeline = Timeline.of(dump, "draining");
        List<Timeline.Spot> spots = timeline.evenly(31);
        assertThat(spots.get(0).tilt()).isCloseTo(0, within(1e-6));
        assertThat(spots.get(30).tilt()).isCloseTo(dump.last(), within(1e-6));
        assertThat(spots.stream().filter(s -> s.flow() > 0.001).count()).isGreaterThan(8);
        for (int i = 1; i < spots.size(); i++) {
            assertThat(spots.get(i).time())
                    .isGreaterThanOrEqualTo(spots.get(i - 1).time());
        }
    }

    @Test
    void pourStartsAtTheLipAndEndsOnTheGround() {
        Timeline timeline = Timeline.of(dump, "draining");
        double most = 0;
        for (Timeline.Spot spot : timeline.spots()) {
            for (Pour pour : dump.at("draining", spot).pours()) {
                most = Math.max(most, pour.flow());
                var mesh = pour.mesh(-0.5);
                assertThat(mesh.volume()).isPositive();
                assertThat(mesh.extent(new Vec3(0, 1, 0)).low()).isBetween(-0.75, -0.3);
                // continuity: speed times depth times width is the flow
                assertThat(pour.speed() * pour.depth() * pour.width()).isCloseTo(pour.flow(), within(1e-12));
            }
        }
        assertThat(most).isPositive();
    }

    /** The stream in the picture comes down where the check of the landing says, since both leave with the same speed. */
    @Test
    void pourLandsWhereTheCheckSays() throws Exception {
        DumpStates demo = new DumpStates(Trial.shipped("silt-trailer"));
        Receiver pit = demo.design().receiver();
        double least = Double.POSITIVE_INFINITY;
        for (Timeline.Spot spot : Timeline.of(demo, "draining").spots()) {
            for (Pour pour : demo.at("draining", spot).pours()) {
                double x = pour.lands(pit.near().y()).x();
                least = Math.min(least, Math.min(x - pit.near().x(), pit.far().x() - x));
            }
        }
        Finding found = new StreamCheck()
                .run(demo.analysis(), CycleTimer.time(demo.analysis()))
                .get(0);
        // the check also looks at what leaves level where the opening points down, and at the top of the stream
        assertThat(least).isBetween(found.has() - 0.005, found.has() + 0.1);
    }

    /** Where nothing times the dump, the stream is as deep over its lip as the flow asks for: no wall of slurry from a surface at rest. */
    @Test
    void pourOfADumpThatNothingTimesIsAsDeepAsItsFlow() throws Exception {
        String text = Files.readString(Path.of("src/test/resources/tipwright/check/regression/bare.yaml"));
        DumpStates bare = new DumpStates(Analyser.analyse(Examples.read(text)));
        Timeline timeline = Timeline.of(bare, "draining");
        int shown = 0;
        for (Timeline.Spot spot : timeline.spots()) {
            assertThat(spot.level()).isNaN();
            List<Pour> pours = bare.at("draining", spot).pours();
            assertThat(pours.isEmpty()).isEqualTo(!(spot.flow() > 1e-6));
            for (Pour pour : pours) {
                // over a level edge 1 m wide the critical depth is (q2/g)^(1/3)
                double critical = Math.cbrt(pour.flow() * pour.flow() / 9.80665);
                assertThat(pour.depth()).isBetween(0.5 * critical, 1.5 * critical);
                assertThat(pour.width()).isBetween(0.5, 1.0 + 1e-9);
                shown++;
            }
        }
        assertThat(shown).isGreaterThan(5);
    }
}
