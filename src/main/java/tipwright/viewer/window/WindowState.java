// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.check.rule.Finding;
import tipwright.design.file.Reading;
import tipwright.design.tank.CaseName;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.dump.DumpStates;
import tipwright.viewer.dump.MachineState;
import tipwright.viewer.dump.Timeline;
import tipwright.viewer.editor.DesignEditor;
import tipwright.viewer.editor.Draft;
import tipwright.viewer.editor.Solved;
import tipwright.viewer.scene.Theme;
import tipwright.viewer.ticket.Judged;
import tipwright.viewer.ticket.TicketWorker;

/** What the window shows: the design on the editor, which load case, at which tilt, in which units. */
final class WindowState {
    /** Height of a window below which it is low, in heights of its text. */
    private static final double LOW = 44;

    private final List<Panel> panels = new ArrayList<>();
    private DesignEditor editor;
    private String loadCase = CaseName.HELD.key();
    private @Nullable UnitSystem units;
    private Theme theme;
    private Timeline.Spot spot = new Timeline.Spot(Double.NaN, 0, Double.NaN, 0, 0);
    private final TicketWorker worker = new TicketWorker(this::know);
    private final Behind checks = new Behind(1, worker::begin);
    private double textSize;
    /** What was asked about last; compared by identity. */
    private @Nullable Object asked;

    private @Nullable Judged judged;
    private @Nullable DumpStates dump;
    private @Nullable Timeline timeline;

    WindowState(DesignEditor editor, Theme theme, double textSize) {
        this.editor = editor;
        this.theme = theme;
        this.textSize = textSize;
        take();
        goToGoverning();
    }

    /** Goes to the load case and the tilt at which the actuators have most to do. */
    void goToGoverning() {
        Governing most = governing();
        if (most != null) {
            setLoadCase(most.loadCase());
            stand(most.tilt());
        }
    }

    /** Where the actuators have most to do; null when there are no numbers. */
    @Nullable
    Governing governing() {
        DumpStates d = dump;
        Judged known = judged;
        return d == null || known == null ? null : Governing.of(d.analysis(), known.findings());
    }

    /** What is known of the answer; null when there are no numbers. */
    @Nullable
    Judged judged() {
        return judged;
    }

    /** Looks for fixes of a check that is only close, beside the window. */
    void lookForFixes(Finding finding) {
        worker.look(finding);
    }

    private void know(Judged more) {
        judged = more;
        for (Panel panel : panels) {
            panel.judged();
        }
    }

    /** Height of the text, pixels. */
    double em() {
        return WindowStyle.EM * textSize;
    }

    /** Size of the text, 1 as usual. */
    double textSize() {
        return textSize;
    }

    /** Whether a window is so low for its text that what can fold has to, pixels. */
    boolean low(double height) {
        return height < LOW * em();
    }

    void setTextSize(double size) {
        textSize = Math.max(WindowStyle.SMALLEST, Math.min(WindowStyle.LARGEST, size));
        renew();
    }

    /** Whether a point is being moved: what takes time waits. */
    boolean moving() {
        Object now = editor.solved();
        Object written = editor.sheet().solved();
        return now != written;
    }

    /** Ends with the window. */
    void end() {
        checks.end();
        worker.end();
        editor.end();
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

    /** The moment shown; no number for its time when the load case is not one in time. */
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
            judged = null;
            asked = null;
            worker.cancel();
            return;
        }
        DumpStates now = dump;
        if (now == null || !now.analysis().equals(solved.analysis())) {
            now = new DumpStates(solved.analysis());
            dump = now;
            timeline = null;
        }
        loadCase = now.loadCase(loadCase).name();
        if (solved != asked) {
            asked = solved;
            Reading.Good read = editor.sheet().read();
            if (moving() || read == null) {
                worker.cancel();
                judged = Judged.moving(solved);
            } else {
                judged = worker.ask(Draft.of(editor), solved, read);
                checks.begin();
            }
        }
    }

    /** Goes to a tilt, rad: to the moment at which it is reached on the way up where the dump in time is known, else as the load case has it. */
    void tiltTo(double tilt) {
        Timeline.Spot moment = moment(tilt);
        if (moment == null) {
            stand(tilt);
        } else {
            goTo(moment);
        }
    }

    /** Goes to a tilt, rad, as the load case has it when it stands there. */
    void stand(double tilt) {
        goTo(new Timeline.Spot(Double.NaN, tilt, Double.NaN, 0, 0));
    }

    /** The moment at which a tilt is reached while the load runs out; null when the load case is not one in time. */
    Timeline.@Nullable Spot moment(double tilt) {
        if (moving() || !loadCase.equals(CaseName.DRAINING.key())) {
            return null;
        }
        Timeline in = timeline();
        Timeline.Spot at = in == null ? null : in.rising(tilt);
        return at == null || Double.isNaN(at.volume()) ? null : at;
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
