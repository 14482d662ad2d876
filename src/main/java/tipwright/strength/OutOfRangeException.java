// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;

/** A rule does not hold for a part as it is: no verdict, whatever the load. */
public final class OutOfRangeException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final transient Text reason;

    /**
     * Out of range.
     *
     * @param reason what does not fit, as part of a sentence
     */
    public OutOfRangeException(Text reason) {
        super(reason.show(UnitSystem.METRIC));
        this.reason = reason;
    }

    /** Why, with its quantities. */
    public Text reason() {
        return reason;
    }
}
