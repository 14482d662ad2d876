// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import tipwright.check.rule.Verdict;
import tipwright.report.Cautions;
import tipwright.viewer.dump.MachineState;

/** The cautions, always in sight: the first and the last stand, all of them show when the mouse rests on the line and in the list of keys. */
final class Cautionary extends HBox implements Panel {
    private final WindowState shown;
    private final Label first = new Label();
    private final Label last = new Label();

    Cautionary(WindowState shown) {
        this.shown = shown;
        getStyleClass().add("caution");
        setId("cautions");
        setSpacing(10);
        List<String> all = Cautions.all();
        first.setText(all.get(0));
        last.setText(Cautions.FIGURES);
        last.getStyleClass().addAll("faint", "small");
        last.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(last, Priority.ALWAYS);
        first.setMinWidth(USE_PREF_SIZE);
        javafx.scene.control.Tooltip tip = new javafx.scene.control.Tooltip(String.join("\n", all));
        tip.setWrapText(true);
        tip.setMaxWidth(560);
        javafx.scene.control.Tooltip.install(this, tip);
        setAccessibleText(String.join(" ", all));
        getChildren().addAll(first, last);
    }

    @Override
    public void renew() {
        first.setGraphic(VerdictShape.of(Verdict.CLOSE, shown.theme(), 16));
    }

    @Override
    public void move(MachineState now) {
        // cautions stay
    }
}
