// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.util.Map;

/**
 * Where the output goes.
 *
 * @param interactive whether a person looks at it on a terminal
 * @param environment variables of the process
 */
record Terminal(boolean interactive, Map<String, String> environment) {
    /** Colour only for a person at a terminal that can show it, and not when NO_COLOR is set to anything but nothing. */
    boolean colour() {
        return interactive
                && environment.getOrDefault("NO_COLOR", "").isEmpty()
                && !environment.getOrDefault("TERM", "").equals("dumb");
    }
}
