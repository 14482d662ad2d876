// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import tipwright.design.Design;
import tipwright.design.around.CrossMember;
import tipwright.design.around.Frame;
import tipwright.design.drive.Assist;
import tipwright.design.drive.Counterweight;
import tipwright.design.drive.Drive;
import tipwright.design.drive.LinkPart;
import tipwright.design.joint.Fastening;
import tipwright.design.tank.CylinderInterior;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.linkage.Joint;
import tipwright.linkage.Skeleton;
import tipwright.quantity.Marks;
import tipwright.quantity.UnitSystem;

/**
 * What is drawn of links and cranks, and the weights on them, go along with their pins: a link between two pins is stretched along
 * its line and keeps its width, one with three pins goes with the triangle of them, a carriage is shifted. What holds a pin slides along
 * the plate that it is welded or screwed to; a cross member under the frame pin goes along as a whole, with what stands on it.
 */
public final class FollowingParts {
    /** Between places that are on no mark of the tape, m. */
    private static final double FINE = 1e-4;

    /** As near to a mark as this, m, a place is on it. */
    private static final double ON_MARK = 1e-7;

    /** Three pins nearer to one line than this, m2 of their triangle doubled, count as two. */
    private static final double FLAT = 1e-3;

    private final Skeleton skeleton;
    private final UnaryOperator<Vec2> places;
    private final double mark;

    private FollowingParts(Skeleton skeleton, UnaryOperator<Vec2> places, double mark) {
        this.skeleton = skeleton;
        this.places = places;
        this.mark = mark;
    }

    /** The marks that the links are drawn on, m: whole millimetres or sixteenths of an inch; fine ones where they are on neither. */
    private static double mark(Design drawn) {
        List<Vec2> all = new ArrayList<>();
        drawn.links().forEach(link -> all.addAll(link.outline()));
        for (Assist assist : drawn.assists()) {
            if (assist instanceof Counterweight weight) {
                all.add(weight.centre().xy());
            }
        }
        for (UnitSystem units : UnitSystem.values()) {
            double step = Marks.step(units);
            if (all.stream().allMatch(p -> on(p.x(), step) && on(p.y(), step))) {
                return step;
            }
        }
        return FINE;
    }

    private static boolean on(double at, double step) {
        return Math.abs(at - Math.rint(at / step) * step) < ON_MARK;
    }

    /**
     * The moved design with all that goes along with its places.
     *
     * @param drawn before it was moved
     * @param places from where a place is drawn to where it is put, m
     */
    public static Design of(Design moved, Design drawn, UnaryOperator<Vec2> places) {
        return fastenings(links(moved, drawn, places), drawn, places);
    }

    private static Design fastenings(Design moved, Design drawn, UnaryOperator<Vec2> places) {
        Frame frame = drawn.frame();
        CrossMember member = frame == null ? null : frame.crossMember();
        if (member == null && drawn.fastenings().isEmpty()) {
            return moved;
        }
        Vec2 pivot = drawn.pivot().at();
        Map<String, Vec2> pins = drawn.drive().places(pivot);
        Vec3 axis = drawn.tank().interior() instanceof CylinderInterior round
                ? round.axis().unit()
                : Vec3.ZERO;
        Design put = moved;
        Vec2 framePin = pins.get(Drive.FRAME_PIN);
        Vec2 carried = framePin == null || member == null ? Vec2.ZERO : by(framePin, places);
        if (frame != null && member != null && !carried.equals(Vec2.ZERO)) {
            put = put.withFrame(frame.withCrossMember(member.movedBy(carried)));
        }
        List<Fastening> all = new ArrayList<>();
        boolean any = false;
        for (Fastening f : drawn.fastenings()) {
            Vec2 pin = Fastening.BEARINGS.contains(f.joint()) ? pivot : pins.get(f.joint());
            Vec2 by = pin == null ? Vec2.ZERO : by(pin, places);
            boolean whole = member != null && f.joint().equals(Drive.FRAME_PIN);
            if (pin == null || by.equals(Vec2.ZERO)) {
                all.add(f);
            } else {
                all.add(f.following(pin, by, whole, axis));
                any = true;
            }
        }
        return any ? put.withFastenings(all) : put;
    }

    private static Vec2 by(Vec2 place, UnaryOperator<Vec2> places) {
        return places.apply(place).minus(place);
    }

    /**
     * The moved design with its links as they look there, on the marks that they are drawn on.
     *
     * @param drawn before it was moved
     * @param places from where a place is drawn to where it is put, m
     */
    private static Design links(Design moved, Design drawn, UnaryOperator<Vec2> places) {
        if (drawn.links().isEmpty() && drawn.assists().isEmpty()) {
            return moved;
        }
        FollowingParts redrawn =
                new FollowingParts(drawn.drive().skeleton(drawn.pivot().at()), places, mark(drawn));
        List<LinkPart> links = new ArrayList<>();
        for (LinkPart link : drawn.links()) {
            UnaryOperator<Vec2> way = redrawn.way(link.body());
            links.add(new LinkPart(link.body(), link.outline().stream().map(way).toList(), link.z()));
        }
        List<Assist> assists = new ArrayList<>();
        for (Assist assist : drawn.assists()) {
            assists.add(assist instanceof Counterweight weight ? redrawn.weight(weight) : assist);
        }
        return moved.withLinks(List.copyOf(assists), List.copyOf(links));
    }

    private Counterweight weight(Counterweight w) {
        Vec2 at = way(w.body()).apply(w.centre().xy());
        return new Counterweight(
                w.name(),
                w.body(),
                w.mass(),
                new Vec3(at.x(), at.y(), w.centre().z()));
    }

    /** Maps a point on a body from its drawn to its moved position. */
    private UnaryOperator<Vec2> way(String name) {
        int body = skeleton.bodies().indexOf(name);
        List<Vec2> pins = pins(body);
        if (body <= 0
                || body == skeleton.tank()
                || pins.stream().allMatch(p -> places.apply(p).equals(p))) {
            return p -> p;
        }
        List<Vec2> put = pins.stream().map(places).toList();
        if (skeleton.slides(body) || pins.size() == 1) {
            Vec2 by = middle(put).minus(middle(pins));
            return p -> round(p.plus(by));
        }
        for (int k = 2; k < pins.size(); k++) {
            Vec2 one = pins.get(1).minus(pins.get(0));
            Vec2 two = pins.get(k).minus(pins.get(0));
            double area = one.cross(two);
            if (Math.abs(area) > FLAT) {
                Vec2 first = put.get(0);
                Vec2 newOne = put.get(1).minus(first);
                Vec2 newTwo = put.get(k).minus(first);
                return p -> {
                    Vec2 from = p.minus(pins.get(0));
                    return round(first.plus(newOne.times(from.cross(two) / area))
                            .plus(newTwo.times(one.cross(from) / area)));
                };
            }
        }
        return p -> round(stretched(p, pins.get(0), pins.get(1), put.get(0), put.get(1)));
    }

    /** Between the pins stretched along their line; beyond them as far from the nearer pin as before; the width kept. */
    private static Vec2 stretched(Vec2 p, Vec2 a, Vec2 b, Vec2 newA, Vec2 newB) {
        double length = b.minus(a).norm();
        double now = newB.minus(newA).norm();
        if (!(length > 0) || !(now > 0)) {
            return p.plus(newA.minus(a));
        }
        Vec2 along = b.minus(a).unit();
        Vec2 line = newB.minus(newA).unit();
        double t = p.minus(a).dot(along);
        double side = along.cross(p.minus(a));
        double goes = t <= 0 ? t : t >= length ? now + t - length : t * now / length;
        return newA.plus(line.times(goes)).plus(new Vec2(-line.y(), line.x()).times(side));
    }

    private List<Vec2> pins(int body) {
        List<Vec2> pins = new ArrayList<>();
        for (Joint j : skeleton.joints()) {
            if ((j.a() == body || j.b() == body) && !pins.contains(j.at())) {
                pins.add(j.at());
            }
        }
        Vec2 end = skeleton.actuator().a() == body
                ? skeleton.actuator().onA()
                : skeleton.actuator().onB();
        if ((skeleton.actuator().a() == body || skeleton.actuator().b() == body) && !pins.contains(end)) {
            pins.add(end);
        }
        return pins;
    }

    private static Vec2 middle(List<Vec2> points) {
        Vec2 sum = Vec2.ZERO;
        for (Vec2 p : points) {
            sum = sum.plus(p);
        }
        return sum.times(1.0 / points.size());
    }

    private Vec2 round(Vec2 p) {
        return new Vec2(Math.rint(p.x() / mark) * mark, Math.rint(p.y() / mark) * mark);
    }
}
