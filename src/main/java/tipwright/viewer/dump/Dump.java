// SPDX-License-Identifier: Apache-2.0
package tipwright.viewer.dump;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Pose;
import tipwright.analysis.Row;
import tipwright.design.Design;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.linkage.Skeleton;
import tipwright.load.Contents;
import tipwright.load.Fill;

/**
 * An analysed design as a function of tilt: the results at the steps, and between them the linkage on its own curve, the surface
 * for the volume between, the forces in a straight line. Immutable.
 */
public final class Dump {
    private final Analysis analysis;
    private final Contents contents;
    private final Bodies bodies;
    private final double[] tilts;

    /** The dump of an analysis. */
    public Dump(Analysis analysis) {
        this.analysis = analysis;
        this.contents = new Contents(analysis.design());
        this.tilts = analysis.poses().stream().mapToDouble(Pose::tilt).toArray();
        this.bodies = new Bodies(analysis.design(), tilts);
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
        return bodies.skeleton();
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
    public List<Placement> placements(double tilt) {
        return bodies.at(held(tilt));
    }

    private double held(double tilt) {
        return Math.max(first(), Math.min(last(), tilt));
    }

    /**
     * The machine at a tilt.
     *
     * @param loadCase name
     * @param asked rad; held to the range
     * @param tiltSpeed rad/s with which it tips, for what pours out; 0: nothing does
     */
    public Instant at(String loadCase, double asked, double tiltSpeed) {
        double tilt = held(asked);
        CaseResult result = loadCase(loadCase);
        int i = step(tilt);
        Row a = result.rows().get(i);
        Row b = result.rows().get(Math.min(i + 1, tilts.length - 1));
        double span = b.tilt() - a.tilt();
        double s = span > 0 ? (tilt - a.tilt()) / span : 0;
        List<Placement> placed = bodies.at(tilt);
        Skeleton skeleton = bodies.skeleton();
        Placement tank = placed.get(skeleton.tank());
        Vec2 framePin =
                placed.get(skeleton.actuator().a()).of(skeleton.actuator().onA());
        Vec2 tankPin =
                placed.get(skeleton.actuator().b()).of(skeleton.actuator().onB());
        Fill fill = Surfaces.between(contents, a, b, s, tilt);
        double leaving = span > 0 ? (a.load().volume() - b.load().volume()) / span : 0;
        Pour pour = fill == null ? null : Pours.at(design(), contents, tank, tilt, leaving * tiltSpeed);
        return new Instant(
                tilt,
                placed,
                tank,
                framePin,
                tankPin,
                tankPin.minus(framePin).norm(),
                mix(a.pose().arm(), b.pose().arm(), s),
                fill,
                mix(a.load().mass(), b.load().mass(), s),
                mix(a.centroid(), b.centroid(), s),
                Forces.between(a.rest(), b.rest(), s),
                Forces.between(a.raise(), b.raise(), s),
                Forces.between(a.lower(), b.lower(), s),
                pour);
    }

    /** Number of the step at or before a tilt. */
    public int step(double tilt) {
        int i = 0;
        while (i + 2 < tilts.length && tilts[i + 1] <= tilt + 1e-12) {
            i++;
        }
        return i + 1 < tilts.length && tilt >= tilts[i + 1] - 1e-12 ? i + 1 : i;
    }

    private static Vec3 mix(Vec3 a, Vec3 b, double s) {
        return a.times(1 - s).plus(b.times(s));
    }

    private static double mix(double a, double b, double s) {
        return (1 - s) * a + s * b;
    }

    /** The largest of all forces that arrows show in a load case, N. */
    public double largestForce(String loadCase) {
        double most = 0;
        for (Row row : loadCase(loadCase).rows()) {
            most = Math.max(most, Math.abs(row.rest().force()));
            for (Vec3 bearing : row.rest().bearings()) {
                most = Math.max(most, bearing.norm());
            }
        }
        return most;
    }

    /** The path of the centroid in a load case, m [tilt]. */
    public List<Vec3> centroids(String loadCase) {
        return loadCase(loadCase).rows().stream().map(Row::centroid).toList();
    }

    /** The row at the step nearest to a tilt; null when the load case is not there. */
    public @Nullable Row nearest(String loadCase, double tilt) {
        List<Row> rows = loadCase(loadCase).rows();
        int i = step(held(tilt));
        boolean next = i + 1 < rows.size() && tilts[i + 1] - tilt < tilt - tilts[i];
        return rows.get(next ? i + 1 : i);
    }
}
