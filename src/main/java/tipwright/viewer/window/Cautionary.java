// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import tipwright.check.rule.Verdict;
import tipwright.report.Cautions;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.ticket.VerdictMark;

/** The cautions in short, always in sight; all of them stand in the list of keys. */
final class Cautionary extends HBox implements Panel {
    private final WindowState shown;
    private final Label words = new Label(Cautions.SHORT);
    private final VerdictMark mark = new VerdictMark();

    Cautionary(WindowState shown) {
        this.shown = shown;
        getStyleClass().add("caution");
        setId("cautions");
        words.getStyleClass().add("small");
        words.setWrapText(true);
        HBox.setHgrow(words, Priority.ALWAYS);
        List<String> all = Cautions.all();
        setAccessibleText(String.join(" ", all));
        getChildren().add(words);
    }

    @Override
    public void renew() {
        words.setGraphic(mark.of(Verdict.CLOSE, shown.theme(), 1.1 * shown.em()));
    }

    @Override
    public void move(MachineState now) {
        // cautions stay
    }
}
