// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tipwright.check.Checker;
import tipwright.check.StagedCheck;
import tipwright.design.Design;
import tipwright.geometry.Vec2;
import tipwright.viewer.Trial;

class DesignEditorTest {
    @TempDir
    private Path folder;

    private final List<DesignEditor> opened = new ArrayList<>();

    /** Ended when the test is over: what keeps its work writes into the folder. */
    private DesignEditor opened(String name, String text) {
        DesignEditor made = new DesignEditor(name, null, text, Recovery.of(folder, name));
        opened.add(made);
        return made;
    }

    private DesignEditor editor() {
        return opened("trial.yaml", Trial.text());
    }

    /** Nothing is still to be written when the folder goes. */
    @AfterEach
    void end() {
        opened.forEach(DesignEditor::end);
    }

    private static Handle handle(DesignEditor editor, String label) {
        return editor.handles().stream()
                .filter(h -> h.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void findsTheThreePointsOfAStraightDrive() {
        assertThat(editor().handles()).extracting(Handle::label).containsExactly("pivot", "frame pin", "tank pin");
        assertThat(editor().handles()).extracting(Handle::body).containsExactly(0, 0, 1);
    }

    /** A pin whose place is a name has no ring to drag; it is said why, and what to do. */
    @Test
    void aPinByTheTapeIsToldAndNotDragged() {
        String text = swap(
                swap(Trial.text(), "[-120 mm, 230 mm]", "camera"),
                "tipwright: 1",
                "tipwright: 1\npoints:\n  camera: [-120 mm, 230 mm]");
        DesignEditor named = opened("trial.yaml", text);
        assertThat(named.handles()).extracting(Handle::label).containsExactly("pivot", "frame pin");
        assertThat(named.byTape())
                .containsExactly(
                        "tank pin: its place is 'camera', by the tape; to move it, change the readings in the file");
        assertThat(editor().byTape()).isEmpty();
    }

    @Test
    void aDragGivesTheSameNumbersAsTheTextAfterIt() {
        DesignEditor editor = editor();
        Handle pin = handle(editor, "tank pin");
        Vec2 to = new Vec2(-0.1503, 0.2252);
        assertThat(editor.drag(pin, to)).isNull();
        double dragged =
                editor.solved().analysis().cases().get(0).rows().get(9).rest().force();
        editor.drop(pin, to);
        assertThat(editor.sheet().text()).isEqualTo(swap(Trial.text(), "[-120 mm, 230 mm]", "[-150 mm, 225 mm]"));
        double written = editor.sheet()
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

    private DesignEditor trailer(String text) {
        return opened("trailer.yaml", text);
    }

    /** A pin that is dragged takes its bracket along, while it is dragged and in the text, in one step. */
    @Test
    void aDragTakesTheBracketAlong() throws IOException {
        String text = Files.readString(Path.of("geometry/silt-trailer.yaml"));
        DesignEditor editor = trailer(text);
        Handle pin = handle(editor, "frame pin");
        Vec2 to = pin.at().plus(new Vec2(0.03, 0.02));
        assertThat(editor.drag(pin, pin.at().plus(new Vec2(0.0314, -0.0407)))).isNull();
        assertThat(editor.drag(pin, to)).isNull();
        Design dragged = editor.solved().analysis().design();
        assertThat(editor.drop(pin, to)).isEqualTo(DesignEditor.Along.WENT);
        Design written = editor.solved().analysis().design();
        assertThat(editor.sheet().text())
                .isEqualTo(swap(
                        text,
                        "frame-pin: [220 mm, -395 mm]",
                        "frame-pin: [250 mm, -375 mm]",
                        "weld: {at: [220 mm, -445 mm, 0 mm]",
                        "weld: {at: [250 mm, -425 mm, 0 mm]",
                        "cross-member: {at: [220 mm, -495 mm]",
                        "cross-member: {at: [250 mm, -475 mm]"));
        assertThat(written.fastenings()
                        .get(0)
                        .weld()
                        .at()
                        .minus(dragged.fastenings().get(0).weld().at())
                        .norm())
                .isLessThan(1e-12);
        editor.undo();
        assertThat(editor.sheet().text()).isEqualTo(text);
    }

    /** Where the bracket goes by a name, it gets a place of its own. */
    @Test
    void aBracketThatGoesByANameGoesAlongToo() throws IOException {
        String text = swap(
                Files.readString(Path.of("geometry/silt-trailer.yaml")),
                "tipwright: 1\n",
                "tipwright: 1\npoints:\n  tube: [220 mm, -495 mm]\n",
                "cross-member: {at: [220 mm, -495 mm]",
                "cross-member: {at: tube");
        DesignEditor editor = trailer(text);
        Handle pin = handle(editor, "frame pin");
        assertThat(editor.drop(pin, pin.at().plus(new Vec2(0.03, 0.02)))).isEqualTo(DesignEditor.Along.WENT);
        Vec2 tube = editor.solved().analysis().design().frame().crossMember().at();
        assertThat(tube.minus(new Vec2(0.25, -0.475)).norm()).isLessThan(0.0025);
    }

    /** The window must say what `check` says. */
    @Test
    void findsWhatTheCheckCommandFinds() throws Exception {
        StagedCheck stages = StagedCheck.of(editor().solved().analysis());
        stages.atRest();
        assertThat(stages.inTime().findings()).containsExactlyInAnyOrderElementsOf(Checker.findings(Trial.design()));
    }

    @Test
    void undoAndRedoGoThroughEveryState() {
        DesignEditor editor = editor();
        editor.drop(handle(editor, "pivot"), new Vec2(0.5, 0.2));
        String one = editor.sheet().text();
        editor.drop(handle(editor, "frame pin"), new Vec2(-0.2, -0.3));
        String two = editor.sheet().text();
        editor.undo();
        assertThat(editor.sheet().text()).isEqualTo(one);
        editor.undo();
        assertThat(editor.sheet().text()).isEqualTo(Trial.text());
        assertThat(editor.canUndo()).isFalse();
        editor.redo();
        editor.redo();
        assertThat(editor.sheet().text()).isEqualTo(two);
        assertThat(editor.canRedo()).isFalse();
    }

    @Test
    void unsavedWorkOutlivesACrashAndGoesOnceSaved() throws IOException {
        DesignEditor editor = editor();
        Recovery recovery = Recovery.of(folder, "trial.yaml");
        assertThat(recovery.left()).isNull();
        editor.drop(handle(editor, "pivot"), new Vec2(0.5, 0.2));
        editor.settle();
        assertThat(recovery.left()).isEqualTo(editor.sheet().text());
        Path file = folder.resolve("mine.yaml");
        editor.save(file);
        editor.settle();
        assertThat(recovery.left()).isNull();
        assertThat(Files.readString(file)).isEqualTo(editor.sheet().text());
        assertThat(editor.unsaved()).isFalse();
    }

    @Test
    void ofManyEditsTheLastIsKeptInTheEnd() {
        DesignEditor editor = editor();
        Recovery recovery = Recovery.of(folder, "trial.yaml");
        for (int i = 1; i <= 50; i++) {
            editor.drop(handle(editor, "pivot"), new Vec2(0.5, 0.2 + i / 1000.0));
        }
        editor.end();
        assertThat(recovery.left()).isEqualTo(editor.sheet().text());
        // what is asked for once the window is closed is not lost either
        editor.undo();
        assertThat(recovery.left()).isEqualTo(editor.sheet().text());
        editor.abandon();
        assertThat(recovery.left()).isNull();
        editor.end();
    }

    @Test
    void tellsWhyAPlaceCannotWork() {
        DesignEditor editor = editor();
        Handle pin = handle(editor, "tank pin");
        assertThat(editor.drag(pin, handle(editor, "frame pin").at())).contains("actuator");
        editor.letGo();
        assertThat(editor.solved()).isEqualTo(editor.sheet().solved());
    }

    @Test
    void badTextKeepsItsProblemsWithTheirPlaces() {
        DesignEditor editor = new DesignEditor("bad.yaml", null, swap(Trial.text(), "fill: 85 %", "fil: 85 %"), null);
        assertThat(editor.solved()).isNull();
        assertThat(editor.sheet().problems()).anyMatch(p -> p.startsWith("bad.yaml:14:") && p.contains("fill"));
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
