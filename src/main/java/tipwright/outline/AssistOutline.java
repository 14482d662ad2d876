// SPDX-License-Identifier: Apache-2.0
package tipwright.outline;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.Design;
import tipwright.design.drive.Anchor;
import tipwright.design.drive.Assist;
import tipwright.design.drive.Counterweight;
import tipwright.design.drive.ExtensionSpring;
import tipwright.design.drive.GasSpring;
import tipwright.design.drive.LineSpring;
import tipwright.design.drive.LinkPart;
import tipwright.design.drive.TorsionSpring;
import tipwright.geometry.Coil;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.linkage.Joint;
import tipwright.linkage.Skeleton;

/**
 * Springs and weights of a design as flat lines: ends and centres where they really are, thickness as such a part commonly has,
 * since the design does not give it.
 */
public final class AssistOutline {
    /** Steel, kg/m3. */
    private static final double DENSITY = 7850;

    /** Radius of an end, m. */
    private static final double EYE = 0.012;

    private static final double RING = 0.03;

    private final Design design;
    private final Skeleton skeleton;
    private final Place place;
    private final List<Contour> contours = new ArrayList<>();

    /** Where a point of a body is. */
    public interface Place {
        /**
         * In the side view, m.
         *
         * @param body by number
         * @param stowed m
         */
        Vec2 of(int body, Vec2 stowed);
    }

    private AssistOutline(Design design, Place place) {
        this.design = design;
        this.skeleton = design.drive().skeleton(design.pivot().at());
        this.place = place;
    }

    /** All lines, those behind first. */
    public static List<Contour> of(Design design, Place place) {
        AssistOutline sketch = new AssistOutline(design, place);
        design.assists().forEach(sketch::add);
        return List.copyOf(sketch.contours);
    }

    /** The lines of one, those behind first. */
    static List<Contour> of(Design design, Assist assist, Place place) {
        AssistOutline sketch = new AssistOutline(design, place);
        sketch.add(assist);
        return List.copyOf(sketch.contours);
    }

    /** Radius of the coil of a spring, m. */
    public static double coil(ExtensionSpring spring) {
        return Math.max(0.012, Math.min(0.035, 0.06 * spring.free()));
    }

    /** Half the thickness of a spring, m. */
    static double radius(LineSpring line) {
        return line instanceof GasSpring gas ? tube(gas) : coil((ExtensionSpring) line);
    }

    /** Turns of it; many are left out. */
    public static int turns(ExtensionSpring spring) {
        return (int) Math.max(6, Math.min(14, spring.free() / (2 * coil(spring))));
    }

    /** Radius of the tube of a gas spring, m. */
    public static double tube(GasSpring spring) {
        return Math.max(spring.force(), spring.compressedForce()) > 1200 ? 0.020 : 0.014;
    }

    /** Length of the tube of a gas spring from the pin, m. */
    public static double tubeLength(GasSpring spring) {
        return Math.max(0.5 * spring.shortest(), spring.shortest() - 0.03);
    }

    /** Edge of a block of steel of that mass, m. */
    public static double edge(Counterweight weight) {
        return Math.cbrt(weight.mass() / DENSITY);
    }

    /** Whether a weight stands for a link that is drawn already: its centre lies within the outline of that link. */
    public static boolean ofLink(Design design, Counterweight weight) {
        for (LinkPart part : design.links()) {
            if (part.body().equals(weight.body())
                    && within(part.outline(), weight.centre().xy())) {
                return true;
            }
        }
        return false;
    }

    private static boolean within(List<Vec2> outline, Vec2 p) {
        boolean inside = false;
        for (int i = 0; i < outline.size(); i++) {
            Vec2 a = outline.get(i);
            Vec2 b = outline.get((i + 1) % outline.size());
            boolean crosses = a.y() > p.y() != b.y() > p.y();
            if (crosses && p.x() < a.x() + (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y())) {
                inside = !inside;
            }
        }
        return inside;
    }

    private void add(Assist assist) {
        if (assist instanceof LineSpring line) {
            Vec2 a = end(line.from());
            Vec2 b = end(line.to());
            if (assist instanceof GasSpring gas) {
                gas(gas, a, b);
            } else if (assist instanceof ExtensionSpring spring) {
                zigzag(a, b, coil(spring), turns(spring));
            }
            ring(a, EYE);
            ring(b, EYE);
        } else if (assist instanceof TorsionSpring torsion) {
            skeleton.joints().stream()
                    .filter(j -> j.name().equals(torsion.pin()))
                    .forEach(this::torsion);
        } else if (assist instanceof Counterweight weight) {
            weight(weight);
        }
    }

    private void gas(GasSpring gas, Vec2 a, Vec2 b) {
        Vec2 u = b.minus(a).unit();
        Vec2 side = new Vec2(-u.y(), u.x()).times(tube(gas));
        Vec2 end = a.plus(u.times(Math.min(tubeLength(gas), b.minus(a).norm())));
        line(a, b);
        contours.add(new Contour.Polyline(List.of(a.plus(side), end.plus(side), end.minus(side), a.minus(side)), true));
    }

    private void zigzag(Vec2 a, Vec2 b, double half, int turns) {
        Vec2 u = b.minus(a).unit();
        Vec2 side = new Vec2(-u.y(), u.x()).times(half);
        double length = b.minus(a).norm();
        double hook = 0.12 * length;
        List<Vec2> points = new ArrayList<>(List.of(a, a.plus(u.times(hook))));
        double pitch = (length - 2 * hook) / (2 * turns);
        for (int i = 0; i < 2 * turns; i++) {
            points.add(a.plus(u.times(hook + (i + 0.5) * pitch)).plus(side.times(i % 2 == 0 ? 1 : -1)));
        }
        points.add(b.minus(u.times(hook)));
        points.add(b);
        contours.add(new Contour.Polyline(points, false));
    }

    private void torsion(Joint joint) {
        Vec2 pin = place.of(joint.a(), joint.at());
        Vec2 first = place.of(joint.a(), joint.at().plus(new Vec2(0, -1))).minus(pin);
        Vec2 last = place.of(joint.b(), joint.at().plus(new Vec2(-1, 0))).minus(pin);
        double from = Math.atan2(first.y(), first.x());
        double to = Math.atan2(last.y(), last.x());
        List<Vec3> coil = Coil.around(pin, 0, 0, 0.03, 0.09, from, to, 2);
        List<Vec2> points = new ArrayList<>();
        for (int i = 0; i < coil.size(); i++) {
            // Winds outwards, so that the turns can be told apart.
            boolean arm = i == 0 || i == coil.size() - 1;
            double grow = arm ? 1 : 0.7 + 0.6 * i / coil.size();
            points.add(pin.plus(coil.get(i).xy().minus(pin).times(grow)));
        }
        contours.add(new Contour.Polyline(points, false));
    }

    private void weight(Counterweight weight) {
        int body = skeleton.bodies().indexOf(weight.body());
        Vec2 c = weight.centre().xy();
        if (ofLink(design, weight)) {
            ring(place.of(body, c), RING);
            cross(body, c, RING);
            return;
        }
        double h = edge(weight) / 2;
        contours.add(new Contour.Polyline(
                List.of(
                        place.of(body, c.plus(new Vec2(-h, -h))),
                        place.of(body, c.plus(new Vec2(h, -h))),
                        place.of(body, c.plus(new Vec2(h, h))),
                        place.of(body, c.plus(new Vec2(-h, h)))),
                true));
        cross(body, c, h);
    }

    private void cross(int body, Vec2 c, double h) {
        line(place.of(body, c.plus(new Vec2(-h, 0))), place.of(body, c.plus(new Vec2(h, 0))));
        line(place.of(body, c.plus(new Vec2(0, -h))), place.of(body, c.plus(new Vec2(0, h))));
    }

    private void line(Vec2 a, Vec2 b) {
        contours.add(new Contour.Polyline(List.of(a, b), false));
    }

    private void ring(Vec2 c, double radius) {
        contours.add(new Contour.Circle(c, radius));
    }

    private Vec2 end(Anchor anchor) {
        return place.of(skeleton.bodies().indexOf(anchor.body()), anchor.at());
    }
}
