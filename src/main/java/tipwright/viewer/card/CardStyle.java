// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import java.nio.charset.StandardCharsets;
import java.util.Base64;

/** The look of a card; all sizes follow the size of the text. */
final class CardStyle {
    private static final String CSS =
            """
            .part-card { -fx-spacing: 0.4em; }
            .part-card .text-field, .part-card .combo-box, .part-card .button, .part-card .toggle-button
                { -fx-min-height: 2.6em; }
            .part-card .combo-box { -fx-pref-width: 12em; -fx-border-color: transparent; -fx-border-width: 2; }
            .part-card .combo-box:focused, .part-card .grid-pane:focused { -fx-border-color: -fx-accent; }
            .part-card .text-field { -fx-pref-width: 10em; -fx-min-width: 5.5em; }
            .part-card .line > .text-field { -fx-min-width: 10em; }
            .part-card .line > .combo-box { -fx-min-width: 12em; }
            .part-card .title { -fx-font-size: 1.3em; -fx-font-weight: bold; }
            .part-card .remark { -fx-font-size: 0.88em; -fx-opacity: 0.85; }
            .part-card .problem { -fx-font-weight: bold; -fx-padding: 0.1em 0 0.1em 0.6em; -fx-border-width: 0 0 0 4;
                -fx-border-color: transparent transparent transparent #d0342c; }
            .part-card .fold { -fx-alignment: center-left; -fx-background-insets: 0; -fx-max-width: infinity; -fx-font-weight: bold; }
            .part-card .inner { -fx-spacing: 0.5em; -fx-padding: 0.2em 0 0.4em 0.9em; -fx-border-width: 0 0 0 1;
                -fx-border-color: transparent transparent transparent -fx-accent; }
            .part-card .tile { -fx-content-display: top; -fx-min-width: 6em; -fx-min-height: 5em; }
            """;

    private CardStyle() {}

    /** As an address that a parent takes. */
    static String sheet() {
        return "data:text/css;base64," + Base64.getEncoder().encodeToString(CSS.getBytes(StandardCharsets.UTF_8));
    }
}
