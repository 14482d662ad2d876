// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import tipwright.viewer.editor.DesignEditor;

/** Where a card is shown. All is called on the window's thread. */
public interface CardHost {
    /** The design being worked on. */
    DesignEditor editor();

    /** The editor's text has changed by one step of undo: solve, paint, and have the slow checks made. */
    void changed();

    /** Lets a dimension line be drawn from a point, by its label among the {@link tipwright.viewer.editor.MeasuredPoint}s. */
    void measureFrom(String point);

    /** Something to tell the person at the window, in a sentence. */
    void say(String message);
}
