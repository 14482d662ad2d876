// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import tipwright.design.Factors;
import tipwright.design.drive.LinkSection;
import tipwright.strength.Column;

/**
 * The bars of one link, bearing alike.
 *
 * @param length between its pins, m
 */
record LinkBars(LinkSection made, double length, Factors factors) {
    /** As a column about the weaker axis, N. */
    double buckling() {
        return made.bars()
                * Column.uniform(length, made.section().area(), made.weakInertia(), made.modulus(), made.yield());
    }

    /** Share of what it may bear as a column, with its bending. */
    double share(LinkLoad.Borne load) {
        double squeeze = Math.max(0, load.squeeze());
        double euler = made.bars()
                * Math.PI
                * Math.PI
                * made.modulus()
                * made.section().inertia()
                / (length * length);
        double left = 1 - factors.buckling() * squeeze / euler;
        double bent = left > 0 ? factors.lug() * bending(load) / made.yield() / left : Double.POSITIVE_INFINITY;
        double pressed = factors.buckling() * squeeze / buckling();
        return load.bend() > 0 ? pressed + bent : pressed;
    }

    /** Tension beside the hole and bending together, Pa; 0 where it is not drawn. */
    double stress(LinkLoad.Borne load) {
        return load.draw() > 0 ? load.draw() / (made.bars() * made.netArea()) + bending(load) : 0;
    }

    private double bending(LinkLoad.Borne load) {
        return load.bend()
                * made.section().depth()
                / (2 * made.bars() * made.section().inertia());
    }
}
