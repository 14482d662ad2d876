// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.List;
import java.util.Set;
import tipwright.analysis.Analysis;
import tipwright.time.Timing;

/** The registry of checks. */
public final class Checks {
    private Checks() {}

    /** All checks, in the order in which they are shown. */
    public static List<Check> all() {
        return List.of(
                new ReachCheck(),
                new StrokeCheck(),
                new PushCheck(),
                new PullCheck(),
                new HoldCheck(),
                new BucklingCheck(),
                new TransmissionCheck(),
                new OverCentreCheck(),
                new BearingStaticCheck(),
                new BearingHousingCheck(),
                new BushCheck(),
                new ShaftCheck(),
                new PinCheck(),
                new AssistCheck(),
                new StallCheck(),
                new DutyCheck(),
                new CycleTimeCheck(),
                new ElectricalCheck(),
                new HydraulicCheck(),
                new SlideCheck(),
                new VentCheck(),
                new ChannelCheck(),
                new DoorCheck(),
                new EmptiesCheck(),
                new WhatIfCheck(),
                new ClearanceCheck(),
                new LandingCheck(),
                new TipOverCheck(),
                new HangCheck(),
                new WeldCheck(),
                new BoltCheck(),
                new LugCheck(),
                new CrossMemberCheck(),
                new LinkCheck());
    }

    /** Runs all of them. */
    static List<Finding> run(Analysis analysis, Timing timing) {
        return run(analysis, timing, Set.of());
    }

    /** Runs all but those with these ids. */
    static List<Finding> run(Analysis analysis, Timing timing, Set<String> leftOut) {
        return all().stream()
                .filter(c -> !leftOut.contains(c.id()))
                .flatMap(c -> c.run(analysis, timing).stream())
                .toList();
    }

    /** Runs those that need no time. */
    static List<Finding> run(Analysis analysis) {
        return run(analysis, Set.of());
    }

    /** Runs those that need no time, but for those with these ids. */
    static List<Finding> run(Analysis analysis, Set<String> leftOut) {
        return all().stream()
                .filter(c -> !leftOut.contains(c.id()))
                .flatMap(c -> c.run(analysis).stream())
                .toList();
    }
}
