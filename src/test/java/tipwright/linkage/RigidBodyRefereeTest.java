// SPDX-License-Identifier: Apache-2.0
package tipwright.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.dyn4j.dynamics.Body;
import org.dyn4j.dynamics.joint.DistanceJoint;
import org.dyn4j.dynamics.joint.RevoluteJoint;
import org.dyn4j.geometry.Geometry;
import org.dyn4j.geometry.Mass;
import org.dyn4j.geometry.MassType;
import org.dyn4j.geometry.Vector2;
import org.dyn4j.world.World;
import org.junit.jupiter.api.Test;
import tipwright.geometry.Vec2;

/**
 * The straight drive in an independent rigid-body engine: the tank hangs on a revolute joint and a distance joint, at rest.
 * Source: dyn4j, a general-purpose planar physics library.
 */
class RigidBodyRefereeTest {
    private static final double STEP = 1.0 / 100;

    @Test
    void jointReactionsAgreeWithinOneInAThousand() throws LinkageException {
        SplittableRandom random = new SplittableRandom(77);
        int compared = 0;
        for (int i = 0; i < 60; i++) {
            Vec2 pivot = point(random, 0.5);
            Vec2 frame = pivot.plus(new Vec2(random.nextDouble(-1.2, -0.5), random.nextDouble(-0.8, -0.2)));
            Vec2 tank = pivot.plus(new Vec2(random.nextDouble(-0.9, -0.3), random.nextDouble(-0.1, 0.6)));
            Vec2 centroid = pivot.plus(new Vec2(random.nextDouble(-0.6, 0.2), random.nextDouble(0.1, 0.7)));
            Linkage linkage = Linkage.of(Skeleton.straight(pivot, frame, tank));
            for (double tilt : new double[] {0, 0.4, 0.9}) {
                Motion motion = linkage.sweep(new double[] {tilt});
                if (motion.stop() != null || motion.configurations().get(0).transmission() < Math.toRadians(8)) {
                    continue;
                }
                compare(linkage, motion.configurations().get(0), pivot, frame, centroid);
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(100);
    }

    private static void compare(Linkage linkage, Configuration p, Vec2 pivot, Vec2 frame, Vec2 centroid) {
        double mass = 640;
        double gravity = 9.80665;
        Push weight = new Push(1, centroid, new Vec2(0, -mass * gravity));
        Reactions ours = Objects.requireNonNull(linkage.reactions(p, List.of(weight), null));
        Vec2 at = p.place(1, centroid);

        World<Body> world = new World<>();
        world.setGravity(0, -gravity);
        world.getSettings().setStepFrequency(STEP);
        world.getSettings().setAtRestDetectionEnabled(false);
        world.getSettings().setVelocityConstraintSolverIterations(200);
        Body ground = body(new Vec2(0, 0), 1);
        ground.setMass(MassType.INFINITE);
        Body tank = body(at, mass);
        world.addBody(ground);
        world.addBody(tank);
        RevoluteJoint<Body> pin = new RevoluteJoint<>(ground, tank, vector(pivot));
        DistanceJoint<Body> actuator = new DistanceJoint<>(ground, tank, vector(frame), vector(p.onB()));
        world.addJoint(pin);
        world.addJoint(actuator);
        world.step(300);

        Vec2 pinForce = vec(pin.getReactionForce(1 / STEP));
        Vec2 rodForce = vec(actuator.getReactionForce(1 / STEP));
        double scale = 1e-3 * Math.max(mass * gravity, Math.abs(ours.force()));
        assertThat(rodForce.norm()).isCloseTo(Math.abs(ours.force()), within(scale));
        assertThat(pinForce.norm()).isCloseTo(ours.joints().get(0).norm(), within(scale));
        // The reaction on the tank at the pivot and the rod's force on it carry the weight together.
        Vec2 onTank = p.line().times(ours.force()).minus(ours.joints().get(0));
        assertThat(onTank.minus(new Vec2(0, mass * gravity)).norm()).isLessThan(1e-6 * mass * gravity);
    }

    private static Body body(Vec2 centre, double mass) {
        Body body = new Body();
        body.addFixture(Geometry.createCircle(0.3));
        body.setMass(new Mass(new Vector2(), mass, 0.2 * mass));
        body.translate(vector(centre));
        body.setAtRestDetectionEnabled(false);
        body.getFixture(0).setSensor(true);
        return body;
    }

    private static Vector2 vector(Vec2 p) {
        return new Vector2(p.x(), p.y());
    }

    private static Vec2 vec(Vector2 p) {
        return new Vec2(p.x, p.y);
    }

    private static Vec2 point(SplittableRandom random, double size) {
        return new Vec2(random.nextDouble(-size, size), random.nextDouble(-size, size));
    }
}
