// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.check.Checker;
import tipwright.check.Checks;
import tipwright.check.rule.Finding;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;
import tipwright.geometry.Mesh;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.MachineOutline;
import tipwright.outline.MachinePart;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.Trial;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.editor.PartOfMachine;

/** What fails is marked where it is, and what is seen at a place is told by its part. */
class MarkedTest {
    private static Map<String, Marked> marks(String text) throws Exception {
        Reading reading = DesignFile.read("trial.yaml", text, NamedFiles.shipped());
        Design design = ((Reading.Good) reading).design();
        Analysis analysis = Analyser.analyse(design);
        List<MachinePart> parts = new MachineOutline(analysis).parts();
        return Marked.of(analysis, parts, Checker.findings(design), UnitSystem.METRIC).stream()
                .collect(Collectors.toMap(Marked::partId, m -> m));
    }

    private static String demo() throws Exception {
        return java.nio.file.Files.readString(java.nio.file.Path.of("geometry/silt-trailer.yaml"));
    }

    @Test
    void clashingPartsAreBothMarked() throws Exception {
        // the axle up to the actuator's tube
        String member =
                "    - {name: axle, outline: [[-60 mm, -450 mm], [60 mm, -450 mm], [60 mm, -330 mm], [-60 mm, -330 mm]], z: [-480 mm, 480 mm]}\n  wheels";
        String clash = demo().replace(
                        member,
                        "    - {name: axle, outline: [[60 mm, -270 mm], [180 mm, -270 mm], [180 mm, -150 mm], [60 mm, -150 mm]], z: [-480 mm, 480 mm]}\n  wheels");
        assertThat(clash).isNotEqualTo(demo());
        Map<String, Marked> all = marks(clash);
        assertThat(all.get("tube/actuator tube").failing()).isTrue();
        assertThat(all.get("frame/axle").failing()).isTrue();
        assertThat(all.get("frame/axle").label())
                .contains("Actuator tube to axle")
                .contains("needs 20 mm, has 0 mm");
        assertThat(all).doesNotContainKeys("frame/left rail", "bearing/bearing 1", "keep-out/axle");
    }

    @Test
    void thinPinWeakSupportAndShortRodAreMarked() throws Exception {
        String weak = demo().replace("tank-pin-joint: {diameter: 25 mm", "tank-pin-joint: {diameter: 12 mm")
                .replace(
                        "hole: 25 mm, end: 35 mm, plates: 2}\n    # the cradle's",
                        "hole: 12 mm, end: 35 mm, plates: 2}\n    # the cradle's")
                .replace("rating: 12 kN\nfast", "rating: 2 kN\nfast")
                .replace("actuator: mid-12-long}", "actuator: mid-12}");
        Map<String, Marked> all = marks(weak);
        assertThat(all.get("pin/moving pin").failing()).isTrue();
        assertThat(all.get("rod/actuator rod").label()).contains("stroke left when fully out");
        assertThat(all.get("rod/actuator rod").failing()).isTrue();
        long feet = all.values().stream()
                .filter(m -> m.partId().startsWith("foot/") && m.label().contains("Wheels and feet"))
                .count();
        // the one that bears most, and those that lift off: not all five
        assertThat(feet).isBetween(1L, 4L);
        assertThat(all).doesNotContainKey("pin/frame pin");
    }

    /** Every finding about something that is drawn finds its part; what has none to show is about supply, time or the whole. */
    @ParameterizedTest
    @CsvSource({"silt-trailer", "knee-stand", "twin-rams", "six-link", "slide-back"})
    void everyFindingKnowsItsParts(String name) throws Exception {
        Analysis analysis = Trial.shipped(name);
        List<MachinePart> parts = new MachineOutline(analysis).parts();
        List<String> ids = parts.stream().map(MachinePart::id).toList();
        for (Finding f : Checks.quick(analysis)) {
            var check = Checks.of(f).orElseThrow();
            var concerned = check.concerned(analysis, f);
            List<MachinePart> some = concerned.among(parts);
            assertThat(some).as(f.id()).allMatch(p -> ids.contains(p.id()));
            boolean drawn = parts.stream().anyMatch(p -> concerned.kinds().contains(p.kind()));
            if (!check.looksAt().isEmpty() && drawn && !concerned.named()) {
                assertThat(some).as(f.id()).isNotEmpty();
            }
            if (f.id().startsWith("bearing-static/") || f.id().startsWith("pin/")) {
                assertThat(some)
                        .as(f.id())
                        .hasSizeBetween(1, analysis.design().drive().actuators().size());
            }
        }
    }

    @Test
    void sightMeetsTheNearestPart() {
        DumpStates dump = new DumpStates(Trial.analysis());
        Mesh inside = MachineScene.inside(dump);
        Sight sight = new Sight(new MachineOutline(dump.analysis()), inside);
        MachineState now = dump.at("held", 0);
        Vec3 way = new Vec3(0, 0, -1);
        Vec2 pivot = dump.design().pivot().at();
        assertThat(sight.first(new Vec3(pivot.x(), pivot.y(), 5), way, now)).contains(PartOfMachine.PIVOT);
        assertThat(sight.first(new Vec3(0, 0.5, 5), way, now)).contains(PartOfMachine.LOAD);
        // above the surface there is only the wall
        assertThat(sight.first(new Vec3(0, 0.99, 5), way, now)).contains(PartOfMachine.TANK);
        Vec2 tube = now.framePin().plus(now.tankPin().minus(now.framePin()).times(0.4));
        assertThat(sight.first(new Vec3(tube.x(), tube.y(), 0.2), way, now)).contains(PartOfMachine.ACTUATOR);
        assertThat(sight.first(new Vec3(9, 9, 5), way, now)).isEmpty();
        // tipped, it has moved along
        MachineState tipped = dump.at("empty", dump.last());
        Vec3 in = tipped.tank().place(new Vec3(-0.4, 0.64, 5));
        assertThat(sight.first(in, way, tipped)).contains(PartOfMachine.TANK);
    }
}
