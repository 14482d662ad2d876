// SPDX-License-Identifier: Apache-2.0
package tipwright.interview;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;

/**
 * The side view as far as the answers tell, dump end to the right, measured from the mark.
 *
 * @param outlines closed, m
 * @param pins by their letter, m
 */
public record SideSketch(List<List<Vec2>> outlines, Map<Character, Vec2> pins) {
    static SideSketch of(Answers a) {
        SideSketch sketch = new SideSketch(new ArrayList<>(), new LinkedHashMap<>());
        sketch.tank(a);
        sketch.letter('P', a.at("pivot"));
        sketch.letter('F', a.at("frame-pin"));
        sketch.letter('T', a.at("tank-pin"));
        return sketch;
    }

    /** Whether there is nothing to see yet. */
    public boolean isEmpty() {
        return outlines.isEmpty();
    }

    /** What a letter stands for. */
    public static String meaning(char sign) {
        return switch (sign) {
            case 'P' -> "pivot";
            case 'F' -> "frame pin";
            default -> "tank pin";
        };
    }

    private void letter(char sign, @Nullable Vec2 at) {
        if (at != null) {
            pins.put(sign, at);
        }
    }

    private void tank(Answers a) {
        List<Vec2> corners = new ArrayList<>();
        for (String id : List.of("bottom-front", "bottom-dump", "top-dump", "top-front")) {
            @Nullable Vec2 at = a.at(id);
            if (at != null) {
                corners.add(at);
            }
        }
        @Nullable Vec2 low = a.at("tank-low");
        @Nullable Vec2 high = a.at("tank-high");
        if (low != null && high != null) {
            Vec2 lowDump = new Vec2(high.x(), low.y());
            Vec2 highFront = new Vec2(low.x(), high.y());
            corners.addAll(List.of(low, lowDump, high));
            if (a.has("dish") && !a.is("dish", "flat")) {
                double out = a.metres(a.text("dish"));
                double middle = 0.5 * (low.y() + high.y());
                corners.add(highFront);
                corners.add(new Vec2(low.x() - out, middle + 0.25 * (high.y() - low.y())));
                corners.add(new Vec2(low.x() - out, middle - 0.25 * (high.y() - low.y())));
            } else {
                corners.add(highFront);
            }
        }
        if (corners.size() > 1) {
            outlines.add(corners);
        }
    }
}
