// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.WindArea;
import tipwright.design.Design;
import tipwright.design.around.Frame;
import tipwright.design.around.SidePart;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Polyhedron;
import tipwright.geometry.Vec3;

/**
 * Wind area of the frame members. Each is its outline drawn out along its z; one that goes all the way across reaches as
 * far as the members whose z is given. Members behind each other all count, which is on the safe side.
 */
final class FrameWind {
    /** Where no wind blows. */
    static final FrameWind NONE = new FrameWind(null, "");

    private static final Vec3 UP = new Vec3(0, 1, 0);

    private final @Nullable WindArea area;
    private final String leftOut;

    private FrameWind(@Nullable WindArea area, String leftOut) {
        this.area = area;
        this.leftOut = leftOut;
    }

    static FrameWind of(Design design) {
        Frame frame = design.frame();
        List<SidePart> members = frame == null ? List.of() : frame.members();
        if (members.isEmpty()) {
            return new FrameWind(null, "frame.members missing");
        }
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (SidePart part : members) {
            for (double z : part.z()) {
                low = Math.min(low, z);
                high = Math.max(high, z);
            }
        }
        List<Mesh> meshes = new ArrayList<>();
        for (SidePart part : members) {
            List<Double> z = part.z();
            double from = z.isEmpty() ? low : Math.min(z.get(0), z.get(1));
            double to = z.isEmpty() ? high : Math.max(z.get(0), z.get(1));
            if (to > from) {
                meshes.add(Polyhedron.prism(part.outline(), to - from, (from + to) / 2)
                        .mesh(0.01));
            }
        }
        return meshes.isEmpty()
                ? new FrameWind(null, "frame.members: z missing")
                : new FrameWind(new WindArea(Forms.joined(meshes)), "");
    }

    /**
     * Area, and area times height of its middle over the datum.
     *
     * @param against unit vector into the wind, level
     * @return {m2, m3}
     */
    double[] shown(Vec3 against) {
        return area == null ? new double[2] : area.shown(against, UP);
    }

    /** Which key is missing, where nothing of the frame could be taken; empty when its members are. */
    String leftOut() {
        return leftOut;
    }
}
