// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.card;

import tipwright.viewer.editor.DesignEditor;

/** The window that a card stands in. */
public interface CardHost {
    /** The design that is worked on. */
    DesignEditor editor();

    /** The text has changed by one step that can be undone: it is to be solved and shown. */
    void changed();

    /** Tells something. */
    void say(String message);
}
