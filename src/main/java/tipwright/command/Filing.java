// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import tipwright.analysis.CannotComputeException;
import tipwright.check.Checker;
import tipwright.check.Result;
import tipwright.design.file.Problem;
import tipwright.design.file.Reading;
import tipwright.document.Origin;
import tipwright.document.Stills;
import tipwright.doubt.Doubter;
import tipwright.quantity.UnitSystem;
import tipwright.remedy.FixSearch;
import tipwright.report.Checked;

/** Collects the inputs of a document and reports problems in the design. */
final class Filing {
    private final CommandLine line;
    private final Map<String, String> environment;

    Filing(CommandLine line, Map<String, String> environment) {
        this.line = line;
        this.environment = environment;
    }

    /**
     * A checked design and its file.
     *
     * @param code exit code when there is none
     */
    record Filed(@Nullable Checked checked, Origin origin, int code) {}

    Filed read(DesignSource source) {
        String version = new ProgramVersion().getVersion()[0];
        String today = LocalDate.now(java.time.ZoneId.systemDefault()).toString();
        if (source.reading() instanceof Reading.Bad bad) {
            bad.problems().forEach(p -> line.getErr().println(p.text()));
            return new Filed(null, Origin.of(source.name(), List.of(), version, today), Exit.NOT_UNDERSTOOD);
        }
        Reading.Good good = (Reading.Good) source.reading();
        Origin origin = Origin.of(source.name(), good.files(), version, today);
        try {
            List<String> remarks = good.warnings().stream().map(Problem::text).toList();
            Result result = Checker.check(good.design());
            Checked checked = new Checked(
                    result,
                    good.assumptions(),
                    remarks,
                    FixSearch.of(
                            result,
                            () -> Boxes.of(source, good.design(), List.of()).shop(good.units()),
                            false),
                    Doubter.ask(good, result.findings()),
                    source.sizes());
            return new Filed(checked, origin, Exit.FINE);
        } catch (CannotComputeException e) {
            line.getErr().println(source.name() + ": " + e.getMessage());
            return new Filed(null, origin, Exit.CANNOT_COMPUTE);
        }
    }

    /** Starts to draw, beside everything else. */
    CompletableFuture<Stills> stills(DesignSource source, UnitSystem units) {
        if (source.reading() instanceof Reading.Good good) {
            StillShots shots = new StillShots(source, good.design(), units, environment);
            return CompletableFuture.supplyAsync(shots::take);
        }
        return CompletableFuture.completedFuture(Stills.none(""));
    }
}
