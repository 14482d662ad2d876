// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.TilePane;
import org.jspecify.annotations.Nullable;
import tipwright.check.rule.Verdict;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.editor.PartOfMachine;
import tipwright.viewer.ticket.Judged;
import tipwright.viewer.ticket.VerdictMark;

/** The parts of the machine along the foot of the picture, each with how it stands by shape and word; a click opens its card. */
final class PartStrip extends TilePane implements Panel {
    private final WindowState shown;
    private final Map<PartOfMachine, ToggleButton> buttons = new EnumMap<>(PartOfMachine.class);
    private final Map<PartOfMachine, VerdictMark> marks = new EnumMap<>(PartOfMachine.class);

    /** Tells who wants to know which part was clicked on. */
    PartStrip(WindowState shown, Consumer<PartOfMachine> clicked) {
        this.shown = shown;
        getStyleClass().add("parts");
        setId("parts");
        setPrefColumns(PartOfMachine.values().length);
        setMinHeight(USE_PREF_SIZE);
        // it is drawn as one: with seven changes side by side the picture above would be drawn again too
        setCache(true);
        for (PartOfMachine part : PartOfMachine.values()) {
            ToggleButton button = new ToggleButton();
            button.setId("part-" + part.name().toLowerCase(java.util.Locale.ROOT));
            button.getStyleClass().add("part");
            button.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
            button.setOnAction(e -> clicked.accept(part));
            buttons.put(part, button);
            getChildren().add(button);
        }
    }

    /** Marks the part whose card is open; null: none is. */
    void mark(@Nullable PartOfMachine open) {
        buttons.forEach((part, button) -> button.setSelected(part == open));
    }

    @Override
    public void renew() {
        Judged judged = shown.judged();
        setDisable(judged == null);
        if (judged == null) {
            return;
        }
        PartStates.of(judged.early().analysis(), judged.findings()).forEach((part, verdict) -> {
            ToggleButton button = buttons.get(part);
            if (button != null) {
                Verdict known = judged.all() == null && verdict != Verdict.FAIL ? Verdict.NOT_CHECKED : verdict;
                String word = known == verdict ? verdict.says() : "not yet";
                button.setGraphic(
                        marks.computeIfAbsent(part, p -> new VerdictMark()).of(known, shown.theme(), 1.3 * shown.em()));
                button.setText(part.word() + "\n" + word);
                button.setAccessibleText(part.word() + ", " + word + "; opens its card");
            }
        });
    }

    @Override
    public void judged() {
        renew();
    }

    @Override
    public void move(MachineState now) {
        // what a part stands for holds at every tilt
    }
}
