// SPDX-License-Identifier: Apache-2.0
package tipwright.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.Pose;

/**
 * The worst of all load cases at one tilt, friction included.
 *
 * @param pose the linkage there
 * @param push of all actuators; null when none pushes
 * @param pull of all actuators; null when none pulls
 * @param bearing the one that carries most
 */
public record Envelope(Pose pose, @Nullable Peak push, @Nullable Peak pull, Peak.@Nullable OnBearing bearing) {
    private static final int MOST_ROWS = 16;
    private static final double[] STEPS = {0.5, 1, 2, 2.5, 5, 10, 15, 20};

    /** At every tilt. */
    public static List<Envelope> of(Analysis analysis) {
        List<Envelope> all = new ArrayList<>();
        for (int i = 0; i < analysis.poses().size(); i++) {
            all.add(at(analysis, i));
        }
        return all;
    }

    /** At round tilts, at most about 16, and always at the first and the last. */
    public static List<Envelope> shown(Analysis analysis) {
        return numbers(analysis.poses()).stream().map(i -> at(analysis, i)).toList();
    }

    private static Envelope at(Analysis analysis, int tilt) {
        Peak.Tilts here = Peak.Tilts.only(tilt);
        return new Envelope(
                analysis.poses().get(tilt),
                Peak.force(analysis.cases(), here, true),
                Peak.force(analysis.cases(), here, false),
                Peak.bearing(
                        analysis.cases(),
                        here,
                        0,
                        analysis.design().pivot().bearings().size()));
    }

    /** Numbers of the tilts that are shown: round ones, and always the first and the last. */
    private static List<Integer> numbers(List<Pose> poses) {
        List<Integer> all = new ArrayList<>();
        if (poses.isEmpty()) {
            return all;
        }
        double step = step(poses);
        int last = poses.size() - 1;
        for (int i = 0; i < last; i++) {
            double steps = Math.toDegrees(poses.get(i).tilt()) / step;
            if (i == 0 || Math.abs(steps - Math.rint(steps)) < 1e-6) {
                all.add(i);
            }
        }
        all.add(last);
        return all;
    }

    private static double step(List<Pose> poses) {
        double span =
                Math.toDegrees(poses.get(poses.size() - 1).tilt() - poses.get(0).tilt());
        for (double step : STEPS) {
            if (span / step + 1 <= MOST_ROWS) {
                return step;
            }
        }
        return STEPS[STEPS.length - 1];
    }
}
