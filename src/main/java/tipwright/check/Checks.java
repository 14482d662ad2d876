// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tipwright.analysis.Analysis;
import tipwright.check.actuator.AssistCheck;
import tipwright.check.actuator.BackDriveCheck;
import tipwright.check.actuator.BucklingCheck;
import tipwright.check.actuator.CycleTimeCheck;
import tipwright.check.actuator.DutyCheck;
import tipwright.check.actuator.HoldCheck;
import tipwright.check.actuator.OverCentreCheck;
import tipwright.check.actuator.PullCheck;
import tipwright.check.actuator.PushCheck;
import tipwright.check.actuator.ReachCheck;
import tipwright.check.actuator.StallCheck;
import tipwright.check.actuator.StrokeCheck;
import tipwright.check.actuator.TransmissionCheck;
import tipwright.check.bearing.BearingHousingCheck;
import tipwright.check.bearing.BearingStaticCheck;
import tipwright.check.bearing.BushCheck;
import tipwright.check.bearing.GripCheck;
import tipwright.check.bearing.ShaftCheck;
import tipwright.check.clearance.ClearanceCheck;
import tipwright.check.fault.WhatIfCheck;
import tipwright.check.joint.BoltCheck;
import tipwright.check.joint.BoltEdgeCheck;
import tipwright.check.joint.ClevisCheck;
import tipwright.check.joint.CrossMemberCheck;
import tipwright.check.joint.FatigueCheck;
import tipwright.check.joint.LinkCheck;
import tipwright.check.joint.LugCheck;
import tipwright.check.joint.LugFootCheck;
import tipwright.check.joint.LugSideCheck;
import tipwright.check.joint.PinCheck;
import tipwright.check.joint.PlayCheck;
import tipwright.check.joint.PryingCheck;
import tipwright.check.joint.SaddleCheck;
import tipwright.check.joint.ShellCheck;
import tipwright.check.joint.SlideCheck;
import tipwright.check.joint.SteelBehindCheck;
import tipwright.check.joint.SwingCheck;
import tipwright.check.joint.TubeWallCheck;
import tipwright.check.joint.TwistCheck;
import tipwright.check.joint.WallInfluences;
import tipwright.check.joint.WeldCheck;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Trait;
import tipwright.check.slurry.ChannelCheck;
import tipwright.check.slurry.DoorCheck;
import tipwright.check.slurry.EmptiesCheck;
import tipwright.check.slurry.FlatWallCheck;
import tipwright.check.slurry.LandingCheck;
import tipwright.check.slurry.StreamCheck;
import tipwright.check.slurry.VacuumCheck;
import tipwright.check.slurry.VentCheck;
import tipwright.check.standing.HangCheck;
import tipwright.check.standing.RoadCheck;
import tipwright.check.standing.SkidCheck;
import tipwright.check.standing.TipOverCheck;
import tipwright.check.supply.ColdCheck;
import tipwright.check.supply.ElectricalCheck;
import tipwright.check.supply.GravityReturnCheck;
import tipwright.check.supply.HandEffortCheck;
import tipwright.check.supply.HydraulicCheck;
import tipwright.time.Timing;

/** The registry of checks. */
public final class Checks {
    private static final List<Check> ALL = withWhatIfs(rules(new WallInfluences()));

    private Checks() {}

    /** All checks, in the order in which they are shown. */
    public static List<Check> all() {
        return ALL;
    }

    private static List<Check> withWhatIfs(List<Check> rules) {
        List<Check> all = new ArrayList<>(rules);
        all.add(26, new WhatIfCheck(rules));
        return List.copyOf(all);
    }

    /** All but the what-ifs, which run them anew under another condition. */
    private static List<Check> rules(WallInfluences walls) {
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
                new GravityReturnCheck(),
                new HandEffortCheck(),
                new SlideCheck(),
                new VentCheck(),
                new ChannelCheck(),
                new DoorCheck(),
                new EmptiesCheck(),
                new ClearanceCheck(),
                new LandingCheck(),
                new StreamCheck(),
                new TipOverCheck(),
                new HangCheck(),
                new WeldCheck(),
                new BoltCheck(),
                new LugCheck(),
                new LugFootCheck(),
                new SteelBehindCheck(),
                new BoltEdgeCheck(),
                new CrossMemberCheck(),
                new LinkCheck(),
                new ShellCheck(walls),
                new FlatWallCheck(),
                new VacuumCheck(),
                new TubeWallCheck(),
                new PryingCheck(),
                new LugSideCheck(),
                new ClevisCheck(),
                new TwistCheck(),
                new SaddleCheck(),
                new FatigueCheck(walls),
                new GripCheck(),
                new SwingCheck(),
                new PlayCheck(),
                new BackDriveCheck(),
                new RoadCheck(),
                new SkidCheck(),
                new ColdCheck());
    }

    /** The check that made a finding; empty when none did. */
    public static Optional<Check> of(Finding finding) {
        return all().stream().filter(c -> c.owns(finding)).findFirst();
    }

    /** Runs those that need no time. */
    static List<Finding> run(Analysis analysis) {
        return run(all(), analysis);
    }

    /** Runs some that need no time, on a machine that has worn as far as its design allows. */
    public static List<Finding> run(List<Check> some, Analysis analysis) {
        Analysis worn = Worn.of(analysis);
        return some.stream().flatMap(c -> c.run(worn).stream()).toList();
    }

    /** Runs some with the dump in time beside them, on a machine that has worn as far as its design allows. */
    public static List<Finding> run(List<Check> some, Analysis analysis, Timing timing) {
        Analysis worn = Worn.of(analysis);
        return some.stream().flatMap(c -> c.run(worn, timing).stream()).toList();
    }

    /** Runs those that need no time and are quick enough to follow something that is being moved. */
    public static List<Finding> quick(Analysis analysis) {
        return run(all().stream().filter(c -> !c.traits().contains(Trait.SLOW)).toList(), analysis);
    }

    /** Runs those that the five numbers are held against. */
    public static List<Finding> ratings(Analysis analysis) {
        return run(with(Trait.TELLS_RATING), analysis);
    }

    /** Those that have a trait. */
    static List<Check> with(Trait trait) {
        return all().stream().filter(c -> c.traits().contains(trait)).toList();
    }
}
