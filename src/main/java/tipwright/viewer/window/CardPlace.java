// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.window;

import javafx.geometry.Pos;
import org.jspecify.annotations.Nullable;
import tipwright.viewer.card.CardHost;
import tipwright.viewer.card.PartCard;
import tipwright.viewer.editor.PartOfMachine;

/** Where the card of a part lies: over the picture, one at a time, on the side away from the part. */
final class CardPlace {
    /** Width at most, in heights of the text. */
    static final double WIDTH = 30;

    private final WindowState shown;
    private final Overlay over;
    private final PartStrip parts;
    private final CardHost host;
    private final Runnable watcher;
    private @Nullable PartCard card;
    private @Nullable PartOfMachine open;

    /**
     * None is open yet.
     *
     * @param watcher is told when another card is open, or none any more
     */
    CardPlace(WindowState shown, Overlay over, PartStrip parts, CardHost host, Runnable watcher) {
        this.watcher = watcher;
        this.shown = shown;
        this.over = over;
        this.parts = parts;
        this.host = host;
    }

    /** Opens a part's card, or closes it when it is open. */
    void toggle(PartOfMachine part) {
        boolean same = part == open;
        close();
        if (!same) {
            open(part, Pos.TOP_LEFT);
        }
        mark();
    }

    /** Opens a part's card when it is not open yet. */
    void show(PartOfMachine part, Pos where) {
        if (part != open) {
            close();
            open(part, where);
        }
    }

    /** Whether a card is open. */
    boolean isOpen() {
        return open != null;
    }

    private void mark() {
        parts.mark(open);
        watcher.run();
    }

    private void close() {
        PartCard before = card;
        if (before != null) {
            over.takeAway(before);
        }
        card = null;
        open = null;
        mark();
    }

    private void open(PartOfMachine part, Pos where) {
        PartCard now = new PartCard(part, host);
        now.setMaxSize(WIDTH * shown.em(), Double.MAX_VALUE);
        card = now;
        open = part;
        mark();
        over.lay(now, where, () -> {
            card = null;
            open = null;
            mark();
        });
    }

    /** The design has been changed elsewhere. */
    void refresh() {
        PartCard now = card;
        if (now != null) {
            now.refresh();
        }
    }
}
