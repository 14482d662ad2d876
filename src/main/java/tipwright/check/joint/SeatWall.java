// SPDX-License-Identifier: Apache-2.0
package tipwright.check.joint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.design.joint.Seat;
import tipwright.design.tank.CylinderInterior;
import tipwright.geometry.Vec3;
import tipwright.quantity.Text;
import tipwright.strength.CylinderShell;
import tipwright.strength.OutOfRangeException;
import tipwright.strength.PatchInfluence;
import tipwright.strength.PatchLoad;
import tipwright.strength.ShellPatch;

/** The wall of a round tank under a bracket, lug or cradle: what its load does there. Made once, asked for many loads. */
final class SeatWall {
    private final Vec3 middle;
    private final Vec3 axis;
    private final Vec3 out;
    private final PatchInfluence influence;
    private final PatchLoad[] units;
    private final double[] shares;

    private SeatWall(Vec3 middle, Vec3 axis, Vec3 out, PatchInfluence influence) {
        this.middle = middle;
        this.axis = axis;
        this.out = out;
        this.influence = influence;
        units = new PatchLoad[] {new PatchLoad(1, 0, 0), new PatchLoad(0, 1, 0), new PatchLoad(0, 0, 1)};
        shares = Arrays.stream(units).mapToDouble(u -> influence.equivalent(u)).toArray();
    }

    /**
     * The wall under a seat.
     *
     * @param wall thickness, m
     * @throws OutOfRangeException where the rule does not hold, with what does not fit
     */
    static SeatWall of(CylinderInterior tank, double wall, Seat seat, WallInfluences memo) {
        double radius = (tank.diameter() + wall) / 2;
        CylinderShell shell = CylinderShell.steel(radius, wall, tank.length());
        Vec3 axis = tank.axis().unit();
        Place place = Place.of(tank, radius, seat);
        double along = place.along();
        if (Math.abs(along) + seat.along() / 2 > tank.length() / 2) {
            throw new OutOfRangeException(Text.words("it reaches over the end of the round wall"));
        }
        Vec3 out = place.across().unit();
        ShellPatch patch = new ShellPatch(shell, along + tank.length() / 2, seat.along() / 2, seat.around() / 2);
        Vec3 middle = tank.centre().plus(axis.times(along)).plus(out.times(radius));
        return new SeatWall(middle, axis, out, memo.of(patch, seat.pad()));
    }

    /**
     * Where a seat is on a round tank.
     *
     * @param along the axis from the tank's middle, m
     * @param across from the axis, m
     */
    record Place(double along, Vec3 across) {
        /**
         * On a wall of a radius in m.
         *
         * @throws OutOfRangeException near the axis, where it is on no side of the wall
         */
        static Place of(CylinderInterior tank, double radius, Seat seat) {
            Vec3 axis = tank.axis().unit();
            Vec3 off = seat.at().minus(tank.centre());
            double along = off.dot(axis);
            Vec3 across = off.minus(axis.times(along));
            if (!(across.norm() >= radius / 2)) {
                throw new OutOfRangeException(Text.words("seat.at must lie on the wall, not near the tank's axis"));
            }
            return new Place(along, across);
        }
    }

    /** What a load on the tank, in its axes, does square to the wall. */
    PatchLoad load(JointLoad.Held held) {
        Vec3 moment = held.at().minus(middle).cross(held.force());
        return new PatchLoad(held.force().dot(out), -moment.dot(axis), moment.dot(axis.cross(out)));
    }

    /** The greatest stress of all loads, Pa, and where it is: those that cannot pass one that is known are left out. */
    Extreme worst(JointLoad load) {
        List<State> states = new ArrayList<>();
        load.each((c, row, direction, held) -> {
            PatchLoad patch = load(held);
            states.add(new State(patch, bound(patch), row.tilt(), c.name(), direction));
        });
        double known = states.stream()
                .max(Comparator.comparingDouble(State::bound))
                .map(s -> influence.equivalent(s.load()))
                .orElse(0.0);
        Extreme.Search search = Extreme.Search.largest();
        for (State s : states) {
            if (!(s.bound() < known)) {
                double stress = influence.equivalent(s.load());
                search.offer(stress, s.tilt(), s.loadCase(), s.direction());
                known = Math.max(known, stress);
            }
        }
        return search.found();
    }

    private record State(PatchLoad load, double bound, double tilt, String loadCase, MotionDirection direction) {}

    /** Stress that a load does not pass, Pa: the sum of what its parts do by themselves. Quick. */
    double bound(PatchLoad load) {
        return shares[0] * Math.abs(load.force())
                + shares[1] * Math.abs(load.around())
                + shares[2] * Math.abs(load.along());
    }

    /** The most that the wall sees. */
    ShellPatch.Worst worst(PatchLoad load) {
        return influence.worst(load);
    }
}
