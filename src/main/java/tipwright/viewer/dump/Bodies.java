// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.dump;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.Design;
import tipwright.geometry.Vec2;
import tipwright.linkage.Configuration;
import tipwright.linkage.Linkage;
import tipwright.linkage.LinkageException;
import tipwright.linkage.Skeleton;

/** Where the bodies of the linkage are between the tilts that were solved: cubic curves through places and rates. */
final class Bodies {
    private final Skeleton skeleton;
    private final List<Configuration> configurations;

    /**
     * Solves the linkage.
     *
     * @param tilts all of which it reaches, rad
     */
    Bodies(Design design, double[] tilts) {
        skeleton = design.drive().skeleton(design.pivot().at());
        try {
            configurations = Linkage.of(skeleton).sweep(tilts).configurations();
        } catch (LinkageException e) {
            throw new IllegalStateException("an analysed linkage can be solved", e);
        }
    }

    Skeleton skeleton() {
        return skeleton;
    }

    /** All bodies at a tilt within the range, rad; number 0 is the frame. */
    List<DrawnPosition> at(double tilt) {
        int i = 0;
        while (i + 2 < configurations.size() && configurations.get(i + 1).tilt() <= tilt) {
            i++;
        }
        Configuration a = configurations.get(i);
        Configuration b = configurations.get(Math.min(i + 1, configurations.size() - 1));
        double h = b.tilt() - a.tilt();
        double s = h > 0 ? (tilt - a.tilt()) / h : 0;
        List<DrawnPosition> all = new ArrayList<>();
        all.add(DrawnPosition.STOWED);
        for (int k = 0; k < a.q().length; k += 3) {
            all.add(new DrawnPosition(
                    curve(a, b, k + 2, h, s), new Vec2(curve(a, b, k, h, s), curve(a, b, k + 1, h, s))));
        }
        return all;
    }

    private static double curve(Configuration a, Configuration b, int k, double h, double s) {
        double r = 1 - s;
        return r * r * (1 + 2 * s) * a.q()[k]
                + s * r * r * h * a.rates()[k]
                + s * s * (3 - 2 * s) * b.q()[k]
                - s * s * r * h * b.rates()[k];
    }
}
