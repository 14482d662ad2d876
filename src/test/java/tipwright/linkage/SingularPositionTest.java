// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import tipwright.geometry.Vec2;

/**
 * Where each mechanism jams or loses its arm, against the closed form, within 0.01 degree. Source: triangles and the cosine rule;
 * a four-bar is singular where the members that should move each other are in line.
 */
class SingularPositionTest {
    private static final Vec2 PIVOT = new Vec2(0.5, 0.2);

    private static void stopsAt(Skeleton skeleton, SweepStop.Kind kind, double expected) throws LinkageException {
        for (double step : new double[] {0.3, 1, 7}) {
            int count = (int) (Math.toDegrees(expected) / step) + 3;
            double[] tilts = new double[count];
            for (int i = 0; i < count; i++) {
                tilts[i] = Math.toRadians(i * step);
            }
            SweepStop sweepStop =
                    Objects.requireNonNull(Linkage.of(skeleton).sweep(tilts).stop());
            assertThat(sweepStop.kind()).isEqualTo(kind);
            assertThat(Math.toDegrees(sweepStop.tilt())).isCloseTo(Math.toDegrees(expected), within(0.01));
        }
    }

    /** Tilt at which the tank pin is at a distance from a point on the frame, the first one on the way. */
    private static double tiltAtDistance(Vec2 tankPin, Vec2 from, double distance) {
        Vec2 arm = tankPin.minus(PIVOT);
        Vec2 to = from.minus(PIVOT);
        double between = Math.acos((arm.dot(arm) + to.dot(to) - distance * distance) / (2 * arm.norm() * to.norm()));
        double start = Math.atan2(arm.y(), arm.x()) - Math.atan2(to.y(), to.x());
        double first = Double.POSITIVE_INFINITY;
        for (double goal : new double[] {between, -between}) {
            double tilt = (start - goal) % (2 * Math.PI);
            first = Math.min(first, tilt < 0 ? tilt + 2 * Math.PI : tilt);
        }
        return first;
    }

    private static Skeleton chain(Joint first, Joint second, Vec2 tankPin, Strut strut) {
        return new Skeleton(
                List.of("frame", "tank", "one", "two"),
                1,
                List.of(new Joint.Pin(Skeleton.PIVOT, 0, 1, PIVOT), first, second, new Joint.Pin("t", 3, 1, tankPin)),
                strut);
    }

    @Test
    void straightDriveAtItsDeadCentre() throws LinkageException {
        Vec2 frame = new Vec2(1.1, -0.1);
        Vec2 tank = new Vec2(0.1, 0.2);
        Vec2 away = PIVOT.minus(frame);
        // The tank pin stands opposite the frame pin.
        double tilt = Math.PI - Math.atan2(away.y(), away.x());
        stopsAt(Skeleton.straight(PIVOT, frame, tank), SweepStop.Kind.DEAD_CENTRE, tilt);
    }

    @Test
    void kneeWhenItIsStraight() throws LinkageException {
        Vec2 foot = new Vec2(0.3, -0.2);
        Vec2 knee = new Vec2(-0.3, 0.0);
        Vec2 tank = new Vec2(-0.1, 0.24);
        double reach = knee.minus(foot).norm() + tank.minus(knee).norm();
        Skeleton knuckle = chain(
                new Joint.Pin("foot", 0, 2, foot),
                new Joint.Pin("knee", 2, 3, knee),
                tank,
                new Strut("actuator", 0, new Vec2(-1.2, -0.45), 2, knee));
        stopsAt(knuckle, SweepStop.Kind.JAMMED, tiltAtDistance(tank, foot, reach));
    }

    @Test
    void bellCrankWhenItsLinkPointsAtTheCranksPivot() throws LinkageException {
        Vec2 crank = new Vec2(-0.3, -0.2);
        Vec2 link = new Vec2(0.0, -0.25);
        Vec2 tank = new Vec2(-0.1, 0.2);
        double reach = link.minus(crank).norm() + tank.minus(link).norm();
        Skeleton bell = chain(
                new Joint.Pin("crank", 0, 2, crank),
                new Joint.Pin("link", 2, 3, link),
                tank,
                new Strut("actuator", 0, new Vec2(-1.2, -0.5), 2, new Vec2(-0.3, -0.5)));
        stopsAt(bell, SweepStop.Kind.JAMMED, tiltAtDistance(tank, crank, reach));
    }

    @Test
    void bellCrankWhenItsLinkPointsAtTheTanksPivot() throws LinkageException {
        Vec2 crank = new Vec2(1.3, -0.2);
        Vec2 link = new Vec2(0.9, 0.3);
        Vec2 tank = new Vec2(0.4, 0.5);
        double arm = tank.minus(PIVOT).norm();
        double length = link.minus(tank).norm();
        double turn = link.minus(crank).norm();
        // The link pin is as far from the tank's pivot as arm and link together; it lies on the crank's circle.
        double far = arm + length;
        Vec2 base = crank.minus(PIVOT);
        double d = base.norm();
        double corner = Math.acos((far * far + d * d - turn * turn) / (2 * far * d));
        double direction = Math.atan2(base.y(), base.x()) + corner;
        double tilt = Math.atan2(tank.minus(PIVOT).y(), tank.minus(PIVOT).x()) - direction;
        Skeleton bell = chain(
                new Joint.Pin("crank", 0, 2, crank),
                new Joint.Pin("link", 2, 3, link),
                tank,
                new Strut("actuator", 0, new Vec2(-0.8, -0.2), 2, link));
        stopsAt(bell, SweepStop.Kind.DEAD_CENTRE, tilt);
    }

    @Test
    void slidingPinWhenItsLinkStandsAcrossTheRail() throws LinkageException {
        Vec2 slider = new Vec2(-0.5, -0.4);
        Vec2 tank = new Vec2(0.1, 0.24);
        double length = tank.minus(slider).norm();
        Vec2 arm = tank.minus(PIVOT);
        double height = slider.y() + length - PIVOT.y();
        double tilt = Math.atan2(arm.y(), arm.x()) - (Math.PI - Math.asin(height / arm.norm()));
        Skeleton pusher = chain(
                new Joint.Slide("rail", 0, 2, slider, new Vec2(1, 0)),
                new Joint.Pin("slider", 2, 3, slider),
                tank,
                new Strut("actuator", 0, new Vec2(-1.4, -0.4), 2, slider));
        stopsAt(pusher, SweepStop.Kind.JAMMED, tilt < 0 ? tilt + 2 * Math.PI : tilt);
    }

    @Test
    void slidingBaseWhenItsTieStandsAcrossTheRail() throws LinkageException {
        // Seen from the base this is the sliding pin: the tie's frame end runs along the rail.
        Vec2 tie = new Vec2(0.5, -0.25);
        Vec2 tank = new Vec2(0.1, 0.3);
        double length = tank.minus(tie).norm();
        Vec2 arm = tank.minus(PIVOT);
        double height = tie.y() + length - PIVOT.y();
        double tilt = Math.atan2(arm.y(), arm.x()) - (Math.PI - Math.asin(height / arm.norm()));
        Skeleton slider = new Skeleton(
                List.of("frame", "tank", "base", "tie"),
                1,
                List.of(
                        new Joint.Pin(Skeleton.PIVOT, 2, 1, PIVOT),
                        new Joint.Slide("rail", 0, 2, new Vec2(0.4, 0), new Vec2(1, 0)),
                        new Joint.Pin("tie-frame", 0, 3, tie),
                        new Joint.Pin("tie-tank", 3, 1, tank)),
                new Strut("actuator", 0, new Vec2(-0.9, 0), 2, new Vec2(0.1, 0)));
        stopsAt(slider, SweepStop.Kind.JAMMED, tilt < 0 ? tilt + 2 * Math.PI : tilt);
    }

    @Test
    void fourBarCarrierWhenItsLinksAreParallel() throws LinkageException {
        // The tank is the coupler: it stops turning where both links lie along one direction p, the same way or
        // against each other: d + k p = b e with k = +-c - a, so d^2 + k^2 + 2 k d . p = b^2.
        Vec2 main = new Vec2(0.4, 0.0);
        Vec2 mainTank = new Vec2(0.25, 0.25);
        Vec2 second = new Vec2(-0.2, 0.0);
        Vec2 secondTank = new Vec2(-0.5, 0.55);
        Vec2 ground = second.minus(main);
        double a = mainTank.minus(main).norm();
        double c = secondTank.minus(second).norm();
        double b = secondTank.minus(mainTank).norm();
        double drawn = Math.atan2(
                secondTank.minus(mainTank).y(), secondTank.minus(mainTank).x());
        double first = Double.POSITIVE_INFINITY;
        for (double k : new double[] {c - a, -c - a}) {
            double cos = (b * b - ground.dot(ground) - k * k) / (2 * k * ground.norm());
            for (double side : Math.abs(cos) > 1 ? new double[0] : new double[] {Math.acos(cos), -Math.acos(cos)}) {
                double p = Math.atan2(ground.y(), ground.x()) + side;
                Vec2 coupler = ground.plus(new Vec2(Math.cos(p), Math.sin(p)).times(k));
                double tilt = (drawn - Math.atan2(coupler.y(), coupler.x())) % (2 * Math.PI);
                first = Math.min(first, tilt < 0 ? tilt + 2 * Math.PI : tilt);
            }
        }
        Skeleton carrier = new Skeleton(
                List.of("frame", "tank", "main", "second"),
                1,
                List.of(
                        new Joint.Pin(Skeleton.PIVOT, 0, 2, main),
                        new Joint.Pin("main-tank", 2, 1, mainTank),
                        new Joint.Pin("second-frame", 0, 3, second),
                        new Joint.Pin("second-tank", 3, 1, secondTank)),
                new Strut("actuator", 0, new Vec2(0.65, -0.55), 2, mainTank));
        stopsAt(carrier, SweepStop.Kind.JAMMED, first);
    }
}
