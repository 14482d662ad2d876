// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.Design;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.linkage.Configuration;
import tipwright.linkage.Joint;
import tipwright.linkage.Skeleton;
import tipwright.load.Gravity;
import tipwright.load.LoadState;
import tipwright.load.LoadTable;

/**
 * The very same analysis as {@link Analyser} gives, many times sooner, of a drive that has a closed form: frame, tank, pivot, and the
 * actuator straight between frame and tank. What does not get to the full tilt, or nearly locks, is left to the general solver, which
 * also tells why.
 */
public final class ClosedFormAnalyser {
    private static final double DEAD = 1e-7;
    private static final List<Double> NO_COUPLE = List.of(0.0);

    private final Design design;
    private final Mechanism mechanism;
    private final LoadTable loads;
    private final DirectForm form;
    private final Assists assists;
    private final BearingSplit split;
    private final Vec2 axis;
    private final Vec3 up;

    private ClosedFormAnalyser(Design design, Skeleton skeleton, LoadTable loads) {
        this.design = design;
        this.loads = loads.about(design);
        mechanism = Mechanism.of(skeleton);
        axis = skeleton.joints().get(0).at();
        form = new DirectForm(design, axis, skeleton.actuator());
        assists = new Assists(design, skeleton);
        split = new BearingSplit(design.pivot());
        up = design.site().up();
    }

    /** Whether a design's drive has a closed form. */
    public static boolean suits(Design design) {
        return suits(design.drive().skeleton(design.pivot().at()));
    }

    private static boolean suits(Skeleton skeleton) {
        if (skeleton.bodies().size() != 2 || skeleton.joints().size() != 1) {
            return false;
        }
        Joint pivot = skeleton.joints().get(0);
        return pivot instanceof Joint.Pin
                && pivot.name().equals(Skeleton.PIVOT)
                && pivot.a() == 0
                && pivot.b() == skeleton.tank()
                && skeleton.actuator().a() == 0
                && skeleton.actuator().b() == skeleton.tank();
    }

    /**
     * Every load case at every tilt that the tank reaches.
     *
     * @param loads of the same tank at the design's tilts
     * @throws CannotComputeException when the mechanism cannot be assembled as drawn, or has no arm at the first tilt
     * @throws IllegalArgumentException when the drive has no closed form
     */
    public static Analysis analyse(Design design, LoadTable loads) throws CannotComputeException {
        Skeleton skeleton = design.drive().skeleton(design.pivot().at());
        if (!suits(skeleton)) {
            throw new IllegalArgumentException(design.name() + ": this drive has no closed form");
        }
        Analysis found = new ClosedFormAnalyser(design, skeleton, loads).all();
        return found == null ? Analyser.analyse(design, loads) : found;
    }

    /**
     * Lengths of the actuator at the tilts that it gets to, m; fewer than the tilts where it loses its arm on the way.
     *
     * @param tilts rad, rising
     * @throws IllegalArgumentException when the drive has no closed form
     */
    public static double[] lengths(Design design, double[] tilts) {
        Skeleton skeleton = design.drive().skeleton(design.pivot().at());
        if (!suits(skeleton)) {
            throw new IllegalArgumentException(design.name() + ": this drive has no closed form");
        }
        DirectForm form = new DirectForm(design, skeleton.joints().get(0).at(), skeleton.actuator());
        double[] lengths = new double[tilts.length];
        double sense = 0;
        for (int i = 0; i < tilts.length; i++) {
            Configuration configuration = form.configuration(tilts[i]);
            double grows = grows(configuration, sense);
            if (grows == 0) {
                return Arrays.copyOf(lengths, i);
            }
            sense = grows;
            lengths[i] = configuration.length();
        }
        return lengths;
    }

    /** Whether the actuator goes out (+1) or in (-1) as the tank tips; 0: at or past a dead centre. */
    private static double grows(Configuration configuration, double before) {
        double grows = Math.signum(configuration.arm());
        boolean dead = !(configuration.length() > 0) || configuration.transmission() < DEAD || before * grows < 0;
        return dead ? 0 : grows;
    }

    /** Null: only the general solver can tell. */
    private @Nullable Analysis all() {
        int cases = loads.cases().size();
        double[] tilts = loads.tilts();
        List<List<Row>> rows = new ArrayList<>(cases);
        for (int c = 0; c < cases; c++) {
            rows.add(new ArrayList<>(tilts.length));
        }
        List<Pose> poses = new ArrayList<>(tilts.length);
        double sense = 0;
        for (int i = 0; i < tilts.length; i++) {
            Configuration configuration = form.configuration(tilts[i]);
            double grows = grows(configuration, sense);
            if (grows == 0 || !form.moveTo(configuration)) {
                return null;
            }
            sense = grows;
            Pose pose = Analyser.pose(configuration, mechanism);
            poses.add(pose);
            for (int c = 0; c < cases; c++) {
                Row row = row(configuration, pose, loads.cases().get(c).states().get(i));
                if (row == null) {
                    return null;
                }
                rows.get(c).add(row);
            }
        }
        List<CaseResult> results = new ArrayList<>(cases);
        for (int c = 0; c < cases; c++) {
            results.add(new CaseResult(loads.cases().get(c), rows.get(c)));
        }
        return new Analysis(
                design, mechanism, poses, results, loads.emptying(), null, loads.notes(), null, loads.vessel());
    }

    private @Nullable Row row(Configuration configuration, Pose pose, LoadState state) {
        Vec3 centroid = pose.place(state.centroid());
        Balance rest = balance(configuration, state, centroid, 0);
        Balance raise = balance(configuration, state, centroid, 1);
        Balance lower = balance(configuration, state, centroid, -1);
        return rest == null || raise == null || lower == null
                ? null
                : new Row(pose, state, centroid, rest, raise, lower);
    }

    private @Nullable Balance balance(Configuration configuration, LoadState state, Vec3 at, int sense) {
        double weight = state.mass() * Gravity.G;
        split.start(axis.x(), axis.y());
        double wx = -weight * up.x();
        double wy = -weight * up.y();
        split.add(at.x(), at.y(), at.z(), wx, wy, -weight * up.z());
        double moment = moment(at.x(), at.y(), wx, wy);
        for (Assists.Load load : assists.at(configuration, sense)) {
            if (load.body() == mechanism.tank()) {
                Vec2 p = configuration.place(load.body(), load.stowed().xy());
                Vec3 f = load.force();
                split.add(p.x(), p.y(), load.stowed().z(), f.x(), f.y(), f.z());
                moment += moment(p.x(), p.y(), f.x(), f.y()) + load.moment();
            }
        }
        double loadX = split.x();
        double loadY = split.y();
        form.load(split);
        double force = form.force(-moment, sense, weight);
        if (Double.isNaN(force)) {
            return null;
        }
        Vec2 pivot = new Vec2(loadX + form.driveX(), loadY + form.driveY());
        return new Balance(
                force,
                pivot,
                List.of(bearing(0), bearing(1)),
                new Vec2(form.driveX(), form.driveY()),
                List.of(pivot),
                NO_COUPLE);
    }

    private Vec3 bearing(int k) {
        return new Vec3(form.bearingX(k), form.bearingY(k), split.z(k));
    }

    /** Moment about the pivot, N m, positive clockwise: the way the tank tips. */
    private double moment(double x, double y, double fx, double fy) {
        return fx * (y - axis.y()) - fy * (x - axis.x());
    }
}
