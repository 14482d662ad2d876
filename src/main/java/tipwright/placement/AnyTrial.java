// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.design.Design;
import tipwright.design.around.Mounts;
import tipwright.design.drive.Drive;
import tipwright.design.tank.Slurry;
import tipwright.geometry.Vec2;
import tipwright.linkage.Joint;
import tipwright.linkage.Skeleton;
import tipwright.time.Cycle;
import tipwright.time.CycleTimer;

/**
 * Any mechanism tried by the general analysis and the checks themselves. Every pin, carriage and end of the actuator can be off;
 * links and cranks are then made to fit between their pins as they came out. Milliseconds a try.
 */
final class AnyTrial implements Trial {
    private static final double MOST = 1000;

    private final Design design;
    private final @Nullable Double wantedTime;
    private final List<Vec2> points;
    private final List<String> places = new ArrayList<>();

    AnyTrial(Design design) throws CannotComputeException {
        this.design = design;
        Mounts mounts = design.mounts();
        wantedTime = mounts == null ? null : mounts.wants().time();
        Map<Vec2, String> named = named(design);
        points = List.copyOf(named.keySet());
        named.values().forEach(name -> places.addAll(List.of(name + " x", name + " y")));
        Analyser.analyse(design);
    }

    /** Every place that is welded or drilled, with the name of the first that is there. */
    private static Map<Vec2, String> named(Design design) {
        Vec2 pivot = design.pivot().at();
        Skeleton skeleton = design.drive().skeleton(pivot);
        Map<Vec2, String> named = new LinkedHashMap<>();
        named.put(pivot, Skeleton.PIVOT);
        for (Joint joint : skeleton.joints()) {
            named.putIfAbsent(joint.at(), joint.name().replace('-', ' '));
        }
        named.putIfAbsent(skeleton.actuator().onA(), Drive.FRAME_PIN.replace('-', ' '));
        named.putIfAbsent(skeleton.actuator().onB(), Drive.ROD_PIN.replace('-', ' '));
        return named;
    }

    @Override
    public List<String> places() {
        return places;
    }

    @Override
    public double[] at(double... off) {
        Design moved = design.withPivot(
                        design.pivot().movedTo(place(design.pivot().at(), off)))
                .withDrive(design.drive().moved(p -> place(p, off)));
        try {
            return utilisations(moved);
        } catch (CannotComputeException e) {
            double[] none = new double[Judge.LIMITS];
            none[Limit.REACH.index()] = LimitChecks.PASSED;
            return none;
        }
    }

    private Vec2 place(Vec2 drawn, double... off) {
        int i = points.indexOf(drawn);
        return i < 0 ? drawn : drawn.plus(new Vec2(off[2 * i], off[2 * i + 1]));
    }

    @Override
    public double[] with(Slurry slurry) throws CannotComputeException {
        return utilisations(design.withSlurry(slurry));
    }

    @Override
    public double @Nullable [] heavier(double share) {
        return null;
    }

    private double[] utilisations(Design tried) throws CannotComputeException {
        Analysis analysis = Analyser.analyse(tried);
        double[] all = LimitChecks.utilisations(analysis, null);
        if (wantedTime != null) {
            Cycle dump = CycleTimer.time(analysis).dump();
            double used = dump == null || !dump.complete() ? LimitChecks.PASSED : dump.total() / wantedTime;
            all[Limit.TIME.index()] = used > 1 ? used : 0;
        }
        Arrays.setAll(all, i -> Math.min(MOST, all[i]));
        return all;
    }
}
