// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.bench.Bench;
import tipwright.viewer.bench.Solved;
import tipwright.viewer.dump.Dump;
import tipwright.viewer.dump.Instant;
import tipwright.viewer.dump.Reel;
import tipwright.viewer.scene.Theme;

/** What the window shows: the design on the bench, which load case, at which tilt, in which units. */
final class Desk {
    private final List<Panel> panels = new ArrayList<>();
    private Bench bench;
    private String loadCase = "draining";
    private @Nullable UnitSystem units;
    private Theme theme = Theme.DARK;
    private Reel.Spot spot = new Reel.Spot(0, 0, Double.NaN, 0, 0);
    private @Nullable Dump dump;
    private @Nullable Reel reel;

    Desk(Bench bench) {
        this.bench = bench;
        take();
    }

    void add(Panel panel) {
        panels.add(panel);
    }

    Bench bench() {
        return bench;
    }

    /** What is drawn; null when there are no numbers. */
    @Nullable
    Dump dump() {
        return dump;
    }

    /** The dump in time; null when there are no numbers. */
    @Nullable
    Reel reel() {
        Dump d = dump;
        if (reel == null && d != null) {
            reel = Reel.of(d, loadCase);
        }
        return reel;
    }

    /** The dump in time if it is wanted. */
    @Nullable
    Reel reel(boolean wanted) {
        return wanted ? reel() : null;
    }

    String loadCase() {
        return loadCase;
    }

    UnitSystem units() {
        return units == null ? bench.tape() : units;
    }

    Theme theme() {
        return theme;
    }

    /** The moment shown; no number for its time when a tilt was chosen by hand. */
    Reel.Spot spot() {
        return spot;
    }

    void setLoadCase(String other) {
        if (!other.equals(loadCase)) {
            loadCase = other;
            reel = null;
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

    /** Takes the numbers from the bench anew, and has every panel show them. */
    void renew() {
        take();
        for (Panel panel : panels) {
            panel.renew();
        }
        move();
    }

    private void take() {
        Solved solved = bench.solved();
        if (solved == null) {
            dump = null;
            reel = null;
            return;
        }
        Dump now = dump;
        if (now == null || !now.analysis().equals(solved.analysis())) {
            now = new Dump(solved.analysis());
            dump = now;
            reel = null;
        }
        loadCase = now.loadCase(loadCase).name();
    }

    /** Goes to a tilt, rad, as the load case has it. */
    void tiltTo(double tilt) {
        goTo(new Reel.Spot(Double.NaN, tilt, Double.NaN, 0, 0));
    }

    /** Goes to a moment. */
    void goTo(Reel.Spot other) {
        spot = other;
        move();
    }

    private void move() {
        Instant now = now();
        if (now != null) {
            for (Panel panel : panels) {
                panel.move(now);
            }
        }
    }

    /** The machine as shown; null when there are no numbers. */
    @Nullable
    Instant now() {
        Dump d = dump;
        return d == null ? null : d.at(loadCase, spot);
    }

    /** A quantity in the units chosen. */
    String show(double si, Kind kind) {
        return Quantities.show(si, kind, units());
    }
}
