// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import tipwright.design.drive.Drive;
import tipwright.geometry.Vec2;
import tipwright.linkage.Skeleton;

/**
 * Looks at every frame pin for some tank pins. What it finds depends on nothing but those and the best that it starts from, so chunks
 * can be done in any order on any number of threads. Mutable: owned by one thread.
 */
final class Chunk {
    private final Task task;
    private final TiltLoads loads;
    private final List<Judge> judges;
    private final List<Kernel> kernels = new ArrayList<>();
    private final List<Detail> details = new ArrayList<>();
    private final Lanes rough = new Lanes();
    private final Lanes kept = new Lanes();
    private final double[] utilisations = new double[Judge.LIMITS];
    private final Best best;
    private int waiting;
    private Vec2 tank = Vec2.ZERO;

    Chunk(Task task, TiltLoads loads, Best best) {
        this.task = task;
        this.loads = loads;
        judges = task.judgesFor(loads);
        this.best = best;
        for (int i = 0; i < judges.size(); i++) {
            int same = sameAs(i);
            kernels.add(same < i ? kernels.get(same) : new Kernel(loads, judges.get(i).pinRadii));
            details.add(same < i ? details.get(same) : new Detail(loads, judges.get(i).pinRadii));
        }
    }

    /** First actuator with the same friction in the pins: they share the closed form. */
    private int sameAs(int i) {
        int k = 0;
        while (!java.util.Arrays.equals(judges.get(k).pinRadii, judges.get(i).pinRadii)) {
            k++;
        }
        return k;
    }

    /** The best so far: what it started from and what was found. */
    Best best() {
        return best;
    }

    /** Looks at a tank pin with all frame pins, m. */
    void run(Vec2 tankPin, List<Vec2> framePins) {
        tank = tankPin;
        Vec2 t = tankPin.minus(loads.pivot());
        waiting = 0;
        for (int from = 0; from < framePins.size(); from += Lanes.SIZE) {
            int n = Math.min(Lanes.SIZE, framePins.size() - from);
            for (int j = 0; j < n; j++) {
                Vec2 f = framePins.get(from + j).minus(loads.pivot());
                rough.set(j, f.x(), f.y(), t.x(), t.y());
            }
            kernels.get(0).shape(rough, n);
            keep(n);
        }
        flush();
    }

    /** Keeps those whose lengths fit any actuator and whose arm is long enough. */
    private void keep(int n) {
        double sine = Math.sin(task.design().limits().transmissionFail());
        for (int j = 0; j < n; j++) {
            if (rough.arm[j] <= 0 || rough.arm[j] < sine * rough.reach(j) || !fits(j)) {
                continue;
            }
            kept.set(waiting, rough.frameX[j], rough.frameY[j], rough.tankX[j], rough.tankY[j]);
            waiting++;
            if (waiting == Lanes.SIZE) {
                flush();
            }
        }
    }

    private boolean fits(int j) {
        double shortest = rough.shortest[j];
        double longest = rough.longest[j];
        for (Judge judge : judges) {
            if (judge.fits(shortest, longest)) {
                return true;
            }
        }
        return false;
    }

    private void flush() {
        for (int i = 0; i < judges.size(); i++) {
            if (sameAs(i) == i) {
                kernels.get(i).run(kept, waiting);
            }
            for (int j = 0; waiting > j && sameAs(i) == i; j++) {
                for (int k = i; k < judges.size(); k++) {
                    if (sameAs(k) == i) {
                        look(k, j);
                    }
                }
            }
        }
        waiting = 0;
    }

    private void look(int k, int j) {
        Judge judge = judges.get(k);
        double allowed = task.wants().utilisation();
        judge.quick(kept, j, loads, utilisations);
        double least = utilisations[Judge.governing(utilisations)];
        if (least > allowed) {
            return;
        }
        best.count();
        double quickest = judge.quickest(kept.longest[j] - kept.shortest[j]);
        Vec2 frame = new Vec2(kept.frameX[j], kept.frameY[j]).plus(loads.pivot());
        if (!best.mayImprove(k, frame, tank, least, judge.force(kept, j), quickest)) {
            return;
        }
        Detail detail = details.get(k);
        detail.run(frame, tank, judge.housing);
        judge.exact(detail, utilisations);
        Spot spot = spot(task, judge, detail, frame, tank, utilisations);
        if (spot.utilisation() <= allowed) {
            best.offer(k, spot);
        }
    }

    static Spot spot(Task task, Judge judge, Detail d, Vec2 frame, Vec2 tank, double[] utilisations) {
        int g = Judge.governing(utilisations);
        return new Spot(
                List.of(
                        new Seat(Drive.FRAME_PIN, task.frame().drawn(), frame),
                        new Seat(Drive.TANK_PIN, task.tank().drawn(), tank),
                        new Seat(Skeleton.PIVOT, task.pivot().drawn(), d.loads.pivot())),
                judge.listed,
                utilisations[g],
                Limit.at(g),
                judge.force(d),
                judge.time(d, true),
                judge.price());
    }
}
