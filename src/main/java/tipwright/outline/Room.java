// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.analysis.Pose;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * The room that a machine takes up at all its tilts.
 *
 * @param low smallest x, y and z of anything that is given, m; y is the ground, or as drawn where the design gives none
 * @param high largest x, y and z, m
 */
public record Room(Vec3 low, Vec3 high) {
    /** Under the lowest point, where the ground is drawn, m. */
    private static final double GAP = 0.12;

    private static final int LOOKS = 24;
    private static final double BAR_SHARE = 1.0 / 30;
    private static final double LEAST_BAR = 0.035;

    static Room of(Analysis analysis, List<MachinePart> parts, ZRange across) {
        double[] box = {1e9, 1e9, -1e9, -1e9};
        List<Pose> poses = analysis.poses();
        int step = Math.max(1, (poses.size() - 1) / LOOKS);
        List<Pose> looks = new ArrayList<>();
        for (int i = 0; i < poses.size() - 1; i += step) {
            looks.add(poses.get(i));
        }
        looks.add(poses.get(poses.size() - 1));
        for (Pose pose : looks) {
            MachinePose now = MachinePose.of(pose);
            AssistOutline.of(analysis.design(), now::place).stream()
                    .flatMap(c -> c.corners().stream())
                    .forEach(p -> grow(box, p));
        }
        double floor = Double.NaN;
        ZRange wide = across;
        for (MachinePart part : parts) {
            List<Vec2> reach = part.form().reach();
            wide = part.kind() == PartKind.WHEEL ? wide.with(part.form().z()) : wide;
            if (part.kind() == PartKind.GROUND) {
                floor = reach.stream().mapToDouble(Vec2::y).max().orElse(floor);
            } else if (!part.kind().limit()) {
                for (Pose pose : looks) {
                    MachinePose now = MachinePose.of(pose);
                    reach.forEach(p ->
                            grow(box, now.place(part, new Vec3(p.x(), p.y(), 0)).xy()));
                }
            }
        }
        double y = Double.isNaN(floor) ? box[1] - GAP : floor;
        return new Room(new Vec3(box[0], y, wide.from()), new Vec3(box[2], box[3], wide.to()));
    }

    private static void grow(double[] box, Vec2 p) {
        box[0] = Math.min(box[0], p.x());
        box[1] = Math.min(box[1], p.y());
        box[2] = Math.max(box[2], p.x());
        box[3] = Math.max(box[3], p.y());
    }

    /** Height of the ground as drawn, m. */
    public double ground() {
        return low.y();
    }

    /** Half the diagonal of the room, m. */
    public double radius() {
        return high.minus(low).norm() / 2;
    }

    /** Thickness of the bars of a sketched stand or cradle, m. */
    public double bar() {
        return Math.max(LEAST_BAR, radius() * BAR_SHARE);
    }
}
