// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.drive.Drive;
import tipwright.design.joint.Bolts;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.FilletWeld;
import tipwright.geometry.Vec3;

/** Whether the two brackets of an actuator are in line along the pivot, as their welds or bolts say. */
final class BracketLine {
    /** Squarer to the pivot than this, a bracket's weld lies in its middle; others are welded flat to a side of something. */
    private static final double FLAT = 1e-3;

    private BracketLine() {}

    /** Whether a fastening holds the actuator at its frame pin. */
    static boolean atFrame(Fastening f) {
        return f.joint().equals(Drive.FRAME_PIN);
    }

    /** Whether a fastening holds the actuator at its other pin. */
    static boolean atRod(Fastening f) {
        return f.joint().equals(Drive.ROD_PIN) || f.joint().equals(Drive.TANK_PIN);
    }

    /** Sine of how far the actuator at a fastening leans along the pivot, where it is shortest; 0 where nothing tells. */
    static double lean(Analysis analysis, Fastening fastening) {
        boolean frame = atFrame(fastening);
        Double here = middle(fastening);
        if (here == null || (!frame && !atRod(fastening))) {
            return 0;
        }
        Design design = analysis.design();
        int actuator = nearest(design, here);
        double off = 0;
        for (Fastening other : design.fastenings()) {
            Double there = middle(other);
            boolean opposite = frame ? atRod(other) : atFrame(other);
            if (opposite && there != null && nearest(design, there) == actuator) {
                off = Math.max(off, Math.abs(there - here));
            }
        }
        return off / Math.hypot(off, analysis.lengths().low());
    }

    /** Number of the actuator nearest to a place along the pivot, m; the first of several. */
    private static int nearest(Design design, double z) {
        List<PlacedActuator> all = design.drive().actuators();
        int found = 0;
        for (int i = 1; i < all.size(); i++) {
            found = Math.abs(all.get(i).z() - z) < Math.abs(all.get(found).z() - z) ? i : found;
        }
        return found;
    }

    /** Where a bracket stands along the pivot, m; null where its weld or bolts do not tell. */
    private static @Nullable Double middle(Fastening f) {
        FilletWeld weld = f.weld();
        Bolts bolts = f.bolts();
        Vec3 normal = weld != null ? weld.normal() : bolts != null ? bolts.normal() : null;
        if (normal == null || Math.abs(normal.z()) > FLAT * normal.norm()) {
            return null;
        }
        return weld != null
                ? Double.valueOf(weld.at().z())
                : bolts == null ? null : Double.valueOf(bolts.at().z());
    }
}
