// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import java.util.Map;
import javafx.scene.Node;
import javafx.scene.shape.SVGPath;
import org.jspecify.annotations.Nullable;

/** Small pictures of tank shapes and mechanisms, from the side, dump end to the right. A kind without one shows its word alone. */
final class KindIcon {
    private static final String TANK = "M30 8 h22 v12 h-22 z ";

    private static final String PIN_RADIUS = "2";

    private static final Map<String, String> PATHS = Map.ofEntries(
            Map.entry(
                    "cylinder",
                    "M14 6 h36 a8 13 0 0 1 0 26 h-36 a8 13 0 0 1 0 -26 z M14 6 a8 13 0 0 0 0 26 M50 6 a8 13 0 0 1 0 26"),
            Map.entry("box", "M10 14 h34 v20 h-34 z M10 14 l10 -8 h34 l-10 8 M54 6 v20 l-10 8"),
            Map.entry("prism", "M8 8 h48 l-14 26 h-20 z"),
            Map.entry(
                    "mesh",
                    "M10 10 l18 -4 l26 6 l-6 20 l-28 2 z M10 10 l26 8 l18 -6 M36 18 l-16 16 M36 18 l12 14 M28 6 l8 12"),
            Map.entry("straight", TANK + pin(48, 24) + pin(12, 36) + pin(34, 20) + "M12 36 L34 20"),
            Map.entry(
                    "four-bar",
                    TANK + pin(36, 22) + pin(48, 22) + pin(34, 36) + pin(52, 36) + "M36 22 L34 36 M48 22 L52 36"),
            Map.entry(
                    "bell-crank",
                    TANK + pin(48, 24) + pin(16, 30) + pin(8, 20) + pin(22, 20)
                            + "M16 30 L8 20 L22 20 z M22 20 L34 14"),
            Map.entry("sliding-base", TANK + pin(42, 24) + "M34 24 h18 v6 h-18 z M6 34 h54 M8 28 L34 12"),
            Map.entry("sliding-pin", TANK + pin(48, 24) + "M6 34 h36 M14 28 h10 v6 h-10 z M19 28 L34 18"),
            Map.entry(
                    "knuckle",
                    TANK + pin(48, 24) + pin(34, 18) + pin(22, 26) + pin(28, 38) + "M34 18 L22 26 L28 38 M4 30 L22 26"),
            Map.entry("free", TANK + pin(12, 12) + pin(20, 32) + pin(6, 26) + "M12 12 L20 32 L6 26 z M12 12 L30 14"));

    private KindIcon() {}

    private static String pin(int x, int y) {
        return "M" + (x - 2) + " " + y + " a" + PIN_RADIUS + " " + PIN_RADIUS + " 0 1 0 4 0 a" + PIN_RADIUS + " "
                + PIN_RADIUS + " 0 1 0 -4 0 ";
    }

    /** The picture of a kind; null when there is none. */
    static @Nullable Node of(String word) {
        String path = PATHS.get(word);
        if (path == null) {
            return null;
        }
        SVGPath picture = new SVGPath();
        picture.setContent(path);
        picture.setStyle("-fx-fill: transparent; -fx-stroke: -fx-text-background-color; -fx-stroke-width: 1.6;");
        return picture;
    }
}
