// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * Photos by a camera of the test's own, written anew from the textbook: it stands somewhere before the machine, looks at it by aim and roll,
 * bends what it sees, and whoever taps misses a little. Nothing of the program's lens is used.
 */
class PhotoPlaneTest {
    private static final double WIDTH = 4000;
    private static final double HEIGHT = 3000;

    /** Of the demo's frame, m. */
    private static final double FRAME = 1.96;

    private static final KnownSheet PLYWOOD = new KnownSheet(new Vec2(-1.25, -0.62), 2.44, 1.22);
    private static final KnownSheet SQUARE = new KnownSheet(new Vec2(0.1, 0), 0.6, 0.4);
    private static final List<Vec2> PINS =
            List.of(new Vec2(0.6, 0.38), new Vec2(0.22, -0.395), new Vec2(-0.07, 0.25), new Vec2(-0.6, 0.1));

    /** A pinhole with one radial term; up is +y of the world, z towards it. */
    private record TestCamera(Vec3 eye, Vec3 forward, Vec3 right, Vec3 down, double focal, double bend, Vec2 middle) {
        static TestCamera random(Random random) {
            double side = Math.toRadians(50 * (random.nextDouble() - 0.5));
            double over = Math.toRadians(4 + 18 * random.nextDouble());
            double far = 3.2 + 1.8 * random.nextDouble();
            Vec3 aim = new Vec3(-0.1 + 0.3 * random.nextDouble(), 0.1 * random.nextDouble(), 0);
            Vec3 eye =
                    aim.plus(new Vec3(Math.cos(over) * Math.sin(side), Math.sin(over), Math.cos(over) * Math.cos(side))
                            .times(far));
            Vec3 forward = aim.minus(eye).unit();
            Vec3 level = forward.cross(new Vec3(0, 1, 0)).unit();
            Vec3 up = level.cross(forward);
            double roll = Math.toRadians(3 * random.nextGaussian());
            Vec3 right = level.times(Math.cos(roll)).plus(up.times(Math.sin(roll)));
            Vec3 down = level.times(Math.sin(roll)).minus(up.times(Math.cos(roll)));
            double focal = 26.0 / 36 * WIDTH * Math.exp(0.1 * random.nextGaussian());
            double bend = 0.02 * random.nextGaussian();
            Vec2 middle = new Vec2(
                    WIDTH / 2 + 0.008 * WIDTH * random.nextGaussian(),
                    HEIGHT / 2 + 0.008 * WIDTH * random.nextGaussian());
            return new TestCamera(eye, forward, right, down, focal, bend, middle);
        }

        Vec2 sees(Vec3 p) {
            Vec3 d = p.minus(eye);
            double x = d.dot(right) / d.dot(forward);
            double y = d.dot(down) / d.dot(forward);
            double far = 1 + bend * (x * x + y * y);
            return middle.plus(new Vec2(x * far, y * far).times(focal));
        }
    }

    static Vec2 missed(Vec2 tap, Random random, double by) {
        return tap.plus(new Vec2(by * random.nextGaussian(), by * random.nextGaussian()));
    }

    /** Where the sheet's corners really are: its corner and its level a little off. */
    static List<Vec3> corners(KnownSheet sheet, Random random, double place, double level) {
        double turn = level * random.nextGaussian();
        Vec2 at = missed(sheet.corner(), random, place);
        Vec2 along = new Vec2(Math.cos(turn), Math.sin(turn));
        Vec2 up = new Vec2(-Math.sin(turn), Math.cos(turn));
        List<Vec3> all = new ArrayList<>();
        for (double[] k : new double[][] {{0, 0}, {1, 0}, {1, 1}, {0, 1}}) {
            Vec2 p = at.plus(along.times(k[0] * sheet.width())).plus(up.times(k[1] * sheet.height()));
            all.add(new Vec3(p.x(), p.y(), 0));
        }
        return all;
    }

    private static PinTally photos(int count, KnownSheet sheet, double sure, long seed) {
        Random random = new Random(seed);
        Doubts doubts = Doubts.USUAL;
        PinTally all = new PinTally(FRAME);
        for (int photo = 0; photo < count; photo++) {
            TestCamera camera = TestCamera.random(random);
            List<Vec2> taps = new ArrayList<>();
            for (Vec3 corner : corners(sheet, random, doubts.place(), doubts.level())) {
                taps.add(missed(camera.sees(corner), random, doubts.tap()));
            }
            PhotoPlane plane = PhotoPlane.of(WIDTH, HEIGHT, sheet, taps, doubts);
            assertThat(plane).as("photo " + photo).isNotNull();
            for (int i = 0; i < PINS.size(); i++) {
                double told = 0.15 * (i - 1);
                double real = told + sure * random.nextGaussian();
                Vec2 pin = PINS.get(i);
                Vec2 tap = missed(camera.sees(new Vec3(pin.x(), pin.y(), real)), random, doubts.tap());
                all.take(plane.at(tap, told, sure), pin);
            }
        }
        return all;
    }

    /** A sheet of plywood, and how far a pin stands before or behind it told to 5 mm: 1 % of the frame's length. */
    @Test
    void pinsAreWithinAHundredthOfTheFrameAndTheDoubtCoversTheError() {
        PinTally all = photos(250, PLYWOOD, 0.005, 13);
        assertThat(all.near()).isGreaterThanOrEqualTo((int) (0.98 * all.pins()));
        assertThat(all.worst()).isLessThan(0.015 * FRAME);
        assertThat(all.covered()).isGreaterThanOrEqualTo((int) (0.95 * all.pins()));
        assertThat(all.doubt()).as("not so large that it covers anything").isLessThan(4 * all.error());
    }

    /** A framing square is small: places far from it are worse, and their doubt says so. */
    @Test
    void doubtOfASmallSquareIsLargerAndCoversTheErrorToo() {
        PinTally all = photos(250, SQUARE, 0.01, 14);
        assertThat(all.covered()).isGreaterThanOrEqualTo((int) (0.95 * all.pins()));
        assertThat(all.doubt()).as("not so large that it covers anything").isLessThan(4 * all.error());
        assertThat(all.near()).isLessThan((int) (0.9 * all.pins()));
    }

    /** Without any miss and with a straight lens of the usual length it is exact, before and behind the sheet too. */
    @Test
    void isExactWhereNothingIsOff() {
        Vec3 eye = new Vec3(0.9, 0.7, 3.8);
        Vec3 forward = new Vec3(0, -0.05, 0).minus(eye).unit();
        Vec3 right = forward.cross(new Vec3(0, 1, 0)).unit();
        TestCamera camera = new TestCamera(
                eye, forward, right, forward.cross(right), 26.0 / 36 * WIDTH, 0, new Vec2(WIDTH / 2, HEIGHT / 2));
        List<Vec2> taps =
                corners(PLYWOOD, new Random(1), 0, 0).stream().map(camera::sees).toList();
        PhotoPlane plane = PhotoPlane.of(WIDTH, HEIGHT, PLYWOOD, taps, Doubts.USUAL);
        for (Vec2 pin : PINS) {
            for (double z : new double[] {-0.4, 0, 0.4}) {
                Vec2 tap = camera.sees(new Vec3(pin.x(), pin.y(), z));
                Vec2 off = plane.at(tap, z, 0).at().minus(pin);
                assertThat(off.norm()).isLessThan(1e-6);
                assertThat(plane.pixel(pin, z).minus(tap).norm()).isCloseTo(0, within(1e-2));
                // as if it stood in the sheet's plane: it would be taken for another place
                assertThat(z == 0 || plane.at(tap, 0, 0).at().minus(pin).norm() > 0.02)
                        .isTrue();
            }
        }
    }

    @Test
    void refusesCornersThatAreNone() {
        List<Vec2> good =
                List.of(new Vec2(1000, 2000), new Vec2(2800, 2000), new Vec2(2800, 1100), new Vec2(1000, 1100));
        assertThat(PhotoPlane.of(WIDTH, HEIGHT, PLYWOOD, good, Doubts.USUAL)).isNotNull();
        List<Vec2> crossed = List.of(good.get(0), good.get(2), good.get(1), good.get(3));
        List<Vec2> mirrored = List.of(good.get(1), good.get(0), good.get(3), good.get(2));
        List<Vec2> line = List.of(good.get(0), good.get(1), new Vec2(2800, 2000), new Vec2(3000, 2000));
        // so flat is no sheet of this size, from wherever one looks
        List<Vec2> other =
                List.of(new Vec2(1000, 2000), new Vec2(3600, 2000), new Vec2(3600, 1900), new Vec2(1000, 1900));
        for (List<Vec2> bad : List.of(crossed, mirrored, line, other, good.subList(0, 3))) {
            assertThat(PhotoPlane.of(WIDTH, HEIGHT, PLYWOOD, bad, Doubts.USUAL)).isNull();
        }
    }
}
