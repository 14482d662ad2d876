// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import org.jspecify.annotations.Nullable;
import tipwright.design.actuator.Actuator;
import tipwright.strength.Column;

/**
 * Buckling load of an actuator over its length, from a table: the load of a stepped column has no closed form.
 *
 * <p>Between the entries 1/sqrt(P) is taken as linear in the length, which a long column is.
 */
final class Buckling {
    private static final double STEP = 0.0005;

    private final double first;
    private final double[] root;

    private Buckling(double first, double[] root) {
        this.first = first;
        this.root = root;
    }

    /** The table; null when too little is known. */
    static @Nullable Buckling of(Actuator actuator) {
        if (!Column.known(actuator)) {
            return null;
        }
        int steps = (int) Math.ceil(actuator.stroke() / STEP) + 1;
        double[] root = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            root[i] = 1 / Math.sqrt(Column.actuator(actuator, actuator.closed() + i * STEP));
        }
        return new Buckling(actuator.closed(), root);
    }

    /** N at a length in m; beyond the stroke that of its end. */
    double at(double length) {
        double place = Math.max(0, Math.min(root.length - 1.0, (length - first) / STEP));
        int i = Math.min(root.length - 2, (int) place);
        double r = root[i] + (place - i) * (root[i + 1] - root[i]);
        return 1 / (r * r);
    }
}
