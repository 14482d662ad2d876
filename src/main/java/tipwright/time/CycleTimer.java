// SPDX-License-Identifier: Apache-2.0
package tipwright.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.hipparchus.exception.MathRuntimeException;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.analysis.CaseResult;
import tipwright.analysis.Row;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.tank.Dump;
import tipwright.design.tank.Opening;
import tipwright.geometry.Bisection;
import tipwright.geometry.NotConvergedException;
import tipwright.load.Contents;
import tipwright.load.LoadState;
import tipwright.load.OpenDoors;

/** Times the dump of an analysed design. */
public final class CycleTimer {
    /** Usual tolerance of the integration. */
    public static final double TOLERANCE = 1e-6;

    /** Below this share of its free speed the drive counts as stalled. Source: common practice, no source. */
    public static final double STALL = 0.01;

    private static final List<String> FOLLOWING = List.of("caked", "settled", "slid");

    private CycleTimer() {}

    /** The dump in time, at the usual tolerance. */
    public static Timing time(Analysis analysis) {
        return time(analysis, TOLERANCE);
    }

    /**
     * The dump in time.
     *
     * @param tolerance of the integration, of tilt in rad and of volume as a share of the load
     */
    public static Timing time(Analysis analysis, double tolerance) {
        return time(analysis, tolerance, new Effort(Effort.MOST));
    }

    /** The same with an allowance of evaluations. */
    static Timing time(Analysis analysis, double tolerance, Effort effort) {
        try {
            Machine machine = Machines.of(analysis.design());
            return new Timing(cycles(analysis, machine, tolerance, effort), null, false);
        } catch (Machines.MissingException missing) {
            return new Timing(List.of(), String.valueOf(missing.getMessage()), false);
        } catch (NotConvergedException spent) {
            return new Timing(List.of(), String.valueOf(spent.getMessage()), true);
        } catch (MathRuntimeException lost) {
            return new Timing(List.of(), effort.lost(), true);
        } catch (CannotComputeException none) {
            return new Timing(List.of(), "a way to move: " + none.getMessage(), false);
        }
    }

    private static List<Cycle> cycles(Analysis analysis, Machine machine, double tolerance, Effort effort)
            throws CannotComputeException {
        Design design = analysis.design();
        Dump dump = design.dump();
        LinkageCurve mechanism = LinkageCurve.of(analysis);
        Contents contents = new Contents(design, analysis.vessel());
        double end = end(design, mechanism);
        DumpEvent.Kind why =
                end < mechanism.grid().last() - 1e-9 ? DumpEvent.Kind.END_OF_STROKE : DumpEvent.Kind.FULL_TILT;
        List<Double> opens =
                design.tank().openings().stream().map(Opening::opensAt).toList();
        Outlet outlet = new Outlet(design.tank(), design.slurry().mixtureDensity());
        Liquid running = new Liquid(design, contents, mechanism, outlet);
        double target = running.lip(end) + dump.drained() * running.start();
        List<Script> scripts = new ArrayList<>();
        scripts.add(new Script(
                "draining",
                running,
                running::lowering,
                running.start(),
                target,
                dump.drained(),
                opens,
                List.of(),
                dump.hold(),
                end,
                why));
        if (find(analysis, "held") != null) {
            Liquid held = new Liquid(design, contents, mechanism, null);
            scripts.add(still("held", held, held.lowering(held.start()), held.start(), List.of(), end, why));
        }
        List<Double> breaks = new ArrayList<>();
        if (Double.isFinite(design.slurry().release())) {
            breaks.add(design.slurry().release());
        }
        for (CaseResult listed : listed(analysis)) {
            scripts.add(still(
                    listed.name(),
                    Listed.of(listed, r -> r.raise().force()),
                    back(design, mechanism, listed, end),
                    listed.load().contents(),
                    breaks,
                    end,
                    why));
        }
        List<Cycle> cycles = new ArrayList<>();
        for (Script script : scripts) {
            cycles.add(new Run(machine, mechanism, script, tolerance, effort).cycle());
        }
        return cycles;
    }

    /** The load cases that follow the tilt alone: nothing runs out in its own time. */
    private static List<CaseResult> listed(Analysis analysis) {
        List<String> names = new ArrayList<>(FOLLOWING);
        analysis.design().cases().add().forEach(own -> names.add(own.name()));
        return names.stream()
                .map(name -> find(analysis, name))
                .filter(Objects::nonNull)
                .toList();
    }

    private static Script still(
            String name, Load up, Load down, double start, List<Double> breaks, double end, DumpEvent.Kind why) {
        return new Script(name, up, volume -> down, start, Double.POSITIVE_INFINITY, 0, List.of(), breaks, 0, end, why);
    }

    /** What a load case still has in the tank at a tilt, rad, and so takes back with it. */
    private static Listed back(Design design, LinkageCurve mechanism, CaseResult result, double tilt) {
        Row last = result.rows().get(0);
        for (Row row : result.rows()) {
            last = row.tilt() <= tilt + 1e-9 ? row : last;
        }
        LoadState left = last.load();
        double from = last.tilt();
        OpenDoors doors = new OpenDoors(design);
        return Listed.back(mechanism, t -> doors.lowered(result.name(), left, from, t));
    }

    private static @Nullable CaseResult find(Analysis analysis, String name) {
        return analysis.cases().stream()
                .filter(c -> c.name().equals(name) && c.rows().size() > 1)
                .findFirst()
                .orElse(null);
    }

    /** The last tilt, or the one at which an actuator comes to the end of its stroke, rad. */
    private static double end(Design design, LinkageCurve mechanism) {
        Grid grid = mechanism.grid();
        double low = grid.first();
        double high = grid.last();
        if (fits(design, mechanism.length(high)) || !fits(design, mechanism.length(low))) {
            return high;
        }
        String what = "the tilt, rad, at which the stroke ends";
        return Bisection.between(low, high, 1e-9, what, tilt -> fits(design, mechanism.length(tilt)))
                .good();
    }

    private static boolean fits(Design design, double length) {
        for (PlacedActuator placed : design.drive().actuators()) {
            Actuator a = placed.actuator();
            if (length < a.closed() - 1e-9 || length > a.closed() + a.stroke() + 1e-9) {
                return false;
            }
        }
        return true;
    }
}
