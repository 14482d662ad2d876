// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.geometry.Vec2;
import tipwright.viewer.Trial;

class BenchTest {
    @TempDir
    private Path folder;

    private Bench bench() {
        return new Bench("trial.yaml", null, Trial.text(), Recovery.of(folder, "trial.yaml"));
    }

    private static Handle handle(Bench bench, String label) {
        return bench.handles().stream()
                .filter(h -> h.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void findsTheThreePointsOfAStraightDrive() {
        assertThat(bench().handles()).extracting(Handle::label).containsExactly("pivot", "frame pin", "tank pin");
        assertThat(bench().handles()).extracting(Handle::body).containsExactly(0, 0, 1);
    }

    /** A pin whose place is a name has no ring to drag; it is said why, and what to do. */
    @Test
    void aPinByTheTapeIsToldAndNotDragged() {
        String text = swap(
                swap(Trial.text(), "[-120 mm, 230 mm]", "eye"),
                "tipwright: 1",
                "tipwright: 1\npoints:\n  eye: [-120 mm, 230 mm]");
        Bench named = new Bench("trial.yaml", null, text, Recovery.of(folder, "trial.yaml"));
        assertThat(named.handles()).extracting(Handle::label).containsExactly("pivot", "frame pin");
        assertThat(named.byTape())
                .containsExactly(
                        "tank pin: its place is 'eye', by the tape; to move it, change the readings in the file");
        assertThat(bench().byTape()).isEmpty();
    }

    @Test
    void aDragGivesTheSameNumbersAsTheTextAfterIt() {
        Bench bench = bench();
        Handle pin = handle(bench, "tank pin");
        Vec2 to = new Vec2(-0.1503, 0.2252);
        assertThat(bench.drag(pin, to)).isNull();
        double dragged =
                bench.solved().analysis().cases().get(0).rows().get(9).rest().force();
        bench.drop(pin, to);
        assertThat(bench.sheet().text()).isEqualTo(swap(Trial.text(), "[-120 mm, 230 mm]", "[-150 mm, 225 mm]"));
        double written = bench.sheet()
                .solved()
                .analysis()
                .cases()
                .get(0)
                .rows()
                .get(9)
                .rest()
                .force();
        assertThat(dragged).isCloseTo(written, within(1e-6));
    }

    /** The window must say what `check` says. */
    @Test
    void findsWhatTheCheckCommandFinds() throws Exception {
        assertThat(bench().solved().findings())
                .containsExactlyInAnyOrderElementsOf(tipwright.check.Checker.findings(Trial.design()));
    }

    @Test
    void undoAndRedoGoThroughEveryState() {
        Bench bench = bench();
        bench.drop(handle(bench, "pivot"), new Vec2(0.5, 0.2));
        String one = bench.sheet().text();
        bench.drop(handle(bench, "frame pin"), new Vec2(-0.2, -0.3));
        String two = bench.sheet().text();
        bench.undo();
        assertThat(bench.sheet().text()).isEqualTo(one);
        bench.undo();
        assertThat(bench.sheet().text()).isEqualTo(Trial.text());
        assertThat(bench.canUndo()).isFalse();
        bench.redo();
        bench.redo();
        assertThat(bench.sheet().text()).isEqualTo(two);
        assertThat(bench.canRedo()).isFalse();
    }

    @Test
    void unsavedWorkOutlivesACrashAndGoesOnceSaved() throws IOException {
        Bench bench = bench();
        Recovery recovery = Recovery.of(folder, "trial.yaml");
        assertThat(recovery.left()).isNull();
        bench.drop(handle(bench, "pivot"), new Vec2(0.5, 0.2));
        assertThat(recovery.left()).isEqualTo(bench.sheet().text());
        Path file = folder.resolve("mine.yaml");
        bench.save(file);
        assertThat(recovery.left()).isNull();
        assertThat(Files.readString(file)).isEqualTo(bench.sheet().text());
        assertThat(bench.unsaved()).isFalse();
    }

    @Test
    void tellsWhyAPlaceCannotWork() {
        Bench bench = bench();
        Handle pin = handle(bench, "tank pin");
        assertThat(bench.drag(pin, handle(bench, "frame pin").at())).contains("actuator");
        bench.letGo();
        assertThat(bench.solved()).isEqualTo(bench.sheet().solved());
    }

    @Test
    void badTextKeepsItsProblemsWithTheirPlaces() {
        Bench bench = new Bench("bad.yaml", null, swap(Trial.text(), "fill: 85 %", "fil: 85 %"), null);
        assertThat(bench.solved()).isNull();
        assertThat(bench.sheet().problems()).anyMatch(p -> p.startsWith("bad.yaml:14:") && p.contains("fill"));
    }

    /** A tape shows whole millimetres or sixteenths of an inch; halves, quarters and eighths are written as such. */
    @ParameterizedTest
    @CsvSource({
        "-300 mm, -0.3124, -312 mm",
        "12 3/8 in, 0.3159125, 12 7/16 in",
        "12.5 in, 0.3048, 12 in",
        "1 ft, -0.1016, -4 in",
        "3 in, 0.0127, 1/2 in",
        "30 cm, 0.3104, 31 cm"
    })
    void writesAPlaceAsATapeShowsIt(String old, double metres, String wanted) throws Exception {
        assertThat(Mover.rewritten(old, Mover.onTape(old, metres))).isEqualTo(wanted);
    }
}
