// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.Design;
import tipwright.design.drive.Anchor;
import tipwright.design.drive.Assist;
import tipwright.design.drive.Counterweight;
import tipwright.design.drive.LineSpring;
import tipwright.design.drive.TorsionSpring;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.linkage.Configuration;
import tipwright.linkage.Joint;
import tipwright.linkage.ReactionSolver;
import tipwright.linkage.Skeleton;
import tipwright.load.Gravity;

/** Springs and weights of a design as loads on its linkage. */
final class Assists {
    private final Skeleton skeleton;
    private final Vec3 up;
    private final List<Assist> all;

    Assists(Design design, Skeleton skeleton) {
        this.skeleton = skeleton;
        this.up = design.site().up();
        this.all = design.assists();
    }

    /**
     * A load that does not change with the tank's contents.
     *
     * @param body by number
     * @param stowed where it acts, m
     * @param force N
     * @param moment N m, positive clockwise
     */
    record Load(int body, Vec3 stowed, Vec3 force, double moment) {
        void on(ReactionSolver solver) {
            solver.push(body, stowed.x(), stowed.y(), force.x(), force.y());
            solver.turn(body, moment);
        }
    }

    /**
     * The loads at a configuration.
     *
     * @param sense +1 while tipping, -1 on the way back, 0 at rest without friction
     */
    List<Load> at(Configuration configuration, int sense) {
        if (all.isEmpty()) {
            return List.of();
        }
        List<Load> loads = new ArrayList<>();
        for (Assist assist : all) {
            if (assist instanceof LineSpring line) {
                addLine(line, configuration, sense, loads);
            } else if (assist instanceof TorsionSpring torsion) {
                addTorsion(torsion, configuration, loads);
            } else if (assist instanceof Counterweight weight) {
                Vec3 force = up.times(-weight.mass() * Gravity.G);
                loads.add(new Load(number(weight.body()), weight.centre(), force, 0));
            }
        }
        return loads;
    }

    private void addLine(LineSpring spring, Configuration configuration, int sense, List<Load> loads) {
        Anchor from = spring.from();
        Anchor to = spring.to();
        int a = number(from.body());
        int b = number(to.body());
        Vec2 line = configuration.place(b, to.at()).minus(configuration.place(a, from.at()));
        Vec2 u = line.unit();
        double rate = configuration
                .velocity(b, to.at())
                .minus(configuration.velocity(a, from.at()))
                .dot(u);
        double brake = Math.signum(rate) * FrictionRadii.braking(spring.friction(), sense);
        Vec2 push = u.times(spring.push(line.norm()) - brake);
        loads.add(new Load(b, at(to.at(), spring.z()), at(push, 0), 0));
        loads.add(new Load(a, at(from.at(), spring.z()), at(push.times(-1), 0), 0));
    }

    private void addTorsion(TorsionSpring spring, Configuration configuration, List<Load> loads) {
        for (Joint j : skeleton.joints()) {
            if (j.name().equals(spring.pin())) {
                double moment = spring.momentAt(configuration.turn(j.b()) - configuration.turn(j.a()));
                loads.add(new Load(j.b(), Vec3.ZERO, Vec3.ZERO, moment));
                loads.add(new Load(j.a(), Vec3.ZERO, Vec3.ZERO, -moment));
            }
        }
    }

    private static Vec3 at(Vec2 p, double z) {
        return new Vec3(p.x(), p.y(), z);
    }

    private int number(String body) {
        return skeleton.bodies().indexOf(body);
    }
}
