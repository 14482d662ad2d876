// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.CannotComputeException;
import tipwright.geometry.Vec2;

/** When nothing fits: which single change would open it, and how large it must be. */
final class NearMisses {
    private static final int PLACES = 90;
    private static final double[] SHIFTS = {0.01, 0.02, 0.03, 0.04, 0.06, 0.08, 0.1, 0.13, 0.16, 0.2, 0.25, 0.3};

    private final Task task;

    NearMisses(Task task) {
        this.task = task;
    }

    /** What would open it, least change first. */
    List<String> say(List<Vec2> pivots, List<Vec2> tanks, List<Vec2> frames) throws CannotComputeException {
        List<Vec2> t = thin(tanks);
        List<Vec2> f = thin(frames);
        List<Way> ways = new ArrayList<>();
        for (Vec2 pivot : thin(pivots)) {
            TiltLoads loads = task.loadsAt(pivot);
            look(loads, task.judgesFor(loads), t, f, ways);
        }
        shiftPivot(t, f, ways);
        List<String> words = Way.words(ways);
        if (words.isEmpty()) {
            words.add("no single change of an actuator or the pivot opens it; widen the zones");
        }
        return words;
    }

    private static List<Vec2> thin(List<Vec2> all) {
        int step = Math.max(1, all.size() / PLACES);
        List<Vec2> some = new ArrayList<>();
        for (int i = 0; i < all.size(); i += step) {
            some.add(all.get(i));
        }
        return some;
    }

    private void look(TiltLoads loads, List<Judge> judges, List<Vec2> tanks, List<Vec2> frames, List<Way> ways) {
        double[] u = new double[Judge.LIMITS];
        for (Judge judge : judges) {
            @Nullable Way[] least = new @Nullable Way[Judge.LIMITS];
            Detail detail = new Detail(loads, judge.pinRadii);
            for (Vec2 tank : tanks) {
                for (Vec2 frame : frames) {
                    detail.run(frame, tank, judge.housing);
                    judge.exact(detail, u);
                    note(judge, detail, u, least);
                }
            }
            for (Way way : least) {
                if (way != null) {
                    ways.add(way);
                }
            }
        }
    }

    /** Notes the change that one candidate needs, when a single limit stands against it. */
    private void note(Judge judge, Detail detail, double[] u, @Nullable Way[] least) {
        double allowed = task.wants().utilisation();
        int only = -1;
        for (int i = 0; i < u.length; i++) {
            boolean stroke = i == Limit.STROKE_IN.index() || i == Limit.STROKE_OUT.index();
            if (u[i] > allowed) {
                if (only >= 0 && !(stroke && isStroke(only))) {
                    return;
                }
                only = i;
            }
        }
        if (only < 0 || only == Limit.REACH.index()) {
            return;
        }
        Way way = way(judge, detail, Limit.at(only), u[only] / allowed);
        Way old = least[only];
        if (way != null && (old == null || way.size() < old.size())) {
            least[only] = way;
        }
    }

    private static boolean isStroke(int limit) {
        return limit == Limit.STROKE_IN.index() || limit == Limit.STROKE_OUT.index();
    }

    private @Nullable Way way(Judge judge, Detail d, Limit limit, double over) {
        if (!isStroke(limit.index())) {
            return Way.past(limit, over, judge.listed.name());
        }
        double shortest = Double.POSITIVE_INFINITY;
        double longest = 0;
        for (int i = 0; i < d.reached; i++) {
            shortest = Math.min(shortest, d.length[i]);
            longest = Math.max(longest, d.length[i]);
        }
        double margin = task.design().limits().strokeMargin() / task.wants().utilisation();
        return Way.stroke(judge.listed, shortest, longest, margin);
    }

    /** The smallest move of the pivot that lets something fit. */
    private void shiftPivot(List<Vec2> tanks, List<Vec2> frames, List<Way> ways) throws CannotComputeException {
        TiltLoads alongX = Task.moved(task.design(), new Vec2(Task.STEP, 0));
        TiltLoads alongY = Task.moved(task.design(), new Vec2(0, Task.STEP));
        String[] names = {"lower", "higher", "further from the dump side", "nearer to the dump side"};
        Vec2[] ways4 = {new Vec2(0, -1), new Vec2(0, 1), new Vec2(-1, 0), new Vec2(1, 0)};
        for (int w = 0; w < names.length; w++) {
            for (double shift : SHIFTS) {
                Vec2 by = ways4[w].times(shift);
                TiltLoads there = task.loads()
                        .towards(task.loads().pivot().plus(by), alongX, alongY, by.x() / Task.STEP, by.y() / Task.STEP);
                if (fits(there, tanks, frames)) {
                    ways.add(new Way(shift, "the pivot " + Way.millimetres(shift) + " mm " + names[w]));
                    break;
                }
            }
        }
    }

    private boolean fits(TiltLoads loads, List<Vec2> tanks, List<Vec2> frames) {
        Chunk chunk = new Chunk(task, loads, new Best(task.judges().size()));
        for (Vec2 tank : tanks) {
            chunk.run(tank, frames);
            if (chunk.best().of(Aim.UTILISATION) != null) {
                return true;
            }
        }
        return false;
    }
}
