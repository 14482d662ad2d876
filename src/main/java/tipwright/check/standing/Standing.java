// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Pose;
import tipwright.check.rule.Findings;
import tipwright.check.standing.Footprint.Mass;
import tipwright.design.Design;
import tipwright.design.around.Footing;
import tipwright.geometry.Mesh;
import tipwright.geometry.Range;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Gravity;

/**
 * How a machine stands over all cases and tilts.
 *
 * @param moments about the worst edge on the site's ground, N m
 * @param worst overturning over restoring, and where
 * @param worstEdge in words; empty when nothing overturns
 * @param keeps steepest ground, whichever way it stands, on which the factor is kept, rad, and where
 * @param tips steepest ground on which it stands at all, rad
 * @param heaviest load on one support, N, and where; infinite when it tips over
 * @param wind what the wind blows on where it tips most easily, in words; empty without wind
 * @param lifts where a support first lifts off, in words; null: none does
 */
record Standing(
        Footprint.Moments moments,
        Findings.Worst worst,
        String worstEdge,
        Findings.Worst keeps,
        double tips,
        Findings.Worst heaviest,
        String wind,
        @Nullable String lifts) {

    static Standing of(Analysis analysis, Footing footing, double y) {
        Walk walk = new Walk(analysis.design(), footing, y);
        new WholeUnit(analysis).each(footing.vehicle(), walk::at);
        return new Standing(
                walk.moments,
                walk.worst,
                walk.worstEdge,
                walk.keeps,
                walk.tips,
                walk.heaviest,
                walk.caught,
                walk.lifts);
    }

    /** Gathers the worst on the way. */
    private static final class Walk {
        private static final double SAG_SHARE = 1.0 / 100;

        private final Footing footing;
        private final double y;
        private final Footprint footprint;
        private final Vec3 up;
        private final double factor;
        private final double pressure;
        private final @Nullable WindArea wind;
        private final FrameWind frame;

        private Footprint.Moments moments = new Footprint.Moments(1, 0);
        private Findings.Worst worst = new Findings.Worst(-1, Double.NaN, null);
        private String worstEdge = "";
        private Findings.Worst keeps = new Findings.Worst(Footprint.STEEPEST, Double.NaN, null);
        private double tips = Footprint.STEEPEST;
        private Findings.Worst heaviest = new Findings.Worst(Double.NEGATIVE_INFINITY, Double.NaN, null);
        private String caught = "";
        private @Nullable String lifts;

        Walk(Design design, Footing footing, double y) {
            this.footing = footing;
            this.y = y;
            footprint = Footprint.around(footing.outline(), y);
            up = design.site().up();
            factor = design.factors().tipOver();
            pressure = design.site().windPressure();
            wind = pressure > 0 ? new WindArea(mesh(design)) : null;
            frame = pressure > 0 ? FrameWind.of(design) : FrameWind.NONE;
        }

        private static Mesh mesh(Design design) {
            Solid solid = design.tank().interior().solid();
            Range tall = solid.extent(new Vec3(0, 1, 0));
            return solid.mesh(SAG_SHARE * tall.span());
        }

        void at(String loadCase, Pose pose, List<Mass> masses) {
            for (Footprint.Edge edge : footprint.edges()) {
                double blow = wind(edge, pose);
                Footprint.Moments here = footprint.about(edge, masses, Gravity.G, up, blow);
                if (here.share() > worst.value()) {
                    moments = here;
                    worst = new Findings.Worst(here.share(), pose.tilt(), loadCase);
                    worstEdge = here.overturning() > 0 ? words(edge) : "";
                    caught = wind == null ? "" : caught(wind, edge, pose);
                }
                slopes(edge, masses, blow, pose, loadCase);
                if (wind != null) {
                    reactions(masses, edge.outward().times(blow), pose, loadCase);
                }
            }
            if (wind == null) {
                reactions(masses, Vec2.ZERO, pose, loadCase);
            }
        }

        private void slopes(Footprint.Edge edge, List<Mass> masses, double blow, Pose pose, String loadCase) {
            if (!footprint.bears(edge, masses, Gravity.G, blow, factor, keeps.value())) {
                double steepest = footprint.steepest(edge, masses, Gravity.G, blow, factor);
                keeps = new Findings.Worst(steepest, pose.tilt(), loadCase);
            }
            if (!footprint.bears(edge, masses, Gravity.G, blow, 1, tips)) {
                tips = footprint.steepest(edge, masses, Gravity.G, blow, 1);
            }
        }

        private String caught(WindArea tank, Footprint.Edge edge, Pose pose) {
            String frameArea = frame.leftOut().isEmpty()
                    ? String.format(Locale.ROOT, "%.2f m2 of the frame", frame.shown(against(edge))[0])
                    : "none of the frame (" + frame.leftOut() + ")";
            return String.format(Locale.ROOT, "wind on %.2f m2 of the tank and ", tank(tank, edge, pose)[0])
                    + frameArea;
        }

        private static Vec3 against(Footprint.Edge edge) {
            return new Vec3(-edge.outward().x(), 0, -edge.outward().y());
        }

        /** Area that the tank shows, m2, and that times its height over the ground, m3. */
        private double[] tank(WindArea tank, Footprint.Edge edge, Pose pose) {
            double turn = pose.bodies().get(pose.tank()).turn();
            double[] shown = tank.shown(against(edge).tilted(-turn), new Vec3(0, 1, 0).tilted(-turn));
            double datum = pose.place(Vec3.ZERO).y() - y;
            return new double[] {shown[0], shown[1] + shown[0] * datum};
        }

        /** Moment about the ground of wind that blows straight over an edge, N m. */
        private double wind(Footprint.Edge edge, Pose pose) {
            if (wind == null) {
                return 0;
            }
            double[] still = frame.shown(against(edge));
            return pressure * (tank(wind, edge, pose)[1] + still[1] - still[0] * y);
        }

        /** What the supports bear under the weights and the wind's moment about the ground, N m along the way it blows. */
        private void reactions(List<Mass> masses, Vec2 blow, Pose pose, String loadCase) {
            double press = 0;
            Vec2 first = blow;
            for (Mass m : masses) {
                double weight = m.kg() * Gravity.G;
                double height = m.at().y() - y;
                Vec2 foot = new Vec2(m.at().x() - height * up.x() / up.y(), m.at().z() - height * up.z() / up.y());
                press += weight * up.y();
                first = first.plus(foot.times(weight * up.y()));
            }
            double[] loads = SupportLoads.of(footing.outline(), press, first.times(1 / press));
            for (double load : loads) {
                if (!(load <= heaviest.value())) {
                    heaviest = new Findings.Worst(
                            Double.isNaN(load) ? Double.POSITIVE_INFINITY : load, pose.tilt(), loadCase);
                }
                if (load == 0 && lifts == null) {
                    lifts = String.format(Locale.ROOT, "%.0f deg (%s)", Math.toDegrees(pose.tilt()), loadCase);
                }
            }
        }

        private static String words(Footprint.Edge edge) {
            return String.format(
                    Locale.ROOT,
                    "from x %.0f mm, z %.0f mm to x %.0f mm, z %.0f mm",
                    1000 * edge.from().x(),
                    1000 * edge.from().y(),
                    1000 * edge.to().x(),
                    1000 * edge.to().y());
        }
    }
}
