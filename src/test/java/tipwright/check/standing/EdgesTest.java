// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import tipwright.analysis.BodyPosition;
import tipwright.analysis.Examples;
import tipwright.analysis.Extreme;
import tipwright.check.actuator.PushCheck;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Findings;
import tipwright.check.rule.Verdict;
import tipwright.check.slurry.Stream;
import tipwright.design.around.Receiver;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.outline.OutlineGeometry;
import tipwright.quantity.Kind;
import tipwright.strength.Beam;

/** Limits of the rules, hit exactly, and small parts against JTS and closed forms of elementary statics and free fall. */
class EdgesTest {
    private static final double G = 9.80665;
    private static final Findings MAKE = new Findings(new PushCheck(), Examples.read(Examples.BOX));

    /** Over the capacity fails, over 85 % is close; what just reaches it does not. */
    @ParameterizedTest
    @CsvSource({"0.85, PASS", "0.8500001, CLOSE", "1, CLOSE", "1.0000001, FAIL", "0, PASS", "Infinity, FAIL"})
    void verdictsAtTheirLimits(double utilisation, Verdict verdict) {
        assertThat(MAKE.verdict(utilisation)).isEqualTo(verdict);
    }

    @Test
    void whatHasNoCapacityFails() {
        assertThat(MAKE.compare("", 0, 0, 1, Kind.FORCE, Extreme.NOWHERE, "").utilisation())
                .isEqualTo(Double.POSITIVE_INFINITY);
        Finding half = MAKE.compare("one part", 3, 12, 2, Kind.FORCE, Extreme.NOWHERE, "");
        assertThat(half.utilisation()).isEqualTo(0.5);
        assertThat(half.id()).isEqualTo("push/one-part");
        assertThat(Findings.number(half)).isZero();
        assertThat(Findings.number(MAKE.missing("bearing 2", "x"))).isEqualTo(1);
        assertThat(Findings.number(MAKE.missing("bearing 1", "x"))).isZero();
        assertThat(Findings.number(MAKE.missing("", "x"))).isZero();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void hullIsThatOfJts(int seed) {
        Random random = new Random(seed);
        List<Vec2> points = new ArrayList<>();
        for (int i = 0; i < 5 * seed; i++) {
            // whole numbers, so that many lie in one line or twice in one place
            points.add(new Vec2(random.nextInt(5), random.nextInt(5)));
        }
        Coordinate[] all =
                points.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new);
        Geometry hull = new ConvexHull(all, new GeometryFactory()).getConvexHull();
        List<Vec2> ours = Footprint.hull(points);
        assertThat(ours).hasSize(hull.getNumPoints() - 1);
        double twice = 0;
        for (int i = 0; i < ours.size(); i++) {
            twice += ours.get(i).cross(ours.get((i + 1) % ours.size()));
        }
        assertThat(twice / 2).isCloseTo(hull.getArea(), within(1e-12));
    }

    /** One mass h over the ground and d inside each edge of a square: W cos(a) d against W sin(a) h, so tan(a) = d / (f h). */
    @ParameterizedTest
    @CsvSource({"0.5, 1, 1", "0.5, 1, 1.5", "0.2, 0.9, 2", "0.9, 0.1, 1"})
    void steepestGroundUnderOneMass(double inside, double high, double factor) {
        Footprint square = Footprint.around(
                List.of(new Vec2(1, 1), new Vec2(-1, 1), new Vec2(0.2, 0), new Vec2(-1, -1), new Vec2(1, -1)), -0.3);
        assertThat(square.edges()).hasSize(4);
        double expected = Math.min(Math.toRadians(60), Math.atan(inside / (factor * high)));
        for (Footprint.Edge edge : square.edges()) {
            Vec2 at = edge.outward().times(1 - inside);
            List<Footprint.Mass> mass = List.of(new Footprint.Mass(70, new Vec3(at.x(), high - 0.3, at.y())));
            assertThat(square.steepest(edge, mass, G, 0, factor)).isCloseTo(expected, within(2e-9));
            Footprint.Moments level = square.about(edge, mass, G, new Vec3(0, 1, 0), 12);
            assertThat(level.restoring()).isCloseTo(70 * G * inside, within(1e-9));
            assertThat(level.overturning()).isEqualTo(12);
            assertThat(level.share()).isCloseTo(12 / (70 * G * inside), within(1e-12));
            // wind alone turns it over when its moment is as large as the weight's
            assertThat(square.steepest(edge, mass, G, 70 * G * inside * 1.001, 1))
                    .isZero();
            assertThat(square.steepest(edge, mass, G, 70 * G * inside * 0.999, 1))
                    .isPositive();
        }
        assertThat(new Footprint.Moments(0, 3).share()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(new Footprint.Moments(5, 0).share()).isZero();
    }

    /** Source: parabola of a thrown body, y = x tan(a) - g x^2 / (2 v^2 cos(a)^2). */
    @ParameterizedTest
    @CsvSource({"30, 4, 1.2", "-20, 3, 0.8", "80, 5, 0.1", "0, 2, 2"})
    void thrownOntoASlantingMouth(double degrees, double speed, double height) {
        Receiver slant = new Receiver("pit", new Vec2(0.4, 0.2), new Vec2(3.4, -1.8));
        double a = Math.toRadians(degrees);
        Vec2 lip = new Vec2(0.4, 0.2 + height);
        double share = lands(slant, lip, new Vec2(speed * Math.cos(a), speed * Math.sin(a)), new Vec2(0, -G));
        Vec2 at = slant.near().plus(slant.far().minus(slant.near()).times(share));
        double x = at.x() - lip.x();
        double y = x * Math.tan(a) - G * x * x / (2 * Math.pow(speed * Math.cos(a), 2));
        assertThat(at.y() - lip.y()).isCloseTo(y, within(1e-9));
        assertThat(share).isPositive();
    }

    @Test
    void aStreamThatNeverGetsToTheMouth() {
        Receiver pit = new Receiver("pit", new Vec2(1, 0), new Vec2(3, 0));
        // the mouth is held upright: what falls along it never passes it
        Receiver upright = new Receiver("wall", new Vec2(1, 0), new Vec2(1, 2));
        assertThat(lands(upright, new Vec2(0.5, 1), Vec2.ZERO, new Vec2(0, -G))).isNaN();
        // a mouth named from far to near is the same mouth
        Receiver back = new Receiver("pit", pit.far(), pit.near());
        double share = lands(pit, new Vec2(0.8, 1.2), new Vec2(2.5, 0), new Vec2(0, -G));
        assertThat(lands(back, new Vec2(0.8, 1.2), new Vec2(2.5, 0), new Vec2(0, -G)))
                .isCloseTo(1 - share, within(1e-12));
        // on the line itself it lands where it is
        assertThat(lands(pit, new Vec2(1.5, 0), new Vec2(4, 4), new Vec2(0, -G)))
                .isEqualTo(0.25);
    }

    /** A point seen from a body that is moved lies where it lies in space, put into the body's own axes. */
    @Test
    void seenFromAnotherBody() {
        Random random = new Random(3);
        for (int i = 0; i < 50; i++) {
            BodyPosition part =
                    new BodyPosition("a", new Vec2(random.nextDouble(), -random.nextDouble()), random.nextDouble());
            BodyPosition viewer =
                    new BodyPosition("b", new Vec2(-random.nextDouble(), random.nextDouble()), -random.nextDouble());
            List<Vec2> corners = List.of(new Vec2(0.1, 0.2), new Vec2(1.1, 0.3), new Vec2(0.4, 0.9));
            Coordinate[] seen = OutlineGeometry.seenFrom(OutlineGeometry.polygon(corners), part, viewer)
                    .getCoordinates();
            for (int k = 0; k < 3; k++) {
                Vec2 back = viewer.place(new Vec2(seen[k].x, seen[k].y));
                assertThat(back.minus(part.place(corners.get(k))).norm()).isLessThan(1e-12);
            }
        }
    }

    /** Moments and deflections of forces at random places, by cutting the beam into a thousand pieces and adding up twice. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void beamAgainstDoubleIntegration(int forces) {
        Random random = new Random(forces);
        Beam beam = new Beam(-0.4, 0.8);
        double[] places = random.doubles(forces, -0.4, 0.8).toArray();
        double[] loads = random.doubles(forces, -5000, 9000).toArray();
        double first = beam.first(places, loads);
        double total = 0;
        double turn = 0;
        for (int i = 0; i < forces; i++) {
            total += loads[i];
            turn += loads[i] * (places[i] + 0.4);
        }
        assertThat(beam.second(places, loads)).isCloseTo(turn / 1.2, within(1e-9));
        assertThat(first + beam.second(places, loads)).isCloseTo(total, within(1e-9));
        int n = 60_000;
        double dx = 1.2 / n;
        double moment = 0;
        double slope = 0;
        double sag = 0;
        double[] sags = new double[n + 1];
        for (int i = 0; i < n; i++) {
            double x = -0.4 + (i + 0.5) * dx;
            double shear = first;
            for (int k = 0; k < forces; k++) {
                shear -= places[k] < x ? loads[k] : 0;
            }
            moment += shear * dx;
            slope -= moment / 2000 * dx;
            sag += slope * dx;
            sags[i + 1] = sag;
            if (i % 10_000 == 5000) {
                double at = -0.4 + (i + 1) * dx;
                assertThat(beam.moment(at, places, loads)).isCloseTo(moment, within(1.0));
                assertThat(beam.shear(x, places, loads)).isCloseTo(shear, within(1e-9));
            }
        }
        for (int i = 5000; i < n; i += 10_000) {
            double expected = sags[i] - sags[n] * i / n;
            assertThat(beam.deflection(-0.4 + i * dx, places, loads, 2000)).isCloseTo(expected, within(1e-4));
        }
        assertThat(beam.shear(-0.5, places, loads)).isZero();
        assertThat(beam.shear(0.9, places, loads)).isCloseTo(0, within(1e-9));
        assertThat(beam.moment(0.9, places, loads)).isCloseTo(0, within(1e-9));
    }

    private static double lands(Receiver receiver, Vec2 lip, Vec2 velocity, Vec2 gravity) {
        return new Stream.Fall(receiver, gravity).lands(lip, velocity);
    }
}
