// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;
import tipwright.quantity.UnitSystem;
import tipwright.time.Cycle;
import tipwright.time.Moment;

/** Tilt and contents against time, in plain characters: '*' tilt, 'o' what is in the tank, each as a share of its largest. */
final class TimePlot {
    private static final int WIDTH = 72;
    private static final int HEIGHT = 12;
    private static final int MARGIN = 10;

    private final List<Moment> moments;

    private final UnitSystem units;

    TimePlot(Cycle cycle, UnitSystem units) {
        this.units = units;
        moments = cycle.moments();
    }

    List<String> lines() {
        double end = moments.get(moments.size() - 1).time();
        double tilt = moments.stream().mapToDouble(Moment::tilt).max().orElse(0);
        double volume = moments.stream().mapToDouble(Moment::volume).max().orElse(0);
        char[][] cells = new char[HEIGHT + 1][WIDTH + 1];
        for (char[] row : cells) {
            Arrays.fill(row, ' ');
        }
        for (int x = 0; x <= WIDTH; x++) {
            Moment m = at(end * x / WIDTH);
            if (volume > 0) {
                cells[height(m.volume() / volume)][x] = 'o';
            }
            if (tilt > 0) {
                cells[height(m.tilt() / tilt)][x] = '*';
            }
        }
        List<String> lines = new ArrayList<>();
        for (int y = HEIGHT; y >= 0; y--) {
            String left = y == HEIGHT ? Scale.angle().number(tilt) + " deg " : y == 0 ? "0 deg " : "";
            String right = y == HEIGHT ? " " + Quantities.rough(volume, Kind.VOLUME, units) : y == 0 ? " 0" : "";
            lines.add("  " + " ".repeat(Math.max(0, MARGIN - left.length())) + left + "|"
                    + new String(cells[y]).stripTrailing());
            if (!right.isEmpty()) {
                String line = lines.get(lines.size() - 1);
                lines.set(lines.size() - 1, line + " ".repeat(Math.max(0, 14 + WIDTH - line.length())) + right);
            }
        }
        lines.add("            +" + "-".repeat(WIDTH + 1));
        String last = Math.round(end) + " s";
        lines.add("            0 s" + " ".repeat(Math.max(1, WIDTH - 1 - last.length())) + last);
        lines.add("            * tilt   o in the tank");
        return lines;
    }

    private static int height(double share) {
        return (int) Math.round(HEIGHT * Math.max(0, Math.min(1, share)));
    }

    /** The moment nearest to a time, s. */
    private Moment at(double time) {
        Moment before = moments.get(0);
        for (Moment m : moments) {
            if (m.time() >= time) {
                return m.time() - time < time - before.time() ? m : before;
            }
            before = m;
        }
        return before;
    }
}
