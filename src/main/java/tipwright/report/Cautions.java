// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.List;

/**
 * What every output says, whatever the figures are.
 *
 * <p>Source: own words; they lean on 29 CFR 1926.601(b)(10) (a locked support under a raised body), OSHA SHIB 09-18-2006 (raised
 * dump bodies) and 29 CFR 1910.147 (stored energy); the rest is common practice, no source.
 */
public final class Cautions {
    private Cautions() {}

    /** That the figures do not stand alone. */
    public static final String FIGURES =
            "These figures do not replace a licensed engineer or your local codes; have an engineer look over them before you build.";

    /** The most important of them, on two lines. */
    public static final String SHORT =
            "Never go under a raised tank unless it stands on a fixed prop that can carry its full weight. Keep people clear of"
                    + " all that swings, of the load and of pinch points. These figures do not replace a licensed engineer or your local codes.";

    /** One sentence each, in the order in which they are shown; the last is {@link #FIGURES}. */
    public static List<String> all() {
        return List.of(
                "Never go under a raised tank unless it stands on a fixed prop that can carry its full weight.",
                "An actuator is not a prop: screws strip, seals leak and hoses burst.",
                "Let pressure or vacuum out of the tank before you undo anything that keeps it shut.",
                "Keep people out of the way of all that swings, out of where the load lands, and away from pinch points.",
                "Raise it on level, firm ground only, and clear of overhead lines.",
                "Lock the supply out, and let stored pressure down, before you work on it.",
                FIGURES);
    }
}
