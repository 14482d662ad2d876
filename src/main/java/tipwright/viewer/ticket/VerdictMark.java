// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.ticket;

import javafx.scene.Node;
import org.jspecify.annotations.Nullable;
import tipwright.check.rule.Verdict;
import tipwright.viewer.scene.Theme;

/** The shape of a verdict at one place: it stays the same node as long as nothing about it changes, so that it need not be drawn again. */
public final class VerdictMark {
    private @Nullable Looks looks;
    private @Nullable Node made;

    private record Looks(Verdict verdict, Theme theme, double size) {}

    /** The shape, of a size in pixels. */
    public Node of(Verdict verdict, Theme theme, double size) {
        Looks now = new Looks(verdict, theme, size);
        Node known = made;
        if (known != null && now.equals(looks)) {
            return known;
        }
        Node other = VerdictShape.of(verdict, theme, size);
        looks = now;
        made = other;
        return other;
    }
}
