// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.WindArea;
import tipwright.design.Design;
import tipwright.design.around.Frame;
import tipwright.design.around.SidePart;
import tipwright.design.around.Wheels;
import tipwright.geometry.Forms;
import tipwright.geometry.Mesh;
import tipwright.geometry.Polyhedron;
import tipwright.geometry.Vec3;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

/**
 * Wind area of the frame members and the wheels. Each member is its outline drawn out along its z; one that goes all the way across
 * reaches as far as the members whose z is given. Members behind each other all count, which is on the safe side.
 */
final class FrameWind {
    /** Where no wind blows. */
    static final FrameWind NONE = new FrameWind(null, null, "");

    private static final Vec3 UP = new Vec3(0, 1, 0);

    private final @Nullable WindArea area;
    private final @Nullable WheelWind wheels;
    private final String leftOut;

    private FrameWind(@Nullable WindArea area, @Nullable WheelWind wheels, String leftOut) {
        this.area = area;
        this.wheels = wheels;
        this.leftOut = leftOut;
    }

    static FrameWind of(Design design) {
        Frame frame = design.frame();
        List<SidePart> members = frame == null ? List.of() : frame.members();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (SidePart part : members) {
            for (double z : part.z()) {
                low = Math.min(low, z);
                high = Math.max(high, z);
            }
        }
        Wheels given = frame == null ? null : frame.wheels();
        WheelWind wheels = given == null ? null : WheelWind.of(given, members, low, high);
        if (members.isEmpty()) {
            return new FrameWind(null, wheels, "frame.members missing");
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
                ? new FrameWind(null, wheels, "frame.members: z missing")
                : new FrameWind(new WindArea(Forms.joined(meshes)), wheels, "");
    }

    /**
     * Area, and area times height of its middle over the datum.
     *
     * @param against unit vector into the wind, level
     * @return {m2, m3}
     */
    double[] shown(Vec3 against) {
        double[] members = area == null ? new double[2] : area.shown(against, UP);
        double[] tyres = wheels == null ? new double[2] : wheels.shown(against);
        return new double[] {members[0] + tyres[0], members[1] + tyres[1]};
    }

    /** What the wind blows on, in words: '0.61 m2 of the frame and its wheels'. */
    Text caught(Vec3 against) {
        Text shown = Text.amount(shown(against)[0], Kind.AREA, "m2", 2);
        if (leftOut.isEmpty()) {
            return shown.plus(wheels == null ? " of the frame" : " of the frame and its wheels");
        }
        Text none = Text.words("none of the frame (" + leftOut + ")");
        return wheels == null ? none : shown.plus(" of the wheels, ").plus(none);
    }
}
