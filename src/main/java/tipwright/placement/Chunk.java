// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import tipwright.geometry.Vec2;

/**
 * Looks at every frame pin for some tank pins. What it finds depends on nothing but those and the best that it starts from, so chunks
 * can be done in any order on any number of threads. The lanes only turn down; what they leave is judged by the checks, at some tilts
 * first. Mutable: owned by one thread.
 */
final class Chunk {
    /** Of the time that few tilts tell; that of all tilts is about the same. */
    private static final double SOONER = 0.985;

    private final GridScan scan;
    private final GridScan.Pivot pivot;
    private final Lanes rough = new Lanes();
    private final Lanes kept = new Lanes();
    private final Shortlist best;
    private final double allowed;
    private int waiting;

    Chunk(GridScan scan, GridScan.Pivot pivot, Shortlist best) {
        this.scan = scan;
        this.pivot = pivot;
        this.best = best;
        allowed = scan.task().wants().utilisation();
    }

    /** The best so far: what it started from and what was found. */
    Shortlist best() {
        return best;
    }

    /** Looks at a tank pin with all frame pins, m. */
    void run(Vec2 tankPin, List<Vec2> framePins) {
        Vec2 t = tankPin.minus(pivot.at());
        waiting = 0;
        for (int from = 0; from < framePins.size(); from += Lanes.SIZE) {
            int n = Math.min(Lanes.SIZE, framePins.size() - from);
            for (int j = 0; j < n; j++) {
                Vec2 f = framePins.get(from + j).minus(pivot.at());
                rough.set(j, f.x(), f.y(), t.x(), t.y());
            }
            pivot.kernels().get(0).shape(rough, n);
            keep(n, tankPin);
        }
        flush(tankPin);
    }

    /** Keeps those whose lengths fit any actuator and whose arm is long enough. */
    private void keep(int n, Vec2 tank) {
        double sine = Math.sin(scan.task().design().limits().transmissionFail()) * (1 - LaneBounds.SLACK);
        for (int j = 0; j < n; j++) {
            if (rough.arm[j] <= 0 || rough.arm[j] < sine * rough.reach(j) || !fits(j)) {
                continue;
            }
            kept.set(waiting, rough.frameX[j], rough.frameY[j], rough.tankX[j], rough.tankY[j]);
            waiting++;
            if (waiting == Lanes.SIZE) {
                flush(tank);
            }
        }
    }

    private boolean fits(int j) {
        for (LaneBounds bounds : scan.bounds()) {
            if (bounds.fits(rough.shortest[j], rough.longest[j])) {
                return true;
            }
        }
        return false;
    }

    private void flush(Vec2 tank) {
        for (int i = 0; i < scan.bounds().size(); i++) {
            if (scan.sameAs(i) == i) {
                pivot.kernels().get(i).run(kept, waiting);
            }
            for (int j = 0; waiting > j && scan.sameAs(i) == i; j++) {
                for (int k = i; k < scan.bounds().size(); k++) {
                    if (scan.sameAs(k) == i) {
                        look(k, j, tank);
                    }
                }
            }
        }
        waiting = 0;
    }

    private void look(int k, int j, Vec2 tank) {
        LaneBounds bounds = scan.bounds().get(k);
        double least = bounds.least(kept, j);
        if (least > allowed) {
            return;
        }
        best.count();
        double quickest = bounds.quickest(kept, j);
        List<Vec2> at = new ArrayList<>();
        Vec2 frame = new Vec2(kept.frameX[j], kept.frameY[j]).plus(pivot.at());
        scan.places(frame, tank, pivot.at(), at);
        if (!best.mayImprove(k, at, least, bounds.force(kept, j), quickest)) {
            return;
        }
        Judgement some = scan.few().judged(at, k);
        double soon = SOONER * some.time();
        if (some.utilisation() > allowed || !best.mayImprove(k, at, some.utilisation(), some.force(), soon)) {
            return;
        }
        Judgement all = scan.every().judged(at, k);
        if (all.utilisation() <= allowed) {
            best.offer(k, scan.cost().candidate(at, k, all));
        }
    }
}
