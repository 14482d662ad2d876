// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

import java.util.List;
import java.util.Objects;
import tipwright.geometry.Vec2;
import tipwright.linkage.Configuration;
import tipwright.linkage.Linkage;
import tipwright.linkage.LinkageException;
import tipwright.linkage.Push;
import tipwright.linkage.Reactions;
import tipwright.linkage.Skeleton;

/** Straight drives of textbooks through the general solver. */
final class Linkages {
    private static final double LBF = 4.4482216152605;
    private static final double FOOT = 0.3048;
    private static final Push WEIGHT = new Push(1, new Vec2(-0.3, 0.4), new Vec2(0, -10_000));
    private static final Vec2 DUMP_FRAME = new Vec2(-2.4, -3.6).times(FOOT);
    private static final Vec2 DUMP_BODY = new Vec2(-0.6, 3.6).times(FOOT);

    private Linkages() {}

    static void addTo(Figures figures) {
        figures.add("straight-length", () -> straight(60).length());
        figures.add("straight-arm-0", () -> straight(0).arm());
        figures.add("straight-arm-60", () -> straight(60).arm());
        figures.add("straight-force-0", () -> straightReactions(0).force());
        figures.add("straight-force-60", () -> straightReactions(60).force());
        figures.add(
                "straight-pivot-60", () -> straightReactions(60).joints().get(0).norm());
        figures.add("crane-arm", () -> Math.abs(crane().force()) / 1000);
        figures.add("crane-pin", () -> crane().joints().get(0).norm() / 1000);
        figures.add(
                "dump-body-length",
                () -> drawn(Vec2.ZERO, DUMP_FRAME, DUMP_BODY).length() / FOOT);
        figures.add("dump-body", Linkages::dumpBody);
        figures.add("lift-arm", Linkages::liftArm);
    }

    private static Linkage linkage() throws LinkageException {
        return Linkage.of(Skeleton.straight(Vec2.ZERO, new Vec2(-0.6, -0.8), new Vec2(-0.5, 0)));
    }

    private static Configuration straight(double degrees) throws LinkageException {
        return linkage()
                .sweep(new double[] {Math.toRadians(degrees)})
                .configurations()
                .get(0);
    }

    private static Reactions straightReactions(double degrees) throws LinkageException {
        return Objects.requireNonNull(linkage().reactions(straight(degrees), List.of(WEIGHT), null));
    }

    private static Configuration drawn(Vec2 pivot, Vec2 framePin, Vec2 tankPin) throws LinkageException {
        Linkage linkage = Linkage.of(Skeleton.straight(pivot, framePin, tankPin));
        return linkage.sweep(new double[] {0}).configurations().get(0);
    }

    private static Reactions solve(Vec2 framePin, Vec2 tankPin, Push... pushes) throws LinkageException {
        Linkage linkage = Linkage.of(Skeleton.straight(Vec2.ZERO, framePin, tankPin));
        Configuration configuration = drawn(Vec2.ZERO, framePin, tankPin);
        return Objects.requireNonNull(linkage.reactions(configuration, List.of(pushes), null));
    }

    private static Reactions crane() throws LinkageException {
        Push load = new Push(1, new Vec2(3, 0.96), new Vec2(0, -433 * 9.81));
        return solve(new Vec2(0, 0.24), new Vec2(0.72, 0.96), load);
    }

    private static double dumpBody() throws LinkageException {
        Push load = new Push(1, new Vec2(-14.3 * FOOT, 0), new Vec2(0, -6000 * LBF));
        return solve(DUMP_FRAME, DUMP_BODY, load).force() / LBF;
    }

    private static double liftArm() throws LinkageException {
        Push near = new Push(1, new Vec2(6 * FOOT, 0), new Vec2(0, -180 * LBF));
        Push far = new Push(1, new Vec2(8 * FOOT, 0), new Vec2(0, -180 * LBF));
        return solve(new Vec2(0, 2 * FOOT), new Vec2(3 * FOOT, 0), near, far).force() / LBF;
    }
}
