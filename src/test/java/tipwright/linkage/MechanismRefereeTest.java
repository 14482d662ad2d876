// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.dyn4j.dynamics.Body;
import org.dyn4j.dynamics.joint.DistanceJoint;
import org.dyn4j.dynamics.joint.Joint;
import org.dyn4j.dynamics.joint.PrismaticJoint;
import org.dyn4j.dynamics.joint.RevoluteJoint;
import org.dyn4j.geometry.Geometry;
import org.dyn4j.geometry.Mass;
import org.dyn4j.geometry.MassType;
import org.dyn4j.geometry.Vector2;
import org.dyn4j.world.World;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tipwright.geometry.Vec2;

/**
 * Each mechanism at rest in an independent rigid-body engine: revolute and prismatic joints, the actuator as a distance joint.
 * Source: dyn4j, a general-purpose planar physics library.
 */
class MechanismRefereeTest {
    private static final double STEP = 1.0 / 100;

    static List<String> names() {
        return Mechanisms.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void jointReactionsAgreeWithinOneInAThousand(String name) throws LinkageException {
        SplittableRandom random = new SplittableRandom(31);
        Skeleton drawn = Mechanisms.skeleton(name);
        int compared = 0;
        for (int i = 0; i < 4; i++) {
            Linkage linkage = Linkage.of(i == 0 ? drawn : Mechanisms.shaken(drawn, random, 0.03));
            Motion motion = linkage.sweep(Mechanisms.tilts(Math.toRadians(40), 5));
            for (Configuration configuration : motion.configurations()) {
                if (linkage.condition(configuration) > 0.01 && configuration.transmission() > Math.toRadians(15)) {
                    compare(linkage, configuration);
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(10);
    }

    private static void compare(Linkage linkage, Configuration configuration) {
        List<Push> weights = Mechanisms.weights(linkage.skeleton());
        Reactions ours = Objects.requireNonNull(linkage.reactions(configuration, weights, null));
        World<Body> world = new World<>();
        world.setGravity(0, -Mechanisms.GRAVITY);
        world.getSettings().setStepFrequency(STEP);
        world.getSettings().setAtRestDetectionEnabled(false);
        world.getSettings().setVelocityConstraintSolverIterations(1500);
        world.getSettings().setPositionConstraintSolverIterations(50);
        List<Body> bodies = new ArrayList<>();
        Body ground = body(Vec2.ZERO, 1);
        ground.setMass(MassType.INFINITE);
        bodies.add(ground);
        for (Push w : weights) {
            bodies.add(body(configuration.place(w.body(), w.at()), -w.force().y() / Mechanisms.GRAVITY));
        }
        bodies.forEach(world::addBody);
        List<Joint<Body>> joints = new ArrayList<>();
        for (tipwright.linkage.Joint j : linkage.skeleton().joints()) {
            Vector2 at = vector(configuration.place(j.b(), j.at()));
            joints.add(
                    j instanceof tipwright.linkage.Joint.Slide slide
                            ? new PrismaticJoint<>(
                                    bodies.get(j.a()),
                                    bodies.get(j.b()),
                                    at,
                                    vector(slide.direction().tilted(configuration.turn(j.a()))))
                            : new RevoluteJoint<>(bodies.get(j.a()), bodies.get(j.b()), at));
        }
        Strut strut = linkage.skeleton().actuator();
        DistanceJoint<Body> rod = new DistanceJoint<>(
                bodies.get(strut.a()), bodies.get(strut.b()), vector(configuration.onA()), vector(configuration.onB()));
        joints.forEach(world::addJoint);
        world.addJoint(rod);
        world.step(200);

        double weight = 640 * Mechanisms.GRAVITY;
        assertThat(norm(rod.getReactionForce(1 / STEP)))
                .isCloseTo(Math.abs(ours.force()), within(1e-3 * Math.max(weight, Math.abs(ours.force()))));
        for (int i = 0; i < joints.size(); i++) {
            double mine = ours.joints().get(i).norm();
            assertThat(norm(joints.get(i).getReactionForce(1 / STEP)))
                    .as(linkage.skeleton().joints().get(i).name())
                    .isCloseTo(mine, within(1e-3 * Math.max(weight, mine)));
        }
    }

    private static Body body(Vec2 centre, double mass) {
        Body body = new Body();
        body.addFixture(Geometry.createCircle(0.3));
        body.getFixture(0).setSensor(true);
        body.setMass(new Mass(new Vector2(), mass, 0.2 * mass));
        body.translate(vector(centre));
        body.setAtRestDetectionEnabled(false);
        return body;
    }

    private static double norm(Vector2 v) {
        return Math.hypot(v.x, v.y);
    }

    private static Vector2 vector(Vec2 p) {
        return new Vector2(p.x(), p.y());
    }
}
