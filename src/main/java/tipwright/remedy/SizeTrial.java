// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import tipwright.analysis.Analyser;
import tipwright.analysis.Analysis;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.Checks;
import tipwright.check.Part;
import tipwright.check.Parts;
import tipwright.check.Result;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Occasion;
import tipwright.check.rule.Trait;
import tipwright.design.Design;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.ElectricActuator;
import tipwright.design.file.Reading;
import tipwright.design.supply.Battery;
import tipwright.geometry.NotConvergedException;
import tipwright.placement.PartsBox;
import tipwright.time.CycleTimer;
import tipwright.time.Timing;

/** One size in its place: read at once, looked at coarsely, and checked in full only when that is asked for. Mutable: remembers. */
final class SizeTrial {
    private static final Parts NOTHING =
            new Parts(new Part(Occasion.NORMAL, List.of()), new Part(Occasion.FAULT, List.of()), List.of());

    private final OpenSize.Candidate candidate;
    private final Reading reading;
    private final String series;
    private @Nullable Parts look;
    private @Nullable Parts full;

    /**
     * To be looked at.
     *
     * @param reading of the file with it
     * @param series that it is of
     */
    SizeTrial(OpenSize.Candidate candidate, Reading reading, String series) {
        this.candidate = candidate;
        this.reading = reading;
        this.series = series;
    }

    OpenSize.Candidate candidate() {
        return candidate;
    }

    /** The design; null when the size does not go there. */
    @Nullable
    Design design() {
        return reading instanceof Reading.Good good && (!SizeChecks.ofActuator(series) || suits(good.design()))
                ? good.design()
                : null;
    }

    /** What the part's own checks say, at coarse tilts; nothing where it cannot be computed. */
    Parts look() {
        if (look == null) {
            look = looked();
        }
        return look;
    }

    /** What every check says, in time too. */
    Parts full() {
        if (full == null) {
            try {
                Result result = Checker.asFilled(Objects.requireNonNull(design(), "a design"));
                full = result.parts();
            } catch (CannotComputeException e) {
                full = NOTHING;
            }
        }
        return full;
    }

    private Parts looked() {
        Design design = design();
        if (design == null) {
            return NOTHING;
        }
        try {
            Analysis analysis = Analyser.analyse(Trials.coarse(design));
            Predicate<Check> timed = c -> c.traits().contains(Trait.NEEDS_TIME);
            List<Check> quick = SizeChecks.quick(series);
            List<Finding> findings = new ArrayList<>(
                    Checks.run(quick.stream().filter(timed.negate()).toList(), analysis));
            Timing timing = null;
            if (SizeChecks.ofSupply(series)) {
                timing = CycleTimer.time(analysis);
                findings.addAll(Checks.run(quick.stream().filter(timed).toList(), analysis, timing));
            }
            return Parts.of(analysis, timing, findings);
        } catch (CannotComputeException | NotConvergedException e) {
            return NOTHING;
        }
    }

    /** Whether the actuators go with the supply. */
    private static boolean suits(Design design) {
        Actuator actuator = design.drive().actuators().get(0).actuator();
        boolean battery = design.supply() instanceof Battery;
        return (design.supply() == null || battery == actuator instanceof ElectricActuator)
                && PartsBox.misfit(design, actuator).isEmpty();
    }
}
