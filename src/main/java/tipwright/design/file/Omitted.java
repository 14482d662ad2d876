// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.Design;
import tipwright.design.tank.CylinderInterior;

/** Leaves out defaults that play no part in a design. */
final class Omitted {
    private Omitted() {}

    static List<Assumption> from(List<Assumption> all, Design design) {
        List<Assumption> some = new ArrayList<>(all);
        if (design.tank().interior() instanceof CylinderInterior cylinder
                && !cylinder.heads().contains(CylinderInterior.HeadShape.TORISPHERICAL)) {
            some.removeIf(
                    a -> a.path().equals("tank.interior.crown") || a.path().equals("tank.interior.knuckle"));
        }
        return List.copyOf(some);
    }
}
