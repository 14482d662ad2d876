// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.bracket;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Pose;
import tipwright.design.joint.FilletWeld;
import tipwright.geometry.Vec2;
import tipwright.outline.Contour;
import tipwright.outline.MachinePart;
import tipwright.outline.PartKind;
import tipwright.outline.View;
import tipwright.outline.ZRange;

/**
 * Where a lug may stand.
 *
 * @param up from the foot to the pin, in the side view
 * @param height from the pin to the foot, m
 * @param on what it stands on, in the builder's words; empty: nothing of the design is near, to be trimmed to what is there
 */
record FootPlace(Vec2 up, double height, String on) {
    /** A lug that stands higher leans, and has no room at its true size on a sheet of paper, m. Common practice, no source. */
    private static final double FARTHEST = 0.11;

    private static final double HALF = 0.03;
    private static final double ROOM = 0.01;

    /** The nearest steel of the body that the pin belongs to first, then square off the actuator's middle position. */
    static List<FootPlace> of(Analysis analysis, List<MachinePart> parts, LugSite site, double least, double step) {
        List<FootPlace> all = new ArrayList<>();
        FootPlace near = nearest(analysis, parts, site, least);
        if (near != null) {
            all.add(near);
        }
        all.add(new FootPlace(middle(analysis, site), Sketch.up(least + ROOM, step), ""));
        return all;
    }

    /** Where its weld is given. */
    static FootPlace of(FilletWeld weld, Vec2 pin) {
        Vec2 square = weld.normal().xy();
        Vec2 off = pin.minus(weld.at().xy());
        Vec2 up = square.norm() < 1e-6 ? off : square.times(Math.signum(square.dot(off)));
        double height = square.norm() < 1e-6 ? off.norm() : Math.abs(off.dot(square.unit()));
        return new FootPlace(up.norm() < 1e-9 ? new Vec2(0, 1) : up.unit(), height, GIVEN);
    }

    /** Its weld is in the design. */
    static final String GIVEN = "what the design file says";

    private static @Nullable FootPlace nearest(Analysis analysis, List<MachinePart> parts, LugSite site, double least) {
        FootPlace best = null;
        ZRange here = ZRange.around(site.across().get(0), HALF);
        for (MachinePart part : parts) {
            if (carries(part, analysis, site.body()) && part.form().z().overlaps(here)) {
                for (Contour line : part.form().seen(View.SIDE, p -> p, ZRange.ALL)) {
                    FootPlace place = nearest(line.corners(), site.at(), least, part.name());
                    if (place != null && (best == null || place.height() < best.height())) {
                        best = place;
                    }
                }
            }
        }
        return best;
    }

    private static boolean carries(MachinePart part, Analysis analysis, int body) {
        return body == analysis.mechanism().tank()
                ? part.kind() == PartKind.TANK || part.kind() == PartKind.ATTACHED
                : part.kind() == PartKind.FRAME || part.kind() == PartKind.REST || part.kind() == PartKind.CROSS_MEMBER;
    }

    private static @Nullable FootPlace nearest(List<Vec2> ring, Vec2 pin, double least, String name) {
        FootPlace best = null;
        boolean inside = false;
        for (int i = 0; i < ring.size(); i++) {
            Vec2 a = ring.get(i);
            Vec2 b = ring.get((i + 1) % ring.size());
            if ((a.y() > pin.y()) != (b.y() > pin.y())
                    && pin.x() < (b.x() - a.x()) * (pin.y() - a.y()) / (b.y() - a.y()) + a.x()) {
                inside = !inside;
            }
            Vec2 d = b.minus(a);
            double at = pin.minus(a).dot(d) / Math.max(d.dot(d), 1e-12);
            Vec2 off = pin.minus(a.plus(d.times(at)));
            double height = off.norm();
            if (at > 0 && at < 1 && height >= least && height < FARTHEST && (best == null || height < best.height())) {
                best = new FootPlace(off.unit(), height, name);
            }
        }
        return inside ? null : best;
    }

    /** Away from the foot: along the middle of what the actuator swings over; for another pin up from the frame, down from the tank. */
    static Vec2 middle(Analysis analysis, LugSite site) {
        if (!site.actuator()) {
            return new Vec2(0, site.body() == 0 ? 1 : -1);
        }
        List<Pose> poses = analysis.poses();
        boolean fixed = site.body() == analysis.mechanism().actuatorFrom()
                && site.at().minus(poses.get(0).framePin()).norm() < 1e-6;
        Vec2 sum = Vec2.ZERO;
        for (Pose pose : List.of(poses.get(0), poses.get(poses.size() - 1))) {
            Vec2 u = pose.tankPin().minus(pose.framePin()).unit().times(fixed ? 1 : -1);
            sum = sum.plus(u.tilted(-pose.bodies().get(site.body()).turn()));
        }
        return sum.norm() > 1e-6 ? sum.unit() : new Vec2(0, 1);
    }
}
