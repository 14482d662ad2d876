// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import tipwright.check.SideThreads;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.file.FieldEdit;
import tipwright.design.file.FileField;
import tipwright.design.file.FileFields;
import tipwright.design.file.PartsAtHand;
import tipwright.placement.BearingBox;
import tipwright.placement.PartsBox;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.editor.Solved;

/** The parts of the parts box with what came of trying each in the design, pins unmoved; one of them may be taken. */
final class PartsTable extends VBox {
    private static final int TOLD = 2;

    private final CardState card;
    private final String path;
    private final Label state = new Label("Working it out ...");
    private final GridPane grid = new GridPane();

    /**
     * One line.
     *
     * @param sizes in words
     * @param why what fails, or why it was not tried
     */
    private record Line(Verdict verdict, String name, boolean own, String sizes, String why) {}

    PartsTable(CardState card, String path, String section) {
        this.card = card;
        this.path = path;
        state.setWrapText(true);
        state.setId(FieldRow.id("trying", path));
        grid.setId(FieldRow.id("parts", path));
        grid.setHgap(10);
        grid.setVgap(4);
        getChildren().addAll(state, grid);
        Solved now = card.editor().solved();
        if (now == null) {
            state.setText("First fill in or fix what is marked; then the parts can be tried.");
            return;
        }
        Design design = now.design();
        PartsAtHand parts = PartNames.at(card.editor());
        UnitSystem units = card.editor().tape();
        work(() -> section.equals("bearings")
                ? bearings(design, parts, units)
                : actuators(design, parts.actuators(), units));
    }

    /** Whether trying makes sense for a field: it is a part in its place, not a list to choose from. */
    static boolean suits(String path) {
        return path.matches(".*\\[\\d+\\]\\.(actuator|bearing)");
    }

    private void work(Callable<List<Line>> task) {
        SideThreads.start("parts box", () -> {
            try {
                List<Line> lines = task.call();
                Platform.runLater(() -> show(lines));
            } catch (Exception e) {
                Platform.runLater(() -> state.setText("The parts could not be tried: " + e.getMessage()));
            }
        });
    }

    private static List<Line> actuators(Design design, Map<String, Actuator> box, UnitSystem units) {
        PartsBox.Sorted sorted = PartsBox.sorted(design, box);
        List<Line> all = new ArrayList<>();
        for (PartsBox.Tried t : PartsBox.tried(design, sorted.suiting())) {
            Actuator a = t.actuator().actuator();
            String sizes = "pushes " + Quantities.show(a.ratedPush(), Kind.FORCE, units) + ", stroke "
                    + Quantities.show(a.stroke(), Kind.LENGTH, units);
            boolean named = sorted.suiting().contains(t.actuator());
            all.add(new Line(
                    t.verdict(),
                    named ? t.actuator().name() : "",
                    t.own(),
                    sizes,
                    why(t.failing(), t.result() == null)));
        }
        sorted.leftOut().forEach((name, why) -> all.add(new Line(Verdict.NOT_CHECKED, name, false, "", why)));
        return all;
    }

    private static List<Line> bearings(Design design, PartsAtHand parts, UnitSystem units) {
        List<Line> all = new ArrayList<>();
        for (BearingBox.Tried t : BearingBox.tried(design, parts.bearings())) {
            String sizes = "bore " + Quantities.show(t.bearing().bore(), Kind.LENGTH, units);
            all.add(new Line(t.verdict(), t.name(), t.own(), sizes, why(t.failing(), t.result() == null)));
        }
        return all;
    }

    private static String why(List<Finding> failing, boolean impossible) {
        if (impossible) {
            return "cannot be computed";
        }
        List<String> titles = failing.stream().map(Finding::title).distinct().toList();
        int more = titles.size() - TOLD;
        return String.join("; ", titles.subList(0, Math.min(TOLD, titles.size())))
                + (more > 0 ? "; and " + more + " more" : "");
    }

    private void show(List<Line> lines) {
        long good = lines.stream()
                .filter(l -> l.verdict == Verdict.PASS || l.verdict == Verdict.CLOSE)
                .count();
        state.setText(good + " of " + lines.size() + " will do, with everything else as it is.");
        int row = 0;
        for (Line line : lines) {
            boolean does = line.verdict == Verdict.PASS || line.verdict == Verdict.CLOSE;
            String sign = does ? "\u2713 " : line.verdict == Verdict.FAIL ? "\u2717 " : "- ";
            Label verdict = new Label(sign + (line.verdict == Verdict.NOT_CHECKED ? "not tried" : line.verdict.says()));
            Label about = new Label(
                    (line.sizes + (line.why.isEmpty() || line.sizes.isEmpty() ? "" : "; ") + line.why).strip());
            about.setWrapText(true);
            about.getStyleClass().add("remark");
            Button take = new Button(line.own || line.name.isEmpty() ? "as drawn" : line.name);
            take.setMnemonicParsing(false);
            take.setId(FieldRow.id("take", line.name));
            take.setDisable(line.own || line.name.isEmpty());
            take.setMinWidth(USE_PREF_SIZE);
            take.setAccessibleText("take " + line.name + ", " + verdict.getText());
            take.setOnAction(e -> take(line.name));
            verdict.setMinWidth(USE_PREF_SIZE);
            grid.addRow(row++, take, verdict);
            grid.add(about, 0, row++, 2, 1);
        }
    }

    /** Puts the part into every place of its list, as it was tried. */
    private void take(String name) {
        int start = path.lastIndexOf('[');
        int end = path.indexOf(']', start);
        String list = path.substring(0, start);
        String key = path.substring(end + 1);
        FileField all = card.editor().fields().find(list);
        int places = all == null ? 1 : all.inner().size();
        card.rebuild(text -> {
            String edited = text;
            for (int i = 1; i <= places; i++) {
                edited = FieldEdit.set(FileFields.of(edited), list + "[" + i + "]" + key, name);
            }
            return edited;
        });
    }
}
