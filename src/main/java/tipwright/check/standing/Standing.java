// SPDX-License-Identifier: Apache-2.0
package tipwright.check.standing;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Extreme;
import tipwright.analysis.Pose;
import tipwright.analysis.WindArea;
import tipwright.check.standing.Footprint.Mass;
import tipwright.design.Design;
import tipwright.design.around.Footing;
import tipwright.design.tank.CaseName;
import tipwright.design.tank.Tank;
import tipwright.geometry.Mesh;
import tipwright.geometry.Range;
import tipwright.geometry.Solid;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;
import tipwright.load.Gravity;
import tipwright.quantity.Kind;
import tipwright.quantity.Text;

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
 * @param feet numbers of the supports, from 0, that bear the most or are the first to lift off
 */
record Standing(
        Footprint.Moments moments,
        Extreme worst,
        Text worstEdge,
        Extreme keeps,
        double tips,
        Extreme heaviest,
        Text wind,
        @Nullable Text lifts,
        Set<Integer> feet) {

    static Standing of(Analysis analysis, Footing footing, double y) {
        Walk walk = new Walk(analysis.design(), footing, y);
        new WholeUnit(analysis).each(footing.vehicle(), walk::at);
        AnyWayRound round = AnyWayRound.of(
                analysis,
                walk.footprint,
                footing.vehicle(),
                analysis.design().factors().tipOver(),
                walk::wind,
                walk::about);
        return new Standing(
                walk.moments,
                walk.worst.found(),
                walk.worstEdge,
                round.keeps(),
                round.tips(),
                walk.heaviest.found(),
                walk.caught,
                walk.lifts,
                walk.feet());
    }

    /** Gathers the worst on the way. */
    private static final class Walk {
        private static final double SAG_SHARE = 1.0 / 100;

        private final Footing footing;
        private final double y;
        private final Footprint footprint;
        private final Vec3 up;
        private final double pressure;
        private final @Nullable WindArea wind;
        private final FrameWind frame;
        private final @Nullable SpringFeet springs;

        private Footprint.Moments moments = new Footprint.Moments(1, 0);
        private final Extreme.Search worst = Extreme.Search.above(-1);
        private Text worstEdge = Text.NONE;
        private final Extreme.Search heaviest = Extreme.Search.largest();
        private Text caught = Text.NONE;
        private final Tank tank;
        private @Nullable Text lifts;
        private int most = -1;
        private final Set<Integer> lifting = new TreeSet<>();

        Walk(Design design, Footing footing, double y) {
            this.footing = footing;
            tank = design.tank();
            this.y = y;
            footprint = Footprint.around(footing.outline(), y);
            up = design.site().up();
            pressure = design.site().windPressure();
            wind = pressure > 0 ? new WindArea(mesh(design)) : null;
            frame = pressure > 0 ? FrameWind.of(design) : FrameWind.NONE;
            springs = SpringFeet.of(footing, y);
        }

        private static Mesh mesh(Design design) {
            Solid solid = design.tank().interior().solid();
            Range tall = solid.extent(new Vec3(0, 1, 0));
            return solid.mesh(SAG_SHARE * tall.span());
        }

        void at(String loadCase, Pose pose, WholeUnit.Load load) {
            for (Footprint.Edge edge : footprint.edges()) {
                double blow = wind(edge, pose);
                Footprint.Moments here = standing(edge, load, blow);
                if (worst.offer(here.share(), pose.tilt(), loadCase, null)) {
                    moments = here;
                    worstEdge = here.overturning() > 0 ? words(edge) : Text.NONE;
                    caught = wind == null ? Text.NONE : caught(wind, edge, pose);
                }
                if (wind != null) {
                    reactions(load, edge.outward().times(blow), pose, loadCase);
                }
            }
            if (wind == null) {
                reactions(load, Vec2.ZERO, pose, loadCase);
            }
        }

        /** On the site's own ground. */
        private Footprint.Moments standing(Footprint.Edge edge, WholeUnit.Load load, double blow) {
            return springs == null
                    ? footprint.about(edge, load.own(), Gravity.G, up, blow)
                    : about(edge, load.leaning(), up, blow);
        }

        /** On what gives: about the edge as it leans. */
        Footprint.Moments about(Footprint.Edge edge, Function<Vec3, List<Mass>> masses, Vec3 straight, double blow) {
            if (springs == null) {
                return footprint.about(edge, masses.apply(straight), Gravity.G, straight, blow);
            }
            SpringFeet.Rest rest = springs.rest(masses, straight, edge.outward().times(blow));
            if (rest != null) {
                return footprint.about(edge, rest.masses(), Gravity.G, rest.up(), blow);
            }
            Footprint.Moments hard = footprint.about(edge, masses.apply(straight), Gravity.G, straight, blow);
            return new Footprint.Moments(0, Math.max(hard.restoring(), hard.overturning()));
        }

        private Text caught(WindArea tank, Footprint.Edge edge, Pose pose) {
            Text shown = Text.amount(tank(tank, edge, pose)[0], Kind.AREA, "m2", 2);
            return Text.of("wind on {} of the tank and ", shown).plus(frame.caught(against(edge)));
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
        private void reactions(WholeUnit.Load load, Vec2 blow, Pose pose, String loadCase) {
            double press = 0;
            Vec2 moment = blow;
            for (Mass m : load.own()) {
                double weight = m.kg() * Gravity.G;
                double height = m.at().y() - y;
                Vec2 foot = new Vec2(m.at().x() - height * up.x() / up.y(), m.at().z() - height * up.z() / up.y());
                press += weight * up.y();
                moment = moment.plus(foot.times(weight * up.y()));
            }
            double[] loads = springs == null
                    ? SupportLoads.of(footing.outline(), press, moment.times(1 / press))
                    : onSprings(springs.rest(load.leaning(), up, blow));
            boolean first = lifts == null;
            for (int i = 0; i < loads.length; i++) {
                double bears = Double.isNaN(loads[i]) ? Double.POSITIVE_INFINITY : loads[i];
                most = heaviest.offer(bears, pose.tilt(), loadCase, null) ? i : most;
                if (bears == 0 && first) {
                    lifting.add(i);
                    lifts = Text.degrees(pose.tilt(), 0).plus(" (" + CaseName.shown(loadCase, tank) + ")");
                }
            }
        }

        private Set<Integer> feet() {
            Set<Integer> all = new TreeSet<>(lifting);
            if (most >= 0) {
                all.add(most);
            }
            return all;
        }

        private static double[] onSprings(SpringFeet.@Nullable Rest rest) {
            return rest == null
                    ? new double[] {Double.NaN}
                    : rest.loads().stream().mapToDouble(load -> load).toArray();
        }

        private static Text words(Footprint.Edge edge) {
            return Text.of("from {} to {}", place(edge.from()), place(edge.to()));
        }

        private static Text place(Vec2 at) {
            return Text.of(
                    "x {}, z {}", Text.amount(at.x(), Kind.LENGTH, "mm", 0), Text.amount(at.y(), Kind.LENGTH, "mm", 0));
        }
    }
}
