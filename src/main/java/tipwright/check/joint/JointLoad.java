// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.BodyPosition;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Extreme;
import tipwright.analysis.JointPlan;
import tipwright.analysis.LinkPlane;
import tipwright.analysis.Mechanism;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.design.Design;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.actuator.Sharing;
import tipwright.design.drive.Drive;
import tipwright.design.joint.Fastening;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/** The force of one joint on the body that a fastening holds it to, in that body's axes as stowed. */
public final class JointLoad {
    private static final String TANK_PIN = "tank-pin";

    private final Analysis analysis;
    private final Source source;
    private final int body;
    private final double z;

    /** Force on the body, and where it acts, told in the body's axes. */
    private interface Source {
        Held at(Turned body, Pose pose, Balance balance);
    }

    /**
     * A force on a body.
     *
     * @param force N, in the body's axes as stowed
     * @param at m, as stowed
     */
    public record Held(Vec3 force, Vec3 at) {}

    private JointLoad(Analysis analysis, Source source, int body, double z) {
        this.analysis = analysis;
        this.source = source;
        this.body = body;
        this.z = z;
    }

    /**
     * The load of a fastening.
     *
     * @param near z of the fastening, m: picks the actuator
     * @return null when there is no such joint, or not on that body, or when it is a slide, whose couple no single place bears
     */
    public static @Nullable JointLoad of(Analysis analysis, Fastening fastening, double near) {
        Mechanism m = analysis.mechanism();
        String joint = fastening.joint();
        boolean tankPin = joint.equals(TANK_PIN)
                && m.joints().stream().noneMatch(j -> j.name().equals(TANK_PIN));
        if (joint.equals(Drive.FRAME_PIN) || joint.equals(Drive.ROD_PIN) || tankPin) {
            return pin(analysis, fastening, near);
        }
        if (Fastening.BEARINGS.contains(joint)) {
            return bearing(analysis, fastening, Fastening.BEARINGS.indexOf(joint));
        }
        for (int i = 0; i < m.joints().size(); i++) {
            JointPlan plan = m.joints().get(i);
            if (plan.name().equals(joint) && i != m.pivot() && !plan.slide()) {
                return named(analysis, fastening, i, near);
            }
        }
        return null;
    }

    private static @Nullable JointLoad pin(Analysis analysis, Fastening fastening, double near) {
        Mechanism m = analysis.mechanism();
        boolean fixed = fastening.joint().equals(Drive.FRAME_PIN);
        int body = fixed ? m.actuatorFrom() : m.actuatorTo();
        if (body(m, fastening, body) != body) {
            return null;
        }
        List<PlacedActuator> actuators = analysis.design().drive().actuators();
        int nearest = 0;
        for (int i = 1; i < actuators.size(); i++) {
            double gap = Math.abs(actuators.get(i).z() - near);
            nearest = gap < Math.abs(actuators.get(nearest).z() - near) ? i : nearest;
        }
        int index = nearest;
        Source source = (turned, pose, balance) -> {
            double share = Sharing.shares(actuators, pose.length(), balance.force() > 0)[index];
            Vec2 along = pose.tankPin().minus(pose.framePin());
            double force = (fixed ? -share : share) * balance.force() / along.norm();
            Vec2 at = fixed ? pose.framePin() : pose.tankPin();
            return turned.held(force * along.x(), force * along.y(), 0, at);
        };
        double z = actuators.get(index).z();
        return new JointLoad(analysis, source, body, z);
    }

    private static @Nullable JointLoad bearing(Analysis analysis, Fastening fastening, int i) {
        Mechanism m = analysis.mechanism();
        JointPlan pivot = m.joints().get(m.pivot());
        int body = body(m, fastening, m.housing());
        if (body != m.housing() && body != m.borne()) {
            return null;
        }
        double sign = body == m.housing() ? 1 : -1;
        Source source = (turned, pose, balance) -> {
            Vec3 force = balance.bearings().get(i);
            return turned.held(sign * force.x(), sign * force.y(), sign * force.z(), pivot.place(pose));
        };
        return new JointLoad(
                analysis,
                source,
                body,
                analysis.design().pivot().bearings().get(i).z());
    }

    private static @Nullable JointLoad named(Analysis analysis, Fastening fastening, int i, double near) {
        Mechanism m = analysis.mechanism();
        Design design = analysis.design();
        JointPlan joint = m.joints().get(i);
        int body = body(m, fastening, joint.a());
        if (body != joint.a() && body != joint.b()) {
            return null;
        }
        boolean twice = design.drive().paired(joint.name());
        double sign = body == joint.a() ? 1 : -1;
        TwinLinks twins = new TwinLinks(analysis);
        SharedPins shared = new SharedPins(analysis);
        Source source = (turned, pose, balance) -> {
            Vec2 all = balance.joints().get(i);
            Vec2 alone = all.times(sign * (all.norm() > 0 ? twins.force(i, pose, balance) / all.norm() : 1));
            // it may hold this joint alone, or all that is on the pin
            Vec2 whole = shared.on(i, body, pose, balance);
            Vec2 held = whole.norm() > alone.norm() ? whole : alone;
            return turned.held(held.x(), held.y(), 0, joint.place(pose));
        };
        Double drawn = LinkPlane.of(design, m, joint);
        double middle = PlacedActuator.middle(design.drive().actuators());
        // a crank beside the actuators may pass its twist on: the farther of the two bends more
        if (drawn != null && Math.abs(drawn - near) > Math.abs(middle - near)) {
            middle = drawn;
        }
        return new JointLoad(analysis, source, body, twice ? near : middle);
    }

    private static int body(Mechanism m, Fastening fastening, int own) {
        String on = fastening.on();
        if (on == null) {
            return own;
        }
        return on.equals("tank") ? m.tank() : m.bodies().indexOf(on);
    }

    /** The load at one pose. */
    public Held at(Pose pose, Balance balance) {
        return source.at(new Turned(pose.bodies().get(body), z), pose, balance);
    }

    /** Forces in space seen from a body, whose turn is worked out once. */
    private static final class Turned {
        private final Vec2 origin;
        private final double cos;
        private final double sin;
        private final double z;

        Turned(BodyPosition placed, double z) {
            origin = placed.origin();
            cos = Math.cos(-placed.turn());
            sin = Math.sin(-placed.turn());
            this.z = z;
        }

        /** Of a force in space, N, that acts at a place of the side view, m. */
        Held held(double fx, double fy, double fz, Vec2 at) {
            double x = at.x() - origin.x();
            double y = at.y() - origin.y();
            return new Held(
                    new Vec3(cos * fx + sin * fy, -sin * fx + cos * fy, fz),
                    new Vec3(cos * x + sin * y, -sin * x + cos * y, z));
        }
    }

    /** Looks at a load. */
    interface Look {
        void at(CaseResult load, Row row, MotionDirection direction, Held held);
    }

    /** Shows every load, in the order in which the worst is looked for. */
    void each(Look look) {
        for (CaseResult load : analysis.cases()) {
            for (Row row : load.rows()) {
                Turned turned = new Turned(row.pose().bodies().get(body), z);
                for (MotionDirection direction : MotionDirection.ALL) {
                    look.at(load, row, direction, source.at(turned, row.pose(), row.balance(direction)));
                }
            }
        }
    }

    /** Where the joint is on its body, m, as stowed. */
    Vec3 place() {
        Row first = analysis.cases().get(0).rows().get(0);
        return at(first.pose(), first.rest()).at();
    }

    /** The body that the fastening holds it to, by number. */
    int body() {
        return body;
    }

    /** Whether it is a load on the tank. */
    boolean onTank() {
        return body == analysis.mechanism().tank();
    }

    /** Shows every load that comes about in a normal dump. */
    void normal(Consumer<Held> look) {
        each((load, row, direction, held) -> {
            if (load.load().normalAt(row.tilt())) {
                look.accept(held);
            }
        });
    }

    /** Where a value of the load is largest over cases, tilts and ways of moving. */
    Extreme worst(Value value) {
        Extreme.Search search = Extreme.Search.largest();
        each((load, row, direction, held) -> search.offer(value.of(held), row.tilt(), load.name(), direction));
        return search.found();
    }

    /** The load where something is worst; null when no load or tilt governs. */
    @Nullable
    Held at(Extreme worst) {
        Balance balance = worst.balance(analysis.cases());
        return balance == null ? null : at(worst.pose(analysis), balance);
    }

    /** A number that follows from a load. */
    interface Value {
        public double of(Held load);
    }
}
