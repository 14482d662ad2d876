// SPDX-License-Identifier: Apache-2.0
package tipwright.check.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static tipwright.Swap.swap;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tipwright.analysis.Analyser;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.Examples;
import tipwright.check.Checker;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.geometry.Vec2;

/** Gaps against closed forms, and of a cylinder against brute force on its corners. */
public class ClearanceTest {
    private static final Vec2 PIVOT = new Vec2(0.4, 0.4);

    public static List<Clearance.Gap> gaps(String yaml) throws CannotComputeException {
        return Clearance.of(Analyser.analyse(Examples.read(yaml)));
    }

    public static Clearance.Gap gap(List<Clearance.Gap> all, String moving, String other) {
        return all.stream()
                .filter(g -> g.moving().equals(moving) && g.other().equals(other))
                .findFirst()
                .orElseThrow();
    }

    static Stream<String> closedForms() throws IOException {
        try (var in = ClearanceTest.class.getResourceAsStream("clearance.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines().filter(l -> !l.startsWith("#") && !l.isBlank()).toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("closedForms")
    void followsTheClosedForm(String line) throws CannotComputeException {
        String[] part = line.split(" *\\| *");
        String z = part[3].isEmpty() ? "" : ", z: [" + swap(part[3], " ", " mm, ") + " mm]";
        String yaml = swap(
                        swap(Examples.BOX, "{shape: box, size: [1 m, 1 m, 1 m], centre: [0 m, 1 m, 0 m]}", part[1])
                                .replaceFirst("- \\{name: top.*\\}", hatch(part[1])),
                        "to: 80 deg",
                        "to: 80 deg, step: 10 deg")
                + "frame: {members: [{name: it, outline: " + outline(points(part[2])) + z + "}]}\n";
        List<Clearance.Gap> all = gaps(yaml);
        if (part[4].equals("none")) {
            assertThat(all).noneMatch(g -> g.moving().equals("tank"));
            return;
        }
        Clearance.Gap found = gap(all, "tank", "it");
        double expected = part[4].equals("touch") ? 0 : Double.parseDouble(part[4]);
        assertThat(1000 * found.gap()).isCloseTo(expected, within(0.25));
        assertThat(Math.toDegrees(found.tilt())).isCloseTo(Double.parseDouble(part[5]), within(1.0));
        if (expected == 0) {
            assertThat(Math.toDegrees(found.tilt())).isCloseTo(Double.parseDouble(part[5]), within(0.02));
        }
    }

    /** An opening that fits the tank. */
    private static String hatch(String interior) {
        return interior.contains("cylinder")
                ? "- {name: hatch, rim: circle, diameter: 200 mm, centre: [0 m, 1 m, 300 mm], normal: z}"
                : "- {name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m], normal: y}";
    }

    private static final String CYLINDER = "push: 12 kN, pull: 12 kN, rod: {diameter: 40 mm},"
            + " tube: {outside: 80 mm, inside: 70 mm, length: 700 mm}";

    /** The tube swings about its frame pin with the tank's pin on a circle: brute force on its corners. */
    @Test
    void tubeOfTheActuatorAgainstAnObstacle() throws CannotComputeException {
        List<Vec2> post = List.of(new Vec2(-0.8, -0.1), new Vec2(-0.9, 0.1), new Vec2(-1, -0.2));
        String yaml = swap(Examples.BOX, "push: 12 kN, pull: 12 kN", CYLINDER) + "obstacles: [{name: post, outline: "
                + outline(post) + "}]\n";
        Clearance.Gap found = gap(gaps(yaml), "actuator tube", "post");
        Vec2 frame = new Vec2(-0.6, -0.5);
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 8000; i++) {
            Vec2 pin = new Vec2(-0.45, 0.4).tiltedAbout(PIVOT, Math.toRadians(0.01 * i));
            Vec2 u = pin.minus(frame).unit();
            Vec2 side = new Vec2(-u.y(), u.x()).times(0.04);
            List<Vec2> tube = List.of(
                    frame.minus(side),
                    frame.plus(u.times(0.7)).minus(side),
                    frame.plus(u.times(0.7)).plus(side),
                    frame.plus(side));
            for (int k = 0; k < 4; k++) {
                for (int j = 0; j < 3; j++) {
                    best = Math.min(best, toSide(tube.get(k), post.get(j), post.get((j + 1) % 3)));
                    best = Math.min(best, toSide(post.get(j), tube.get(k), tube.get((k + 1) % 4)));
                }
            }
        }
        assertThat(best).isPositive();
        assertThat(1000 * found.gap()).isCloseTo(1000 * best, within(0.05));
    }

    @Test
    void actuatorIsLookedAtAgainstTheTankThatItPushesButNotAtItsOwnPin() throws CannotComputeException {
        String yaml = swap(Examples.BOX, "push: 12 kN, pull: 12 kN", CYLINDER) + "ground: {y: -800 mm}\n";
        // The pin sits 96 mm under the tank's wall; the flat end of the rod, 20 mm to each side of it, leans as it
        // swings.
        Clearance.Gap bare = gap(gaps(yaml + "limits: {pin-zone: 0 mm}\n"), "tank", "actuator rod");
        assertThat(bare.gap()).isBetween(0.076, 0.096);
        assertThat(gap(gaps(yaml), "tank", "actuator rod").gap()).isGreaterThan(bare.gap() + 0.01);
        Clearance.Gap through = gap(
                gaps(swap(yaml, "tank-pin: [-450 mm, 400 mm]", "tank-pin: [-450 mm, 900 mm]")), "tank", "actuator rod");
        assertThat(through.gap()).isZero();
        assertThat(through.tilt()).isZero();
    }

    @Test
    void saysWhatToMoveAndByHowMuch() throws CannotComputeException {
        String yaml = Examples.BOX
                + "obstacles: [{name: wall, outline: [[1450 mm, 0 mm], [1500 mm, 0 mm], [1500 mm, 2 m], [1450 mm, 2 m]]}]\n";
        Clearance.Gap found = gap(gaps(yaml), "tank", "wall");
        assertThat(found.gap()).isZero();
        Clearance.Move first = found.moves().get(0);
        assertThat(first.towards()).isEqualTo(new Vec2(1, 0));
        // The corner 0.1 m beyond and 1.1 m over the pivot reaches farthest at the end of the tilt, with its wall of 4
        // mm.
        double reach = 400 + 4 + 1000 * (Math.sin(Math.toRadians(80)) * 1.1 + Math.cos(Math.toRadians(80)) * 0.1);
        assertThat(1000 * first.by()).isCloseTo(reach + 20 - 1450, within(0.3));
    }

    @Test
    void tankMayLieOnItsRestAndComesOffIt() throws CannotComputeException {
        String rest =
                "frame: {members: [{name: saddle, outline: [[-500 mm, 300 mm], [-300 mm, 300 mm], [-300 mm, 496 mm],"
                        + " [-500 mm, 496 mm]], rest: yes}]}\n";
        Clearance.Gap found = gap(gaps(Examples.BOX + rest), "tank", "saddle");
        assertThat(found.gap()).isPositive();
        Clearance.Gap without = gap(gaps(Examples.BOX + swap(rest, ", rest: yes", "")), "tank", "saddle");
        assertThat(without.gap()).isZero();
    }

    private static Finding finding(String yaml, String id) throws CannotComputeException {
        return Checker.check(Examples.read(yaml)).findings().stream()
                .filter(f -> f.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** A wall 6.5 mm behind the stowed box, whose outside ends at x = -504 mm: the gap, what it is used, and what to do. */
    @Test
    void tooNearIsToldInMillimetres() throws CannotComputeException {
        String wall = Examples.BOX + "obstacles: [{name: wall, outline: [[-600 mm, 500 mm], [-510.5 mm, 500 mm],"
                + " [-510.5 mm, 1400 mm], [-600 mm, 1400 mm]]}]\n";
        Finding near = finding(wall, "clearance/tank-to-wall");
        assertThat(near.demand()).isEqualTo(0.02);
        assertThat(near.capacity()).isCloseTo(0.0065, within(1e-9));
        assertThat(near.utilisation()).isCloseTo(20.0 / 6.5, within(1e-6));
        assertThat(near.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(near.note().metric()).isEqualTo("6.5 mm at 0.0 deg; move the wall 14 mm away from the dump side");
        Finding free = finding(wall + "limits: {clearance: 0 mm}\n", "clearance/tank");
        assertThat(free.capacity()).isCloseTo(0.0065, within(1e-9));
        assertThat(free.verdict()).isEqualTo(Verdict.PASS);
        assertThat(free.utilisation()).isZero();
    }

    private static List<Vec2> points(String text) {
        List<Vec2> all = new ArrayList<>();
        for (String p : text.split(", *")) {
            String[] xy = p.split(" ");
            all.add(new Vec2(Double.parseDouble(xy[0]) / 1000, Double.parseDouble(xy[1]) / 1000));
        }
        return all;
    }

    public static String outline(List<Vec2> points) {
        List<String> all = points.stream()
                .map(p -> "[" + 1000 * p.x() + " mm, " + 1000 * p.y() + " mm]")
                .toList();
        return all.toString();
    }

    public static double toSide(Vec2 p, Vec2 a, Vec2 b) {
        Vec2 side = b.minus(a);
        double t = Math.max(0, Math.min(1, p.minus(a).dot(side) / side.dot(side)));
        return p.minus(a.plus(side.times(t))).norm();
    }

    private static final String DOORED = swap(Examples.BOX, "to: 80 deg", "to: 60 deg")
            .replaceFirst(
                    "- \\{name: top.*\\}",
                    "- {name: rear, rim: rectangle, width: 1 m, height: 1 m, centre: [500 mm, 1 m, 0 mm], normal: x,"
                            + " opens-at: 20 deg, door: {hinge: [500 mm, 1500 mm, 0 mm], latch: [500 mm, 500 mm, 0 mm]}}");

    private static Vec2 about(Vec2 p, Vec2 pole, double clockwise) {
        double c = Math.cos(clockwise);
        double s = Math.sin(clockwise);
        double x = p.x() - pole.x();
        double y = p.y() - pole.y();
        return new Vec2(pole.x() + c * x + s * y, pole.y() - s * x + c * y);
    }

    private static double toSegment(Vec2 p, Vec2 a, Vec2 b) {
        Vec2 along = b.minus(a);
        double share = Math.max(0, Math.min(1, p.minus(a).dot(along) / along.dot(along)));
        return p.minus(a.plus(along.times(share))).norm();
    }

    /** The door's plate, 16 to 28 mm out and 3 % larger all round, shut to 20 deg, then hanging plumb and up to 14 deg beyond. */
    @Test
    void doorOnItsSwing() throws CannotComputeException {
        List<Vec2> post = List.of(new Vec2(2.2, 0.5), new Vec2(2.3, 0.5), new Vec2(2.3, 0.7), new Vec2(2.2, 0.7));
        Clearance.Gap found =
                gap(gaps(DOORED + "obstacles: [{name: post, outline: " + outline(post) + "}]\n"), "rear door", "post");
        Vec2 hinge = new Vec2(0.5, 1.5);
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 1200; i++) {
            double tilt = Math.toRadians(60) * i / 1200;
            boolean opening = i == 400;
            for (int k = 0; k <= (opening ? 400 : 0); k++) {
                double wide = tilt + Math.toRadians(14);
                double swung = tilt < Math.toRadians(20) - 1e-9 ? 0 : opening ? wide * k / 400 : wide;
                for (int n = 0; n < 4; n++) {
                    double out = n % 2 == 0 ? 0.516 : 0.528;
                    double hangs = n < 2 ? swung : Math.min(swung, tilt);
                    Vec2 top = about(about(new Vec2(out, 1.515), hinge, -hangs), PIVOT, tilt);
                    Vec2 bottom = about(about(new Vec2(out, 0.485), hinge, -hangs), PIVOT, tilt);
                    for (Vec2 corner : post) {
                        best = Math.min(best, toSegment(corner, top, bottom));
                    }
                    for (int c = 0; c < post.size(); c++) {
                        Vec2 next = post.get((c + 1) % post.size());
                        best = Math.min(
                                best,
                                Math.min(toSegment(top, post.get(c), next), toSegment(bottom, post.get(c), next)));
                    }
                }
            }
        }
        assertThat(found.gap()).isCloseTo(best, within(1e-3));
        assertThat(best).isGreaterThan(0.01);
    }

    /**
     * A gate in the lower half of an end wall that leans out by 45 deg: it hangs plumb under its hinge, so it swings from the wall by the
     * tilt and those 45 deg, and at the full tilt its lower edge is nearest to the ground, and to a post that stands under the hinge.
     */
    @Test
    void aDoorOnASlopingWallHangsPlumb() throws CannotComputeException {
        String yaml = swap(
                Examples.BOX,
                "shape: box, size: [1 m, 1 m, 1 m], centre: [0 m, 1 m, 0 m]",
                "shape: prism, width: 1 m, outline: [[-500 mm, 500 mm], [0 mm, 500 mm], [1 m, 1500 mm], [-500 mm, 1500 mm]]",
                "- {name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m], normal: y}",
                "- {name: gate, rim: rectangle, width: 1 m, height: 800 mm, centre: [500 mm, 1 m, 0 mm], normal: [1, -1, 0],"
                        + " opens-at: 5 deg, door: {hinge: [790 mm, 1290 mm, 0 mm], latch: [200 mm, 700 mm, 0 mm]}}",
                "80 deg",
                "40 deg");
        List<Clearance.Gap> found = gaps(yaml + "ground: {y: -600 mm}\n");
        Vec2 hinge = new Vec2(0.79, 1.29);
        Vec2 square = new Vec2(1, -1).unit();
        Vec2 along = new Vec2(-1, -1).unit();
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 4000; i++) {
            double tilt = Math.toRadians(40) * i / 4000;
            // shut it points 45 deg back from straight down, and the tilt carries it further back
            double plumb = tilt + Math.toRadians(45);
            for (int k = 0; k <= 20; k++) {
                double swung = tilt < Math.toRadians(5) ? 0 : plumb + Math.toRadians(14.0 * k / 20);
                for (double out : new double[] {0.016, 0.028}) {
                    Vec2 end = new Vec2(0.5, 1).plus(along.times(0.4 * 1.03)).plus(square.times(out));
                    lowest = Math.min(
                            lowest,
                            about(about(end, hinge, -swung), PIVOT, tilt).y());
                }
            }
        }
        assertThat(gap(found, "gate door", "ground").gap()).isCloseTo(lowest + 0.6, within(1e-3));
    }

    /** The front edge of the box goes round the pivot past the near edge of a bin. */
    @Test
    void edgesOfTheReceiver() throws CannotComputeException {
        List<Clearance.Gap> all = gaps(swap(Examples.BOX, "to: 80 deg", "to: 80 deg, step: 5 deg")
                + "receiver: {name: bin, near: [1800 mm, 200 mm], far: [3 m, 200 mm]}\n");
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 8000; i++) {
            double tilt = Math.toRadians(80) * i / 8000;
            Vec2 low = about(new Vec2(0.504, 0.496), PIVOT, tilt);
            Vec2 high = about(new Vec2(0.504, 1.504), PIVOT, tilt);
            best = Math.min(best, toSegment(new Vec2(1.8, 0.2), low, high));
        }
        assertThat(gap(all, "tank", "bin near edge").gap()).isCloseTo(best, within(5e-3));
        assertThat(gap(all, "tank", "bin far edge").gap()).isGreaterThan(best);
    }

    @Test
    void doorThatHingesAtItsSideIsToldAsNotLookedAt() throws CannotComputeException {
        String yaml = DOORED.replace(
                        "hinge: [500 mm, 1500 mm, 0 mm], latch: [500 mm, 500 mm, 0 mm]",
                        "hinge: [500 mm, 1 m, 500 mm], hinge-axis: y, latch: [500 mm, 1 m, -500 mm]")
                + "ground: {y: -2 m}\n";
        Finding door = Checker.asFilled(Examples.read(yaml)).findings().stream()
                .filter(f -> f.id().equals("clearance/rear-door"))
                .findFirst()
                .orElseThrow();
        assertThat(door.verdict()).isEqualTo(Verdict.NOT_CHECKED);
        assertThat(door.note().metric()).contains("hinge line is not along the pivot");
    }
}
