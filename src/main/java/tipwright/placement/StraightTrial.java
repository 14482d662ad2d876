// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ListedActuator;
import tipwright.design.around.Mounts;
import tipwright.design.drive.Straight;
import tipwright.design.tank.Slurry;
import tipwright.geometry.Vec2;

/** A straight drive tried by its closed form: microseconds a try. Mutable inside: owned by one caller. */
final class StraightTrial implements Trial {
    private static final List<String> PLACES =
            List.of("frame pin x", "frame pin y", "tank pin x", "tank pin y", "pivot x", "pivot y");

    private final Design design;
    private final Straight straight;
    private final TiltLoads drawn;
    private final TiltLoads alongX;
    private final TiltLoads alongY;
    private final ListedActuator actuator;
    private final double wantedTime;
    private final Judge judge;
    private final double[] utilisations = new double[Judge.LIMITS];

    StraightTrial(Design design, Straight straight) throws CannotComputeException {
        this.design = design;
        this.straight = straight;
        drawn = TiltLoads.of(design);
        alongX = Task.moved(design, new Vec2(Task.STEP, 0));
        alongY = Task.moved(design, new Vec2(0, Task.STEP));
        Actuator a = straight.actuators().get(0).actuator();
        actuator = new ListedActuator("as drawn", a);
        Mounts mounts = design.mounts();
        Double time = mounts == null ? null : mounts.wants().time();
        wantedTime = time == null ? Double.POSITIVE_INFINITY : time;
        judge = new Judge(design, actuator, drawn, wantedTime);
    }

    @Override
    public List<String> places() {
        return PLACES;
    }

    @Override
    public double[] at(double... off) {
        Vec2 pivot = new Vec2(off[4], off[5]);
        TiltLoads loads = drawn;
        Judge here = judge;
        if (pivot.norm() > 0) {
            loads = drawn.towards(
                    drawn.pivot().plus(pivot), alongX, alongY, pivot.x() / Task.STEP, pivot.y() / Task.STEP);
            here = judge.withLoads(loads, wantedTime);
        }
        Vec2 frame = straight.framePin().plus(new Vec2(off[0], off[1]));
        Vec2 tank = straight.tankPin().plus(new Vec2(off[2], off[3]));
        return judged(here, loads, frame, tank);
    }

    private double[] judged(Judge here, TiltLoads loads, Vec2 frame, Vec2 tank) {
        Detail detail = new Detail(loads, here.pinRadii);
        detail.run(frame, tank, here.housing);
        here.exact(detail, utilisations);
        return utilisations;
    }

    @Override
    public double[] with(Slurry slurry) throws CannotComputeException {
        TiltLoads loads = TiltLoads.of(design.withSlurry(slurry));
        Judge here = new Judge(design, actuator, loads, wantedTime);
        return judged(here, loads, straight.framePin(), straight.tankPin()).clone();
    }

    /** Every load is the empty tank's and its contents', so more tank is more of the empty tank's. */
    @Override
    public double @Nullable [] heavier(double share) {
        int empty = drawn.names().indexOf("empty");
        if (empty < 0 || !design.assists().isEmpty()) {
            return null;
        }
        TiltLoads loads = drawn.plus(empty, share);
        return judged(judge.withLoads(loads, wantedTime), loads, straight.framePin(), straight.tankPin())
                .clone();
    }
}
