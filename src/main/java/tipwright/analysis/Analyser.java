// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import tipwright.design.Design;

/** Computes a design over its whole tilt range. */
public final class Analyser {
    private Analyser() {}

    /**
     * Every load case at every tilt.
     *
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn
     */
    public static Analysis analyse(Design design) throws CannotComputeException {
        throw new CannotComputeException(design.name() + ": not built");
    }
}
