// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.BodyPosition;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.check.standing.Footprint.Mass;
import tipwright.design.Design;
import tipwright.design.around.Frame;
import tipwright.design.around.Vehicle;
import tipwright.design.drive.Assist;
import tipwright.design.drive.Counterweight;
import tipwright.design.tank.CaseName;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Contents;
import tipwright.load.EmptyTank;
import tipwright.load.Heap;

/** The masses of the whole unit: frame, vehicle, weights on the links, tank with what is in it. */
public final class WholeUnit {
    private final Analysis analysis;
    private final Design design;

    public WholeUnit(Analysis analysis) {
        this.analysis = analysis;
        this.design = analysis.design();
    }

    /** The mass of the frame with its centre; null when it is not known. */
    static @Nullable Mass frame(Design design) {
        Frame frame = design.frame();
        Double mass = frame == null ? null : frame.mass();
        Vec3 centre = frame == null ? null : frame.centre();
        return mass == null || centre == null ? null : new Mass(mass, centre);
    }

    /**
     * The unit at one tilt.
     *
     * @param kg of the tank with what is in it
     * @param stowed its centroid in the tank's axes, m
     */
    List<Mass> at(Pose pose, double kg, Vec3 stowed, @Nullable Vehicle vehicle) {
        List<Mass> all = new ArrayList<>();
        Mass frame = frame(design);
        if (frame != null) {
            all.add(frame);
        }
        if (vehicle != null) {
            all.add(new Mass(vehicle.mass(), vehicle.centre()));
        }
        for (Assist assist : design.assists()) {
            if (assist instanceof Counterweight weight) {
                all.add(new Mass(weight.mass(), place(pose, weight)));
            }
        }
        all.add(new Mass(kg, pose.place(stowed)));
        return all;
    }

    private static Vec3 place(Pose pose, Counterweight weight) {
        for (BodyPosition body : pose.bodies()) {
            if (body.body().equals(weight.body())) {
                Vec2 p = body.place(weight.centre().xy());
                return new Vec3(p.x(), p.y(), weight.centre().z());
            }
        }
        return weight.centre();
    }

    /** Mass and centroid of one load case at one tilt. */
    public interface Look {
        void at(String loadCase, Pose pose, List<Mass> masses);
    }

    /** Every case at every tilt, and the settled solids stuck where they lie. */
    public void each(@Nullable Vehicle vehicle, Look look) {
        for (CaseResult result : analysis.cases()) {
            for (Row row : result.rows()) {
                look.at(
                        result.name(),
                        row.pose(),
                        at(row.pose(), row.load().mass(), row.load().centroid(), vehicle));
            }
        }
        Mass stuck = stuck();
        if (stuck != null) {
            for (Pose pose : analysis.poses()) {
                look.at(CaseName.STUCK, pose, at(pose, stuck.kg(), stuck.at(), vehicle));
            }
        }
    }

    /** Tank and cake as stowed; null when nothing settles, or when the design leaves the case out. */
    @Nullable
    Mass stuck() {
        if (analysis.cases().stream().noneMatch(c -> c.name().equals("caked"))) {
            return null;
        }
        Contents contents = new Contents(design, analysis.vessel());
        if (!(contents.cakeVolume() > 1e-9 * contents.capacity())) {
            return null;
        }
        EmptyTank empty = EmptyTank.of(design, contents.solid());
        Heap.Lying cake = new Heap(design, contents).settled();
        double density = design.slurry().cakeDensity();
        double kg = empty.mass() + density * cake.moments().volume();
        Vec3 first =
                empty.centroid().times(empty.mass()).plus(cake.moments().first().times(density));
        return new Mass(kg, first.times(1 / kg));
    }
}
