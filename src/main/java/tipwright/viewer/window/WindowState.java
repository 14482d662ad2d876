// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.dump.Timeline;
import tipwright.viewer.editor.DesignEditor;
import tipwright.viewer.editor.Solved;
import tipwright.viewer.scene.Theme;

/** What the window shows: the design on the editor, which load case, at which tilt, in which units. */
final class WindowState {
    private final List<Panel> panels = new ArrayList<>();
    private DesignEditor editor;
    private String loadCase = "draining";
    private @Nullable UnitSystem units;
    private Theme theme = Theme.DARK;
    private Timeline.Spot spot = new Timeline.Spot(0, 0, Double.NaN, 0, 0);
    private @Nullable DumpStates dump;
    private @Nullable Timeline timeline;

    WindowState(DesignEditor editor) {
        this.editor = editor;
        take();
    }

    void add(Panel panel) {
        panels.add(panel);
    }

    DesignEditor editor() {
        return editor;
    }

    /** What is drawn; null when there are no numbers. */
    @Nullable
    DumpStates dump() {
        return dump;
    }

    /** The dump in time; null when there are no numbers. */
    @Nullable
    Timeline timeline() {
        DumpStates d = dump;
        if (timeline == null && d != null) {
            timeline = Timeline.of(d, loadCase);
        }
        return timeline;
    }

    /** The dump in time if it is wanted. */
    @Nullable
    Timeline timeline(boolean wanted) {
        return wanted ? timeline() : null;
    }

    String loadCase() {
        return loadCase;
    }

    UnitSystem units() {
        return units == null ? editor.tape() : units;
    }

    Theme theme() {
        return theme;
    }

    /** The moment shown; no number for its time when a tilt was chosen by hand. */
    Timeline.Spot spot() {
        return spot;
    }

    void setLoadCase(String other) {
        if (!other.equals(loadCase)) {
            loadCase = other;
            timeline = null;
            renew();
        }
    }

    void setUnits(UnitSystem other) {
        units = other;
        renew();
    }

    void setTheme(Theme other) {
        theme = other;
        renew();
    }

    /** Takes the numbers from the editor anew, and has every panel show them. */
    void renew() {
        take();
        for (Panel panel : panels) {
            panel.renew();
        }
        move();
    }

    private void take() {
        Solved solved = editor.solved();
        if (solved == null) {
            dump = null;
            timeline = null;
            return;
        }
        DumpStates now = dump;
        if (now == null || !now.analysis().equals(solved.analysis())) {
            now = new DumpStates(solved.analysis());
            dump = now;
            timeline = null;
        }
        loadCase = now.loadCase(loadCase).name();
    }

    /** Goes to a tilt, rad, as the load case has it. */
    void tiltTo(double tilt) {
        goTo(new Timeline.Spot(Double.NaN, tilt, Double.NaN, 0, 0));
    }

    /** Goes to a moment. */
    void goTo(Timeline.Spot other) {
        spot = other;
        move();
    }

    private void move() {
        MachineState now = now();
        if (now != null) {
            for (Panel panel : panels) {
                panel.move(now);
            }
        }
    }

    /** The machine as shown; null when there are no numbers. */
    @Nullable
    MachineState now() {
        DumpStates d = dump;
        return d == null ? null : d.at(loadCase, spot);
    }

    /** A quantity in the units chosen. */
    String show(double si, Kind kind) {
        return Quantities.show(si, kind, units());
    }
}
