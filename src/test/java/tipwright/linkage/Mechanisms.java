// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import tipwright.design.Design;
import tipwright.design.file.DesignFile;
import tipwright.design.file.Reading;
import tipwright.geometry.Vec2;

/** The skeletons of the shipped designs, as they are and shaken. */
final class Mechanisms {
    static final double GRAVITY = 9.80665;

    private Mechanisms() {}

    /** Names of designs, one for each mechanism. */
    static List<String> names() {
        return List.of(
                "silt-trailer", "crank-cart", "knee-stand", "rail-pusher", "slide-back", "kerb-swing", "six-link");
    }

    static Design design(String name) {
        Reading reading = DesignFile.read(Path.of("geometry", name + ".yaml"));
        if (reading instanceof Reading.Good good) {
            return good.design();
        }
        throw new AssertionError(reading.toString());
    }

    /**
     * Made up for the tests: the tank slides on a crank, held by a link, and the actuator goes from the crank to it. Shipped designs
     * slide on the frame alone.
     */
    static final String ON_A_CRANK = "on-a-crank";

    static Skeleton skeleton(String name) {
        if (name.equals(ON_A_CRANK)) {
            return new Skeleton(
                    List.of("frame", "crank", "tank", "link"),
                    2,
                    List.of(
                            new Joint.Pin(Skeleton.PIVOT, 0, 1, new Vec2(0, 0)),
                            new Joint.Slide("rail", 1, 2, new Vec2(0.3, 0.2), new Vec2(1, 0.3)),
                            new Joint.Pin("far", 3, 2, new Vec2(0.8, 0.5)),
                            new Joint.Pin("anchor", 0, 3, new Vec2(1.2, -0.6))),
                    new Strut("actuator", 1, new Vec2(-0.4, 0.3), 2, new Vec2(0.5, 0.6)));
        }
        Design design = design(name);
        return design.drive().skeleton(design.pivot().at());
    }

    /** The same mechanism with every pin moved by up to a distance in m. */
    static Skeleton shaken(Skeleton s, SplittableRandom random, double by) {
        List<Joint> joints = new ArrayList<>();
        for (Joint j : s.joints()) {
            joints.add(
                    j instanceof Joint.Slide slide
                            ? new Joint.Slide(
                                    j.name(),
                                    j.a(),
                                    j.b(),
                                    moved(j.at(), random, by),
                                    slide.direction().tilted(random.nextDouble(-0.2, 0.2)))
                            : new Joint.Pin(j.name(), j.a(), j.b(), moved(j.at(), random, by)));
        }
        Strut a = s.actuator();
        Strut strut = new Strut(a.name(), a.a(), moved(a.onA(), random, by), a.b(), moved(a.onB(), random, by));
        return new Skeleton(s.bodies(), s.tank(), joints, strut);
    }

    private static Vec2 moved(Vec2 p, SplittableRandom random, double by) {
        return p.plus(new Vec2(random.nextDouble(-by, by), random.nextDouble(-by, by)));
    }

    /** A tank of 640 kg and links of 32 kg, each link's weight in the middle of its pins. */
    static List<Push> weights(Skeleton s) {
        List<Push> pushes = new ArrayList<>();
        for (int body = 1; body < s.bodies().size(); body++) {
            boolean tank = body == s.tank();
            Vec2 at = tank ? new Vec2(0.05, 0.6) : middle(s, body);
            pushes.add(new Push(body, at, new Vec2(0, -(tank ? 640 : 32) * GRAVITY)));
        }
        return pushes;
    }

    private static Vec2 middle(Skeleton s, int body) {
        Vec2 sum = Vec2.ZERO;
        int count = 0;
        for (Joint j : s.joints()) {
            if (j.a() == body || j.b() == body) {
                sum = sum.plus(j.at());
                count++;
            }
        }
        return sum.times(1.0 / count);
    }

    /** Tilts from stowed to the end, rad. */
    static double[] tilts(double to, int count) {
        double[] all = new double[count];
        for (int i = 0; i < count; i++) {
            all[i] = to * i / (count - 1);
        }
        return all;
    }
}
