// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.io.Reader;
import java.util.Map;

/**
 * Where the output goes and what is typed comes from.
 *
 * @param interactive whether a person looks at it on a terminal
 * @param environment variables of the process
 * @param input what a person types
 */
record Terminal(boolean interactive, Map<String, String> environment, Reader input) {
    /** Where nobody types anything. */
    Terminal(boolean interactive, Map<String, String> environment) {
        this(interactive, environment, Reader.nullReader());
    }

    /** Colour only for a person at a terminal that can show it, and not when NO_COLOR is set to anything but nothing. */
    boolean colour() {
        return interactive
                && environment.getOrDefault("NO_COLOR", "").isEmpty()
                && !environment.getOrDefault("TERM", "").equals("dumb");
    }
}
