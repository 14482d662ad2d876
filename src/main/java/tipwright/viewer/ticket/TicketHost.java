// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.ticket;

import tipwright.check.rule.Finding;
import tipwright.quantity.UnitSystem;
import tipwright.viewer.scene.Theme;

/** The window that the ticket stands in. */
public interface TicketHost {
    /** Units that numbers are shown in. */
    UnitSystem inUnits();

    /** Colours. */
    Theme inTheme();

    /** Height of the text, pixels. */
    double em();

    /** Shows the tilt and load case at which a check is worst. */
    void goTo(Finding finding);

    /** Puts a fix into the design as one step that can be undone. */
    void apply(ReadyFix fix);

    /** Looks for fixes of a check that is only close, beside the window; they come with the next ticket. */
    void lookForFixes(Finding finding);
}
