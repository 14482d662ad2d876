// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import tipwright.check.rule.Verdict;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.ticket.VerdictShape;

/** In place of the picture when there is nothing to draw: what is wrong with the file, and where. */
final class ProblemsPane extends ScrollPane implements Panel {
    private final WindowState shown;
    private final VBox list = new VBox();

    ProblemsPane(WindowState shown) {
        this.shown = shown;
        setId("problems");
        setContent(list);
        setFitToWidth(true);
        list.getStyleClass().add("card");
    }

    @Override
    public void renew() {
        List<String> problems = shown.editor().sheet().problems();
        boolean broken = shown.dump() == null;
        setVisible(broken);
        setManaged(broken);
        list.getChildren().clear();
        if (!broken) {
            return;
        }
        Label head = new Label(
                problems.size() == 1
                        ? "One thing keeps this design from being drawn"
                        : problems.size() + " mistakes in the file; nothing can be shown yet");
        head.getStyleClass().add("big");
        head.setWrapText(true);
        Label how = new Label("Fix them in your editor and save; this window reloads by itself.");
        how.getStyleClass().add("faint");
        how.setWrapText(true);
        list.getChildren().addAll(head, how);
        for (String problem : problems) {
            Label line = new Label(problem);
            line.setWrapText(true);
            line.setGraphic(VerdictShape.of(Verdict.FAIL, shown.theme(), 1.1 * shown.em()));
            list.getChildren().add(line);
        }
    }

    @Override
    public void move(MachineState now) {
        // there is nothing to move
    }
}
