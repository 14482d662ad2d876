// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.joint.Bolts;
import tipwright.geometry.Vec2;
import tipwright.geometry.Vec3;

/**
 * Bolts of one plane. Shear and pull of each by the elastic method, with the moment taken about the bolts' centroid, so that
 * nothing rests on the plate pressing against its seat. Design strengths 0.6 fu As / 1.25 in shear through the thread for class 8.8
 * and its like, 0.5 fu As / 1.25 for all others, and 0.9 fu As / 1.25 in pull, together Fv/FvRd + Ft/(1.4 FtRd) and Ft/FtRd. Source: elastic method: Shigley, Mechanical Engineering
 * Design, section 8-12 (from memory); strengths: EN 1993-1-8, table 3.4 (from memory).
 */
public final class BoltGroup {
    private static final double PARTIAL = 1.25;
    private static final double PULL = 0.9 / PARTIAL;
    private static final double TOGETHER = 1.4;

    /** Pitch of the coarse metric threads under a diameter, m. */
    private static final double[][] COARSE = {
        {4.5e-3, 0.7e-3},
        {5.5e-3, 0.8e-3},
        {7e-3, 1e-3},
        {9e-3, 1.25e-3},
        {11e-3, 1.5e-3},
        {13e-3, 1.75e-3},
        {17e-3, 2e-3},
        {23e-3, 2.5e-3},
        {28e-3, 3e-3},
        {34e-3, 3.5e-3},
        {Double.POSITIVE_INFINITY, 4e-3}
    };

    /** Diameter in inches and threads to the inch. */
    private static final double[][] UNIFIED = {
        {0.25, 20},
        {0.3125, 18},
        {0.375, 16},
        {0.4375, 14},
        {0.5, 13},
        {0.5625, 12},
        {0.625, 11},
        {0.75, 10},
        {0.875, 9},
        {1, 8},
        {1.125, 7},
        {1.25, 7},
        {1.375, 6},
        {1.5, 6},
        {1.75, 5},
        {2, 4.5}
    };

    private static final double INCH_CLOSE = 0.002;

    private final Bolts bolts;
    private final ElasticGroup spread;
    private final List<ElasticGroup.Spot> places;
    private final double area;

    /** The bolts as drawn. */
    public BoltGroup(Bolts bolts) {
        this.bolts = bolts;
        PlaneAxes axes = PlaneAxes.of(bolts.normal());
        List<ElasticGroup.Piece> pieces = new ArrayList<>();
        for (Vec2 p : bolts.positions()) {
            pieces.add(new ElasticGroup.Piece(axes.at(p), 1, Vec3.ZERO));
        }
        spread = new ElasticGroup(axes, pieces);
        places = pieces.stream().map(p -> spread.spot(p.middle())).toList();
        Double given = bolts.stressArea();
        area = given == null ? stressArea(bolts.diameter()) : given;
    }

    /**
     * Shear and pull of one bolt.
     *
     * @param shear N
     * @param pull N, 0 when it is pressed
     */
    public record Load(double shear, double pull) {}

    /**
     * Each bolt's load.
     *
     * @param force on what is bolted on, N, in the axes that the group is drawn in
     * @param at where it acts, m
     */
    public List<Load> loads(Vec3 force, Vec3 at) {
        ElasticGroup.Under load = under(force, at);
        List<Load> all = new ArrayList<>(places.size());
        for (ElasticGroup.Spot place : places) {
            all.add(new Load(load.shear(place), Math.max(0, load.pull(place))));
        }
        return all;
    }

    private ElasticGroup.Under under(Vec3 force, Vec3 at) {
        return spread.under(force, at.minus(bolts.at().plus(spread.centroid())).cross(force));
    }

    /** Pull of the bolt that is pulled most, N; 0 when all are pressed; arguments as of {@link #loads}. */
    public double pull(Vec3 force, Vec3 at) {
        ElasticGroup.Under load = under(force, at);
        double most = 0;
        for (ElasticGroup.Spot place : places) {
            most = Math.max(most, load.pull(place));
        }
        return most;
    }

    /** Design strength of one bolt in pull, N: 0.9 fu As / 1.25. */
    public double pullStrength() {
        return PULL * bolts.ultimate() * area;
    }

    /** Share of its design strength that the worst bolt uses. */
    public double share(Vec3 force, Vec3 at) {
        ElasticGroup.Under load = under(force, at);
        double shearStrength = shearShare(bolts.ultimate()) / PARTIAL * bolts.ultimate() * area;
        double most = 0;
        for (ElasticGroup.Spot place : places) {
            double v = load.shear(place) / shearStrength;
            double t = Math.max(0, load.pull(place)) / pullStrength();
            most = Math.max(most, Math.max(v + t / TOGETHER, t));
        }
        return most;
    }

    /**
     * Share of its tensile strength that a thread bears in shear: 0.6 for class 8.8; 0.5 for 4.8, 5.8, 6.8 and 10.9. The strength
     * alone does not tell 4.6 from 4.8, so the lower one counts there.
     */
    private static double shearShare(double ultimate) {
        return ultimate >= 700e6 && ultimate < 900e6 ? 0.6 : 0.5;
    }

    /** Whether a bolt of this diameter in m is one of the usual ones in inches. */
    public static boolean inInches(double diameter) {
        return unified(diameter) != null;
    }

    private static double @Nullable [] unified(double diameter) {
        for (double[] inch : UNIFIED) {
            if (Math.abs(diameter / 0.0254 - inch[0]) < INCH_CLOSE) {
                return inch;
            }
        }
        return null;
    }

    /**
     * Stress area of a coarse thread, m2: pi/4 (d - 0.9382 P)^2 where the diameter is metric, pi/4 (d - 0.9743/n)^2 where it is a
     * usual one in inches. Source: ISO 898-1 and the coarse pitches of ISO 261; ASME B1.1, unified coarse threads (all from
     * memory).
     *
     * @param diameter m
     */
    public static double stressArea(double diameter) {
        double[] inch = unified(diameter);
        if (inch != null) {
            double core = 0.0254 * (inch[0] - 0.9743 / inch[1]);
            return Math.PI * core * core / 4;
        }
        int row = 0;
        while (diameter >= COARSE[row][0]) {
            row++;
        }
        double core = diameter - 0.9382 * COARSE[row][1];
        return Math.PI * core * core / 4;
    }
}
