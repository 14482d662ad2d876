// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.List;
import java.util.function.ToDoubleFunction;
import tipwright.analysis.Extreme;

/**
 * One dump from stowed to stowed.
 *
 * @param load name of the load case it follows
 * @param raise time to full tilt, s; infinite when it stalls on the way
 * @param empty time from the start until drained, s; NaN when nothing runs out, infinite when it never does
 * @param lower time to come back, s; infinite when it does not, NaN when it never got up
 * @param total of raising, running out, holding and lowering, s; infinite when it stalls
 * @param stalledAt tilt at which the drive stalls while raising, rad; NaN: it does not; when it goes on later, the first
 * @param stuckAt tilt at which it stops on its way back, rad; NaN: it does not
 * @param perHour dumps an hour within the rated duty; 0 when it stalls
 * @param peaks the largest of each
 * @param spent what it takes
 * @param happenings in order
 * @param moments in order, close enough together to draw
 */
public record Cycle(
        String load,
        double raise,
        double empty,
        double lower,
        double total,
        double stalledAt,
        double stuckAt,
        double perHour,
        Peaks peaks,
        Spent spent,
        List<DumpEvent> happenings,
        List<Moment> moments) {
    /** A change of tilt that is none, rad. */
    private static final double STILL = 1e-12;

    /** Copies the lists. */
    public Cycle {
        happenings = List.copyOf(happenings);
        moments = List.copyOf(moments);
    }

    /**
     * What of it belongs to one half of a verdict. A load that belongs to the normal dump up to a tilt does so on its way up to there;
     * further up, on its way back, and in what the whole of it takes, something has gone wrong.
     *
     * @param normal which half
     * @param normalTo tilt up to which its load belongs to the normal dump, rad
     */
    Cycle half(boolean normal, double normalTo) {
        boolean whole = highest() <= normalTo;
        List<Moment> its = moments.stream()
                .filter(m -> (whole || (m.phase() == Moment.Phase.RAISE && m.tilt() <= normalTo)) == normal)
                .toList();
        if (whole && normal) {
            return this;
        }
        boolean stalls = stalledAt <= normalTo == normal;
        double stalled = stalls ? stalledAt : Double.NaN;
        double stuck = normal || whole ? Double.NaN : stuckAt;
        boolean ended = normal && Double.isNaN(stalled);
        return new Cycle(
                load,
                ended ? 0 : raise,
                ended ? 0 : empty,
                ended ? 0 : lower,
                ended ? 0 : total,
                stalled,
                stuck,
                perHour,
                peaks,
                normal ? Spent.NOTHING : spent,
                happenings,
                its);
    }

    /** Largest tilt that it gets to, rad: less than the full tilt when it stalls or the stroke ends. */
    public double highest() {
        return moments.stream().mapToDouble(Moment::tilt).max().orElse(0);
    }

    /**
     * Whether it stops short of a tilt.
     *
     * @param wanted rad
     */
    public boolean shortOf(double wanted) {
        return highest() < wanted - Math.toRadians(0.05);
    }

    /**
     * When it first gets to a tilt on its way up, between two moments by a straight line.
     *
     * @param tilt rad
     * @return s from the start; NaN when it never does
     */
    public double upTo(double tilt) {
        if (shortOf(tilt)) {
            return Double.NaN;
        }
        double there = Math.min(tilt, highest());
        Moment before = null;
        for (Moment m : moments) {
            if (m.phase() == Moment.Phase.LOWER) {
                break;
            }
            if (m.tilt() >= there) {
                return before == null ? m.time() : between(before, m, there);
            }
            before = m;
        }
        return Double.NaN;
    }

    /**
     * How long it takes from a tilt down to stowed, between two moments by a straight line.
     *
     * @param tilt rad
     * @return s; NaN when it never comes back, or was never there
     */
    public double downFrom(double tilt) {
        if (!complete() || shortOf(tilt)) {
            return Double.NaN;
        }
        double end = moments.get(moments.size() - 1).time();
        Moment after = null;
        for (int i = moments.size() - 1; i >= 0 && moments.get(i).phase() == Moment.Phase.LOWER; i--) {
            Moment m = moments.get(i);
            if (m.tilt() >= tilt) {
                return end - (after == null ? m.time() : between(m, after, tilt));
            }
            after = m;
        }
        return after == null ? Double.NaN : end - after.time();
    }

    private static double between(Moment a, Moment b, double tilt) {
        double way = b.tilt() - a.tilt();
        double share = Math.abs(way) < STILL ? 1 : Math.max(0, Math.min(1, (tilt - a.tilt()) / way));
        return a.time() + share * (b.time() - a.time());
    }

    /** Whether it gets up and back. */
    public boolean complete() {
        return Double.isFinite(total);
    }

    /** Where something is largest over its moments; nowhere, and 0, when it is never more than 0. */
    public Extreme largest(ToDoubleFunction<Moment> value) {
        Extreme.Search search = Extreme.Search.above(0);
        offer(search, value);
        return search.found();
    }

    /** Offers a value of all its moments. */
    void offer(Extreme.Search search, ToDoubleFunction<Moment> value) {
        moments.forEach(m ->
                search.offer(value.applyAsDouble(m), m.tilt(), load, m.phase().direction()));
    }
}
