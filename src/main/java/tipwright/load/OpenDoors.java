// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.Design;
import tipwright.design.tank.CaseName;
import tipwright.design.tank.Door;
import tipwright.design.tank.DoorMass;
import tipwright.design.tank.Opening;
import tipwright.design.tank.Tank;
import tipwright.geometry.Vec3;

/**
 * Where the weight of doors goes when they swing open: one that hinges above hangs plumb, so that it pulls straight down at its hinge.
 * A door opens with its opening; once the tank is empty it stays open all the way back. One that opens past the end of the tilt range
 * stays shut, and one whose weight is not told stays out of it.
 */
public final class OpenDoors {
    private static final double HAIR = 1e-9;

    private final List<Weight> weights = new ArrayList<>();
    private final Vec3 up;

    private record Weight(HungDoor door, HungDoor.Arm arm, double mass, double opensAt) {}

    /** The doors of a design. */
    public OpenDoors(Design design) {
        this.up = design.site().up();
        Tank tank = design.tank();
        for (Opening opening : tank.openings()) {
            Door door = opening.door();
            DoorMass mass = DoorMass.of(tank, opening);
            if (door != null
                    && mass != null
                    && opening.opensAt() <= design.tilt().to() + HAIR) {
                HungDoor hung = HungDoor.of(opening, door, mass.centre());
                weights.add(new Weight(hung, hung.arm(mass.centre()), mass.mass(), opening.opensAt()));
            }
        }
    }

    /**
     * What the swing of those that are open in a load case adds to the first moment of the tank's mass, kg m, in the tank's axes.
     *
     * @param load name of the case
     * @param tilt up to which they have been opened, rad
     * @param against gravity, in the tank's axes
     */
    public Vec3 moved(String load, double tilt, Vec3 against) {
        CaseName name = CaseName.of(load).orElse(null);
        if (weights.isEmpty() || (name != null && name.outletShut())) {
            return Vec3.ZERO;
        }
        boolean back = name == CaseName.EMPTY || name == CaseName.HEEL;
        Vec3 sum = Vec3.ZERO;
        for (Weight w : weights) {
            if (back || w.opensAt <= tilt + HAIR) {
                sum = sum.plus(w.arm.moved(w.door.angle(against, 0)).times(w.mass));
            }
        }
        return sum;
    }

    /** The same on the design's own ground. */
    Vec3 moved(String load, double tilt) {
        return moved(load, tilt, up.tilted(-tilt));
    }

    /** The same on the way back: those that a dump up to a tilt opened stay open. */
    private Vec3 back(String load, double from, double tilt) {
        return moved(load, from, up.tilted(-tilt));
    }

    /** The tank alone of a load case at a tilt on the way up, rad. */
    public EmptyTank raised(String load, EmptyTank shut, double tilt) {
        return shut.with(moved(load, tilt));
    }

    /** The same on the way back. */
    public EmptyTank lowered(String load, EmptyTank shut, double tilt) {
        return shut.with(back(load, Double.POSITIVE_INFINITY, tilt));
    }

    /**
     * What a load case has in the tank at a tilt, as it is at another on the way back.
     *
     * @param from the tilt of the state, rad
     * @param tilt where it is now, rad
     */
    public LoadState lowered(String load, LoadState state, double from, double tilt) {
        return state.moved(back(load, from, tilt).minus(moved(load, from)));
    }

    /** A load case that was made with all of them shut. */
    LoadCase in(LoadCase load, double[] tilts) {
        if (weights.isEmpty()) {
            return load;
        }
        List<LoadState> states = new ArrayList<>(tilts.length);
        for (int i = 0; i < tilts.length; i++) {
            states.add(load.states().get(i).moved(moved(load.name(), tilts[i])));
        }
        return load.with(states);
    }
}
