// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;
import static tipwright.viewer.Patience.shows;
import static tipwright.viewer.Patience.words;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import javafx.geometry.Point2D;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.drive.Straight;
import tipwright.design.file.DesignFile;
import tipwright.design.file.NamedFiles;
import tipwright.design.file.Reading;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.quantity.Marks;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.OneScreen;
import tipwright.viewer.Patience;
import tipwright.viewer.Usable;
import tipwright.viewer.begin.Remembered;
import tipwright.viewer.editor.PartOfMachine;
import tipwright.viewer.paper.Paperwork;

/** From the start to a saved machine that passes, by keyboard and buttons alone; then what everybody needs to be able to use it. */
@ExtendWith({OneScreen.class, ApplicationExtension.class})
@EnabledIfEnvironmentVariable(
        named = "DISPLAY",
        matches = ".+",
        disabledReason = "a window needs a display; .ci/test has one")
class BegunMachineTest {
    /** A drum on a hand winch, as a tape gives it. */
    private static final List<String> DRUM = List.of(
            "Slip drum",
            "in",
            "drum",
            "1797 mm",
            "34 3/4",
            "18 ga",
            "2 in, 300 mm",
            "24 1/2 in, 3' 10 5/8\"",
            "about 25 kg",
            "1150 kg/m3",
            "35 gal",
            "27 3/16 in, 1062 mm",
            "30",
            "30 mm, 11.3 kN",
            "winch",
            "15 1/2 in, 7 ft 5 in",
            "2 in, 320 mm",
            "8 in, 1850 mm",
            "1100 lbf",
            "20 mm",
            "120 deg");

    @TempDir
    static Path folder;

    private Usable usable;

    @Start
    void start(Stage on) {
        usable = new Usable(on);
        new FrontDesk(folder.resolve("unsaved")).begin(on);
        on.show();
    }

    private static void waitFor(BooleanSupplier met) {
        Patience.waitFor(60, met);
    }

    @Test
    void aMachineIsBegunAskedForJudgedAndSaved(FxRobot robot) throws Exception {
        robot.type(KeyCode.ENTER);
        waitFor(() -> shows(robot, "#ask-answer"));
        TextField answer = robot.lookup("#ask-answer").query();
        for (int i = 0; i < DRUM.size(); i++) {
            assertThat(words(robot, "#ask-number")).startsWith((i + 1) + " of ");
            if (i == 2) {
                answer(robot, answer, "rund");
                assertThat(words(robot, "#ask-wrong")).contains("did you mean 'round'?");
                assertThat(new Remembered(folder).textSize(1)).isEqualTo(1);
                robot.clickOn("#ask-back");
                answer(robot, answer, DRUM.get(1));
            }
            answer(robot, answer, DRUM.get(i));
        }
        waitFor(() -> shows(robot, "#waits") || shows(robot, "#item-push"));
        waitFor(() -> words(robot, "#verdict").startsWith("PASSES")
                || words(robot, "#verdict").startsWith("CLOSE"));
        assertThat(words(robot, "#name")).contains("Slip drum").contains("not saved");
        assertThat(words(robot, "#headline")).startsWith("Worst pull ").contains("lbf of 1100 lbf");
        assertThat(robot.lookup("#five-numbers .label").queryAll()).hasSize(12);
        assertEverybodyCanUseIt(robot);
        Path file = folder.resolve("slip-drum.yaml");
        robot.press(KeyCode.CONTROL).type(KeyCode.S).release(KeyCode.CONTROL);
        waitFor(() -> shows(robot, "#save-to"));
        TextField to = robot.lookup("#save-to").query();
        assertThat(to.getText()).endsWith("slip-drum.yaml");
        answer(robot, to, file.toString());
        waitFor(() -> Files.exists(file));
        waitFor(() -> !words(robot, "#name").contains("not saved"));
        assertThat(verdict(file)).isIn(Verdict.PASS, Verdict.CLOSE);
        searches(robot, file);
        handsOver(robot, file);
        robot.press(KeyCode.CONTROL).type(KeyCode.O).release(KeyCode.CONTROL);
        waitFor(() -> shows(robot, "#recent-0"));
        assertThat(words(robot, "#recent-0")).isEqualTo("slip-drum.yaml");
        waitFor(() -> words(robot, "#example-yard-tub").startsWith("Yard"));
        usable.assertTargets(32);
        usable.assertContrast();
    }

    private static Design read(Path file) {
        Reading reading = DesignFile.read(file);
        assertThat(reading).as(reading.toString()).isInstanceOf(Reading.Good.class);
        return ((Reading.Good) reading).design();
    }

    private static Verdict verdict(Path file) throws CannotComputeException {
        return Checker.check(read(file)).verdict();
    }

    private static void press(FxRobot robot, String id) {
        ButtonBase button = robot.lookup(id).query();
        assertThat(button.isDisabled()).as(id).isFalse();
        WaitForAsyncUtils.asyncFx(button::fire);
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** A zone drawn round the frame pin by hand, a search in it, its first answer taken over and saved. */
    private void searches(FxRobot robot, Path file) throws IOException, CannotComputeException {
        String before = Files.readString(file);
        press(robot, "#search");
        usable.assertTargets(32);
        usable.assertContrast();
        press(robot, "#draw-frame-pin");
        robot.moveTo(onScreen(robot, read(file))).moveBy(-16, -14).press(MouseButton.PRIMARY);
        robot.moveBy(20, 16).moveBy(12, 12).release(MouseButton.PRIMARY);
        waitFor(() -> words(robot, "#name").contains("not saved"));
        press(robot, "#search-start");
        waitFor(() -> shows(robot, "#take-1") || words(robot, "#search-state").contains("best so far: "));
        // the best so far will do; the answers are looked through by the whole check even so
        WaitForAsyncUtils.asyncFx(robot.lookup("#search-stop").<ButtonBase>query()::fire);
        waitFor(() -> shows(robot, "#take-1"));
        assertThat(words(robot, "#search-state")).contains("each passes every check there");
        press(robot, "#take-1");
        press(robot, "#search-close");
        waitFor(() -> words(robot, "#verdict").startsWith("PASSES")
                || words(robot, "#verdict").startsWith("CLOSE"));
        press(robot, "#save");
        waitFor(() -> !words(robot, "#name").contains("not saved"));
        assertThat(framePin(file)).isNotEqualTo(((Straight) read(before).drive()).framePin());
        assertThat(verdict(file)).isIn(Verdict.PASS, Verdict.CLOSE);
        // all else that was measured, and every comment, still stands there
        assertThat(Files.readString(file).lines())
                .containsAll(before.lines()
                        .filter(line -> !line.contains("frame-pin"))
                        .toList());
    }

    /** Where the frame pin is seen. */
    private static Point2D onScreen(FxRobot robot, Design design) {
        PicturePane pane = robot.lookup("#picture").query();
        Vec2 pin = ((Straight) design.drive()).framePin();
        double z = design.drive().actuators().get(0).z();
        Vec2 at = pane.picture().camera().project(new Vec3(pin.x(), pin.y(), z), pane.getWidth(), pane.getHeight());
        return pane.localToScreen(at.x(), at.y());
    }

    private static Design read(String text) {
        return ((Reading.Good) DesignFile.read("before.yaml", text, NamedFiles.shipped())).design();
    }

    private static Vec2 framePin(Path file) {
        return ((Straight) read(file).drive()).framePin();
    }

    /** Everything that is handed over, each seen before it is written; the place of the answer stands in the sheet. */
    private void handsOver(FxRobot robot, Path file) throws IOException {
        press(robot, "#hand-over");
        waitFor(() -> robot.lookup("#make-report").tryQuery().isPresent());
        usable.assertTargets(32);
        usable.assertContrast();
        String design = Files.readString(file);
        Path report = handedOver(robot, Paperwork.REPORT, "%PDF-", file);
        assertThat(Files.readString(file)).isEqualTo(design);
        assertThat(Files.size(report)).isGreaterThan(20_000);
        Path sheet = handedOver(robot, Paperwork.SHEET, "%PDF-", file);
        try (PDDocument pages = Loader.loadPDF(sheet.toFile())) {
            assertThat(new PDFTextStripper().getText(pages))
                    .contains(Marks.show(framePin(file).x(), UnitSystem.US));
        }
        Path page = handedOver(robot, Paperwork.PHONE, "<!", file);
        assertThat(Files.readString(page)).contains("Slip drum");
        handedOver(robot, Paperwork.PICTURE, "\u0089PNG", file);
        handedOver(robot, Paperwork.MOVING, "GIF89a", file);
        press(robot, "#hand-over-close");
    }

    private static Path handedOver(FxRobot robot, Paperwork what, String start, Path design) throws IOException {
        press(robot, "#make-" + what.name().toLowerCase(Locale.ROOT));
        waitFor(() -> shows(robot, "#save-to"));
        assertThat(words(robot, "#hand-over-state")).contains(what.words()).contains("nothing is written before");
        if (what != Paperwork.PHONE) {
            Image seen = robot.lookup("#preview").<ImageView>query().getImage();
            assertThat(seen.isError()).isFalse();
            assertThat(seen.getWidth()).isGreaterThan(300);
        }
        Path to = folder.resolve("handed" + what.end());
        assertThat(to).doesNotExist();
        // never over the design itself
        save(robot, design);
        assertThat(words(robot, "#save-wrong")).contains("already");
        press(robot, "#save-now");
        assertThat(words(robot, "#save-wrong")).contains("choose another name");
        save(robot, to);
        waitFor(() -> words(robot, "#hand-over-state").startsWith("Written: "));
        byte[] head = Arrays.copyOf(Files.readAllBytes(to), start.length());
        assertThat(new String(head, StandardCharsets.ISO_8859_1)).isEqualTo(start);
        return to;
    }

    private static void save(FxRobot robot, Path to) {
        TextField field = robot.lookup("#save-to").query();
        WaitForAsyncUtils.asyncFx(() -> field.setText(to.toString()));
        WaitForAsyncUtils.waitForFxEvents();
        press(robot, "#save-now");
    }

    private static void answer(FxRobot robot, TextField field, String text) {
        WaitForAsyncUtils.asyncFx(() -> {
            field.requestFocus();
            field.setText(text);
        });
        WaitForAsyncUtils.waitForFxEvents();
        robot.type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** The pane of the photo and the card of every part, as they stand open. */
    private void assertPanesCanBeUsed(FxRobot robot, double least) {
        MenuButton tools = robot.lookup("#tools").query();
        MenuItem photo = tools.getItems().stream()
                .filter(item -> "from-photo".equals(item.getId()))
                .findFirst()
                .orElseThrow();
        robot.interact(photo::fire);
        assertThat(shows(robot, "#photo-pane")).isTrue();
        assertOpen(least);
        robot.interact(photo::fire);
        assertThat(shows(robot, "#photo-pane")).isFalse();
        for (PartOfMachine part : PartOfMachine.values()) {
            String name = part.name().toLowerCase(Locale.ROOT);
            press(robot, "#part-" + name);
            assertThat(shows(robot, "#card-" + name)).isTrue();
            assertOpen(least);
            press(robot, "#part-" + name);
        }
    }

    private void assertOpen(double least) {
        usable.assertTargets(least);
        usable.assertContrast();
        usable.assertNames();
    }

    private void assertEverybodyCanUseIt(FxRobot robot) {
        assertOpen(32);
        assertPanesCanBeUsed(robot, 32);
        robot.type(KeyCode.T);
        WaitForAsyncUtils.waitForFxEvents();
        usable.assertContrast();
        for (int i = 0; i < 5; i++) {
            robot.press(KeyCode.CONTROL).type(KeyCode.PLUS).release(KeyCode.CONTROL);
        }
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(new Remembered(folder).textSize(1)).isEqualTo(1.5);
        assertPanesCanBeUsed(robot, 48);
        usable.assertTargets(48);
        usable.assertNothingCutOff();
        robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT0).release(KeyCode.CONTROL);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(new Remembered(folder).textSize(1)).isEqualTo(1);
        robot.type(KeyCode.F1);
        assertThat(robot.lookup("#keys-pane").query().isVisible()).isTrue();
        robot.clickOn("#part-tank");
        waitFor(() -> shows(robot, "#card-tank"));
        robot.type(KeyCode.ESCAPE);
        waitFor(() -> !shows(robot, "#card-tank"));
        assertThat(robot.lookup("#keys-pane").query().isVisible()).isTrue();
        robot.type(KeyCode.ESCAPE);
        assertThat(robot.lookup("#keys-pane").query().isVisible()).isFalse();
    }
}
