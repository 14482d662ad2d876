// SPDX-License-Identifier: Apache-2.0
package tipwright.sheet.bracket;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.joint.FilletWeld;
import tipwright.design.joint.Lug;
import tipwright.geometry.Hull;
import tipwright.geometry.Vec2;

/**
 * The shape of a lug: round at its free end, as wide at the hole as the design says, and as long at its foot as its weld.
 *
 * @param outline the hole's middle is the origin, y away from the foot, m
 * @param up direction of y in the side view
 * @param height from the hole's middle down to the foot, m; NaN where the plate lies flat on what holds it
 * @param foot length of the foot, m
 */
record LugShape(List<Vec2> outline, Vec2 up, double height, double foot) {
    /** Parts of the round end. */
    private static final int ROUND = 96;

    /** A lug whose weld is known. */
    static LugShape of(Lug lug, Vec2 pin, FilletWeld weld) {
        Vec2 square = weld.normal().unit().xy();
        Vec2 middle = weld.at().xy();
        List<Vec2> foot = new ArrayList<>();
        double height = weld.off(pin);
        if (Double.isNaN(height)) {
            for (FilletWeld.Seam seam : weld.seams()) {
                foot.add(middle.plus(seam.from()));
                foot.add(middle.plus(seam.to()));
            }
            Vec2 away = pin.minus(centre(foot));
            Vec2 up = away.norm() > 1e-6 ? away.unit() : new Vec2(0, 1);
            return shape(lug, pin, up, foot, Double.NaN);
        }
        Vec2 up = square.unit().dot(pin.minus(middle)) < 0 ? square.unit().times(-1) : square.unit();
        Vec2 along = along(square.unit());
        for (FilletWeld.Seam seam : weld.seams()) {
            foot.add(middle.plus(along.times(seam.from().x())));
            foot.add(middle.plus(along.times(seam.to().x())));
        }
        return shape(lug, pin, up, foot, height);
    }

    /** A lug with a foot straight under its hole. */
    static LugShape of(Lug lug, Vec2 pin, Vec2 up, double height, double length) {
        Vec2 side = new Vec2(up.y(), -up.x()).times(length / 2);
        Vec2 middle = pin.minus(up.times(height));
        return shape(lug, pin, up, List.of(middle.minus(side), middle.plus(side)), height);
    }

    private static LugShape shape(Lug lug, Vec2 pin, Vec2 up, List<Vec2> foot, double height) {
        Vec2 side = new Vec2(up.y(), -up.x());
        List<Vec2> points = new ArrayList<>(head(lug));
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Vec2 p : foot) {
            Vec2 own = new Vec2(p.minus(pin).dot(side), p.minus(pin).dot(up));
            points.add(own);
            low = Math.min(low, own.x());
            high = Math.max(high, own.x());
        }
        return new LugShape(List.copyOf(Hull.around(points)), up, height, high - low);
    }

    /** The free end: half a circle as wide as the lug where its end is long enough for it, else square. */
    private static List<Vec2> head(Lug lug) {
        double half = lug.width() / 2;
        List<Vec2> points = new ArrayList<>(List.of(new Vec2(-half, 0), new Vec2(half, 0)));
        double top = lug.end() - half;
        if (top < 0) {
            points.add(new Vec2(half, lug.end()));
            points.add(new Vec2(-half, lug.end()));
            return points;
        }
        for (int i = 0; i <= ROUND; i++) {
            double a = Math.PI * i / ROUND;
            points.add(new Vec2(half * Math.cos(a), top + half * Math.sin(a)));
        }
        return points;
    }

    /** Where it is in the side view, m. */
    List<Vec2> placed(Vec2 pin) {
        Vec2 side = new Vec2(up.y(), -up.x());
        return outline.stream()
                .map(p -> pin.plus(side.times(p.x())).plus(up.times(p.y())))
                .toList();
    }

    /** The weld's u in the side view, as the weld group has it: towards +x, or +y where the plane stands upright. */
    private static Vec2 along(Vec2 square) {
        Vec2 u = new Vec2(square.y(), -square.x());
        boolean upright = Math.abs(u.x()) < 1e-9;
        boolean turn = upright ? u.y() < 0 : u.x() < 0;
        return turn ? u.times(-1) : u;
    }

    private static Vec2 centre(List<Vec2> points) {
        return points.stream().reduce(Vec2.ZERO, Vec2::plus).times(1.0 / Math.max(1, points.size()));
    }

    /** 70 ksi, Pa, as the design file's preset. */
    static final double ELECTRODE = 70e3 * 4.4482216152605 / (0.0254 * 0.0254);
}
