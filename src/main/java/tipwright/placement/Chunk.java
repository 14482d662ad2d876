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
    /** Pins of those kept, m [lane]. */
    private final List<Vec2> frames = new ArrayList<>(Lanes.SIZE);

    private final List<Vec2> tanks = new ArrayList<>(Lanes.SIZE);
    private final Shortlist best;
    private final double allowed;
    private final double sine;

    Chunk(GridScan scan, GridScan.Pivot pivot, Shortlist best) {
        this.scan = scan;
        this.pivot = pivot;
        this.best = best;
        allowed = scan.task().wants().utilisation();
        sine = Math.sin(scan.task().design().limits().transmissionFail());
    }

    /** The best so far: what it started from and what was found. */
    Shortlist best() {
        return best;
    }

    /** Looks at all tank pins with all frame pins, m. */
    void run(List<Vec2> tankPins, List<Vec2> framePins) {
        for (Vec2 tankPin : tankPins) {
            for (int from = 0; from < framePins.size(); from += Lanes.SIZE) {
                shape(tankPin, framePins.subList(from, Math.min(framePins.size(), from + Lanes.SIZE)));
            }
        }
        flush();
    }

    /** Keeps those whose lengths fit any actuator and whose arm is long enough. */
    private void shape(Vec2 tankPin, List<Vec2> framePins) {
        Vec2 t = tankPin.minus(pivot.at());
        for (int j = 0; j < framePins.size(); j++) {
            Vec2 f = framePins.get(j).minus(pivot.at());
            rough.set(j, f.x(), f.y(), t.x(), t.y());
        }
        pivot.kernels().get(0).shape(rough, framePins.size());
        for (int j = 0; j < framePins.size(); j++) {
            double arm = rough.arm[j] + rough.armOff(j);
            if (arm <= 0 || arm < sine * rough.reach(j) || !fits(j)) {
                continue;
            }
            kept.set(frames.size(), rough, j);
            frames.add(framePins.get(j));
            tanks.add(tankPin);
            if (frames.size() == Lanes.SIZE) {
                flush();
            }
        }
    }

    private boolean fits(int j) {
        for (LaneBounds bounds : scan.bounds()) {
            if (bounds.fits(rough, j)) {
                return true;
            }
        }
        return false;
    }

    private void flush() {
        for (int i = 0; i < scan.bounds().size(); i++) {
            if (scan.sameAs(i) == i) {
                pivot.kernels().get(i).run(kept, frames.size());
            }
            for (int j = 0; frames.size() > j && scan.sameAs(i) == i; j++) {
                for (int k = i; k < scan.bounds().size(); k++) {
                    if (scan.sameAs(k) == i) {
                        look(k, j);
                    }
                }
            }
        }
        frames.clear();
        tanks.clear();
    }

    private void look(int k, int j) {
        LaneBounds bounds = scan.bounds().get(k);
        double least = bounds.least(kept, j);
        if (least > allowed) {
            return;
        }
        best.count();
        double quickest = bounds.quickest(kept, j);
        List<Vec2> at = new ArrayList<>();
        scan.places(frames.get(j), tanks.get(j), pivot.at(), at);
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
