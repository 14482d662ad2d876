// SPDX-License-Identifier: Apache-2.0
package tipwright.design.tape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.geometry.Vec2;

/** First guesses for one point in the side view, from all pairs of circles and lines that it lies on. */
public final class Start {
    private static final double APART = 6;
    private static final double NEAR = 9;

    private final List<Locus> loci = new ArrayList<>();

    /**
     * Where a single reading lets the point be.
     *
     * @param centre of a circle, m; for a line a point on it
     * @param radius of a circle, m; NaN for a line
     * @param normal of a line, unit; ignored for a circle
     * @param doubt standard, m
     */
    private record Locus(Vec2 centre, double radius, Vec2 normal, double doubt) {
        double off(Vec2 p) {
            double off = Double.isNaN(radius)
                    ? p.minus(centre).dot(normal)
                    : p.minus(centre).norm() - radius;
            return off / doubt;
        }
    }

    /** A place with the sum of its squared misfits over their doubts. */
    public record Guess(Vec2 at, double misfit) {}

    /**
     * What came of it.
     *
     * @param best the place that fits best; null when there are fewer than two readings
     * @param rival another place that fits as well; null when there is none
     */
    public record Found(@Nullable Guess best, @Nullable Guess rival) {}

    /** So far from a known place. */
    public void distance(Vec2 from, double length, double doubt) {
        loci.add(new Locus(from, Math.abs(length), Vec2.ZERO, doubt));
    }

    /** On an upright line (across) or a level one. */
    public void line(boolean upright, double at, double doubt) {
        Vec2 normal = upright ? new Vec2(1, 0) : new Vec2(0, 1);
        loci.add(new Locus(normal.times(at), Double.NaN, normal, doubt));
    }

    /** The best guess, and its rival. */
    public Found find() {
        List<Guess> all = new ArrayList<>();
        for (int i = 0; i < loci.size(); i++) {
            for (int j = i + 1; j < loci.size(); j++) {
                for (Vec2 p : meet(loci.get(i), loci.get(j))) {
                    all.add(new Guess(p, misfit(p)));
                }
            }
        }
        all.sort(Comparator.comparingDouble(Guess::misfit));
        if (all.isEmpty()) {
            return new Found(null, null);
        }
        Guess best = all.get(0);
        double apart = APART * loci.stream().mapToDouble(Locus::doubt).max().orElse(0);
        Guess rival = all.stream()
                .filter(g -> g.misfit() <= best.misfit() + NEAR * loci.size())
                .filter(g -> g.at().minus(best.at()).norm() > apart)
                .findFirst()
                .orElse(null);
        return new Found(best, rival);
    }

    private double misfit(Vec2 p) {
        return loci.stream().mapToDouble(l -> l.off(p) * l.off(p)).sum();
    }

    /** Where two meet, or the place between them where they pass nearest. */
    private static List<Vec2> meet(Locus a, Locus b) {
        boolean lineA = Double.isNaN(a.radius);
        boolean lineB = Double.isNaN(b.radius);
        if (lineA && lineB) {
            return a.normal.equals(b.normal)
                    ? List.of()
                    : List.of(new Vec2(
                            a.normal.x() > 0 ? a.centre.x() : b.centre.x(),
                            a.normal.x() > 0 ? b.centre.y() : a.centre.y()));
        }
        if (lineA) {
            return meet(b, a);
        }
        if (lineB) {
            double off = b.centre.minus(a.centre).dot(b.normal);
            double along = Math.sqrt(Math.max(0, a.radius * a.radius - off * off));
            Vec2 foot = a.centre.plus(b.normal.times(off));
            Vec2 way = new Vec2(-b.normal.y(), b.normal.x()).times(along);
            return List.of(foot.plus(way), foot.minus(way));
        }
        Vec2 between = b.centre.minus(a.centre);
        double s = between.norm();
        if (s < 1e-9) {
            return List.of();
        }
        Vec2 u = between.times(1 / s);
        double gap = s > a.radius + b.radius ? s - a.radius - b.radius : 0;
        double along = gap > 0 ? a.radius + gap / 2 : (a.radius * a.radius - b.radius * b.radius + s * s) / (2 * s);
        double across = Math.sqrt(Math.max(0, a.radius * a.radius - along * along));
        if (across == 0 && gap == 0) {
            along = Math.copySign(Math.min(Math.abs(along), 0.5 * (a.radius + s + b.radius)), along);
        }
        Vec2 foot = a.centre.plus(u.times(along));
        Vec2 way = new Vec2(-u.y(), u.x()).times(across);
        return List.of(foot.plus(way), foot.minus(way));
    }
}
