// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
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
import tipwright.geometry.MadeOnce;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Contents;
import tipwright.load.EmptyTank;
import tipwright.load.Heap;
import tipwright.load.Leaning;
import tipwright.load.LoadState;
import tipwright.load.OpenDoors;

/** The masses of the whole unit: frame, vehicle, weights on the links, tank with what is in it. */
public final class WholeUnit {
    private final Analysis analysis;
    private final Design design;
    private final OpenDoors doors;
    private final MadeOnce<Leaning> leaning;

    public WholeUnit(Analysis analysis) {
        this.analysis = analysis;
        this.design = analysis.design();
        this.doors = new OpenDoors(design);
        leaning = new MadeOnce<>(() -> new Leaning(analysis.design(), analysis.vessel()));
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

    /**
     * The masses with one load at one tilt.
     *
     * @param own as it lies on the site's ground
     * @param leaning as what is loose in it lies by the unit vector against gravity
     */
    public record Load(List<Mass> own, Function<Vec3, List<Mass>> leaning) {
        /** Copies the list. */
        public Load {
            own = List.copyOf(own);
        }
    }

    /** One load at one tilt. */
    public interface Look {
        void at(String loadCase, Pose pose, Load load);
    }

    /** Every case at every tilt, and the settled solids stuck where they lie. */
    public void each(@Nullable Vehicle vehicle, Look look) {
        for (CaseResult result : loads()) {
            for (Row row : result.rows()) {
                look.at(result.name(), row.pose(), load(result, row, vehicle));
            }
        }
        Mass stuck = stuck();
        if (stuck != null) {
            for (Pose pose : analysis.poses()) {
                look.at(CaseName.STUCK, pose, load(stuck, pose, vehicle));
            }
        }
    }

    /** The cases, without those that hold the same as another, in some wind. */
    List<CaseResult> loads() {
        Set<List<LoadState>> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        return analysis.cases().stream()
                .filter(c -> seen.add(c.load().states()))
                .toList();
    }

    /** One case at one tilt. */
    Load load(CaseResult result, Row row, @Nullable Vehicle vehicle) {
        return new Load(
                masses(row.load(), row.pose(), vehicle),
                up -> masses(leaning.get().at(result.load(), row.load(), row.tilt(), up), row.pose(), vehicle));
    }

    /** The settled solids stuck where they lie, at one tilt: nothing is loose but the doors that hang. */
    Load load(Mass stuck, Pose pose, @Nullable Vehicle vehicle) {
        return new Load(hung(stuck, pose, design.site().up(), vehicle), up -> hung(stuck, pose, up, vehicle));
    }

    private List<Mass> hung(Mass stuck, Pose pose, Vec3 up, @Nullable Vehicle vehicle) {
        Vec3 moved = doors.moved(CaseName.STUCK, pose.tilt(), up.tilted(-pose.tilt()));
        return at(pose, stuck.kg(), stuck.at().plus(moved.times(1 / stuck.kg())), vehicle);
    }

    private List<Mass> masses(LoadState state, Pose pose, @Nullable Vehicle vehicle) {
        return at(pose, state.mass(), state.centroid(), vehicle);
    }

    /** Tank and cake as stowed, the doors shut; null when nothing settles, or when the design leaves the case out. */
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
