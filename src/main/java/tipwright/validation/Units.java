// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

import tipwright.quantity.Kind;
import tipwright.quantity.Quantities;

/** Conversion factors. */
final class Units {
    private Units() {}

    static void addTo(Figures figures) {
        for (String[] line : ReferenceTables.lines("units.csv", ",")) {
            figures.add(line[0], () -> Quantities.parse("1 " + line[0], Kind.valueOf(line[1])));
        }
    }
}
