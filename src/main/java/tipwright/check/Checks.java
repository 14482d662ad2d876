// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.List;

/** The registry of checks. */
public final class Checks {
    private Checks() {}

    /** All checks, in the order in which they are shown. */
    public static List<Check> all() {
        return List.of();
    }
}
