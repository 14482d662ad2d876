// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.dump;

import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.analysis.Balance;
import tipwright.analysis.BodyPosition;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.EquilibriumSolver;
import tipwright.analysis.Extreme;
import tipwright.analysis.MotionDirection;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.check.slurry.Departure;
import tipwright.design.Design;
import tipwright.design.tank.Opening;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.linkage.Skeleton;
import tipwright.load.Contents;
import tipwright.load.EmptyTank;
import tipwright.load.OpenDoors;

/**
 * An analysed design as a function of tilt: the results at the steps, and between them the bodies on their way, the surface
 * for the volume between, the forces in balance with it. Owned by one caller.
 */
public final class DumpStates {
    private static final String DRAINING = "draining";

    private final Analysis analysis;
    private final Contents contents;
    private final Skeleton skeleton;
    private final double[] tilts;
    private final EmptyTank empty;
    private final OpenDoors doors;
    private final EquilibriumSolver probe;

    /** The dump of an analysis. */
    public DumpStates(Analysis analysis) {
        this.analysis = analysis;
        this.contents = new Contents(analysis.design());
        this.tilts = analysis.poses().stream().mapToDouble(Pose::tilt).toArray();
        this.skeleton =
                analysis.design().drive().skeleton(analysis.design().pivot().at());
        this.empty = EmptyTank.of(analysis.design(), contents.solid());
        this.doors = new OpenDoors(analysis.design());
        try {
            this.probe = new EquilibriumSolver(analysis.design());
        } catch (CannotComputeException e) {
            throw new IllegalStateException("an analysed design can be probed", e);
        }
    }

    /** What it shows. */
    public Analysis analysis() {
        return analysis;
    }

    /** The design. */
    public Design design() {
        return analysis.design();
    }

    /** How the slurry lies. */
    public Contents contents() {
        return contents;
    }

    /** The mechanism as drawn. */
    public Skeleton skeleton() {
        return skeleton;
    }

    /** First tilt, rad. */
    public double first() {
        return tilts[0];
    }

    /** Last tilt that the linkage reaches, rad. */
    public double last() {
        return tilts[tilts.length - 1];
    }

    /** The load case of a name, or the first there is. */
    public CaseResult loadCase(String name) {
        for (CaseResult c : analysis.cases()) {
            if (c.name().equals(name)) {
                return c;
            }
        }
        return analysis.cases().get(0);
    }

    /** Where the bodies are at a tilt, rad, held to the range. */
    public List<BodyPosition> placements(double tilt) {
        return analysis.bodiesAt(held(tilt));
    }

    private double held(double tilt) {
        return Math.max(first(), Math.min(last(), tilt));
    }

    /**
     * The machine at a tilt, as the load case has it.
     *
     * @param loadCase name
     * @param tilt rad; held to the range
     */
    public MachineState at(String loadCase, double tilt) {
        return at(loadCase, new Timeline.Spot(0, tilt, Double.NaN, 0, 0));
    }

    /** The machine at a moment of a load case; its tilt is held to the range. */
    public MachineState at(String loadCase, Timeline.Spot spot) {
        double tilt = held(spot.tilt());
        CaseResult result = loadCase(loadCase);
        int i = step(tilt);
        Row a = result.rows().get(i);
        Row b = result.rows().get(Math.min(i + 1, tilts.length - 1));
        double span = b.tilt() - a.tilt();
        double s = span > 0 ? (tilt - a.tilt()) / span : 0;
        List<BodyPosition> placed = placements(tilt);
        BodyPosition tank = placed.get(skeleton.tank());
        Vec2 framePin =
                placed.get(skeleton.actuator().a()).place(skeleton.actuator().onA());
        Vec2 tankPin =
                placed.get(skeleton.actuator().b()).place(skeleton.actuator().onB());
        Inside inside = Inside.between(contents, a, b, s, tilt);
        if (!Double.isNaN(spot.volume())) {
            EmptyTank alone = spot.motion() < 0
                    ? doors.lowered(result.name(), empty, tilt)
                    : doors.raised(result.name(), empty, tilt);
            inside = Inside.liquid(contents, alone, design().slurry().mixtureDensity(), tilt, spot.volume());
        }
        return new MachineState(
                tilt,
                placed,
                tank,
                framePin,
                tankPin,
                tankPin.minus(framePin).norm(),
                (1 - s) * a.pose().arm() + s * b.pose().arm(),
                inside.fill(),
                inside.mass(),
                tank.place(inside.centroid()),
                forces(inside, tilt, 0, a.rest(), b.rest(), s),
                forces(inside, tilt, 1, a.raise(), b.raise(), s),
                forces(inside, tilt, -1, a.lower(), b.lower(), s),
                Math.max(0, atFirst(result) - inside.volume()),
                Pour.at(design(), tank, tilt, inside.fill(), level(tilt, spot), spot.flow()));
    }

    /** What is in the tank before anything leaves, m3: of what drains all that is filled in. */
    private double atFirst(CaseResult result) {
        return result.name().equals(DRAINING)
                ? contents.slurryVolume()
                : result.rows().stream()
                        .mapToDouble(r -> r.load().volume())
                        .max()
                        .orElse(0);
    }

    /** Of the surface that drives what runs out, m: as timed; else with which as much leaves as is shown to. */
    private double level(double tilt, Timeline.Spot spot) {
        return Double.isNaN(spot.level()) ? Departure.level(design(), tilt, spot.flow()) : spot.level();
    }

    private ShownForces forces(Inside inside, double tilt, int motion, Balance a, Balance b, double s) {
        Balance exact = probe.at(tilt, inside.mass(), inside.centroid(), motion);
        return exact == null ? ShownForces.between(a, b, s) : ShownForces.between(exact, exact, 0);
    }

    /** Number of the step at or before a tilt. */
    public int step(double tilt) {
        int i = 0;
        while (i + 2 < tilts.length && tilts[i + 1] <= tilt + 1e-12) {
            i++;
        }
        return i + 1 < tilts.length && tilt >= tilts[i + 1] - 1e-12 ? i + 1 : i;
    }

    /** The largest of all forces that arrows show, N, whatever the load case: so that one scale serves them all. */
    public double largestForce() {
        return Math.max(
                0,
                Extreme.largest(analysis.cases(), MotionDirection.RESTING, row -> {
                            double most = Math.abs(row.rest().force());
                            for (Vec3 bearing : row.rest().bearings()) {
                                most = Math.max(most, bearing.norm());
                            }
                            return most;
                        })
                        .value());
    }

    /** The path of the centroid in a load case, m [tilt]. */
    public List<Vec3> centroids(String loadCase) {
        return loadCase(loadCase).rows().stream().map(Row::centroid).toList();
    }

    /** x of the lowest lip that is open at the last tilt, m; of the tank's end where none is. */
    private double lastLip() {
        BodyPosition tank = placements(last()).get(skeleton.tank());
        Vec3 up = contents.up(last());
        Vec3 lowest = null;
        for (Opening opening : design().tank().openings()) {
            Vec3 lip = opening.lipPoint(up);
            boolean lower = lowest == null || up.dot(lip) < up.dot(lowest);
            lowest = opening.opensAt() <= last() && lower ? lip : lowest;
        }
        double end = contents.solid().extent(new Vec3(1, 0, 0)).high();
        return lowest == null
                ? tank.place(new Vec2(end, 0)).x()
                : tank.place(lowest).x();
    }

    /** How lies what has left the tank. */
    public Lying lying(Surroundings room) {
        return Lying.of(design(), room, contents.slurryVolume(), lastLip());
    }
}
