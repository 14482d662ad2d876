// SPDX-License-Identifier: Apache-2.0
package tipwright.interview;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Extent;
import tipwright.geometry.Vec2;

/** The side view in letters, dump end to the right. */
final class SideText {
    private static final int COLUMNS = 60;
    private static final int ROWS = 16;
    /** A letter on a terminal is about twice as high as wide. */
    private static final double TALL = 2;

    private final List<List<Vec2>> strokes;
    private final Map<Character, Vec2> letters;
    private final char[][] grid = new char[ROWS + 1][COLUMNS + 1];
    private double left;
    private double top;
    private double scale;

    private SideText(SideSketch sketch) {
        strokes = sketch.outlines();
        letters = sketch.pins();
        for (char[] row : grid) {
            Arrays.fill(row, ' ');
        }
    }

    static String of(SideSketch sketch) {
        return sketch.isEmpty() ? "" : new SideText(sketch).drawn();
    }

    private String drawn() {
        List<Vec2> all = new ArrayList<>(letters.values());
        strokes.forEach(all::addAll);
        all.add(Vec2.ZERO);
        Extent extent = Extent.of(all);
        left = extent.low().x();
        top = extent.high().y();
        scale = Math.max(0.01, Math.max(extent.width() / COLUMNS, extent.height() / (ROWS * TALL)));
        for (List<Vec2> corners : strokes) {
            for (int i = 0; i < corners.size(); i++) {
                stroke(corners.get(i), corners.get((i + 1) % corners.size()), '#');
            }
        }
        @Nullable Vec2 from = letters.get('F');
        @Nullable Vec2 to = letters.get('T');
        if (from != null && to != null) {
            stroke(from, to, ':');
        }
        put(Vec2.ZERO, '+');
        letters.forEach((sign, at) -> put(at, sign));
        return text();
    }

    private String text() {
        StringBuilder lines = new StringBuilder();
        for (char[] row : grid) {
            String line = new String(row).stripTrailing();
            if (!line.isEmpty() || (!lines.isEmpty() && !isRestEmpty(row))) {
                lines.append("    ").append(line).append('\n');
            }
        }
        lines.append("    + your mark");
        letters.keySet()
                .forEach(sign -> lines.append(", ").append(sign).append(' ').append(SideSketch.meaning(sign)));
        return lines.append("; it dumps to the right\n").toString();
    }

    private boolean isRestEmpty(char[] from) {
        int start = Arrays.asList(grid).indexOf(from);
        return Arrays.stream(grid).skip(start).allMatch(row -> new String(row).isBlank());
    }

    private void stroke(Vec2 from, Vec2 to, char sign) {
        int steps = (int) Math.ceil(to.minus(from).norm() / (scale / 2)) + 1;
        for (int i = 0; i <= steps; i++) {
            put(from.plus(to.minus(from).times((double) i / steps)), sign);
        }
    }

    private void put(Vec2 at, char sign) {
        int column = (int) Math.round((at.x() - left) / scale);
        int row = (int) Math.round((top - at.y()) / (scale * TALL));
        grid[Math.min(ROWS, Math.max(0, row))][Math.min(COLUMNS, Math.max(0, column))] = sign;
    }
}
