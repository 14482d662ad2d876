// SPDX-License-Identifier: Apache-2.0
package tipwright.analysis;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tipwright.linkage.SweepStop;

/** Says in plain words why a linkage stops. */
final class Stops {
    private Stops() {}

    static @Nullable Stop of(@Nullable SweepStop sweepStop) {
        if (sweepStop == null) {
            return null;
        }
        String at = degrees(sweepStop.tilt());
        String why =
                switch (sweepStop.kind()) {
                    case CANNOT_ASSEMBLE -> "the parts cannot be put together at " + at + " of tilt";
                    case JAMMED -> "the linkage jams at " + at + " of tilt: its joints do not let it go on";
                    case DEAD_CENTRE -> "dead centre at " + at
                            + " of tilt: the actuator points straight at the pivot, or at the point about which its moving pin turns, and can no longer turn the tank; move a mount so that its line stays clear of it";
                    case BRANCH_JUMP -> "at " + at
                            + " of tilt the linkage reaches a point where it can flip the wrong way";
                    case NOT_FOLLOWED -> "the linkage could not be followed past " + at
                            + " of tilt: its position did not converge within the steps that are allowed;"
                            + " move a mount so that it runs more freely there";
                };
        return new Stop(sweepStop.tilt(), why);
    }

    static String atTheStart(@Nullable SweepStop sweepStop) {
        if (sweepStop == null) {
            return "no tilt to compute";
        }
        Stop stop = of(sweepStop);
        return stop == null ? "no tilt to compute" : stop.why();
    }

    /** Friction locks the linkage; the stop that would come next, if any, is named too. */
    static Stop locked(double tilt, @Nullable Stop next) {
        String why = "friction alone locks the linkage at " + degrees(tilt)
                + " of tilt: the actuator's arm is too short there; move a mount to give it more";
        return new Stop(tilt, next == null ? why : why + " (" + next.why() + ")");
    }

    private static String degrees(double tilt) {
        return String.format(Locale.ROOT, "%.2f deg", Math.toDegrees(tilt));
    }
}
